package faintwind.ui.part;

import faintwind.message.Messages;
import java.time.Duration;
import java.util.Locale;

/** Numbers and times as the window writes them. */
public final class Figures {
  private static final char THIN_SPACE = '\u2009';

  private Figures() {}

  /** A whole number with thin spaces between the thousands. */
  public static String whole(long number) {
    return String.format(Locale.ROOT, "%,d", number).replace(',', THIN_SPACE);
  }

  /** The same words with a capital at their head. */
  public static String sentence(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A time in its two largest units, such as "3 h 10 min" or "20 s". */
  public static String duration(Messages words, Duration time) {
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
