package faintwind.report.log;

import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.ReadingTrend;
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
import faintwind.message.Numerals;
import faintwind.record.Event;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The steps of the build log: what was done, when, by whom, and what was read. */
final class BuildLogSteps {
  private final Chapter to;
  private final Html html;
  private final LogWords words;
  private final BuildLogContent content;
  private final InstrumentState state;
  private final Map<String, Double> values;

  BuildLogSteps(Chapter to, BuildLogContent content) {
    this.to = to;
    this.html = to.html();
    this.words = to.words();
    this.content = content;
    this.state = content.situation().state();
    this.values = content.situation().values(content.checklist());
  }

  void write(Stage stage, Progress progress) {
    html.element("h3", stage.title());
    stage.banner().ifPresent(banner -> html.element("p", "banner", banner));
    List<String> untouched = new ArrayList<>();
    for (Step step : stage.steps()) {
      StepProgress at = progress.step(step.id()).orElseThrow();
      boolean touched = state.lines().stream().anyMatch(line -> line.inStep(step.id()));
      if (touched) {
        html.block("step", () -> step(step, at));
      } else {
        untouched.add(step.title() + ": " + words.text("step-state." + at.state().word()));
      }
    }
    if (!untouched.isEmpty()) {
      html.element("p", "soft", words.text("build-log.untouched", String.join("; ", untouched)));
    }
    if (stage.steps().stream().anyMatch(s -> stops(progress, s))) {
      remedies();
    }
  }

  private static boolean stops(Progress progress, Step step) {
    StepState state = progress.step(step.id()).orElseThrow().state();
    return state == StepState.BLOCKED || state == StepState.NEEDS_ATTENTION;
  }

  private void remedies() {
    for (Remedy remedy : Remedies.of(content.checklist(), content.situation())) {
      html.element(
          "p",
          "remedy",
          words.text(
              "build-log.remedy",
              fill(remedy.words().cause()),
              fill(remedy.words().because()),
              fill(Remedies.todo(content.checklist(), remedy, content.situation()))));
    }
  }

  private void step(Step step, StepProgress at) {
    html.element("h4", step.title());
    String finished =
        state
            .finished(step.id())
            .map(line -> words.text("build-log.finished", words.whoWhen(line.who(), line.at())))
            .orElse(words.text("build-log.not-finished"));
    html.raw("<p>" + words.state(at.state()) + ". " + Html.escaped(finished) + "</p>");
    cautions(step);
    lines(step, QuestionAnswered.class, "answer", line -> answer(step, line));
    readings(step);
    lines(step, Waived.class, "waiver", this::waiver);
    lines(step, ClockStarted.class, "clock", line -> clock(step, line));
    photos(step);
  }

  /** One paragraph a line of the journal in the step, whether it stands or is struck. */
  private <E extends Event> void lines(
      Step step, Class<E> kind, String cssClass, Function<Standing<E>, String> text) {
    String mark = kind == Waived.class ? LogWords.mark(StepState.NEEDS_ATTENTION) + " " : "";
    inStep(step, kind)
        .forEach(line -> html.markup("p", cssClass, mark + words.entry(line, text.apply(line))));
  }

  private <E extends Event> List<Standing<E>> inStep(Step step, Class<E> kind) {
    return state.all(kind).stream().filter(line -> line.inStep(step.id())).toList();
  }

  private void cautions(Step step) {
    if (step.cautions().isEmpty()) {
      return;
    }
    html.raw("<ul class=\"cautions\">");
    step.cautions().forEach(caution -> html.raw("<li>" + caution(step, caution) + "</li>"));
    html.raw("</ul>");
  }

  private String caution(Step step, Caution caution) {
    String level = words.text("caution." + caution.level().word());
    StringBuilder line =
        new StringBuilder(
            Html.escaped(level + ": " + caution.text() + " (" + caution.source() + ")"));
    List<Standing<CautionAcknowledged>> read =
        inStep(step, CautionAcknowledged.class).stream()
            .filter(l -> l.event().caution().equals(caution.id()))
            .toList();
    for (Standing<CautionAcknowledged> one : read) {
      String by = words.text("build-log.caution-read", words.whoWhen(one.who(), one.at()));
      line.append(' ').append(one.stands() ? Html.within("b", by) : words.entry(one, by));
    }
    if (read.isEmpty()) {
      line.append(' ').append(Html.within("b", words.text("build-log.caution-unread")));
    }
    return line.toString();
  }

  private String answer(Step step, Standing<QuestionAnswered> line) {
    Optional<Question> question =
        step.asks().questions().stream()
            .filter(q -> q.id().equals(line.event().question()))
            .findFirst();
    String choice = line.event().choice();
    return words.text(
        "build-log.answer",
        question.map(Question::text).orElse(line.event().question()),
        question.flatMap(q -> q.choice(choice)).map(c -> c.text()).orElse(choice),
        words.whoWhen(line.who(), line.at()));
  }

  private void readings(Step step) {
    if (step.asks().readings().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (Reading reading : step.asks().readings()) {
      List<Standing<ReadingEntered>> history = state.history(step.id(), reading.id());
      String label = Html.escaped(reading.label());
      String expected = Html.escaped(fill(reading.expected()));
      if (history.isEmpty()) {
        String none = Html.escaped(words.text("build-log.not-measured"));
        rows.add(List.of(label, expected, none, "", ""));
      }
      history.forEach(line -> rows.add(readingRow(label, expected, reading, line)));
    }
    to.markupTable(
        "wide",
        List.of(
            "build-log.reading",
            "build-log.band",
            "build-log.typed",
            "build-log.verdict",
            "build-log.entered"),
        rows);
    BuildLogChart chart = new BuildLogChart(words);
    for (Reading reading : step.asks().readings()) {
      ReadingTrend.of(step.id(), reading, state)
          .ifPresent(trend -> chart.write(to, reading, trend));
    }
  }

  private List<String> readingRow(
      String label, String expected, Reading reading, Standing<ReadingEntered> line) {
    ReadingEntered entered = line.event();
    String understood = AmountText.understood(entered.amount(), words.messages());
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
    String again = line.voidCause().isPresent() ? words.text("build-log.measure-again") : verdict;
    return List.of(
        label,
        expected,
        words.entry(line, "“" + entered.typed() + "”: " + understood),
        again,
        Html.escaped(words.whoWhen(line.who(), line.at())));
  }

  private String waiver(Standing<Waived> line) {
    return words.text(
        "build-log.waiver",
        what(content.checklist(), line),
        line.event().reason(),
        words.whoWhen(line.who(), line.at()));
  }

  /** What was waived, in words. */
  static String what(Checklist checklist, Standing<Waived> line) {
    return line.step()
        .flatMap(checklist::step)
        .flatMap(step -> step.reading(line.event().what()))
        .map(Reading::label)
        .orElse(line.event().what());
  }

  private String clock(Step step, Standing<ClockStarted> line) {
    return words.text(
        "build-log.clock",
        step.asks().clock().map(Step.ClockSpec::label).orElse(line.event().clock()),
        Numerals.digits(line.event().duration_s() / 3600, 3),
        words.whoWhen(line.who(), line.at()));
  }

  private void photos(Step step) {
    for (Standing<PhotoAdded> line : inStep(step, PhotoAdded.class)) {
      PhotoAdded photo = line.event();
      String data = content.photos().get(photo.file());
      if (data != null) {
        html.raw("<img src=\"" + data + "\" alt=\"" + Html.escaped(photo.caption()) + "\"/>");
      }
      String text =
          words.text(
              data == null ? "build-log.photo-absent" : "build-log.photo",
              photo.caption(),
              photo.file(),
              photo.sha256(),
              words.whoWhen(line.who(), line.at()));
      html.markup("p", "soft", words.entry(line, text));
    }
  }

  private String fill(String text) {
    return content.situation().fill(text, words.messages());
  }
}
