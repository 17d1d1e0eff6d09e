package faintwind.calibration.fit.pooling;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.pool.Pool;
import faintwind.calibration.pool.SessionShown;
import faintwind.calibration.run.ClassKnown;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The fits of a class: each instrument's formula, fitted again with what the others say of what all
 * share, in {@link ClassRounds}.
 *
 * @param members the instruments in the order in which they came
 * @param spread what the class shares
 */
public record ClassFit(List<ClassMember<FitResult>> members, Pool.Spread spread) {
  /** Fewer cannot tell which of them is off. */
  public static final int FEWEST = 3;

  private static final int ROUNDS = 3;

  public ClassFit {
    members = List.copyOf(members);
  }

  /** The class of these, each fitted alone by the physics-shaped formula. */
  public static ClassFit of(List<FitResult> alone, BooleanSupplier cancelled) {
    ClassRounds<FitResult> rounds = new ClassRounds<>(alone, new Fits(cancelled)).run(ROUNDS);
    return new ClassFit(rounds.members(), rounds.spread());
  }

  private record Fits(BooleanSupplier cancelled) implements ClassRounds.Fits<FitResult> {
    @Override
    public SessionShown shown(FitResult fit) {
      return fit.shown();
    }

    @Override
    public double costOfAgreeing(FitResult alone, ClassKnown others) {
      return alone.costOfAgreeing(others, cancelled);
    }

    @Override
    public FitResult among(FitResult fit, ClassKnown others) {
      return FitToRuns.among(fit, others, cancelled);
    }
  }
}
