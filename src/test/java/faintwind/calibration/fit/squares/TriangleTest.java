package faintwind.calibration.fit.squares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** By hand, with R = (2 1; 0 3) and y = (4, 6): RᵀR = (4 2; 2 10), its determinant 36. */
class TriangleTest {
  private static final Offset<Double> EXACT = within(1e-12);

  private static Triangle triangle() {
    return Triangle.of(
        Linearised.triangular(new double[] {4, 6, 9}, new double[][] {{2, 1}, {0, 3}, {0, 0}}));
  }

  @Test
  void solvesFromBelow() {
    assertThat(triangle().solve()).containsExactly(new double[] {1, 2}, EXACT);
  }

  @Test
  void solvesTheTransposedFromAbove() {
    double[] x = {2, 7};
    triangle().solveTransposed(x);
    assertThat(x).containsExactly(new double[] {1, 2}, EXACT);
  }

  @Test
  void gradientNormsAndSquares() {
    assertThat(triangle().gradient()).containsExactly(new double[] {8, 22}, EXACT);
    assertThat(triangle().columnNorms()).containsExactly(new double[] {2, Math.sqrt(10)}, EXACT);
    assertThat(triangle().square(new double[] {1, 1})).isCloseTo(18, EXACT);
    assertThat(triangle().square(new double[] {1, -1})).isCloseTo(10, EXACT);
  }

  @Test
  void inverseOfTheNormalMatrix() {
    double[][] inverse = triangle().inverseSquare();
    assertThat(inverse[0]).containsExactly(new double[] {10 / 36.0, -2 / 36.0}, EXACT);
    assertThat(inverse[1]).containsExactly(new double[] {-2 / 36.0, 4 / 36.0}, EXACT);
  }

  /** RᵀR + 2² I = (8 2; 2 14), determinant 108; times (8, 22): (68, 160)/108. */
  @Test
  void dampingAddsToTheDiagonal() {
    Triangle damped = triangle().damped(new double[] {1, 1}, 2);
    assertThat(damped.solve()).containsExactly(new double[] {68 / 108.0, 160 / 108.0}, EXACT);
    assertThat(damped.inverseSquare()[1])
        .containsExactly(new double[] {-2 / 108.0, 8 / 108.0}, EXACT);
    assertThat(triangle().damped(new double[] {1, 1}, 0).solve())
        .containsExactly(new double[] {1, 2}, EXACT);
  }

  /** (1 1; 1 -1; 1 0) has the normal matrix (3 0; 0 2); right side (6, 2), so that x = (2, 1). */
  @Test
  void anyProblemIsBroughtToATriangle() {
    Linearised any =
        new Linearised(new double[] {3, 1, 2}, new double[][] {{1, 1}, {1, -1}, {1, 0}});
    assertThat(any.isTriangular()).isFalse();
    assertThat(any.norm()).isCloseTo(Math.sqrt(14), EXACT);
    assertThat(Triangle.of(any).solve()).containsExactly(new double[] {2, 1}, EXACT);
    assertThat(Triangle.of(any).inverseSquare()[1]).containsExactly(new double[] {0, 0.5}, EXACT);
  }

  /** √(1/36). */
  @Test
  void volumeIsThatOfTheInverse() {
    assertThat(triangle().logVolume()).isCloseTo(-Math.log(6), EXACT);
  }
}
