package faintwind.report.log;

import faintwind.calibration.Calibration;
import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.checklist.Stage;
import faintwind.message.Messages;
import faintwind.physics.Interval;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.physics.sheet.Outcome;
import faintwind.record.Event;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.calibration.CalibrationSections;
import faintwind.report.page.BuildLogStyle;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The build log as one self-contained page of XHTML: black on white, printable, nothing loaded from
 * elsewhere. Made-up data say so at the head of every part and of every printed page.
 */
public final class BuildLog {
  private final LogWords words;

  public BuildLog(Messages messages) {
    this.words = new LogWords(messages);
  }

  /** The whole page. */
  public String html(BuildLogContent content) {
    Progress progress = Progress.of(content.checklist(), content.situation());
    Html html = new Html();
    html.raw(head(content)).raw("<body>");
    overview(html, content, progress);
    design(html, content);
    parts(html, content);
    section(html, content, "build-log.steps");
    BuildLogSteps steps = new BuildLogSteps(words, content);
    for (Stage stage : content.checklist().stages()) {
      steps.write(html, stage, progress);
    }
    BuildLogLedger.write(html, words, content);
    section(html, content, "build-log.calibration");
    if (content.formula().isPresent()) {
      calibration(html, content.formula().get());
    } else {
      html.element("p", words.text("build-log.no-calibration"));
    }
    signatures(html, content);
    return html.raw("</body></html>").toString();
  }

  private void calibration(Html html, BuildLogContent.Formula formula) {
    Calibration calibration = formula.calibration();
    html.element(
        "p",
        words.text(
            "build-log.calibration.origin",
            formula.file(),
            LogWords.time(calibration.origin().created()),
            calibration.origin().softwareVersion(),
            calibration.signal().unit().column()));
    new CalibrationSections(new Chapter(html, words, 3))
        .write(calibration, formula.look(), Optional.empty());
  }

  private String head(BuildLogContent content) {
    String title = words.text("build-log.title", content.name());
    return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\""
        + words.messages().locale().toLanguageTag().replace("und", "en")
        + "\"><head><meta charset=\"UTF-8\"/><title>"
        + Html.escaped(title)
        + "</title><meta name=\"description\" content=\""
        + Html.escaped(title)
        + "\"/><style>"
        + BuildLogStyle.css(title, label(content), words)
        + "</style></head>";
  }

  private String label(BuildLogContent content) {
    InstrumentState state = content.situation().state();
    if (state.rehearsal()) {
      return words.text("build-log.rehearsal");
    }
    return state.madeUp() ? words.text("build-log.made-up") : "";
  }

  /** A heading; made-up data are named so beside each. */
  private void section(Html html, BuildLogContent content, String key) {
    String label = label(content);
    String mark =
        label.isEmpty() ? "" : " <span class=\"made-up\">" + Html.escaped(label) + "</span>";
    html.raw("<h2>" + Html.escaped(words.text(key)) + mark + "</h2>");
  }

  private void overview(Html html, BuildLogContent content, Progress progress) {
    InstrumentState state = content.situation().state();
    html.element("h1", words.text("build-log.title", content.name()));
    if (state.rehearsal()) {
      html.element("p", "made-up", words.text("build-log.rehearsal.sentence"));
    } else if (state.madeUp()) {
      html.element("p", "made-up", words.text("build-log.made-up.sentence"));
    }
    html.openTable("facts", List.of());
    if (!state.lines().isEmpty()) {
      fact(html, "build-log.begun", LogWords.time(state.lines().get(0).at()));
    }
    fact(html, "build-log.printed", LogWords.time(content.situation().now()));
    fact(
        html,
        "build-log.checklist",
        content.checklist().id() + " " + content.checklist().version());
    fact(html, "build-log.checklist-hash", content.checklist().sha256());
    fact(html, "build-log.software", content.software());
    long settled = progress.steps().stream().filter(s -> s.state().settled()).count();
    fact(
        html,
        "build-log.progress",
        words.text("build-log.progress.count", settled, progress.steps().size()));
    html.closeTable();
    attention(html, content, progress);
  }

  private void attention(Html html, BuildLogContent content, Progress progress) {
    List<String> lines = new ArrayList<>(content.notes());
    for (Standing<Waived> waiver : content.situation().state().standing(Waived.class)) {
      lines.add(
          words.text(
              "build-log.waiver",
              BuildLogSteps.what(content.checklist(), waiver),
              waiver.event().reason(),
              words.whoWhen(waiver.who(), waiver.at())));
    }
    for (StepProgress step : progress.steps()) {
      step.doubts()
          .forEach(
              doubt -> lines.add(step.step().title() + ": " + words.messages().sentence(doubt)));
    }
    if (!lines.isEmpty()) {
      html.element("h3", words.text("build-log.attention")).list(lines);
    }
  }

  private void fact(Html html, String key, String value) {
    html.row(List.of(words.text(key), value));
  }

  private void design(Html html, BuildLogContent content) {
    section(html, content, "build-log.design");
    for (Standing<DesignChosen> line : content.situation().state().all(DesignChosen.class)) {
      String text =
          words.text(
              "build-log.design.chosen", words.whoWhen(line.who(), line.at()), line.event().why());
      html.raw("<p>" + (line.stands() ? Html.escaped(text) : Html.struck(text)) + "</p>");
    }
    if (content.situation().sheet().isEmpty()) {
      html.element("p", words.text("build-log.design.none"));
      return;
    }
    html.openTable(
        "wide",
        List.of(
            words.text("build-log.quantity"),
            words.text("build-log.value"),
            words.text("build-log.range"),
            words.text("build-log.verdict")));
    for (Outcome q : content.situation().sheet().get().quantities()) {
      Interval v = q.value();
      String range =
          v.low() == v.high()
              ? ""
              : LogWords.figures(v.low(), 4) + " … " + LogWords.figures(v.high(), 4);
      String verdict =
          q.verdict() == DesignVerdict.PLAIN
              ? ""
              : words.text("design-verdict." + q.verdict().name().toLowerCase(Locale.ROOT));
      html.row(
          List.of(
              words.text("quantity." + q.id().id()),
              (LogWords.figures(v.nominal(), 4) + " " + q.id().unit()).strip(),
              range,
              verdict));
    }
    html.closeTable();
  }

  private void parts(Html html, BuildLogContent content) {
    section(html, content, "build-log.parts");
    List<Standing<PartRecorded>> parts = content.situation().state().all(PartRecorded.class);
    if (parts.isEmpty()) {
      html.element("p", words.text("build-log.parts.none"));
      return;
    }
    html.openTable(
        "wide",
        List.of(
            words.text("build-log.part"),
            words.text("build-log.lot"),
            words.text("build-log.price"),
            words.text("build-log.entered")));
    for (Standing<PartRecorded> line : parts) {
      PartRecorded part = line.event();
      String price =
          part.price().isPresent()
              ? String.format(Locale.ROOT, "%.2f %s", part.price().getAsDouble(), part.currency())
              : "";
      String name = line.stands() ? Html.escaped(part.part()) : Html.struck(part.part());
      html.markupRow(
          List.of(
              name,
              Html.escaped(part.lot()),
              Html.escaped(price),
              Html.escaped(words.whoWhen(line.who(), line.at()))));
    }
    html.closeTable();
  }

  private void signatures(Html html, BuildLogContent content) {
    section(html, content, "build-log.signatures");
    html.element("p", words.text("build-log.signatures.text"));
    html.openTable("signature", List.of());
    for (String key : List.of("build-log.built-by", "build-log.checked-by")) {
      html.row(
          List.of(
              words.text(key), words.text("build-log.date"), words.text("build-log.signature")));
      html.row(List.of("\u00a0", "\u00a0", "\u00a0"));
    }
    html.closeTable();
  }

  /** Events that stand in no table of their own. */
  static boolean isPlain(Event event) {
    return event instanceof Event.NoteWritten
        || event instanceof Event.FileAdded
        || event instanceof Event.CalibrationMade
        || event instanceof Event.CalibrationPutInForce
        || event instanceof Event.ChecklistChosen
        || event instanceof Event.MeterChosen
        || event instanceof Event.OwnFileNoted
        || event instanceof Event.RehearsalBegun
        || event instanceof Event.InstrumentCreated;
  }
}
