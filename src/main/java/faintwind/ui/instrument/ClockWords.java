package faintwind.ui.instrument;

import faintwind.guide.Situation;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.StepClock;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.ui.part.ClockView;
import faintwind.ui.part.TimeText;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;

/** Says in words where a clock stands. */
public final class ClockWords {
  private final Messages words;

  public ClockWords(Messages words) {
    this.words = words;
  }

  /** The face of a step's clock; empty where the step has none. */
  public Optional<ClockView.Face> face(Step step, StepClock clock, Situation situation) {
    return step.asks()
        .clock()
        .map(
            spec -> {
              String name = situation.fill(spec.label(), words);
              return switch (clock.stand()) {
                case RUNNING ->
                    new ClockView.Face(
                        name,
                        left(clock),
                        clock.share(),
                        words.text(
                            "window.clock.runs", moment(clock.start(), clock.now()), end(clock)));
                case ENDED ->
                    new ClockView.Face(
                        name,
                        words.text("window.clock.ended"),
                        1,
                        words.text(
                            "window.clock.since",
                            TimeText.of(words, seconds(clock.late_s())),
                            situation.fill(spec.then(), words)));
                case TIME_SET_BACK ->
                    new ClockView.Face(
                        name,
                        words.text("window.clock.unknown"),
                        0,
                        words.text("window.clock.set-back", moment(clock.start(), clock.now())));
                case TIME_LEAPT ->
                    new ClockView.Face(
                        name,
                        words.text("window.clock.unknown"),
                        0,
                        words.text(
                            "window.clock.leapt", TimeText.of(words, seconds(clock.late_s()))));
              };
            });
  }

  /** The time left, such as "18 min". */
  public String left(StepClock clock) {
    return TimeText.of(words, seconds(clock.left_s()));
  }

  /** With its day wherever the start is told with one: "ends 17:30" would be that day's. */
  private String end(StepClock clock) {
    boolean sinceToday = clock.start().toLocalDate().equals(clock.now().toLocalDate());
    return sinceToday ? moment(clock.end(), clock.now()) : DateText.minute(words, clock.end());
  }

  private String moment(OffsetDateTime when, OffsetDateTime now) {
    return DateText.near(words, when, now);
  }

  private static Duration seconds(double time_s) {
    return Duration.ofSeconds(Math.round(time_s));
  }
}
