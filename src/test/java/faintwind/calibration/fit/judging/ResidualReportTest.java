package faintwind.calibration.fit.judging;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Evidence.ResidualStatistics;
import faintwind.calibration.fit.solving.ResidualReport;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.run.Series;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cross-checked with the drawn curves: measured less fitted, row by row. */
class ResidualReportTest {
  private final ResidualStatistics report = ResidualReport.of(FIT);

  @Test
  void rootMeanSquareIsThatOfTheDrawnCurves() {
    double squares = 0;
    int rows = 0;
    List<FittedRecording> drawn = FittedRecording.of(FIT);
    for (int k = 0; k < drawn.size(); k++) {
      Series measured = drawn.get(k).measured();
      for (int i = 0; i < measured.size(); i++) {
        if (!FIT.problem().tracks().get(k).rows.leftOut[i]) {
          double off = measured.value(i) - drawn.get(k).fitted().value(i);
          squares += off * off;
          rows++;
        }
      }
    }
    assertThat(report.rows()).isEqualTo(rows);
    assertThat(report.rms()).isCloseTo(Math.sqrt(squares / rows), within(1e-9));
  }

  /** White noise and the slow part add in squares; neither is more than the whole. */
  @Test
  void partsAreLessThanTheWhole() {
    assertThat(report.slow()).isPositive().isLessThanOrEqualTo(report.rms());
    assertThat(report.noise()).isEqualTo(FIT.setting().noise());
  }

  /** Rows that hang together are worth fewer, but never less than one. */
  @Test
  void effectiveReadingsAreFewerThanRows() {
    assertThat(report.effectiveReadings()).isBetween(1.0, 0.999 * report.rows());
  }

  /** A loss of a ball of some minutes in still air, quicker in wind: 1/rate in between. */
  @Test
  void correlationTimeIsThatOfTheBall() {
    double still_s = Verdict.rise_s(FIT.formula(), 0, air()) / Math.log(9);
    double wind_s = Verdict.rise_s(FIT.formula(), 3, air()) / Math.log(9);
    assertThat(report.correlationTime_s()).isBetween(wind_s, still_s);
  }

  private static AirPoint air() {
    return AirPoint.of(FIT.setting().referenceAir());
  }
}
