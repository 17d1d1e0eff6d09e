package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Days as a person types them, in Paris at half past nine on 29 November 2026. */
class TypedDayTest {
  private static final ZonedDateTime NOW =
      ZonedDateTime.parse("2026-11-29T09:30:00+01:00[Europe/Paris]");

  @Test
  void dayCountsFromItsNoonInTheZoneOfThePlace() {
    assertThat(read("2026-07-14")).isEqualTo("2026-07-14T12:00+02:00");
    assertThat(read("2026-11-28")).isEqualTo("2026-11-28T12:00+01:00");
  }

  @Test
  void todayIsNowWhereItsNoonIsStillToCome() {
    assertThat(read("2026-11-29")).isEqualTo("2026-11-29T09:30+01:00");
  }

  @Test
  void timeAndOffsetAreTakenAsTyped() {
    assertThat(read(" 2026-11-28 14:30 ")).isEqualTo("2026-11-28T14:30+01:00");
    assertThat(read("2026-11-28T14:30")).isEqualTo("2026-11-28T14:30+01:00");
    assertThat(read("2026-11-28T14:30-05:00")).isEqualTo("2026-11-28T14:30-05:00");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-02-30",
        "2026-02-30 10:00",
        "2025-02-29 10:00",
        "2026-11-28 25:00",
        "28.11.2026",
        ""
      })
  void whatNoCalendarOrClockShowsIsRefused(String typed) {
    assertThat(code(typed)).isEqualTo("measured.no-day");
  }

  @Test
  void whatIsStillToComeIsRefused() {
    assertThat(code("2026-11-29 09:31")).isEqualTo("measured.later");
    assertThat(code("2026-11-30")).isEqualTo("measured.later");
  }

  private static String read(String typed) {
    return TypedDay.read(typed, NOW).fold((at, notes) -> at.toString(), Object::toString);
  }

  private static String code(String typed) {
    return TypedDay.read(typed, NOW).problems().get(0).id();
  }
}
