package faintwind.calibration.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.live.RecordClock.Arrival;
import faintwind.calibration.live.RecordClock.Placed;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RecordClockTest {
  private static final Instant BEGIN = Instant.parse("2026-11-25T18:00:00Z");

  private final RecordClock clock = new RecordClock(Arrival.LIVE);

  private Placed at(double source_s, double arrival_s) {
    return place(OptionalDouble.of(source_s), arrival_s).orElseThrow();
  }

  private Optional<Placed> place(OptionalDouble source_s, double arrival_s) {
    return clock.place(source_s, BEGIN.plusNanos(Math.round(arrival_s * 1e9)));
  }

  private void steady(int rows) {
    for (int i = 0; i < rows; i++) {
      assertThat(at(100 + i, i)).isEqualTo(new Placed(100 + i, Optional.empty()));
    }
  }

  @Test
  void aSteadyLoggerKeepsItsOwnTime() {
    steady(100);
  }

  @Test
  void aRestartedLoggerGoesOnByTheTimeOfArrival() {
    steady(10);
    assertThat(at(0.5, 29)).isEqualTo(new Placed(129, Optional.of(LiveGap.RESTARTED)));
    assertThat(at(1.5, 30)).isEqualTo(new Placed(130, Optional.empty()));
  }

  @Test
  void aJumpingClockGoesOnByTheTimeOfArrival() {
    steady(10);
    assertThat(at(3709, 10)).isEqualTo(new Placed(110, Optional.of(LiveGap.JUMPED)));
    assertThat(at(3710, 11)).isEqualTo(new Placed(111, Optional.empty()));
  }

  @Test
  void silenceOfTheLoggerIsMarkedAndKeepsItsLength() {
    steady(10);
    assertThat(at(149, 49)).isEqualTo(new Placed(149, Optional.of(LiveGap.SILENT)));
    assertThat(at(150, 50)).isEqualTo(new Placed(150, Optional.empty()));
  }

  @Test
  void rowsThatTheNetworkHeldBackAreNoJump() {
    steady(10);
    for (int i = 10; i < 40; i++) {
      assertThat(at(100 + i, 40).gap()).isEmpty();
    }
    assertThat(at(140, 40.1).gap()).isEmpty();
  }

  @Test
  void whatWasStoredMayArriveAllAtOnceWithItsGaps() {
    RecordClock stored = new RecordClock(Arrival.STORED);
    double[] times = {0, 1, 2, 3, 3600, 3601};
    for (double time_s : times) {
      Placed placed = stored.place(OptionalDouble.of(time_s), BEGIN).orElseThrow();
      assertThat(placed.time_s()).isEqualTo(time_s);
      assertThat(placed.gap())
          .isEqualTo(time_s == 3600 ? Optional.of(LiveGap.SILENT) : Optional.empty());
    }
  }

  @Test
  void aLoggerThatRunsFastByADayInAYearIsNoJump() {
    for (int i = 0; i < 20_000; i++) {
      assertThat(at(i * 1.003, i).gap()).isEmpty();
    }
  }

  @Test
  void twoReadingsOfOneTimeCannotBothStand() {
    steady(3);
    assertThat(place(OptionalDouble.of(102), 2.5)).isEmpty();
    assertThat(at(103, 3)).isEqualTo(new Placed(103, Optional.empty()));
  }

  @Test
  void withoutAClockOfItsOwnArrivalCounts() {
    assertThat(place(OptionalDouble.empty(), 7).orElseThrow().time_s()).isZero();
    assertThat(place(OptionalDouble.empty(), 8.25).orElseThrow().time_s()).isEqualTo(1.25);
    assertThat(place(OptionalDouble.empty(), 9.5).orElseThrow().time_s()).isEqualTo(2.5);
    Placed late = place(OptionalDouble.empty(), 60).orElseThrow();
    assertThat(late.time_s()).isCloseTo(53, within(1e-9));
    assertThat(late.gap()).contains(LiveGap.SILENT);
  }

  @Test
  void theRecordRisesWhateverTheLoggersClockDoes() {
    java.util.Random random = new java.util.Random(20_261_125);
    double last_s = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 10_000; i++) {
      double source_s = random.nextInt(20) == 0 ? 1e6 * random.nextGaussian() : i;
      Optional<Placed> placed = place(OptionalDouble.of(source_s), i * 0.9);
      if (placed.isPresent()) {
        assertThat(placed.get().time_s()).isGreaterThan(last_s);
        last_s = placed.get().time_s();
      }
    }
  }

  @Test
  void aClockSetRightAfterTheFirstReadingIsABreak() {
    at(5, 0);
    assertThat(at(90_006, 1)).isEqualTo(new Placed(6, Optional.of(LiveGap.JUMPED)));
    assertThat(at(90_007, 2)).isEqualTo(new Placed(7, Optional.empty()));
    RecordClock stored = new RecordClock(Arrival.STORED);
    stored.place(OptionalDouble.of(5), BEGIN);
    assertThat(stored.place(OptionalDouble.of(90_006), BEGIN))
        .contains(new Placed(90_006, Optional.of(LiveGap.SILENT)));
  }
}
