package faintwind.calibration.plan;

import faintwind.calibration.fit.foretelling.PlannedFit;
import faintwind.calibration.run.ArmSpeed;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The speeds that come into question, evenly spaced in the logarithm over the wanted range, each
 * with the radius and the beat that suit it best.
 */
final class Candidates {
  private final PlanRequest request;
  private final PlannedFit fit;

  Candidates(PlanRequest request, PlannedFit fit) {
    this.request = request;
    this.fit = fit;
  }

  /** Speeds evenly spaced in the logarithm. */
  static List<Double> spaced(double least_m_s, double most_m_s, int count) {
    List<Double> speeds = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      speeds.add(least_m_s * Math.pow(most_m_s / least_m_s, i / (count - 1.0)));
    }
    return speeds;
  }

  /** The candidates at a pace, rising speeds; those that nothing can carry are left out. */
  List<Candidate> at(double constants) {
    List<Candidate> found = new ArrayList<>();
    PlanWish wish = request.wish();
    for (double speed : spaced(wish.least_m_s(), wish.most_m_s(), OwnChoices.SPEEDS_TRIED)) {
      best(speed, constants)
          .filter(c -> found.isEmpty() || c.speed_m_s() > found.get(found.size() - 1).speed_m_s())
          .ifPresent(found::add);
    }
    return found;
  }

  /** Radius and beat for a speed; empty where no radius, beat or cable takes it. */
  Optional<Candidate> best(double speed_m_s, double constants) {
    Optional<Candidate> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Uncertain radius : request.arm().radii_m()) {
      if (tooFast(speed_m_s, radius)) {
        continue;
      }
      for (int aTurn : request.wish().beats().aTurn()) {
        Optional<Beat> beat = beat(speed_m_s, radius.value(), aTurn);
        if (beat.isPresent()) {
          double cost = cost(speed_m_s, radius, beat.get());
          Candidate candidate = candidate(radius, beat.get(), constants);
          boolean held = beat.get().speed_m_s(radius.value()) <= fastest_m_s(radius.value());
          if (cost < least && held && carried(candidate)) {
            least = cost;
            best = Optional.of(candidate);
          }
        }
      }
    }
    return best;
  }

  /** What keeps a speed from being turned; the strictest is named. */
  enum Limit {
    /** Every radius would be pulled at too hard. */
    INWARD,
    /** No comfortable beat gives it. */
    BEAT,
    /** The cable takes too few turns. */
    CABLE
  }

  /** Why a speed cannot be turned; empty where it can. */
  Optional<Limit> limit(double speed_m_s) {
    if (best(speed_m_s, OwnChoices.LEAST_CONSTANTS).isPresent()) {
      return Optional.empty();
    }
    List<Uncertain> held =
        request.arm().radii_m().stream().filter(r -> !tooFast(speed_m_s, r)).toList();
    if (held.isEmpty()) {
      return Optional.of(Limit.INWARD);
    }
    boolean beaten =
        held.stream()
            .anyMatch(
                radius ->
                    request.wish().beats().aTurn().stream()
                        .anyMatch(n -> beat(speed_m_s, radius.value(), n).isPresent()));
    return Optional.of(beaten ? Limit.CABLE : Limit.BEAT);
  }

  private static boolean tooFast(double speed_m_s, Uncertain radius) {
    return speed_m_s > fastest_m_s(radius.value());
  }

  /** Speed at which a radius is pulled at as hard as balls and wires take: √(a·r). */
  static double fastest_m_s(double radius_m) {
    return Math.sqrt(OwnChoices.MOST_INWARD_M_S2 * radius_m);
  }

  private Optional<Beat> beat(double speed_m_s, double radius_m, int aTurn) {
    double exact = 60 * aTurn * speed_m_s / (2 * Math.PI * radius_m);
    PlanWish.Beats beats = request.wish().beats();
    int whole = (int) Math.max(beats.least(), Math.min(beats.most(), Math.round(exact)));
    return Math.abs(whole / exact - 1) <= OwnChoices.MOST_OFF
        ? Optional.of(new Beat(whole, aTurn))
        : Optional.empty();
  }

  /**
   * What a radius and a beat cost: the radius' own uncertainty, then a beat far from the middle.
   */
  private double cost(double speed_m_s, Uncertain radius, Beat beat) {
    PlanWish.Beats beats = request.wish().beats();
    double middle = Math.sqrt((double) beats.least() * beats.most());
    double off = Math.log(beat.speed_m_s(radius.value()) / speed_m_s);
    return radius.u().orElse(ArmSpeed.RADIUS_U_M) / radius.value()
        + 1e-3 * Math.abs(Math.log(beat.perMinute() / middle))
        + 1e-2 * Math.abs(off);
  }

  private Candidate candidate(Uncertain radius, Beat beat, double constants) {
    double speed = beat.speed_m_s(radius.value());
    double wanted_s = constants * fit.timeConstant_s(speed);
    double spin_s = 10 * Math.ceil(Math.max(wanted_s, 60) / 10);
    if (request.arm().way().turnBudget().isPresent()) {
      double most_s = request.arm().way().turnBudget().getAsDouble() / beat.turns_1_s();
      spin_s = Math.min(spin_s, 10 * Math.floor(most_s / 10));
    }
    return new Candidate(radius, beat, spin_s);
  }

  /** Whether the cable carries at least a time constant of it. */
  private boolean carried(Candidate candidate) {
    return candidate.spin_s()
        >= OwnChoices.LEAST_CONSTANTS * fit.timeConstant_s(candidate.speed_m_s()) * 0.99;
  }
}
