package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.measure.OtherDates;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class DateTextTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-01T17:53:05+01:00");

  @Test
  void aDayIsSaidInOneForm() {
    assertThat(DateText.day(WORDS, AT)).isEqualTo("1 November 2026");
    assertThat(DateText.minute(WORDS, AT)).isEqualTo("1 November 2026, 17:53");
    assertThat(DateText.second(WORDS, AT)).isEqualTo("1 November 2026, 17:53:05");
    assertThat(DateText.zoned(WORDS, AT)).isEqualTo("1 November 2026, 17:53 UTC+01");
  }

  @Test
  void onItsOwnDayATimeNeedsNoDay() {
    assertThat(DateText.near(WORDS, AT, AT.plusHours(2))).isEqualTo("17:53");
    assertThat(DateText.near(WORDS, AT, AT.plusHours(20))).isEqualTo("1 November 2026, 17:53");
  }

  @Test
  void monthsFollowTheLanguageOfTheWordsAndNotTheNumbers() {
    assertThat(DateText.day(Messages.of(Locale.GERMANY), AT)).isEqualTo("1 November 2026");
    assertThat(DateText.day(Messages.of(Locale.FRANCE), AT)).isEqualTo("1 November 2026");
  }

  @Test
  void aTimeAmongTheDetailsOfAProblemIsSaidTheSameWay() {
    Problem problem =
        Problem.warning("due.now.repair", Where.NOWHERE, "a.json", "2026-11-01T17:53:05+01:00");
    assertThat(WORDS.sentence(problem)).contains("since 1 November 2026, 17:53 UTC+01:");
  }

  @Test
  void whatIsWrittenIsReadAgainAndADayThatIsNoneIsNot() {
    LocalDateTime at = LocalDateTime.parse("2026-12-01T09:50");
    for (String typed :
        List.of(
            DateText.minute(WORDS, at),
            "1 december 2026, 09:50",
            " 2026-12-01 09:50 ",
            "2026-12-01T09:50")) {
      assertThat(DateText.read(WORDS, typed)).as(typed).hasValue(at);
    }
    for (String typed : List.of("", "monday", "31 November 2026, 09:50", "2026-02-29 09:50")) {
      assertThat(DateText.read(WORDS, typed)).as(typed).isEmpty();
    }
  }

  @Test
  void otherFormsAreFound() {
    assertThat(
            List.of(
                "kept 2026-11-01 17:53",
                "Sunday 1 November 2026",
                "1 Nov 2026 17:53",
                "1 Nov 17:53",
                "November 1, 2026",
                "01.11.2026"))
        .allMatch(OtherDates::isOther);
    assertThat(List.of("1 November 2026, 17:53", "2026-11-01.json", "10 May 2026, 08:00", "3.12"))
        .noneMatch(OtherDates::isOther);
  }
}
