package faintwind.calibration.pool;

import faintwind.calibration.run.ClassKnown;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What several sessions say of what they share, and of each other. Every session is compared with,
 * and told by, the others only: what it says itself does not count twice.
 */
public final class Pool {
  private static final double[] BETWEEN =
      Arrays.stream(Shared.values()).mapToDouble(Shared::between).toArray();

  private final SessionShown first;
  private final List<SessionShown> sessions;
  private final List<Information> information;

  /**
   * The pool of at least three sessions.
   *
   * @param first what was expected of their unknowns before any of them
   */
  public Pool(SessionShown first, List<SessionShown> sessions) {
    this.first = first.of(Shared.unknowns());
    this.sessions = List.copyOf(sessions);
    this.information = informations(s -> s.of(Shared.unknowns()));
  }

  private List<Information> informations(Function<SessionShown, SessionShown> part) {
    return sessions.stream().map(part).map(Information::of).toList();
  }

  /** The same with another fit of one session. */
  public Pool with(int session, SessionShown fit) {
    List<SessionShown> all = new ArrayList<>(sessions);
    all.set(session, fit);
    return new Pool(first, all);
  }

  /** What the others say of what a session shares with them. */
  public ClassKnown known(int session) {
    Population others = others(first, information, BETWEEN, session);
    RealMatrix another = others.ofAnother();
    Map<String, Uncertain> expected = new HashMap<>();
    for (int k = 0; k < BETWEEN.length; k++) {
      expected.put(
          first.names().get(k),
          Uncertain.of(others.mean().getEntry(k), Math.sqrt(another.getEntry(k, k))));
    }
    return new ClassKnown(expected, ties(another));
  }

  /** What the covariance of all says beyond that of each alone. */
  private List<ClassKnown.Tie> ties(RealMatrix covariance) {
    RealMatrix information = Inverse.of(covariance);
    List<ClassKnown.Tie> ties = new ArrayList<>();
    for (int k = 0; k < BETWEEN.length; k++) {
      for (int j = 0; j <= k; j++) {
        double both = (information.getEntry(k, j) + information.getEntry(j, k)) / 2;
        double alone = k == j ? 1 / covariance.getEntry(k, k) : 0;
        ties.add(new ClassKnown.Tie(first.names().get(k), first.names().get(j), both - alone));
      }
    }
    return ties;
  }

  /** In which of what is its own a session stands out most, where it does. */
  public Optional<StandsOut> ownStandsOut(int session) {
    return farthest(own(session));
  }

  /** How far a session lies from the others in each that is its own. */
  List<StandsOut> own(int session) {
    List<StandsOut> all = new ArrayList<>();
    for (Own own : Own.values()) {
      Population others =
          others(
              own.of(sessions.get(0)),
              informations(own::of),
              new double[] {own.between()},
              session);
      Information shown = Information.of(own.of(sessions.get(session)));
      double far = Math.sqrt(shown.squaredFrom(others.mean(), others.ofAnother()));
      all.add(new StandsOut(own.name(), far));
    }
    return all;
  }

  /**
   * In which of what is shared or its own a session stands out most, where it does not agree with
   * what the others say of what is shared.
   *
   * @param cost what it costs its recordings to agree with the others: chi-squared
   */
  public Optional<StandsOut> standsOut(int session, double cost) {
    double far = StandsOut.deviations(cost, OwnChoices.SETTLED);
    List<StandsOut> all = parts(session);
    all.addAll(own(session));
    String most =
        all.stream().max(Comparator.comparingDouble(StandsOut::deviations)).orElseThrow().what();
    return farthest(List.of(new StandsOut(most, far)));
  }

  /** How far a session lies from the others in each part of what is shared. */
  private List<StandsOut> parts(int session) {
    Population others = others(first, information, BETWEEN, session);
    SessionShown own = sessions.get(session).of(Shared.unknowns());
    List<StandsOut> all = new ArrayList<>();
    for (int k = 0; k < BETWEEN.length; k++) {
      double off = own.estimates().get(k) - others.mean().getEntry(k);
      double another = others.ofAnother().getEntry(k, k);
      double far = Math.abs(off) / Math.sqrt(own.covariance().at(k, k) + another);
      all.add(new StandsOut(List.of(Shared.values()).get(k).name(), far));
    }
    return all;
  }

  private static Optional<StandsOut> farthest(List<StandsOut> all) {
    return all.stream()
        .filter(each -> each.deviations() > OwnChoices.STANDS_OUT)
        .max(Comparator.comparingDouble(StandsOut::deviations));
  }

  private static Population others(
      SessionShown before, List<Information> all, double[] between, int session) {
    List<Information> others = new ArrayList<>(all);
    others.remove(session);
    return Population.of(before, others, between);
  }

  /** What all of them say of what they share. */
  public Spread spread() {
    Population all = Population.of(first, information, BETWEEN);
    List<Double> unsure = new ArrayList<>();
    for (int k = 0; k < BETWEEN.length; k++) {
      unsure.add(Math.sqrt(all.uncertainty().getEntry(k, k)));
    }
    List<Double> means = Arrays.stream(all.mean().toArray()).boxed().toList();
    return new Spread(means, unsure, all.between());
  }

  /**
   * What a class shares, in the order of {@link Shared}, in the form in which it is normal.
   *
   * @param means of the class
   * @param unsure their standard uncertainties
   * @param between standard deviation between the instruments
   */
  public record Spread(List<Double> means, List<Double> unsure, List<Double> between) {}
}
