package faintwind.calibration.fit.pooling;

import faintwind.calibration.fit.judging.FitResult;
import faintwind.calibration.fit.judging.FitToRuns;
import faintwind.calibration.pool.Pool;
import faintwind.calibration.pool.SessionShown;
import faintwind.calibration.pool.StandsOut;
import faintwind.calibration.run.ClassKnown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The fits of a class: each instrument's formula, fitted again with what the others say of what all
 * share. That is done in rounds, since what a session says of the shared unknowns is taken from its
 * curvature where it rests, and it rests elsewhere once the others are heard (the idea of
 * expectation propagation, Minka 2001, from memory). Who stands out keeps the fit it has alone, and
 * the others do not hear of it.
 */
public final class ClassFit {
  /** Fewer cannot tell which of them is off. */
  public static final int FEWEST = 3;

  private static final int ROUNDS = 3;

  private final List<Member> members;
  private final Pool.Spread spread;

  private ClassFit(List<Member> members, Pool.Spread spread) {
    this.members = List.copyOf(members);
    this.spread = spread;
  }

  /**
   * One instrument of the class.
   *
   * @param fit with what the others say; alone, where it stands out
   * @param heard what the others said; nothing where it stands out
   * @param standsOut in what, where it does
   */
  public record Member(FitResult fit, ClassKnown heard, Optional<StandsOut> standsOut) {}

  /** The class of these, each fitted alone by the physics-shaped formula. */
  public static ClassFit of(List<FitResult> alone, BooleanSupplier cancelled) {
    return of(alone, ROUNDS, cancelled);
  }

  public static ClassFit of(List<FitResult> alone, int rounds, BooleanSupplier cancelled) {
    SessionShown first = alone.get(0).shown();
    Pool own = new Pool(first, alone.stream().map(FitResult::shown).toList());
    List<Member> members = new ArrayList<>();
    for (int i = 0; i < alone.size(); i++) {
      members.add(new Member(alone.get(i), ClassKnown.NOTHING, own.ownStandsOut(i)));
    }
    for (int round = 0; round < rounds; round++) {
      List<Integer> sound = sound(members);
      if (sound.size() < 2) {
        break;
      }
      Pool pool = pool(first, members, sound);
      for (int k = 0; k < sound.size(); k++) {
        int i = sound.get(k);
        ClassKnown heard = pool.known(k);
        FitResult fit = FitToRuns.among(members.get(i).fit(), heard, cancelled);
        // what it costs the recordings to agree with the others is chi-squared
        double cost = fit.deviance() - alone.get(i).deviance();
        Optional<StandsOut> out = pool.standsOut(k, cost);
        members.set(
            i,
            out.isEmpty()
                ? new Member(fit, heard, out)
                : new Member(alone.get(i), ClassKnown.NOTHING, out));
      }
    }
    return new ClassFit(members, pool(first, members, sound(members)).spread());
  }

  private static List<Integer> sound(List<Member> members) {
    return IntStream.range(0, members.size())
        .filter(i -> members.get(i).standsOut().isEmpty())
        .boxed()
        .toList();
  }

  private static Pool pool(SessionShown first, List<Member> members, List<Integer> of) {
    return new Pool(first, of.stream().map(i -> members.get(i).fit().shown()).toList());
  }

  /** The instruments in the order in which they came. */
  public List<Member> members() {
    return members;
  }

  /** What the class shares. */
  public Pool.Spread spread() {
    return spread;
  }
}
