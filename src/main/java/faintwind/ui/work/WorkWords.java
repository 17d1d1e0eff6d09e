package faintwind.ui.work;

import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.ui.part.TimeText;
import java.time.Duration;

/** Says in words how far a long job has come. */
public final class WorkWords {
  private WorkWords() {}

  /** Such as "3 200 of 10 000 draws, about 20 s to go". */
  public static String say(Messages words, Running.Progress progress, Duration rest) {
    String key = "stage." + progress.stage();
    String what =
        words.bundle().containsKey(key) ? words.text(key) : words.text("window.work.units");
    if (progress.total() == 1) {
      // one piece of work: its name says more than "0 of 1"
      return rest.isZero() ? what : words.text("window.work.rest", what, TimeText.of(words, rest));
    }
    if (progress.total() <= 0) {
      return progress.done() <= 0
          ? words.text("window.work.begun")
          : words.text("window.work.count", Numerals.grouped(progress.done()), what);
    }
    String count =
        words.text(
            "window.work.of",
            Numerals.grouped(progress.done()),
            Numerals.grouped(progress.total()),
            what);
    return rest.isZero() ? count : words.text("window.work.rest", count, TimeText.of(words, rest));
  }
}
