package faintwind.calibration.fit.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import faintwind.calibration.fit.squares.Linearised;
import faintwind.calibration.fit.squares.Optimum;
import org.junit.jupiter.api.Test;

class MinimumTest {
  private static Optimum with(double slope) {
    double[][] jacobian = {{1, 0}, {0, slope}, {0, 0}};
    return Optimum.at(new double[] {0, 0}, new Linearised(new double[] {0, 0, 1}, jacobian));
  }

  @Test
  void aLeastWhoseCovarianceIsANumberStands() {
    assertThat(Minimum.withCovariance(with(2)).unitCovariance()[1][1]).isEqualTo(0.25);
  }

  @Test
  void aLeastWhoseCovarianceIsNoNumberIsNone() {
    assertThatThrownBy(() -> Minimum.withCovariance(with(Double.NaN)))
        .isInstanceOf(Minimum.NoneFound.class);
    assertThatThrownBy(() -> Minimum.withCovariance(with(0))).isInstanceOf(Minimum.NoneFound.class);
  }
}
