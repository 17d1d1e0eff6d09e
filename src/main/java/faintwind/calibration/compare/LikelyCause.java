package faintwind.calibration.compare;

import faintwind.calibration.Calibration;
import faintwind.calibration.Measured.By;
import faintwind.calibration.compare.Comparison.Cause;
import faintwind.calibration.compare.Comparison.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What changed between two calibrations, by the same reasoning as for the build: each cause moves
 * heating rate, still loss and fast loss in its own way, and the density of what was found orders
 * them. A supply 1 % higher heats by 2 %; another gain makes all kelvin larger; a coat of dirt adds
 * to the loss, more so in still air, where radiation counts; a lead takes the same heat at every
 * speed; another arm or radius changes the fast loss alone. How far each may be off is this
 * program's own choice, no source.
 */
final class LikelyCause {
  private final Calibration earlier;
  private final Calibration later;
  private final RealVector y = new ArrayRealVector(Traits.COUNT);
  private final RealMatrix spread;
  private final double leadAtSpeed;

  LikelyCause(Calibration earlier, Calibration later) {
    this.earlier = earlier;
    this.later = later;
    double fast = Math.min(earlier.coverage().highest_m_s(), later.coverage().highest_m_s());
    Traits before = new Traits(earlier, earlier.formula().referenceAir(), fast);
    Traits after = new Traits(later, earlier.formula().referenceAir(), fast);
    spread = before.covariance().add(after.covariance());
    for (int i = 0; i < Traits.COUNT; i++) {
      y.setEntry(i, after.value(i) - before.value(i));
      spread.addToEntry(i, i, OwnChoices.FIT_APART * OwnChoices.FIT_APART);
    }
    leadAtSpeed = Math.exp(before.value(Traits.STILL_LOSS) - before.value(Traits.FAST_LOSS));
  }

  /**
   * How a cause shows.
   *
   * @param moves change of heating rate, still loss and fast loss with the cause's own number
   * @param spread how far it may be off, standard deviation of the logarithm
   * @param mean what is known of it beforehand
   */
  private record Shape(RealVector moves, double spread, double mean) {
    static Shape of(double spread, double... moves) {
      return new Shape(new ArrayRealVector(moves), spread, 0);
    }
  }

  List<Cause> list() {
    List<Cause> all = new ArrayList<>();
    List<Double> logs = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      Shape shape = shape(kind);
      RealVector s = shape.moves();
      RealVector rest = y.subtract(s.mapMultiply(shape.mean()));
      double variance = shape.spread() * shape.spread();
      RealMatrix wide = spread.add(s.outerProduct(s).scalarMultiply(variance));
      LUDecomposition lu = new LUDecomposition(wide, 1e-300);
      logs.add(
          -0.5 * (rest.dotProduct(lu.getSolver().solve(rest)) + Math.log(lu.getDeterminant()))
              + favour(kind));
      RealVector over = new LUDecomposition(spread, 1e-300).getSolver().solve(s);
      double amount = shape.mean() + over.dotProduct(rest) / (over.dotProduct(s) + 1 / variance);
      all.add(new Cause(kind, Math.exp(amount) - 1, 0));
    }
    double most = logs.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    double sum = logs.stream().mapToDouble(log -> Math.exp(log - most)).sum();
    List<Cause> weighed = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Cause cause = all.get(i);
      weighed.add(new Cause(cause.kind(), cause.by(), Math.exp(logs.get(i) - most) / sum));
    }
    weighed.sort(Comparator.comparingDouble(Cause::weight).reversed());
    return weighed;
  }

  private Shape shape(Kind kind) {
    return switch (kind) {
      case SUPPLY -> supply();
      case LOGGER -> Shape.of(0.05, 1, 0, 0);
      case DIRT -> Shape.of(0.03, 0, 1, OwnChoices.DIRT_AT_SPEED);
      case LEAD -> Shape.of(0.1, 0, 1, leadAtSpeed);
      case ARM -> Shape.of(0.03, 0, 0, 1);
    };
  }

  /** Where both recordings carry the supply, its change is known. */
  private Shape supply() {
    Shape free = Shape.of(0.05, 2, 0, 0);
    boolean known =
        earlier.signal().supply_V().isPresent() && later.signal().supply_V().isPresent();
    return known
        ? new Shape(
            free.moves(),
            OwnChoices.SUPPLY_RECORDED,
            Math.log(
                later.signal().supply_V().getAsDouble()
                    / earlier.signal().supply_V().getAsDouble()))
        : free;
  }

  /** Logarithm of the odds beforehand: another logger or arm on record is the likelier. */
  private double favour(Kind kind) {
    return switch (kind) {
      case LOGGER -> differs(By.LOGGER) ? Math.log(3) : 0;
      case ARM -> differs(By.ARM) ? Math.log(3) : 0;
      case SUPPLY, DIRT, LEAD -> 0;
    };
  }

  private boolean differs(By by) {
    Optional<String> one = earlier.origin().measured().flatMap(m -> m.by(by));
    Optional<String> other = later.origin().measured().flatMap(m -> m.by(by));
    return one.isPresent() && other.isPresent() && !one.equals(other);
  }
}
