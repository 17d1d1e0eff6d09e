package faintwind.calibration.fit.wander;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A step is held against its differential equations, integrated in a hundred thousand pieces. */
class DraughtWalkTest {
  private static final int PIECES = 100_000;
  private static final double DRAUGHT_M2_S = 2e-3;
  private static final double BY = 0.05;
  private static final double POWER = 3e-6;

  @ParameterizedTest
  @CsvSource({"20, 0.008, 8", "5, 0.01, 3", "100, 0.01, 30", "3, 0.02, 60", "200, 0.002, 1"})
  void stepIsThatOfItsEquations(double memory_s, double rate, double h) {
    DraughtWalk walk = new DraughtWalk(new Wander(0, 0, DRAUGHT_M2_S, 1, memory_s));
    double keep = Math.exp(-rate * h);
    double white = POWER * (1 - keep * keep) / (2 * rate);
    walk.step(h, rate, keep, BY, white);
    walk.seen(2 * walk.signal);
    double usual = DRAUGHT_M2_S / (2 * memory_s);
    double[] state = piecewise(new double[] {0, 0, usual}, rate, 1 / memory_s, h);
    double learned = state[1] * state[1] / (2 * state[0]);
    state = new double[] {state[0] / 2, state[1] / 2, state[2] - learned};
    assertThat(walk.signal).isCloseTo(state[0], within(1e-4 * state[0]));
    assertThat(walk.both).isCloseTo(state[1], within(1e-4 * state[1]));
    walk.step(h, rate, keep, BY, white);
    state = piecewise(state, rate, 1 / memory_s, h);
    assertThat(walk.signal).isCloseTo(state[0], within(1e-4 * state[0]));
    assertThat(walk.both).isCloseTo(state[1], within(1e-4 * state[1]));
  }

  private static double[] piecewise(double[] from, double rate, double forgets, double h) {
    double dt = h / PIECES;
    double signal = from[0];
    double both = from[1];
    double draught = from[2];
    for (int i = 0; i < PIECES; i++) {
      double dSignal = -2 * rate * signal + 2 * BY * both + POWER;
      double dBoth = -(rate + forgets) * both + BY * draught;
      double dDraught = -2 * forgets * draught + DRAUGHT_M2_S * forgets * forgets;
      signal += dt * dSignal;
      both += dt * dBoth;
      draught += dt * dDraught;
    }
    return new double[] {signal, both, draught};
  }

  @ParameterizedTest
  @CsvSource({"20, 0.008, 8"})
  void anotherDraughtKnowsNothingOfTheOneBefore(double memory_s, double rate, double h) {
    DraughtWalk walk = new DraughtWalk(new Wander(0, 0, DRAUGHT_M2_S, 1, memory_s));
    double keep = Math.exp(-rate * h);
    walk.step(h, rate, keep, BY, 0);
    walk.seen(1.01 * walk.signal);
    walk.meetAnother();
    walk.step(h, rate, keep, BY, 0);
    assertThat(walk.stays).isZero();
    assertThat(walk.pushes).isZero();
    walk.step(h, rate, keep, BY, 0);
    assertThat(walk.stays).isCloseTo(Math.exp(-h / memory_s), within(1e-12));
  }
}
