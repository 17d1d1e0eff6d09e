package faintwind.calibration.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class WallClockTest {
  private static final double HOUR_S = 3600;

  private static WallClock berlin(String zero) {
    return new WallClock(LocalDateTime.parse(zero), ZoneId.of("Europe/Berlin"), true, "");
  }

  private static String read(WallClock clock, String text, double last_s) {
    WallClock.Reading read = clock.read(text, 0, last_s);
    return read.outcome() + " " + read.time_s();
  }

  @Test
  void timeOfDayIsTheOneInsideTheRecordingAlsoPastMidnight() {
    WallClock clock = berlin("2026-11-27T18:30:00");
    assertThat(read(clock, "19:30", 8 * HOUR_S)).isEqualTo("FOUND 3600.0");
    assertThat(read(clock, "01:00:30", 8 * HOUR_S)).isEqualTo("FOUND 23430.0");
    assertThat(read(clock, "28.11.2026 01:00", 8 * HOUR_S)).isEqualTo("FOUND 23400.0");
    assertThat(read(clock, "2026-11-28T00:00:00Z", 8 * HOUR_S)).isEqualTo("FOUND 23400.0");
  }

  @Test
  void timeOutsideTheRecordingIsGivenSoThatItCanBeToldAsOutside() {
    assertThat(read(berlin("2026-11-27T18:30:00"), "18:00", HOUR_S)).isEqualTo("FOUND -1800.0");
  }

  @Test
  void hourThatComesTwiceInAutumnNeedsItsOffset() {
    WallClock clock = berlin("2026-10-25T00:00:00");
    assertThat(read(clock, "02:30", 6 * HOUR_S)).isEqualTo("TWICE 0.0");
    assertThat(read(clock, "2026-10-25T02:30:00+01:00", 6 * HOUR_S)).isEqualTo("FOUND 12600.0");
    assertThat(read(clock, "03:30", 6 * HOUR_S)).isEqualTo("FOUND 16200.0");
  }

  @Test
  void hourThatNeverComesInSpringIsNoTime() {
    WallClock clock = berlin("2026-03-29T00:00:00");
    assertThat(read(clock, "29.03.2026 02:30", 6 * HOUR_S)).isEqualTo("NEVER 0.0");
  }

  @Test
  void dateIsOfNoUseWhereTheRecordingHasNone() {
    WallClock clock =
        new WallClock(LocalDateTime.parse("1970-01-01T23:00:00"), ZoneOffset.UTC, false, "");
    assertThat(read(clock, "00:30", 3 * HOUR_S)).isEqualTo("FOUND 5400.0");
    assertThat(read(clock, "2026-11-28 00:30", 3 * HOUR_S)).isEqualTo("NO_DATE 0.0");
    assertThat(read(clock, "half past", 3 * HOUR_S)).isEqualTo("NO_TIME 0.0");
  }

  @Test
  void clockOfAStartGoesByItsOffset() {
    WallClock clock = WallClock.of(OffsetDateTime.parse("2026-11-27T18:30:00+01:00"));
    assertThat(read(clock, "18:31", HOUR_S)).isEqualTo("FOUND 60.0");
  }

  @Test
  void dayThatNoCalendarHasIsNoTimeAndNotTheLastOfItsMonth() {
    WallClock clock = berlin("2026-02-28T00:00:00");
    assertThat(read(clock, "2026-02-30 10:00", 24 * HOUR_S)).isEqualTo("NO_TIME 0.0");
    assertThat(read(clock, "30.02.2026 10:00", 24 * HOUR_S)).isEqualTo("NO_TIME 0.0");
    assertThat(read(clock, "28.02.2026 10:00", 24 * HOUR_S)).isEqualTo("FOUND 36000.0");
  }
}
