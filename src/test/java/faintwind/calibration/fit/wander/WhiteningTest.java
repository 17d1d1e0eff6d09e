package faintwind.calibration.fit.wander;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.track.Track;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** A signal whose rows hang together is made into independent ones. */
class WhiteningTest {
  /**
   * Cross-checked with the normal density of all rows at once: a process that begins at 0 and is
   * driven by white noise of density q has the covariance q/2λ (exp(−λ|t − s|) − exp(−λ(t + s))).
   */
  @Nested
  class OfFewRowsAtOnce {
    private static final double[] TIME_S = {0, 10, 15, 40, 45, 120};
    private static final double[] RESIDUALS = {0.1, -0.3, 0.2, 0.5, 0.4, -0.2};
    private static final double RATE_1_S = 0.02;
    private static final double LOSS_SIGNAL = 0.08;
    private static final Wander WANDER = new Wander(0.5, 0.3, 0, 1.5, 20);

    private static Track.Rows rows() {
      int n = TIME_S.length;
      Track.Rows rows = new Track.Rows(TIME_S, new double[n], new int[n], new int[n]);
      for (int i = 0; i < n; i++) {
        rows.sd[i] = 0.1 + 0.02 * i;
      }
      return rows;
    }

    private static Whitening.Course course(boolean moved) {
      Whitening.Course course = new Whitening.Course(TIME_S.length);
      for (int i = 0; i < TIME_S.length; i++) {
        course.rate_1_s[i] = RATE_1_S;
        course.lossSignal_1_s[i] = LOSS_SIGNAL;
        course.bySpeed_1_m[i] = 0.06;
        course.speed_m_s[i] = 1.2;
        course.moved[i] = moved;
      }
      return course;
    }

    /**
     * At rest (loss · Δ)² times its strength; in wind by the speed and its share. No draught: one
     * that lasts is {@link OfADraughtThatLasts}.
     */
    private static double density(boolean moved) {
      return moved
          ? 0.06 * 0.06 * (1.2 * 1.2 * WANDER.turning_s() + WANDER.draught_m2_s())
          : LOSS_SIGNAL * LOSS_SIGNAL * WANDER.rest_s();
    }

    private static double dense(Track.Rows rows, double q) {
      int n = TIME_S.length;
      int[] kept = IntStream.range(0, n).filter(i -> !rows.leftOut[i]).toArray();
      RealMatrix covariance = new Array2DRowRealMatrix(kept.length, kept.length);
      double[] residuals = new double[kept.length];
      for (int a = 0; a < kept.length; a++) {
        int i = kept[a];
        residuals[a] = RESIDUALS[i];
        for (int b = 0; b < kept.length; b++) {
          double apart = Math.abs(TIME_S[i] - TIME_S[kept[b]]);
          double both = TIME_S[i] + TIME_S[kept[b]];
          double white = a == b ? Math.pow(rows.sd[i] * WANDER.white(), 2) : 0;
          covariance.setEntry(
              a,
              b,
              q / (2 * RATE_1_S) * (Math.exp(-RATE_1_S * apart) - Math.exp(-RATE_1_S * both))
                  + white);
        }
      }
      LUDecomposition lu = new LUDecomposition(covariance);
      ArrayRealVector e = new ArrayRealVector(residuals);
      return Math.log(lu.getDeterminant()) + e.dotProduct(lu.getSolver().solve(e));
    }

    @Test
    void devianceIsThatOfAllRowsAtOnce() {
      for (boolean moved : new boolean[] {false, true}) {
        double expected = dense(rows(), density(moved));
        assertThat(Whitening.of(rows(), course(moved), WANDER).deviance(RESIDUALS))
            .isCloseTo(expected, within(1e-9));
        assertThat(new WanderDeviance(rows(), course(moved), RESIDUALS).of(WANDER))
            .isCloseTo(expected, within(1e-9));
      }
    }

    @Test
    void aRowLeftOutIsNotThere() {
      Track.Rows rows = rows();
      rows.leftOut[2] = true;
      double expected = dense(rows, density(false));
      Whitening whitening = Whitening.of(rows, course(false), WANDER);
      assertThat(whitening.deviance(RESIDUALS)).isCloseTo(expected, within(1e-9));
      assertThat(new WanderDeviance(rows, course(false), RESIDUALS).of(WANDER))
          .isCloseTo(expected, within(1e-9));
      assertThat(whitening.counts(2)).isFalse();
      assertThat(whitening.counts(3)).isTrue();
      assertThat(whitening.apply(RESIDUALS)[2]).isZero();
      assertThat(whitening.surprises(RESIDUALS)[2]).isNotZero();
    }

    @Test
    void wildPartsWanderMore() {
      Track.Rows rows = rows();
      Arrays.fill(rows.wildness, 5);
      assertThat(Whitening.of(rows, course(false), WANDER).deviance(RESIDUALS))
          .isCloseTo(dense(rows, 5 * density(false)), within(1e-9));
      assertThat(new WanderDeviance(rows, course(false), RESIDUALS).of(WANDER))
          .isCloseTo(dense(rows, 5 * density(false)), within(1e-9));
    }

    @Test
    void colouringIsTheWayBack() {
      Whitening whitening = Whitening.of(rows(), course(true), WANDER);
      assertThat(whitening.colour(whitening.apply(RESIDUALS)))
          .containsExactly(RESIDUALS, within(1e-12));
    }

    /** The first row has no process before it: its white noise alone, 0.1 · 1.5. */
    @Test
    void whiteRowsAreOverTheirStandardDeviation() {
      Whitening whitening = Whitening.of(rows(), course(false), WANDER);
      assertThat(whitening.apply(RESIDUALS)[0]).isCloseTo(0.1 / 0.15, within(1e-12));
      assertThat(whitening.scale(0)).isCloseTo(1 / 0.15, within(1e-12));
      assertThat(whitening.gain(0)).isZero();
      assertThat(whitening.keep(1)).isCloseTo(Math.exp(-0.2), within(1e-12));
      double variance = density(false) / (2 * RATE_1_S) * (1 - Math.exp(-0.4));
      assertThat(whitening.gain(1)).isCloseTo(variance / (variance + 0.18 * 0.18), within(1e-12));
    }
  }

  /** A signal that a draught with a memory drives, drawn in steps of a twentieth of a second. */
  @Nested
  class OfADraughtThatLasts {
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
          draught =
              keep * draught + DRAUGHT_M_S * Math.sqrt(1 - keep * keep) * random.nextGaussian();
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
}
