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
import faintwind.report.page.Html;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The parts of one step on paper. */
final class StepSheetParts {
  /** A box to be ticked. */
  static final String TICK = "<span class=\"tick\">&#160;</span>";

  /** A line to be written on. */
  static final String BLANK = " <span class=\"blank\">&#160;</span> ";

  /** A short line to be written on. */
  static final String SHORT = " <span class=\"short\">&#160;</span> ";

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
    html.raw("<p class=\"todo\">" + TICK + Html.escaped(text) + "</p>");
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
      html.raw(
          "<div class=\"caution\"><b>"
              + Html.escaped(messages.text("caution." + caution.level().word()))
              + ".</b> "
              + Html.escaped(fill(caution.text()))
              + " <span class=\"soft\">("
              + Html.escaped(caution.source())
              + ")</span><br/>"
              + TICK
              + Html.escaped(messages.text("print.read"))
              + BLANK
              + Html.escaped(messages.text("print.date"))
              + SHORT
              + "</div>");
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

  void questions(Html html, Step step) {
    for (Question question : step.asks().questions()) {
      html.raw("<p><b>" + Html.escaped(question.text()) + "</b></p>");
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
    html.openTable(
        "wide",
        List.of(
            messages.text("build-log.reading"),
            messages.text("build-log.band"),
            messages.text("print.measured"),
            messages.text("build-log.verdict")));
    for (Reading reading : step.asks().readings()) {
      html.markupRow(
          List.of(
              Html.escaped(fill(reading.label())),
              Html.escaped(fill(reading.expected())),
              SHORT + Html.escaped(reading.unit()),
              verdicts(reading)));
    }
    html.closeTable();
  }

  private String verdicts(Reading reading) {
    StringBuilder lines = new StringBuilder();
    for (ReadingBand band : reading.bands()) {
      lines
          .append(TICK)
          .append("<b>")
          .append(Html.escaped(messages.text("verdict." + band.verdict().word())))
          .append("</b> ")
          .append(Html.escaped(fill(band.words())))
          .append("<br/>");
    }
    return lines.toString();
  }

  void clock(Html html, Step step) {
    if (step.asks().clock().isEmpty()) {
      return;
    }
    Step.ClockSpec clock = step.asks().clock().get();
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
