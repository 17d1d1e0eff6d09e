package faintwind.ui.part;

import faintwind.message.Messages;
import java.time.Duration;

/** A stretch of time as the window writes it. */
public final class TimeText {
  private TimeText() {}

  /** In seconds. */
  public static String of(Messages words, double time_s) {
    return of(words, Duration.ofSeconds(Math.round(time_s)));
  }

  /** In its two largest units, such as "3 h 10 min" or "20 s". */
  public static String of(Messages words, Duration time) {
    long seconds = Math.max(0, time.toSeconds());
    if (seconds < 60) {
      return words.text("window.time.s", seconds);
    }
    long minutes = Math.round(seconds / 60.0);
    if (minutes < 60) {
      return words.text("window.time.min", minutes);
    }
    long hours = minutes / 60;
    if (hours < 48) {
      return minutes % 60 == 0
          ? words.text("window.time.h", hours)
          : words.text("window.time.h-min", hours, minutes % 60);
    }
    return words.text("window.time.days", hours / 24);
  }
}
