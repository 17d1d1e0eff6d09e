package faintwind.calibration.fit.pooling;

import faintwind.calibration.pool.Pool;
import faintwind.calibration.pool.SessionShown;
import faintwind.calibration.pool.StandsOut;
import faintwind.calibration.run.ClassKnown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The rounds in which the instruments of a class hear of one another. Each is fitted again with
 * what the others say, since what a session says of the shared unknowns is taken from its curvature
 * where it rests, and it rests elsewhere once the others are heard (the idea of expectation
 * propagation, Minka 2001, from memory). Who stands out keeps the fit it has alone, and the others
 * do not hear of it.
 *
 * @param <F> a fit of one instrument
 */
final class ClassRounds<F> {
  private static final int LEAST_SOUND = 2;

  private final List<F> alone;
  private final Fits<F> fits;
  private final SessionShown first;
  private final List<ClassMember<F>> members = new ArrayList<>();

  ClassRounds(List<F> alone, Fits<F> fits) {
    this.alone = List.copyOf(alone);
    this.fits = fits;
    this.first = fits.shown(alone.get(0));
    Pool own = new Pool(first, alone.stream().map(fits::shown).toList());
    for (int i = 0; i < alone.size(); i++) {
      members.add(new ClassMember<>(alone.get(i), ClassKnown.NOTHING, own.ownStandsOut(i)));
    }
  }

  /** What a class asks of the fits of its instruments. */
  interface Fits<F> {
    /** What a fit says of its unknowns. */
    SessionShown shown(F fit);

    /** What it costs the recordings of a fit to agree with the others: chi-squared. */
    double costOfAgreeing(F alone, ClassKnown others);

    /** The fit again, with what the others say. */
    F among(F fit, ClassKnown others);
  }

  /** Who was found to stand out. */
  private record Off(int index, StandsOut standsOut) {}

  /**
   * So many rounds, and one more for each that is found to stand out on the way: of several only
   * the farthest, since it may have drawn the others off.
   */
  ClassRounds<F> run(int rounds) {
    int left = rounds;
    while (left > 0 && sound().size() >= LEAST_SOUND) {
      Optional<Off> off = round();
      off.ifPresent(this::setAside);
      left -= off.isPresent() ? 0 : 1;
    }
    if (sound().size() < LEAST_SOUND) {
      sound().forEach(this::leaveAlone);
    }
    return this;
  }

  /** It keeps the fit it has alone: whom it heard was set aside since. */
  private void leaveAlone(int index) {
    members.set(index, new ClassMember<>(alone.get(index), ClassKnown.NOTHING, Optional.empty()));
  }

  private void setAside(Off off) {
    members.set(
        off.index(),
        new ClassMember<>(
            alone.get(off.index()), ClassKnown.NOTHING, Optional.of(off.standsOut())));
  }

  /** Fits each that is sound with what the others say; who of them lies farthest off, if any. */
  private Optional<Off> round() {
    List<Integer> sound = sound();
    Pool pool = pool(sound);
    List<Off> off = new ArrayList<>();
    for (int k = 0; k < sound.size(); k++) {
      int i = sound.get(k);
      ClassKnown heard = pool.known(k);
      double cost = fits.costOfAgreeing(alone.get(i), heard);
      F fit = fits.among(members.get(i).fit(), heard);
      members.set(i, new ClassMember<>(fit, heard, Optional.empty()));
      pool.standsOut(k, cost).ifPresent(out -> off.add(new Off(i, out)));
      pool.with(k, fits.shown(fit)).ownStandsOut(k).ifPresent(out -> off.add(new Off(i, out)));
    }
    return off.stream().max(Comparator.comparingDouble(o -> o.standsOut().deviations()));
  }

  private List<Integer> sound() {
    return IntStream.range(0, members.size())
        .filter(i -> members.get(i).standsOut().isEmpty())
        .boxed()
        .toList();
  }

  private Pool pool(List<Integer> of) {
    return new Pool(first, of.stream().map(i -> fits.shown(members.get(i).fit())).toList());
  }

  /** The instruments in the order in which they came. */
  List<ClassMember<F>> members() {
    return List.copyOf(members);
  }

  /** What those share that are sound. */
  Pool.Spread spread() {
    return pool(sound()).spread();
  }
}
