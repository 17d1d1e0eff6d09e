package faintwind.report.page;

import faintwind.guide.StepState;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.time.OffsetDateTime;

/** Words, figures and marks of the build log. */
public record LogWords(Messages messages) {
  public String text(String key, Object... arguments) {
    return messages.text(key, arguments);
  }

  /** A time as every page writes it: the day, the minute, the zone. */
  public String time(OffsetDateTime at) {
    return DateText.zoned(messages, at);
  }

  public String whoWhen(String who, OffsetDateTime at) {
    return text("build-log.who-when", who, time(at));
  }

  /** Markup of a line of the journal: as it stands, or struck with who, when and why. */
  public String entry(Standing<?> line, String text) {
    return line.stands()
        ? Html.escaped(text)
        : (Html.within("s", text)
                + " "
                + Html.escaped(
                    line.strike()
                        .map(
                            s ->
                                text(
                                    "build-log.struck",
                                    whoWhen(s.who(), s.at()),
                                    s.reason(messages)))
                        .orElse("")))
            .strip();
  }

  /** Markup of a made-up mark; empty where there is no label. */
  public static String madeUp(String label) {
    return label.isEmpty() ? "" : " " + Html.span("made-up", label);
  }

  /** Mark and word of a step's state. */
  public String state(StepState state) {
    return mark(state) + " " + Html.escaped(text("step-state." + state.word()));
  }

  /** Mark and word of a reading's verdict. */
  public String verdict(ReadingVerdict verdict) {
    StepState shape =
        switch (verdict) {
          case GOOD -> StepState.DONE;
          case DOUBTFUL -> StepState.NEEDS_ATTENTION;
          case STOP -> StepState.BLOCKED;
        };
    return mark(shape) + " " + Html.escaped(text("verdict." + verdict.word()));
  }

  /** A piece of wire as an outline, 28 by 14: shape before colour, so that it prints in grey. */
  public static String mark(StepState state) {
    String path =
        switch (state) {
          case READY, NOT_NEEDED -> "M2,5H26V9H2Z";
          case DOING -> "M2,7H6M6,11L10,3M10,11L14,3M14,11L18,3M18,11L22,3M22,7H26";
          case WAITING -> "M2,5H6V9H2ZM7,5H11V9H7ZM12,5H16V9H12ZM17,5H21V9H17ZM22,5H26V9H22Z";
          case NEEDS_ATTENTION -> "M2,9H10L14,3L18,9H26";
          case BLOCKED -> "M2,7H11M9,11L13,3M15,11L19,3M17,7H26";
          case DONE -> "M2,7H26";
          case CORRECTED -> "M2,4H26M8,6L20,2M2,10H26";
        };
    String width = state == StepState.DONE ? "4" : "1.5";
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"mark\" aria-hidden=\"true\""
        + " viewBox=\"0 0 28 14\" width=\"28\" height=\"14\"><path d=\""
        + path
        + "\" fill=\"none\" stroke=\"#000000\" stroke-width=\""
        + width
        + "\"/></svg>";
  }
}
