package faintwind.calibration.fit.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.Series;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** By hand: a triangle from 0 at 0 s to 10 at 10 s and back to 0 at 20 s. */
class LineMeanTest {
  private static final Series TRIANGLE =
      Series.of(new double[] {0, 10, 20}, new double[] {0, 10, 0});

  private static double mean(double from_s, double to_s) {
    return LineMean.of(TRIANGLE, from_s, to_s, 0, 1);
  }

  @Test
  void meanIsTheAreaOverTheTime() {
    assertThat(mean(0, 20)).isCloseTo(5, within(1e-9));
    assertThat(mean(5, 15)).isCloseTo(7.5, within(1e-9));
    assertThat(mean(2, 4)).isCloseTo(3, within(1e-9));
    assertThat(mean(15, 25)).isCloseTo(1.25, within(1e-9));
    assertThat(mean(4, 4)).isCloseTo(4, within(1e-9));
  }

  /** Of each line both ends count alike: (0 + 1)/2 of (value/10)². */
  @Test
  void squaresAreOfTheScaledValue() {
    assertThat(LineMean.of(TRIANGLE, 0, 10, 1, 10)).isCloseTo(0.5, within(1e-9));
    assertThat(LineMean.of(TRIANGLE, 0, 10, 0, 10)).isCloseTo(0.5, within(1e-9));
    assertThat(LineMean.of(TRIANGLE, 5, 5, 1, 10)).isCloseTo(0.25, within(1e-9));
  }

  /** 6 V for 5 V are 1.44 of the heat. */
  @Test
  void heatGoesWithTheSquareOfTheSupply() {
    Series six_V = Series.of(new double[] {0, 100}, new double[] {6, 6});
    assertThat(new SupplyAlong(Optional.of(six_V), 5).meanSquare(10, 20))
        .isCloseTo(1.44, within(1e-12));
    assertThat(new SupplyAlong(Optional.empty(), 5).meanSquare(10, 20)).isEqualTo(1);
  }

  @Test
  void supplyIsOnFromHalfOfItsNominal() {
    Series switched = Series.of(new double[] {0, 10, 20, 30}, new double[] {0, 2.5, 2.6, 5});
    assertThat(new SupplyAlong(Optional.of(switched), 5).firstOn_s(-7)).isEqualTo(20);
    assertThat(new SupplyAlong(Optional.empty(), 5).firstOn_s(-7)).isEqualTo(-7);
  }
}
