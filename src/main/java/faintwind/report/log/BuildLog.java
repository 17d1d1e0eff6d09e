package faintwind.report.log;

import faintwind.calibration.Calibration;
import faintwind.guide.Contradictions;
import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Stage;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.calibration.CalibrationSections;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import faintwind.report.page.Html.Fact;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The build log as one self-contained page of XHTML: black on white, printable, nothing loaded from
 * elsewhere. Made-up data say so at the head of every part and of every printed page.
 */
public final class BuildLog {
  private static final List<String> SECTIONS =
      List.of(
          "build-log.attention",
          "build-log.design",
          "build-log.parts",
          "build-log.steps",
          "build-log.ledger",
          "build-log.calibration",
          "build-log.logs",
          "build-log.signatures",
          "build-log.sheet");

  private static final String ALONE =
      """
      .front { page-break-after: avoid; } body { font-size: 9.2pt; line-height: 1.3; }
      """;

  private static final String STYLE =
      """
      ol.contents li { margin: 3px 0; }
      ol.contents a:after { content: leader('.') target-counter(attr(href), page); }
      """;

  private final LogWords words;

  public BuildLog(Messages messages) {
    this.words = new LogWords(messages);
  }

  /** The whole log. */
  public String html(BuildLogContent content) {
    String title = words.text("build-log.title", content.name());
    return new Page(words, title, label(content), FrontPage.STYLE + STYLE)
        .html(html -> write(html, content));
  }

  /** Its first page alone, with a place to sign: the certificate. */
  public String certificate(BuildLogContent content) {
    String title = words.text("build-log.certificate", content.name());
    return new Page(words, title, label(content), FrontPage.STYLE + ALONE)
        .html(
            html -> {
              Progress progress = Progress.of(content.checklist(), content.situation());
              new FrontPage(new Chapter(html, words, 3), content, progress, FrontPage.FEW_OPEN)
                  .write();
              signatures(html);
            });
  }

  private void write(Html html, BuildLogContent content) {
    Progress progress = Progress.of(content.checklist(), content.situation());
    new FrontPage(new Chapter(html, words, 3), content, progress, FrontPage.MOST_OPEN).write();
    contents(html);
    section(html, content, "build-log.attention");
    attention(html, content, progress);
    section(html, content, "build-log.design");
    design(html, content);
    section(html, content, "build-log.parts");
    parts(html, content);
    section(html, content, "build-log.steps");
    BuildLogSteps steps = new BuildLogSteps(new Chapter(html, words, 3), content);
    for (Stage stage : content.checklist().stages()) {
      steps.write(stage, progress);
    }
    section(html, content, "build-log.ledger");
    BuildLogLedger.write(new Chapter(html, words, 3), content.situation().state());
    section(html, content, "build-log.calibration");
    content
        .formula()
        .ifPresentOrElse(
            formula -> calibration(html, formula),
            () -> html.element("p", words.text("build-log.no-calibration")));
    section(html, content, "build-log.logs");
    FieldLogTable.write(new Chapter(html, words, 3), content.pictures().logs());
    html.block(
        "together",
        () -> {
          section(html, content, "build-log.signatures");
          signatures(html);
        });
    section(html, content, "build-log.sheet");
    Chapter chapter = new Chapter(html, words, 3);
    content
        .situation()
        .sheet()
        .ifPresentOrElse(
            sheet -> SheetTable.write(chapter, sheet), () -> chapter.say("build-log.design.none"));
  }

  private void contents(Html html) {
    html.element("h2", words.text("build-log.contents"));
    html.raw("<ol class=\"contents\">");
    for (String key : SECTIONS) {
      html.raw(
          "<li><a href=\"#" + anchor(key) + "\">" + Html.escaped(words.text(key)) + "</a></li>");
    }
    html.raw("</ol>");
  }

  private static String anchor(String key) {
    return key.replace('.', '-');
  }

  private void calibration(Html html, BuildLogContent.Formula formula) {
    Calibration calibration = formula.calibration();
    Chapter chapter = new Chapter(html, words, 3);
    chapter.say(
        "build-log.calibration.origin",
        formula.file(),
        words.time(calibration.origin().created()),
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
    html.raw("<h2 id=\"" + anchor(key) + "\">" + Html.escaped(words.text(key)) + mark + "</h2>");
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
    if (lines.isEmpty()) {
      html.element("p", words.text("build-log.attention.none"));
    }
    html.list(lines);
    Checklist checklist = content.checklist();
    html.facts(
        "facts",
        List.of(
            Fact.text(
                words.text("build-log.checklist"), checklist.id() + " " + checklist.version()),
            new Fact(
                words.text("build-log.checklist-hash"), Html.span("mono", checklist.sha256()))));
  }

  private void design(Html html, BuildLogContent content) {
    for (Standing<DesignChosen> line : content.situation().state().all(DesignChosen.class)) {
      String text =
          words.text(
              "build-log.design.chosen", words.whoWhen(line.who(), line.at()), line.event().why());
      html.raw("<p>" + words.entry(line, text) + "</p>");
    }
  }

  private void parts(Html html, BuildLogContent content) {
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

  private void signatures(Html html) {
    html.element("p", words.text("build-log.signatures.text"));
    html.raw("<table class=\"signature short\"><thead><tr>");
    for (String key : List.of("build-log.who", "build-log.name", "build-log.date")) {
      html.raw("<th scope=\"col\">" + Html.escaped(words.text(key)) + "</th>");
    }
    html.raw(
        "<th scope=\"col\">"
            + Html.escaped(words.text("build-log.signature"))
            + "</th></tr></thead><tbody>");
    for (String key : List.of("build-log.built-by", "build-log.checked-by")) {
      html.raw(
          "<tr><th scope=\"row\">"
              + Html.escaped(words.text(key))
              + "</th><td>\u00a0</td><td>\u00a0</td><td>\u00a0</td></tr>");
    }
    html.raw("</tbody></table>");
  }
}
