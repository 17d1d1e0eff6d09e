package faintwind.calibration.build;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildAgreement.Row;
import faintwind.calibration.BuildAgreement.Suspicion;
import faintwind.calibration.BuildQuantity;
import faintwind.calibration.BuildSuspect;
import faintwind.calibration.EnScore;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Compares what a fit found with what the build says, in logarithms. Each suspect s with a spread σ
 * makes the differences y normal with covariance Σ + σ² s sᵀ, Σ that of fit and build together;
 * suspects stand in the order of that density (Bayes with equal odds, own choice). One explains
 * what was found where the rest after it is within 95 % of χ².
 */
public final class MeetTheBuild {
  private static final double COVERAGE = 2;

  private static final double WITHIN = 0.95;
  private static final double SINGULAR = 1e-300;

  private final BuildSays says;
  private final double signalPerKelvin;
  private final Map<BuildQuantity, Uncertain> found = new EnumMap<>(BuildQuantity.class);
  private final List<BuildQuantity> compared;

  private MeetTheBuild(BuildSays says, FoundByFit fit) {
    this.says = says;
    this.signalPerKelvin = Math.abs(fit.signalPerKelvin());
    found.put(BuildQuantity.HEATING, fit.heating_K_s());
    found.put(BuildQuantity.STILL, fit.still_K());
    fit.leadShare().ifPresent(share -> found.put(BuildQuantity.LEAD_SHARE, share));
    fit.glueTime_s().ifPresent(time -> found.put(BuildQuantity.GLUE_TIME, time));
    compared = List.copyOf(found.keySet());
  }

  /** The comparison. */
  public static BuildAgreement of(BuildSays says, FoundByFit fit) {
    return new MeetTheBuild(says, fit).agreement();
  }

  private BuildAgreement agreement() {
    List<Row> rows = new ArrayList<>();
    boolean scaleKnown = u_says(BuildQuantity.HEATING) < 1;
    for (BuildQuantity quantity : compared) {
      boolean inKelvin = quantity == BuildQuantity.HEATING || quantity == BuildQuantity.STILL;
      if (scaleKnown || !inKelvin) {
        rows.add(row(quantity, get(quantity), says.log(quantity), u_says(quantity), true));
      }
    }
    rows.add(
        row(
            BuildQuantity.TIME_CONSTANT,
            timeConstant(),
            says.log(BuildQuantity.TIME_CONSTANT),
            u_says(BuildQuantity.TIME_CONSTANT),
            true));
    if (scaleKnown) {
      rows.add(signal());
    }
    BuildAgreement alone = new BuildAgreement(rows, List.of());
    return alone.disagrees() ? new BuildAgreement(rows, suspects()) : alone;
  }

  private double u_says(BuildQuantity quantity) {
    return Math.sqrt(says.covariance(quantity, quantity));
  }

  private Uncertain timeConstant() {
    Uncertain still = get(BuildQuantity.STILL);
    Uncertain heating = get(BuildQuantity.HEATING);
    double value = still.value() / heating.value();
    return Uncertain.of(value, value * Math.hypot(u_log(still), u_log(heating)));
  }

  /** The warm-up in signal units a second over the build's kelvin a second. */
  private Row signal() {
    double scale = says.scale();
    double own = BuildPart.SCALE.usual();
    double built = says.covariance(BuildQuantity.HEATING, BuildQuantity.HEATING) - own * own;
    Uncertain heating = get(BuildQuantity.HEATING);
    double found =
        signalPerKelvin * scale * heating.value() / Math.exp(says.log(BuildQuantity.HEATING));
    double u = Math.hypot(u_log(heating), Math.sqrt(Math.max(0, built)));
    return row(
        BuildQuantity.SIGNAL_PER_K,
        Uncertain.of(found, found * u),
        Math.log(signalPerKelvin * scale),
        own,
        false);
  }

  private static Row row(
      BuildQuantity quantity, Uncertain found, double log, double u_log, boolean judged) {
    double value = Math.exp(log);
    double u = u_log(found);
    EnScore en =
        EnScore.ofDifference(Math.log(found.value()) - log, COVERAGE * Math.hypot(u, u_log));
    return new Row(quantity, found.value(), u * found.value(), value, u_log * value, en, judged);
  }

  private List<Suspicion> suspects() {
    Spread both = spread();
    List<Weighed> all =
        Arrays.stream(BuildSuspect.values()).map(suspect -> weigh(suspect, both)).toList();
    double most = all.stream().mapToDouble(Weighed::logDensity).max().orElse(0);
    double sum = all.stream().mapToDouble(w -> Math.exp(w.logDensity() - most)).sum();
    return all.stream()
        .map(
            w ->
                new Suspicion(
                    w.suspect(),
                    Math.exp(w.amount()),
                    w.explains(),
                    Math.exp(w.logDensity() - most) / sum))
        .sorted(Comparator.comparingDouble(Suspicion::weight).reversed())
        .toList();
  }

  /** Differences of the logarithms and their covariance, that of fit and build together. */
  private record Spread(RealVector y, RealMatrix covariance) {
    RealVector over(RealVector vector) {
      return new LUDecomposition(covariance, SINGULAR).getSolver().solve(vector);
    }

    /** Logarithm of the density of the differences, without its constant. */
    double logDensity() {
      double determinant = new LUDecomposition(covariance, SINGULAR).getDeterminant();
      return -0.5 * (y.dotProduct(over(y)) + Math.log(determinant));
    }
  }

  private Spread spread() {
    int n = compared.size();
    RealVector y = new ArrayRealVector(n);
    RealMatrix covariance = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      BuildQuantity at = compared.get(i);
      y.setEntry(i, Math.log(get(at).value()) - says.log(at));
      for (int j = 0; j < n; j++) {
        covariance.setEntry(i, j, says.covariance(at, compared.get(j)));
      }
      double u = u_log(get(at));
      covariance.addToEntry(i, i, u * u);
    }
    return new Spread(y, covariance);
  }

  private record Weighed(
      BuildSuspect suspect, double logDensity, double amount, boolean explains) {}

  private Weighed weigh(BuildSuspect suspect, Spread both) {
    int n = compared.size();
    SuspectMoves moves = SuspectMoves.of(suspect);
    double variance = moves.spread() * moves.spread();
    if (moves.parts().isEmpty()) {
      RealMatrix any = MatrixUtils.createRealIdentityMatrix(n).scalarMultiply(variance);
      double logDensity = new Spread(both.y(), both.covariance().add(any)).logDensity();
      return new Weighed(suspect, logDensity, 0, true);
    }
    RealVector s = signature(moves);
    RealMatrix wide = both.covariance().add(s.outerProduct(s).scalarMultiply(variance));
    RealVector over = both.over(s);
    double amount = over.dotProduct(both.y()) / (over.dotProduct(s) + 1 / variance);
    RealVector rest = both.y().subtract(s.mapMultiply(amount));
    boolean explains =
        rest.dotProduct(both.over(rest))
            <= new ChiSquaredDistribution(n - 1).inverseCumulativeProbability(WITHIN);
    return new Weighed(suspect, new Spread(both.y(), wide).logDensity(), amount, explains);
  }

  /** Change of each compared logarithm with the suspect's own. */
  private RealVector signature(SuspectMoves moves) {
    RealVector s = new ArrayRealVector(compared.size());
    moves
        .parts()
        .forEach(
            (part, by) -> {
              for (int i = 0; i < compared.size(); i++) {
                s.addToEntry(i, by * says.slope(part, compared.get(i)));
              }
            });
    return s;
  }

  private Uncertain get(BuildQuantity quantity) {
    return Optional.ofNullable(found.get(quantity)).orElseThrow();
  }

  private static double u_log(Uncertain x) {
    return x.u().orElse(0) / Math.abs(x.value());
  }
}
