package faintwind.calibration.fit.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.ClassKnown;
import faintwind.calibration.run.Uncertain;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Two unknowns believed to be 3 ± 2 and 1 ± 0.5 that move together by 0.6; a third by itself. */
class TiesTest {
  private static final double TOGETHER = 0.6;
  private static final double[] NO_TARGETS = new double[3];

  private final Unknowns unknowns = unknowns();

  private static Unknowns unknowns() {
    Unknowns unknowns = new Unknowns();
    unknowns.add(Unknown.linear("a", 0, 10));
    unknowns.add(Unknown.linear("b", 0, 10));
    unknowns.add(Unknown.linear("c", 7, 4));
    double more = 1 / (1 - TOGETHER * TOGETHER) - 1;
    unknowns.expect(
        new ClassKnown(
            Map.of("a", Uncertain.of(3, 2), "b", Uncertain.of(1, 0.5)),
            List.of(
                new ClassKnown.Tie("a", "a", more / 4),
                new ClassKnown.Tie("b", "b", more / 0.25),
                new ClassKnown.Tie("b", "a", -TOGETHER * (1 + more)))));
    return unknowns;
  }

  @Test
  void beliefIsTheCovarianceThatWasTold() {
    double[][] believed = unknowns.believed(3);
    assertThat(believed[0]).containsExactly(new double[] {4, 0.6, 0}, within(1e-12));
    assertThat(believed[1]).containsExactly(new double[] {0.6, 0.25, 0}, within(1e-12));
    assertThat(believed[2][2]).isCloseTo(16, within(1e-12));
  }

  @Test
  void gradientIsThatOfTheCost() {
    double[] x = {0.7, -0.4, 0.2};
    double[][] normal = new double[3][3];
    double[] right = new double[3];
    unknowns.addTies(x, NO_TARGETS, normal, right);
    double step = 1e-6;
    for (int i = 0; i < x.length; i++) {
      double[] up = x.clone();
      double[] down = x.clone();
      up[i] += step;
      down[i] -= step;
      double rise = unknowns.tied(up, NO_TARGETS) - unknowns.tied(down, NO_TARGETS);
      assertThat(right[i]).isCloseTo(rise / (4 * step), within(1e-6));
    }
  }

  /** The cost is a square, so that a step of any size shows half its second derivative. */
  @Test
  void curvatureIsThatOfTheCost() {
    double[] x = {0.7, -0.4, 0.2};
    double[][] normal = new double[3][3];
    unknowns.addTies(x, NO_TARGETS, normal, new double[3]);
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < x.length; j++) {
        double bend = moved(x, i, j) - moved(x, i) - moved(x, j) + moved(x);
        assertThat(normal[i][j]).isCloseTo(bend / 2, within(1e-9));
      }
    }
    assertThat(normal[0][1]).isNotZero();
  }

  private double moved(double[] x, int... by) {
    double[] moved = x.clone();
    for (int i : by) {
      moved[i] += 1;
    }
    return unknowns.tied(moved, NO_TARGETS);
  }

  @Test
  void drawsMoveTogether() {
    SplittableRandom random = new SplittableRandom(4);
    int draws = 20_000;
    double product = 0;
    double squares = 0;
    for (int i = 0; i < draws; i++) {
      double[] drawn = unknowns.drawn(random);
      product += drawn[0] * drawn[1] / draws;
      squares += drawn[1] * drawn[1] / draws;
    }
    assertThat(product).isCloseTo(TOGETHER, within(0.03));
    assertThat(squares).isCloseTo(1, within(0.03));
  }
}
