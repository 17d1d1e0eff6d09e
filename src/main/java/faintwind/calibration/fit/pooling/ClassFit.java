package faintwind.calibration.fit.pooling;

import faintwind.calibration.fit.judging.FitResult;
import faintwind.calibration.fit.judging.FitToRuns;
import faintwind.calibration.pool.Pool;
import faintwind.calibration.pool.SessionShown;
import faintwind.calibration.pool.StandsOut;
import faintwind.calibration.run.ClassKnown;
import java.util.ArrayList;
import java.util.Comparator;
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
  private static final int LEAST_SOUND = 2;

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

  /**
   * The same in so many rounds, and one more for each that is found to stand out on the way: of
   * several only the farthest, since it may have drawn the others off.
   */
  public static ClassFit of(List<FitResult> alone, int rounds, BooleanSupplier cancelled) {
    SessionShown first = alone.get(0).shown();
    Pool own = new Pool(first, alone.stream().map(FitResult::shown).toList());
    List<Member> members = new ArrayList<>();
    for (int i = 0; i < alone.size(); i++) {
      members.add(new Member(alone.get(i), ClassKnown.NOTHING, own.ownStandsOut(i)));
    }
    int left = rounds;
    while (left > 0 && sound(members).size() >= LEAST_SOUND) {
      Optional<Off> off = round(first, alone, members, cancelled);
      off.ifPresent(
          o ->
              members.set(
                  o.index(),
                  new Member(
                      alone.get(o.index()), ClassKnown.NOTHING, Optional.of(o.standsOut()))));
      left -= off.isPresent() ? 0 : 1;
    }
    return new ClassFit(members, pool(first, members, sound(members)).spread());
  }

  /** Who was found to stand out. */
  private record Off(int index, StandsOut standsOut) {}

  /** Fits each that is sound with what the others say; who of them lies farthest off, if any. */
  private static Optional<Off> round(
      SessionShown first, List<FitResult> alone, List<Member> members, BooleanSupplier cancelled) {
    List<Integer> sound = sound(members);
    Pool pool = pool(first, members, sound);
    List<Off> off = new ArrayList<>();
    for (int k = 0; k < sound.size(); k++) {
      int i = sound.get(k);
      ClassKnown heard = pool.known(k);
      double cost = alone.get(i).costOfAgreeing(heard, cancelled);
      FitResult fit = FitToRuns.among(members.get(i).fit(), heard, cancelled);
      members.set(i, new Member(fit, heard, Optional.empty()));
      pool.standsOut(k, cost).ifPresent(out -> off.add(new Off(i, out)));
      pool.with(k, fit.shown()).ownStandsOut(k).ifPresent(out -> off.add(new Off(i, out)));
    }
    return off.stream().max(Comparator.comparingDouble(o -> o.standsOut().deviations()));
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
