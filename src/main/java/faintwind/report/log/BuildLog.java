package faintwind.report.log;

import faintwind.calibration.Calibration;
import faintwind.guide.Contradictions;
import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Stage;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.physics.sheet.Outcome;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.calibration.CalibrationSections;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
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
    String title = words.text("build-log.title", content.name());
    return new Page(words, title, label(content), "").html(html -> write(html, content));
  }

  private void write(Html html, BuildLogContent content) {
    Progress progress = Progress.of(content.checklist(), content.situation());
    overview(html, content, progress);
    design(html, content);
    parts(html, content);
    section(html, content, "build-log.steps");
    BuildLogSteps steps = new BuildLogSteps(new Chapter(html, words, 3), content);
    for (Stage stage : content.checklist().stages()) {
      steps.write(stage, progress);
    }
    BuildLogLedger.write(new Chapter(html, words, 3), content.situation().state());
    section(html, content, "build-log.calibration");
    content
        .formula()
        .ifPresentOrElse(
            formula -> calibration(html, formula),
            () -> html.element("p", words.text("build-log.no-calibration")));
    signatures(html, content);
  }

  private void calibration(Html html, BuildLogContent.Formula formula) {
    Calibration calibration = formula.calibration();
    Chapter chapter = new Chapter(html, words, 3);
    chapter.say(
        "build-log.calibration.origin",
        formula.file(),
        LogWords.time(calibration.origin().created()),
        calibration.origin().softwareVersion(),
        calibration.signal().unit().column());
    new CalibrationSections(chapter).write(calibration, formula.look(), Optional.empty());
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
    String mark = LogWords.madeUp(label(content));
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
    List<List<String>> facts = new ArrayList<>();
    if (!state.lines().isEmpty()) {
      facts.add(fact("build-log.begun", LogWords.time(state.lines().get(0).at())));
    }
    facts.add(fact("build-log.printed", LogWords.time(content.situation().now())));
    Checklist checklist = content.checklist();
    facts.add(fact("build-log.checklist", checklist.id() + " " + checklist.version()));
    facts.add(fact("build-log.checklist-hash", checklist.sha256()));
    if (!state.head().isEmpty()) {
      facts.add(fact("build-log.head", state.head()));
    }
    facts.add(fact("build-log.software", content.software()));
    long settled = progress.steps().stream().filter(s -> s.state().settled()).count();
    String count = words.text("build-log.progress.count", settled, progress.steps().size());
    facts.add(fact("build-log.progress", count));
    html.table("facts", List.of(), facts);
    attention(html, content, progress);
  }

  private void attention(Html html, BuildLogContent content, Progress progress) {
    List<String> lines = new ArrayList<>(content.notes());
    Contradictions.of(content.checklist(), content.situation())
        .forEach(problem -> lines.add(words.messages().sentence(problem)));
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

  private List<String> fact(String key, String value) {
    return List.of(words.text(key), value);
  }

  private void design(Html html, BuildLogContent content) {
    section(html, content, "build-log.design");
    for (Standing<DesignChosen> line : content.situation().state().all(DesignChosen.class)) {
      String text =
          words.text(
              "build-log.design.chosen", words.whoWhen(line.who(), line.at()), line.event().why());
      html.raw("<p>" + words.entry(line, text) + "</p>");
    }
    Chapter chapter = new Chapter(html, words, 3);
    content
        .situation()
        .sheet()
        .ifPresentOrElse(
            sheet ->
                chapter.table(
                    List.of(
                        "build-log.quantity",
                        "build-log.value",
                        "build-log.range",
                        "build-log.verdict"),
                    sheet.quantities().stream().map(this::outcome).toList()),
            () -> chapter.say("build-log.design.none"));
  }

  private List<String> outcome(Outcome outcome) {
    Interval v = outcome.value();
    String range =
        v.low() == v.high()
            ? ""
            : Numerals.compact(v.low(), 4) + " … " + Numerals.compact(v.high(), 4);
    String verdict =
        outcome.verdict() == DesignVerdict.PLAIN
            ? ""
            : words.text("design-verdict." + outcome.verdict().name().toLowerCase(Locale.ROOT));
    return List.of(
        words.text("quantity." + outcome.id().id()),
        (Numerals.compact(v.nominal(), 4) + " " + outcome.id().unit()).strip(),
        range,
        verdict);
  }

  private void parts(Html html, BuildLogContent content) {
    section(html, content, "build-log.parts");
    List<Standing<PartRecorded>> parts = content.situation().state().all(PartRecorded.class);
    Chapter chapter = new Chapter(html, words, 3);
    if (parts.isEmpty()) {
      chapter.say("build-log.parts.none");
      return;
    }
    chapter.markupTable(
        "wide",
        List.of("build-log.part", "build-log.lot", "build-log.price", "build-log.entered"),
        parts.stream().map(this::part).toList());
  }

  private List<String> part(Standing<PartRecorded> line) {
    PartRecorded part = line.event();
    String price =
        part.price().isPresent()
            ? Numerals.places(part.price().getAsDouble(), 2) + " " + part.currency()
            : "";
    return List.of(
        words.entry(line, part.part()),
        Html.escaped(part.lot()),
        Html.escaped(price),
        Html.escaped(words.whoWhen(line.who(), line.at())));
  }

  private void signatures(Html html, BuildLogContent content) {
    section(html, content, "build-log.signatures");
    html.element("p", words.text("build-log.signatures.text"));
    List<List<String>> rows = new ArrayList<>();
    for (String key : List.of("build-log.built-by", "build-log.checked-by")) {
      rows.add(
          List.of(
              words.text(key), words.text("build-log.date"), words.text("build-log.signature")));
      rows.add(List.of("\u00a0", "\u00a0", "\u00a0"));
    }
    html.table("signature", List.of(), rows);
  }
}
