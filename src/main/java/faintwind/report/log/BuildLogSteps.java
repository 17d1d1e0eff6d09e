package faintwind.report.log;

import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.Remedies;
import faintwind.guide.StepState;
import faintwind.guide.Verdicts;
import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Remedy;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.AmountText;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The steps of the build log: what was done, when, by whom, and what was read. */
final class BuildLogSteps {
  private final LogWords words;
  private final BuildLogContent content;
  private final InstrumentState state;
  private final Map<String, Double> values;

  BuildLogSteps(LogWords words, BuildLogContent content) {
    this.words = words;
    this.content = content;
    this.state = content.situation().state();
    this.values = content.situation().values(content.checklist());
  }

  void write(Html html, Stage stage, Progress progress) {
    html.element("h3", stage.title());
    stage.banner().ifPresent(banner -> html.element("p", "banner", banner));
    List<String> untouched = new ArrayList<>();
    for (Step step : stage.steps()) {
      StepProgress at = progress.step(step.id()).orElseThrow();
      boolean touched = state.lines().stream().anyMatch(line -> line.inStep(step.id()));
      if (touched) {
        step(html, step, at);
      } else {
        untouched.add(step.title() + ": " + words.text("step-state." + at.state().word()));
      }
    }
    if (!untouched.isEmpty()) {
      html.element("p", "soft", words.text("build-log.untouched", String.join("; ", untouched)));
    }
    if (stage.steps().stream().anyMatch(s -> stops(progress, s))) {
      remedies(html);
    }
  }

  private static boolean stops(Progress progress, Step step) {
    StepState state = progress.step(step.id()).orElseThrow().state();
    return state == StepState.BLOCKED || state == StepState.NEEDS_ATTENTION;
  }

  private void remedies(Html html) {
    for (Remedy remedy : Remedies.of(content.checklist(), content.situation())) {
      html.element(
          "p",
          "remedy",
          words.text(
              "build-log.remedy",
              fill(remedy.words().cause()),
              fill(remedy.words().because()),
              fill(remedy.words().todo())));
    }
  }

  private void step(Html html, Step step, StepProgress at) {
    html.raw("<div class=\"step\"><h4>" + Html.escaped(step.title()) + "</h4>");
    String finished =
        state
            .finished(step.id())
            .map(line -> words.text("build-log.finished", words.whoWhen(line.who(), line.at())))
            .orElse(words.text("build-log.not-finished"));
    html.raw("<p>" + words.state(at.state()) + ". " + Html.escaped(finished) + "</p>");
    cautions(html, step);
    answers(html, step);
    readings(html, step);
    waivers(html, step);
    clocks(html, step);
    photos(html, step);
    html.raw("</div>");
  }

  private void cautions(Html html, Step step) {
    if (step.cautions().isEmpty()) {
      return;
    }
    html.raw("<ul class=\"cautions\">");
    for (Caution caution : step.cautions()) {
      List<Standing<CautionAcknowledged>> read =
          state.all(CautionAcknowledged.class).stream()
              .filter(l -> l.inStep(step.id()) && l.event().caution().equals(caution.id()))
              .toList();
      String text =
          words.text("caution." + caution.level().word())
              + ": "
              + caution.text()
              + " ("
              + caution.source()
              + ")";
      StringBuilder line = new StringBuilder(Html.escaped(text));
      for (Standing<CautionAcknowledged> one : read) {
        String by = words.text("build-log.caution-read", words.whoWhen(one.who(), one.at()));
        line.append(' ').append(one.stands() ? "<b>" + Html.escaped(by) + "</b>" : struck(one, by));
      }
      if (read.isEmpty()) {
        line.append(" <b>").append(Html.escaped(words.text("build-log.caution-unread")));
        line.append("</b>");
      }
      html.raw("<li>" + line + "</li>");
    }
    html.raw("</ul>");
  }

  private void answers(Html html, Step step) {
    for (Standing<QuestionAnswered> line : state.all(QuestionAnswered.class)) {
      if (line.inStep(step.id())) {
        Optional<Question> question =
            step.asks().questions().stream()
                .filter(q -> q.id().equals(line.event().question()))
                .findFirst();
        String choice = line.event().choice();
        String answer = question.flatMap(q -> q.choice(choice)).map(c -> c.text()).orElse(choice);
        String text =
            words.text(
                "build-log.answer",
                question.map(Question::text).orElse(line.event().question()),
                answer,
                words.whoWhen(line.who(), line.at()));
        html.raw("<p>" + (line.stands() ? Html.escaped(text) : struck(line, text)) + "</p>");
      }
    }
  }

  private void readings(Html html, Step step) {
    if (step.asks().readings().isEmpty()) {
      return;
    }
    html.openTable(
        "wide",
        List.of(
            words.text("build-log.reading"),
            words.text("build-log.band"),
            words.text("build-log.typed"),
            words.text("build-log.verdict"),
            words.text("build-log.entered")));
    for (Reading reading : step.asks().readings()) {
      List<Standing<ReadingEntered>> history = state.history(step.id(), reading.id());
      String label = Html.escaped(reading.label());
      String expected = Html.escaped(fill(reading.expected()));
      if (history.isEmpty()) {
        html.markupRow(
            List.of(label, expected, Html.escaped(words.text("build-log.not-measured")), "", ""));
      }
      for (Standing<ReadingEntered> line : history) {
        html.markupRow(readingRow(label, expected, reading, line));
      }
    }
    html.closeTable();
  }

  private List<String> readingRow(
      String label, String expected, Reading reading, Standing<ReadingEntered> line) {
    ReadingEntered entered = line.event();
    String understood = AmountText.understood(entered.amount(), words.messages());
    String typed = "“" + entered.typed() + "”: " + understood;
    boolean counts =
        state
            .reading(line.step().orElse(""), reading.id())
            .filter(l -> l.entry().equals(line.entry()))
            .isPresent();
    String verdict =
        (counts
                ? Verdicts.of(reading, line, content.situation(), values)
                    .map(Reading.Judgement::verdict)
                : entered.verdict())
            .map(words::verdict)
            .orElse("");
    return List.of(
        label,
        expected,
        line.stands() ? Html.escaped(typed) : struck(line, typed),
        verdict,
        Html.escaped(words.whoWhen(line.who(), line.at())));
  }

  private void waivers(Html html, Step step) {
    for (Standing<Waived> line : state.all(Waived.class)) {
      if (line.inStep(step.id())) {
        String text =
            words.text(
                "build-log.waiver",
                what(content.checklist(), line),
                line.event().reason(),
                words.whoWhen(line.who(), line.at()));
        html.raw(
            "<p class=\"waiver\">"
                + LogWords.mark(StepState.NEEDS_ATTENTION)
                + " "
                + (line.stands() ? Html.escaped(text) : struck(line, text))
                + "</p>");
      }
    }
  }

  /** What was waived, in words. */
  static String what(Checklist checklist, Standing<Waived> line) {
    return line.step()
        .flatMap(checklist::step)
        .flatMap(step -> step.reading(line.event().what()))
        .map(Reading::label)
        .orElse(line.event().what());
  }

  private void clocks(Html html, Step step) {
    for (Standing<ClockStarted> line : state.all(ClockStarted.class)) {
      if (line.inStep(step.id())) {
        String label = step.asks().clock().map(Step.ClockSpec::label).orElse(line.event().clock());
        String hours = LogWords.figures(line.event().duration_s() / 3600, 3);
        String text =
            words.text("build-log.clock", label, hours, words.whoWhen(line.who(), line.at()));
        html.raw("<p>" + (line.stands() ? Html.escaped(text) : struck(line, text)) + "</p>");
      }
    }
  }

  private void photos(Html html, Step step) {
    for (Standing<PhotoAdded> line : state.all(PhotoAdded.class)) {
      if (line.inStep(step.id())) {
        PhotoAdded photo = line.event();
        String data = content.photos().get(photo.file());
        if (data != null) {
          html.raw("<img src=\"" + data + "\" alt=\"" + Html.escaped(photo.caption()) + "\"/>");
        }
        String text =
            words.text(
                "build-log.photo",
                photo.caption(),
                photo.file(),
                photo.sha256(),
                words.whoWhen(line.who(), line.at()));
        html.raw(
            "<p class=\"soft\">"
                + (line.stands() ? Html.escaped(text) : struck(line, text))
                + "</p>");
      }
    }
  }

  private String struck(Standing<?> line, String text) {
    String by =
        line.strike()
            .map(
                strike ->
                    words.text(
                        "build-log.struck", words.whoWhen(strike.who(), strike.at()), strike.why()))
            .orElse("");
    return Html.struck(text) + " " + Html.escaped(by);
  }

  private String fill(String text) {
    return content.situation().fill(text, words.messages());
  }
}
