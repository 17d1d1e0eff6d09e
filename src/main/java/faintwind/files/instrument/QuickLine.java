package faintwind.files.instrument;

import faintwind.message.Amount;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Reads the lines of which a journal has most in one pass, as the program writes them: texts
 * without escapes, plain numbers, known keys. Whatever is different it leaves to {@link
 * JournalLine}, which judges it.
 */
final class QuickLine {
  private static final List<String> OF_EVERY_LINE =
      List.of("id", "at", "who", "step", "what", "prev");

  private static final Map<String, ReadingVerdict> VERDICTS =
      Arrays.stream(ReadingVerdict.values())
          .collect(Collectors.toMap(ReadingVerdict::word, verdict -> verdict));

  /** Digits that a double holds in any case. */
  private static final int DIGITS = 15;

  private final String line;
  private final Map<String, String> texts = new HashMap<>();
  private final Map<String, Double> numbers = new HashMap<>();
  private int at = 1;

  private QuickLine(String line) {
    this.line = line;
  }

  /** The entry in a line; empty where it is anything but plain. */
  static Optional<JournalEntry> read(String line) {
    QuickLine quick = new QuickLine(line);
    return line.startsWith("{") && quick.members() ? quick.entry() : Optional.empty();
  }

  /** Reads all keys and values; false where something is not plain. */
  private boolean members() {
    do {
      Optional<String> key = text();
      if (key.isEmpty() || !is(':') || !value(key.get())) {
        return false;
      }
    } while (is(','));
    return is('}') && at == line.length();
  }

  private boolean is(char wanted) {
    boolean there = at < line.length() && line.charAt(at) == wanted;
    at += there ? 1 : 0;
    return there;
  }

  private Optional<String> text() {
    if (!is('"')) {
      return Optional.empty();
    }
    for (int i = at; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        String text = line.substring(at, i);
        at = i + 1;
        return Optional.of(text);
      }
      if (c == '\\' || c < ' ') {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private boolean value(String key) {
    Optional<String> text = text();
    if (text.isPresent()) {
      return texts.put(key, text.get()) == null;
    }
    int start = at;
    digits();
    int whole = at - start;
    boolean plain = whole > 0 && (whole == 1 || line.charAt(start) != '0');
    if (is('.')) {
      int point = at;
      digits();
      plain &= at > point;
    }
    return plain
        && at - start <= DIGITS
        && numbers.put(key, Double.valueOf(line.substring(start, at))) == null;
  }

  private void digits() {
    while (at < line.length() && line.charAt(at) >= '0' && line.charAt(at) <= '9') {
      at++;
    }
  }

  private Optional<JournalEntry> entry() {
    String id = texts.getOrDefault("id", "");
    Optional<OffsetDateTime> time = time(texts.getOrDefault("at", ""));
    boolean plain = !id.isBlank() && time.isPresent() && texts.containsKey("who");
    return plain
        ? event()
            .map(
                event ->
                    new JournalEntry(
                        id,
                        time.get(),
                        texts.getOrDefault("who", ""),
                        Optional.ofNullable(texts.get("step")),
                        event))
        : Optional.empty();
  }

  private Optional<Event> event() {
    return switch (texts.getOrDefault("what", "")) {
      case "caution" ->
          has("caution") ? Optional.of(new Event.CautionAcknowledged(of("caution"))) : none();
      case "step-opened" -> has() ? Optional.of(new Event.StepOpened()) : none();
      case "step-finished" -> has() ? Optional.of(new Event.StepFinished()) : none();
      case "answer" ->
          has("question", "choice")
              ? Optional.of(new Event.QuestionAnswered(of("question"), of("choice")))
              : none();
      case "reading" -> reading();
      default -> none();
    };
  }

  private static Optional<Event> none() {
    return Optional.empty();
  }

  private Optional<Event> reading() {
    Double value = numbers.remove("value");
    Optional<ReadingVerdict> verdict = Optional.ofNullable(VERDICTS.get(of("verdict")));
    if (value == null || verdict.isEmpty() || !has("reading", "typed", "unit", "verdict")) {
      return none();
    }
    Amount amount = new Amount(value, of("unit"), Amount.Bound.EXACT, OptionalDouble.empty());
    return Optional.of(new Event.ReadingEntered(of("reading"), of("typed"), amount, verdict));
  }

  /** Whether an event has these texts and nothing else. */
  private boolean has(String... keys) {
    int found = 0;
    for (String key : OF_EVERY_LINE) {
      found += texts.containsKey(key) ? 1 : 0;
    }
    for (String key : keys) {
      if (!texts.containsKey(key)) {
        return false;
      }
    }
    return numbers.isEmpty() && texts.size() == found + keys.length;
  }

  private String of(String key) {
    return texts.getOrDefault(key, "");
  }

  /** A time as the program writes it, to the minute or the second, with an offset in figures. */
  private static Optional<OffsetDateTime> time(String text) {
    int zone = text.length() - 6;
    boolean seconds = zone == 19;
    boolean plain =
        (zone == 16 || seconds)
            && matches(text, 0, seconds ? "0000-00-00T00:00:00" : "0000-00-00T00:00")
            && (matches(text, zone, "+00:00") || matches(text, zone, "-00:00"));
    if (!plain) {
      return Optional.empty();
    }
    int sign = text.charAt(zone) == '-' ? -1 : 1;
    try {
      return Optional.of(
          OffsetDateTime.of(
              100 * two(text, 0) + two(text, 2),
              two(text, 5),
              two(text, 8),
              two(text, 11),
              two(text, 14),
              seconds ? two(text, 17) : 0,
              0,
              ZoneOffset.ofHoursMinutes(sign * two(text, zone + 1), sign * two(text, zone + 4))));
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }

  private static boolean matches(String text, int from, String form) {
    for (int i = 0; i < form.length(); i++) {
      char c = text.charAt(from + i);
      char wanted = form.charAt(i);
      if (wanted == '0' ? c < '0' || c > '9' : c != wanted) {
        return false;
      }
    }
    return true;
  }

  private static int two(String text, int at) {
    return 10 * (text.charAt(at) - '0') + text.charAt(at + 1) - '0';
  }
}
