package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Remedy;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** From a pattern of readings to its likely causes. */
public final class Remedies {
  private Remedies() {}

  /**
   * The remedies whose pattern holds, the likeliest first: by rank, and among equals the one whose
   * pattern rests on more readings. A pattern that names a reading that was not taken does not
   * hold.
   */
  public static List<Remedy> of(Checklist checklist, Situation situation) {
    Map<String, Double> values = situation.values(checklist);
    return checklist.remedies().stream()
        .filter(remedy -> remedy.when().holds(values).orElse(false))
        .sorted(
            Comparator.comparingInt(Remedy::rank)
                .thenComparing(remedy -> -remedy.when().names().size()))
        .toList();
  }
}
