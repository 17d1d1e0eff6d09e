package faintwind.calibration.fit.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.response.AirPoint;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import faintwind.physics.AirState;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** By hand: a still run of 200 s and a spin from 300 to 400 s of a file with a row a second. */
class FileRowsTest {
  private static final Run STILL = MadeRuns.still("still", MadeRuns.series(0, 1, 199, t -> t));
  private static final Run SPIN =
      MadeRuns.spin("spin", MadeRuns.series(200, 1, 600, t -> t), MadeRuns.arm(300, 400, 20, 95));
  private static final FileRows FILE = FileRows.of("a.csv", List.of(SPIN, STILL));

  @Test
  void rowsOfAllRunsComeInOrderOfTime() {
    assertThat(FILE.runs()).extracting(Run::name).containsExactly("still", "spin");
    assertThat(FILE.signal().size()).isEqualTo(601);
    assertThat(FILE.signal().value(450)).isEqualTo(450);
    assertThat(FILE.step_s()).isEqualTo(1);
    assertThat(FILE.channel(r -> r.recording().supply_V())).isEmpty();
  }

  @Test
  void aTimeBelongsToTheRunThatBeganBefore() {
    assertThat(FILE.runAt(199.5)).isZero();
    assertThat(FILE.runAt(200)).isEqualTo(1);
    assertThat(FILE.runAt(-5)).isZero();
  }

  @Test
  void theUsualStepIsTheMedian() {
    double[] times = {0, 2, 4, 100};
    assertThat(FileRows.medianStep(Series.of(times, times))).isEqualTo(2);
    assertThat(FileRows.medianStep(Series.of(new double[] {3}, new double[] {1}))).isEqualTo(1);
    assertThat(FileRows.medianStep(Series.of(new double[] {3, 8}, new double[] {1, 1})))
        .isEqualTo(5);
  }

  /** The first row, the start and the stop; from 6 s before to 20 s after each a row by itself. */
  @Test
  void rowsAreAveragedFinelyNearChangesOnly() {
    assertThat(RowAverages.changes(FILE)).containsExactly(0, 300, 400);
    Track.Rows rows = RowAverages.of(FILE, List.of());
    assertThat(Arrays.stream(rows.count).sum()).isEqualTo(601);
    for (int i = 0; i < rows.size(); i++) {
      double t = rows.time_s[i];
      assertThat(rows.signal[i]).isCloseTo(t, within(1e-9));
      assertThat(rows.run[i]).isEqualTo(t < 200 ? 0 : 1);
      if (t < 18 || (t > 295 && t < 318) || (t > 395 && t < 418)) {
        assertThat(rows.count[i]).isEqualTo(1);
      } else if ((t > 322 && t < 357) || (t > 422 && t < 457)) {
        assertThat(rows.count[i]).isEqualTo(3);
      } else if ((t > 70 && t < 285) || (t > 470 && t < 590)) {
        assertThat(rows.count[i]).isEqualTo(8);
      }
    }
  }

  @Test
  void aRowLeftOutIsInNoAverage() {
    Track.Rows rows = RowAverages.of(FILE, List.of(500, 501));
    assertThat(Arrays.stream(rows.count).sum()).isEqualTo(599);
  }

  @Test
  void anAverageDoesNotReachAcrossAHole() {
    Run holed =
        MadeRuns.still(
            "holed",
            Series.of(
                new double[] {0, 1, 2, 200, 201, 202, 230, 231},
                new double[] {1, 1, 1, 5, 5, 5, 9, 9}));
    Track.Rows rows = RowAverages.of(FileRows.of("b.csv", List.of(holed)), List.of());
    assertThat(rows.signal).containsExactly(1, 1, 1, 5, 9);
  }

  @Test
  void theGridHasEveryRowAndNoStepOfMoreThanEightSeconds() {
    Track.Rows rows = RowAverages.of(FILE, List.of());
    SupplyAlong supply = new SupplyAlong(Optional.empty(), 5);
    Track.Grid grid = GridMaker.of(FILE, rows, AirAlong.of(FILE, AirState.ROOM), supply);
    int seen = 0;
    for (int k = 0; k < grid.time_s.length; k++) {
      if (k > 0) {
        assertThat(grid.time_s[k] - grid.time_s[k - 1]).isBetween(1e-9, 8.0);
      }
      if (grid.row[k] >= 0) {
        assertThat(rows.time_s[grid.row[k]]).isEqualTo(grid.time_s[k]);
        seen++;
      }
    }
    assertThat(seen).isEqualTo(rows.size());
    assertThat(grid.time_s[0]).isZero();
    assertThat(grid.time_s).contains(291, 309, 391, 409);
    assertThat(grid.power[3]).isEqualTo(1);
    assertThat(grid.air_K[3]).isCloseTo(AirState.ROOM.temperature_K(), within(1e-9));
  }

  /** 292 K noted of the still run, at its middle of 99.5 s; 296 K of the spin, at 400 s. */
  @Test
  void airOfTheTableGoesFromMiddleToMiddle() {
    FileRows file = FileRows.of("a.csv", List.of(MadeRuns.in(STILL, 292), MadeRuns.in(SPIN, 296)));
    AirAlong air = AirAlong.of(file, AirState.ROOM);
    assertThat(air.at(50).air_K()).isEqualTo(292);
    assertThat(air.at(249.75).air_K()).isCloseTo(294, within(1e-9));
    assertThat(air.at(500).air_K()).isEqualTo(296);
    assertThat(air.mean_K(99.5, 400)).isCloseTo(294, within(1e-9));
  }

  @Test
  void withoutAnyAirTheUsualOneHolds() {
    AirState other = new AirState(288, 95_000, 0.3);
    AirPoint air = AirAlong.of(FILE, other).at(100);
    assertThat(air.air_K()).isEqualTo(288);
    AirPoint same = AirPoint.of(other);
    assertThat(air.viscosity(300)).isCloseTo(same.viscosity(300), within(1e-12));
  }
}
