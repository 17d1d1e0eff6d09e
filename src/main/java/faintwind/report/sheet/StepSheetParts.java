package faintwind.report.sheet;

import faintwind.guide.Situation;
import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.ReadingBand;
import faintwind.guide.checklist.Step;
import faintwind.message.AmountText;
import faintwind.message.Messages;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The parts of one step on paper. */
final class StepSheetParts {
  private static final String NOTHING = "\u00a0";

  /** A box to be ticked. */
  static final String TICK = Html.span("tick", NOTHING);

  /** A line to be written on. */
  static final String BLANK = " " + Html.span("blank", NOTHING) + " ";

  /** A short line to be written on. */
  static final String SHORT = " " + Html.span("short", NOTHING) + " ";

  private final Messages messages;
  private final Situation situation;

  StepSheetParts(Messages messages, Situation situation) {
    this.messages = messages;
    this.situation = situation;
  }

  String fill(String text) {
    return situation.fill(text, messages);
  }

  /** A line with a box before it. */
  void todo(Html html, String text) {
    html.markup("p", "todo", TICK + Html.escaped(text));
  }

  /** What must be finished before, and what locks the step. */
  void before(Html html, Checklist checklist, Step step) {
    List<String> titles =
        step.order().needs().stream()
            .flatMap(id -> checklist.step(id).stream())
            .map(Step::title)
            .toList();
    if (!titles.isEmpty()) {
      html.element("p", "soft", messages.text("print.after", String.join("; ", titles)));
    }
    for (String gate : step.order().behind()) {
      html.element("p", "banner", messages.text("print.behind." + gate));
    }
  }

  void cautions(Html html, Step step) {
    for (Caution caution : step.cautions()) {
      html.markup(
          "div",
          "caution",
          Html.within("b", messages.text("caution." + caution.level().word()) + ".")
              + " "
              + Html.escaped(fill(caution.text()))
              + " "
              + Html.span("soft", "(" + caution.source() + ")")
              + "<br/>"
              + TICK
              + Html.escaped(messages.text("print.read"))
              + BLANK
              + Html.escaped(messages.text("print.date"))
              + SHORT);
    }
  }

  void kit(Html html, Step step) {
    List<String> kit = new ArrayList<>(step.kit().tools());
    kit.addAll(step.kit().parts());
    if (!kit.isEmpty()) {
      StringBuilder boxes = new StringBuilder("<p>");
      boxes.append(Html.escaped(messages.text("print.kit"))).append(' ');
      kit.forEach(thing -> boxes.append(TICK).append(Html.escaped(thing)).append("&#160; "));
      html.raw(boxes.append("</p>").toString());
    }
  }

  /** The drawing of a step with what it shows. */
  void picture(Html html, Step step, Map<String, String> pictures) {
    Optional<Step.Picture> wanted = step.text().picture();
    Optional<String> svg = wanted.map(picture -> pictures.get(picture.file())).map(this::fill);
    if (wanted.isPresent() && svg.isPresent()) {
      String data = Base64.getEncoder().encodeToString(svg.get().getBytes(StandardCharsets.UTF_8));
      // as an image, so that neither its styles nor a script of somebody else's reach the page
      html.markup(
          "div",
          "drawings",
          "<img alt=\""
              + Html.escaped(wanted.get().shows())
              + "\" src=\"data:image/svg+xml;base64,"
              + data
              + "\"/>");
      html.element("p", "soft", wanted.get().shows());
    }
  }

  void questions(Html html, Step step) {
    for (Question question : step.asks().questions()) {
      html.raw("<p>" + Html.within("b", question.text()) + "</p>");
      for (Question.Choice choice : question.choices()) {
        todo(html, choice.text());
        choice
            .stop()
            .ifPresent(stop -> html.element("p", "ends", messages.text("print.ends", stop)));
        for (Question.StopIf stop : choice.stopsIf()) {
          html.element("p", "ends", messages.text("print.may-end", stop.text()));
        }
      }
    }
  }

  void readings(Html html, Step step) {
    if (step.asks().readings().isEmpty()) {
      return;
    }
    new Chapter(html, new LogWords(messages), 4)
        .markupTable(
            "wide",
            List.of("build-log.reading", "build-log.band", "print.measured", "build-log.verdict"),
            step.asks().readings().stream().map(this::reading).toList());
  }

  private List<String> reading(Reading reading) {
    return List.of(
        Html.escaped(fill(reading.label())) + tips(reading),
        Html.escaped(fill(reading.expected())),
        SHORT + Html.escaped(reading.unit()),
        verdicts(reading));
  }

  private String tips(Reading reading) {
    return reading
        .tips()
        .map(
            tips ->
                messages.text(
                    "window.step.tips",
                    messages.text("window.point." + tips.one().word()),
                    messages.text("window.point." + tips.other().word())))
        .map(words -> "<br/>" + Html.span("soft", words))
        .orElse("");
  }

  private String verdicts(Reading reading) {
    StringBuilder lines = new StringBuilder();
    for (ReadingBand band : reading.bands()) {
      lines
          .append(TICK)
          .append(Html.within("b", messages.text("verdict." + band.verdict().word())))
          .append(' ')
          .append(Html.escaped(fill(band.words())))
          .append("<br/>");
    }
    return lines.toString();
  }

  void clock(Html html, Step step) {
    step.asks()
        .clock()
        .filter(clock -> clock.runs(situation.sheetValues()))
        .ifPresent(clock -> clock(html, clock));
  }

  private void clock(Html html, Step.ClockSpec clock) {
    OptionalDouble seconds = clock.duration_s().number(situation.sheetValues());
    String time =
        seconds.isPresent() ? hours(seconds.getAsDouble()) : messages.text("guide.value-not-known");
    html.raw(
        "<p>"
            + Html.escaped(messages.text("print.clock", fill(clock.label()), time))
            + " "
            + Html.escaped(messages.text("print.clock-begun"))
            + SHORT
            + Html.escaped(messages.text("print.clock-ended"))
            + SHORT
            + Html.escaped(fill(clock.then()))
            + "</p>");
  }

  private String hours(double seconds) {
    return seconds >= 7200
        ? AmountText.quantity(seconds / 3600, "h", 3, messages.locale())
        : AmountText.quantity(Math.ceil(seconds / 60), "min", 3, messages.locale());
  }
}
