package faintwind.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.squares.Linearised;
import faintwind.calibration.fit.squares.Optimiser;
import faintwind.calibration.fit.squares.Optimum;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The one optimiser against certified and published fits")
class LeastSquaresPublishedTest {

  /** y as a function of b and x. */
  interface Model {
    double at(double[] b, double x);
  }

  private static final Map<String, Model> MODELS =
      Map.ofEntries(
          Map.entry("Misra1a", (b, x) -> b[0] * (1 - Math.exp(-b[1] * x))),
          Map.entry("Misra1b", (b, x) -> b[0] * (1 - Math.pow(1 + b[1] * x / 2, -2))),
          Map.entry("Misra1c", (b, x) -> b[0] * (1 - Math.pow(1 + 2 * b[1] * x, -0.5))),
          Map.entry("Misra1d", (b, x) -> b[0] * b[1] * x / (1 + b[1] * x)),
          Map.entry("Chwirut1", LeastSquaresPublishedTest::chwirut),
          Map.entry("Chwirut2", LeastSquaresPublishedTest::chwirut),
          Map.entry("DanWood", (b, x) -> b[0] * Math.pow(x, b[1])),
          Map.entry("BoxBOD", (b, x) -> b[0] * (1 - Math.exp(-b[1] * x))),
          Map.entry("Rat42", (b, x) -> b[0] / (1 + Math.exp(b[1] - b[2] * x))),
          Map.entry("Rat43", (b, x) -> b[0] / Math.pow(1 + Math.exp(b[1] - b[2] * x), 1 / b[3])),
          Map.entry("MGH09", (b, x) -> b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3])),
          Map.entry("MGH10", (b, x) -> b[0] * Math.exp(b[1] / (x + b[2]))),
          Map.entry("MGH17", (b, x) -> b[0] + decay(b[1], b[3], x) + decay(b[2], b[4], x)),
          Map.entry("Bennett5", (b, x) -> b[0] * Math.pow(b[1] + x, -1 / b[2])),
          Map.entry("Roszman1", (b, x) -> b[0] - b[1] * x - Math.atan(b[2] / (x - b[3])) / Math.PI),
          Map.entry(
              "Eckerle4", (b, x) -> b[0] / b[1] * Math.exp(-0.5 * Math.pow((x - b[2]) / b[1], 2))),
          Map.entry("Gauss1", LeastSquaresPublishedTest::twoPeaks),
          Map.entry("Gauss2", LeastSquaresPublishedTest::twoPeaks),
          Map.entry("Gauss3", LeastSquaresPublishedTest::twoPeaks),
          Map.entry("Lanczos2", LeastSquaresPublishedTest::threeDecays),
          Map.entry("Lanczos3", LeastSquaresPublishedTest::threeDecays),
          Map.entry(
              "Kirby2", (b, x) -> (b[0] + x * (b[1] + x * b[2])) / (1 + x * (b[3] + x * b[4]))),
          Map.entry("Thurber", LeastSquaresPublishedTest::rational),
          Map.entry("Hahn1", LeastSquaresPublishedTest::rational));

  /** Lower level of difficulty: six digits are asked for; of the others four. */
  private static final List<String> LOWER =
      List.of("Misra1a", "Misra1b", "Chwirut1", "Chwirut2", "DanWood", "Gauss1", "Gauss2");

  private static double chwirut(double[] b, double x) {
    return Math.exp(-b[0] * x) / (b[1] + b[2] * x);
  }

  private static double decay(double height, double rate, double x) {
    return height * Math.exp(-rate * x);
  }

  private static double twoPeaks(double[] b, double x) {
    double first = Math.pow((x - b[3]) / b[4], 2);
    double second = Math.pow((x - b[6]) / b[7], 2);
    return decay(b[0], b[1], x) + b[2] * Math.exp(-first) + b[5] * Math.exp(-second);
  }

  private static double threeDecays(double[] b, double x) {
    return decay(b[0], b[1], x) + decay(b[2], b[3], x) + decay(b[4], b[5], x);
  }

  private static double rational(double[] b, double x) {
    return (b[0] + x * (b[1] + x * (b[2] + x * b[3]))) / (1 + x * (b[4] + x * (b[5] + x * b[6])));
  }

  static Stream<Arguments> problems() {
    return MODELS.keySet().stream().sorted().map(Arguments::of);
  }

  @ParameterizedTest(name = "{0}, NIST StRD certified values (seen; recomputed), start 2")
  @MethodSource("problems")
  void parametersAndStandardDeviationsAgreeWithTheCertifiedOnes(String problem) {
    FitColumns data = FitColumns.read("nist-strd/" + problem + ".csv");
    FitColumns all = FitColumns.read("nist-strd-certified-parameters.csv");
    List<String[]> rows = all.rows().stream().filter(r -> r[0].equals(problem)).toList();
    double[] start = rows.stream().mapToDouble(r -> Double.parseDouble(r[3])).toArray();

    Optimum optimum = fit(MODELS.get(problem), data.numbers("x"), data.numbers("y"), start);

    double digits = LOWER.contains(problem) ? 1e-6 : 1e-4;
    double[][] unit = optimum.unitCovariance();
    for (int i = 0; i < start.length; i++) {
      double certified = Double.parseDouble(rows.get(i)[4]);
      double certifiedSd = Double.parseDouble(rows.get(i)[5]);
      double sd = optimum.residualDeviation() * Math.sqrt(unit[i][i]);
      assertThat(optimum.point()[i])
          .as(rows.get(i)[1])
          .isCloseTo(certified, within(digits * Math.abs(certified)));
      assertThat(sd).as("sd " + rows.get(i)[1]).isCloseTo(certifiedSd, within(1e-4 * certifiedSd));
    }
  }

  @Test
  @DisplayName("GUM H.3 thermometer (JCGM 100:2008 H.3.3, seen): line, deviations, correlation")
  void thermometerLineOfTheGuide() {
    FitColumns data = FitColumns.read("gum-h3-thermometer.csv");
    Optimum optimum =
        fit(
            (b, t) -> b[0] + b[1] * (t - 20),
            data.numbers("t_C"),
            data.numbers("b_C"),
            new double[] {0, 0});
    double s = optimum.residualDeviation();
    double[][] unit = optimum.unitCovariance();

    assertThat(optimum.point()[0]).isCloseTo(-0.1712, within(5e-5));
    assertThat(optimum.point()[1]).isCloseTo(0.00218, within(5e-6));
    assertThat(s * Math.sqrt(unit[0][0])).isCloseTo(0.0029, within(5e-5));
    assertThat(s * Math.sqrt(unit[1][1])).isCloseTo(0.00067, within(5e-6));
    assertThat(unit[0][1] / Math.sqrt(unit[0][0] * unit[1][1])).isCloseTo(-0.930, within(5e-4));
    assertThat(s).isCloseTo(0.0035, within(5e-5));
    double at30 = optimum.point()[0] + 10 * optimum.point()[1];
    double u30 = s * Math.sqrt(unit[0][0] + 20 * unit[0][1] + 100 * unit[1][1]);
    assertThat(at30).isCloseTo(-0.1494, within(5e-5));
    assertThat(u30).isCloseTo(0.0041, within(5e-5));
  }

  static Stream<Arguments> kings() {
    return Stream.of(
        Arguments.of("13 points, n free", true, 0.0, 2.06334, 0.97976, 0.46166, 0.03089),
        Arguments.of("without zero flow, n free", false, 0.0, 1.62217, 1.30844, 0.40167, 0.01581),
        Arguments.of("without zero flow, n 0.5", false, 0.5, 2.26807, 0.82648, 0.5, 0.04474),
        Arguments.of("13 points, n 0.45", true, 0.45, 2.02373, 1.02448, 0.45, 0.03406));
  }

  @ParameterizedTest(name = "King's law on a real hot-wire table (data seen, fit recomputed): {0}")
  @MethodSource("kings")
  void kingsLawOnARealTable(
      String name, boolean zero, double held, double a, double b, double n, double s) {
    FitColumns data = FitColumns.read("hotwire-calibration-cta-13pt.csv");
    double[] speed = data.numbers("speed_m_s");
    double[] squared = data.numbers("voltage_squared_V2");
    if (!zero) {
      speed = Arrays.copyOfRange(speed, 1, speed.length);
      squared = Arrays.copyOfRange(squared, 1, squared.length);
    }
    Optimum optimum =
        held > 0
            ? fit((q, u) -> q[0] + q[1] * power(u, held), speed, squared, new double[] {1, 1})
            : fit((q, u) -> q[0] + q[1] * power(u, q[2]), speed, squared, new double[] {1, 1, 0.5});

    assertThat(optimum.point()[0]).isCloseTo(a, within(1e-4));
    assertThat(optimum.point()[1]).isCloseTo(b, within(1e-4));
    assertThat(optimum.residualDeviation()).isCloseTo(s, within(1e-4));
    if (held == 0) {
      assertThat(optimum.point()[2]).isCloseTo(n, within(1e-4));
    }
  }

  @Test
  @DisplayName("King's law without zero flow: correlations −0.9951, −0.9972, 0.9858 (recomputed)")
  void parametersOfKingsLawAreStronglyCorrelated() {
    FitColumns data = FitColumns.read("hotwire-calibration-cta-13pt.csv");
    double[] speed = data.numbers("speed_m_s");
    double[] squared = data.numbers("voltage_squared_V2");
    Optimum optimum =
        fit(
            (q, u) -> q[0] + q[1] * power(u, q[2]),
            Arrays.copyOfRange(speed, 1, speed.length),
            Arrays.copyOfRange(squared, 1, squared.length),
            new double[] {1, 1, 0.5});
    double[][] unit = optimum.unitCovariance();

    assertThat(correlation(unit, 0, 1)).isCloseTo(-0.9951, within(1e-4));
    assertThat(correlation(unit, 1, 2)).isCloseTo(-0.9972, within(1e-4));
    assertThat(correlation(unit, 0, 2)).isCloseTo(0.9858, within(1e-4));
  }

  @ParameterizedTest(
      name = "Cubic U(V) of a real hot-wire table, {0} a session (data seen, fit recomputed)")
  @CsvSource({
    "pre, 2.327586, 0.735887, 0.0839459, 0.00433932, 0.0171",
    "post, 2.437219, 0.763247, 0.0857319, 0.00423904, 0.0099"
  })
  void cubicOfASecondRealTable(
      String set, double q0, double q1, double q2, double q3, double scatter) {
    Optimum optimum = cubic(set);
    double[] found = optimum.point();
    assertThat(found).containsExactly(new double[] {q0, q1, q2, q3}, within(1e-5));
    assertThat(optimum.residualDeviation()).isCloseTo(scatter, within(1e-4));
  }

  @Test
  @DisplayName("Drift of that probe over the session: +4.7 % at 0 V (recomputed)")
  void driftOfASecondRealTable() {
    assertThat(cubic("post").point()[0] / cubic("pre").point()[0] - 1)
        .isCloseTo(0.047, within(5e-4));
  }

  private static Optimum cubic(String set) {
    FitColumns data = FitColumns.read("hotwire-calibration-pre-post-drift.csv");
    List<String[]> rows = data.rows().stream().filter(r -> r[0].equals(set)).toList();
    return fit(
        (q, v) -> q[0] + v * (q[1] + v * (q[2] + v * q[3])),
        rows.stream().mapToDouble(r -> Double.parseDouble(r[2])).toArray(),
        rows.stream().mapToDouble(r -> Double.parseDouble(r[1])).toArray(),
        new double[] {1, 1, 0, 0});
  }

  @Test
  @DisplayName("Ranz & Marshall 1952 (from memory): King's law finds 2 + b U^0.5 in it")
  void squareRootOfTheSpeedIsFoundInRanzAndMarshall() {
    Optimum optimum = kingOfSphere("Nu_RanzMarshall");

    assertThat(optimum.point()[0]).isCloseTo(2, within(1e-3));
    assertThat(optimum.point()[2]).isCloseTo(0.5, within(1e-3));
  }

  @Test
  @DisplayName("Whitaker 1972, 0.4 Re^(1/2) + 0.06 Re^(2/3) (seen): exponent between its slopes")
  void exponentFittedToWhitakerLiesBetweenItsSteepnesses() {
    Speeds whitaker = Speeds.of("Nu_Whitaker");
    double[] forced = Arrays.stream(whitaker.nusselt()).map(nu -> nu - 2).toArray();
    Optimum optimum =
        fit((q, u) -> q[0] * power(u, q[1]), whitaker.speed_m_s(), forced, new double[] {10, 0.4});

    // d ln / d ln Re of the two terms together: 0.5395 at Re 79 (0.1 m/s), 0.5591 at Re 2400.
    assertThat(optimum.point()[1]).isBetween(0.5395, 0.5591);
  }

  private static Optimum kingOfSphere(String column) {
    Speeds data = Speeds.of(column);
    return fit(
        (q, u) -> q[0] + q[1] * power(u, q[2]),
        data.speed_m_s(),
        data.nusselt(),
        new double[] {1, 10, 0.4});
  }

  /** The speeds from 0.1 m/s, and a column beside them. */
  @SuppressWarnings("ArrayRecordComponent") // test data, never compared
  private record Speeds(double[] speed_m_s, double[] nusselt) {
    static Speeds of(String column) {
      FitColumns data = FitColumns.read("sphere-nusselt-against-speed.csv");
      double[] speed = data.numbers("speed_m_s");
      int from = 2;
      assertThat(speed[from]).isEqualTo(0.1);
      return new Speeds(
          Arrays.copyOfRange(speed, from, speed.length),
          Arrays.copyOfRange(data.numbers(column), from, speed.length));
    }
  }

  private static double correlation(double[][] c, int i, int j) {
    return c[i][j] / Math.sqrt(c[i][i] * c[j][j]);
  }

  private static double power(double u, double n) {
    return u > 0 ? Math.pow(u, n) : 0;
  }

  private static Optimum fit(Model model, double[] x, double[] y, double[] start) {
    return new Optimiser().minimise(b -> linearised(model, x, y, b), start, () -> false);
  }

  private static Linearised linearised(Model model, double[] x, double[] y, double[] b) {
    double[] residuals = new double[x.length];
    double[][] jacobian = new double[x.length][b.length];
    for (int i = 0; i < x.length; i++) {
      residuals[i] = model.at(b, x[i]) - y[i];
      for (int j = 0; j < b.length; j++) {
        double step = 1e-6 * Math.max(Math.abs(b[j]), 1e-9);
        double[] up = b.clone();
        double[] down = b.clone();
        up[j] += step;
        down[j] -= step;
        jacobian[i][j] = (model.at(up, x[i]) - model.at(down, x[i])) / (up[j] - down[j]);
      }
    }
    return new Linearised(residuals, jacobian);
  }
}
