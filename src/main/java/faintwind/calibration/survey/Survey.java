package faintwind.calibration.survey;

import faintwind.calibration.field.StretchMean;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Places by their speed. A place's rank is one more than the number of places that are faster than
 * it by more than the uncertainty of their difference: places that cannot be told from the fastest
 * all share the first rank.
 *
 * @param ranked fastest first
 * @param unsettled visits that were too short
 * @param drift what the first place said when it was visited again; empty where it was not
 */
public record Survey(List<Ranked> ranked, List<Visit> unsettled, Optional<Drift> drift) {
  public Survey {
    ranked = List.copyOf(ranked);
    unsettled = List.copyOf(unsettled);
  }

  /**
   * A place in its rank.
   *
   * @param rank from 1; shared by those that cannot be told apart from the same faster ones
   * @param visit the stay
   * @param speed what was found
   */
  public record Ranked(int rank, Visit visit, StretchMean speed) {}

  /**
   * The first place, first and again.
   *
   * @param place its name
   * @param first speed of the first visit
   * @param again speed of the last visit to it
   */
  public record Drift(String place, StretchMean first, StretchMean again) {
    /** Second less first, m/s. */
    public double change_m_s() {
      return again.speed_m_s() - first.speed_m_s();
    }

    /** What the change may be without meaning anything, m/s. */
    public double allowed_m_s() {
      return first.apart_m_s(again);
    }

    /** Whether more has changed than the uncertainty allows. */
    public boolean isTooLarge() {
      return first.differs(again);
    }
  }

  /** Of visits in the order in which they were made; of a place visited again the first counts. */
  public static Survey of(List<Visit> visits) {
    List<Visit> settled = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Visit visit : visits) {
      if (visit.speed().isPresent() && seen.add(visit.place())) {
        settled.add(visit);
      }
    }
    List<Ranked> ranked =
        settled.stream()
            .map(visit -> ranked(visit, settled))
            .sorted(
                Comparator.comparingInt(Ranked::rank).thenComparing(r -> -r.speed().speed_m_s()))
            .toList();
    List<Visit> unsettled = visits.stream().filter(v -> v.speed().isEmpty()).toList();
    return new Survey(ranked, unsettled, drift(visits));
  }

  private static Ranked ranked(Visit visit, List<Visit> all) {
    StretchMean speed = visit.speed().orElseThrow();
    long faster =
        all.stream()
            .map(other -> other.speed().orElseThrow())
            .filter(other -> other.speed_m_s() > speed.speed_m_s() && other.differs(speed))
            .count();
    return new Ranked(1 + (int) faster, visit, speed);
  }

  private static Optional<Drift> drift(List<Visit> visits) {
    if (visits.isEmpty() || visits.get(0).speed().isEmpty()) {
      return Optional.empty();
    }
    Visit first = visits.get(0);
    return visits.stream()
        .skip(1)
        .filter(v -> v.place().equals(first.place()))
        .flatMap(v -> v.speed().stream())
        .reduce((one, later) -> later)
        .map(again -> new Drift(first.place(), first.speed().orElseThrow(), again));
  }
}
