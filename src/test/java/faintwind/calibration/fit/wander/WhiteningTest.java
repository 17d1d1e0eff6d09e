package faintwind.calibration.fit.wander;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.track.Track;
import java.util.Arrays;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/** A signal that a draught with a memory drives, drawn in steps of a twentieth of a second. */
class WhiteningTest {
  private static final int ROWS = 300;
  private static final double STEP_S = 4;
  private static final double PIECE_S = 0.05;
  private static final double MEMORY_S = 25;
  private static final double DRAUGHT_M_S = 0.007;
  private static final double RATE_1_S = 0.01;
  private static final double BY = 0.1;
  private static final double NOISE = 0.002;

  private final RandomGenerator random = new Well19937c(4);

  private static Track.Rows rows() {
    double[] time = new double[ROWS];
    int[] count = new int[ROWS];
    for (int i = 0; i < ROWS; i++) {
      time[i] = STEP_S * i;
      count[i] = 1;
    }
    Track.Rows rows = new Track.Rows(time, new double[ROWS], count, new int[ROWS]);
    Arrays.fill(rows.sd, NOISE);
    return rows;
  }

  private static Whitening.Course course() {
    Whitening.Course course = new Whitening.Course(ROWS);
    Arrays.fill(course.rate_1_s, RATE_1_S);
    Arrays.fill(course.byDraught_1_m, BY);
    Arrays.fill(course.moved, true);
    return course;
  }

  private static Whitening whitening(double memory_s) {
    double power = 2 * DRAUGHT_M_S * DRAUGHT_M_S * MEMORY_S;
    return Whitening.of(rows(), course(), new Wander(0, 0, power, 1, memory_s));
  }

  private double[] drawn() {
    double keep = Math.exp(-PIECE_S / MEMORY_S);
    double draught = DRAUGHT_M_S * random.nextGaussian();
    double signal = 0;
    double[] drawn = new double[ROWS];
    for (int i = 0; i < ROWS; i++) {
      drawn[i] = signal + NOISE * random.nextGaussian();
      for (double t = 0; t < STEP_S - 1e-9; t += PIECE_S) {
        signal += PIECE_S * (BY * draught - RATE_1_S * signal);
        draught = keep * draught + DRAUGHT_M_S * Math.sqrt(1 - keep * keep) * random.nextGaussian();
      }
    }
    return drawn;
  }

  @Test
  void surprisesAreIndependentAndOfUnitVariance() {
    Whitening whitening = whitening(MEMORY_S);
    double squares = 0;
    double neighbours = 0;
    int count = 0;
    for (int draw = 0; draw < 40; draw++) {
      double[] white = whitening.apply(drawn());
      for (int i = 1; i < ROWS; i++) {
        squares += white[i] * white[i];
        neighbours += white[i] * white[i - 1];
        count++;
      }
    }
    assertThat(squares / count).isCloseTo(1, within(0.04));
    assertThat(neighbours / count).isCloseTo(0, within(0.04));
  }

  @Test
  void theTrueMemoryIsLikelierThanAnother() {
    double right = 0;
    double none = 0;
    for (int draw = 0; draw < 5; draw++) {
      double[] drawn = drawn();
      right += whitening(MEMORY_S).deviance(drawn);
      none += whitening(MEMORY_S / 10).deviance(drawn);
    }
    assertThat(right).isLessThan(none - 10);
  }

  @Test
  void colourIsTheWayBack() {
    Whitening whitening = whitening(MEMORY_S);
    double[] drawn = drawn();
    assertThat(whitening.colour(whitening.apply(drawn))).containsExactly(drawn, within(1e-12));
  }
}
