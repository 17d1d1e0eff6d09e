package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A time read directly is the one that the library reads, and what is none is none. */
class EntryTimeTest {
  private static final long SEED = 20261130;
  private static final String LETTERS = "0123456789-+:.TZ tz,";

  private interface Parser {
    OffsetDateTime parse(String text);
  }

  private static String said(Parser parser, String text) {
    try {
      return parser.parse(text).toString();
    } catch (DateTimeParseException e) {
      return String.valueOf(e.getMessage());
    }
  }

  private static void same(String text) {
    assertThat(said(EntryTime::parse, text)).as(text).isEqualTo(said(OffsetDateTime::parse, text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-09-03T13:24+02:00",
        "2026-09-03T13:24:05+02:00",
        "2026-09-03T13:24:05-09:30",
        "2026-09-03T13:24:05.25+02:00",
        "2026-09-03T13:24Z",
        "2026-09-03T13:24:05Z",
        "2024-02-29T00:00+00:00",
        "2026-02-29T00:00+00:00",
        "2026-02-30T00:00+00:00",
        "2026-13-01T00:00+00:00",
        "2026-00-01T00:00+00:00",
        "0000-01-01T00:00+00:00",
        "2026-01-01T24:00+00:00",
        "2026-01-01T23:59:60+00:00",
        "2026-01-01T23:60+00:00",
        "2026-01-01T12:00+17:59",
        "2026-01-01T12:00+18:00",
        "2026-01-01T12:00-18:00",
        "2026-01-01T12:00+18:01",
        "2026-01-01T12:00+19:00",
        "2026-01-01T12:00+02:60",
        "2026-01-01T12:00-00:00",
        "2026-01-01T12:00+02:00:30",
        "2026-01-01T12:00+02",
        "2026-01-01T12:00",
        "2026-01-01t12:00+02:00",
        "+2026-01-01T12:00+02:00",
        "12026-01-01T12:00+02:00",
        "٢٠٢٦-01-01T12:00+02:00",
        " 2026-01-01T12:00+02:00",
        "",
      })
  void isWhatTheLibraryReads(String text) {
    same(text);
  }

  @Test
  void staysSoWithAnyLetterAltered() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 100_000; i++) {
      String form = random.nextBoolean() ? "2026-09-13T13:24+02:00" : "2026-12-31T23:24:05-01:30";
      StringBuilder text = new StringBuilder(form);
      for (int k = random.nextInt(1, 4); k > 0; k--) {
        char letter = LETTERS.charAt(random.nextInt(LETTERS.length()));
        text.setCharAt(random.nextInt(text.length()), letter);
      }
      same(text.toString());
    }
  }
}
