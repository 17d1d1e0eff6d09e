package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Remedy;
import faintwind.guide.checklist.Step;
import faintwind.record.Event;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.util.ArrayList;
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

  /**
   * What to do about a cause, with its {@code {values}} still in: what cannot be undone stands in
   * it only once the ladder was gone through.
   */
  public static String todo(Checklist checklist, Remedy remedy, Situation situation) {
    Remedy.Words words = remedy.words();
    return words
        .last()
        .filter(last -> isLadderDone(checklist, remedy, situation))
        .map(last -> words.todo() + " " + last)
        .orElse(words.todo());
  }

  /**
   * Whether each bad reading of a pattern was taken again, and the meter proven on a known resistor
   * since it was first seen. Wiping and drying leave no entry; the second reading stands for them.
   */
  static boolean isLadderDone(Checklist checklist, Remedy remedy, Situation situation) {
    List<Standing<ReadingEntered>> seen = new ArrayList<>();
    for (Step step : checklist.steps()) {
      for (Reading reading : step.asks().readings()) {
        if (remedy.when().names().contains(reading.name())
            && isBad(checklist, step, reading, situation)) {
          List<Standing<ReadingEntered>> history =
              situation.state().history(step.id(), reading.id());
          if (history.size() < 2) {
            return false;
          }
          seen.add(history.get(0));
        }
      }
    }
    return !seen.isEmpty()
        && seen.stream().allMatch(first -> isProvenAfter(checklist, first, situation));
  }

  private static boolean isBad(
      Checklist checklist, Step step, Reading reading, Situation situation) {
    return Verdicts.of(checklist, step, reading, situation)
        .filter(judged -> judged.verdict() != ReadingVerdict.GOOD)
        .isPresent();
  }

  private static boolean isProvenAfter(
      Checklist checklist, Standing<ReadingEntered> first, Situation situation) {
    List<Standing<? extends Event>> lines = situation.state().lines();
    return lines.stream()
        .filter(line -> Waivers.isBefore(first, line, lines) && !line.entry().equals(first.entry()))
        .anyMatch(line -> isProof(checklist, line));
  }

  private static boolean isProof(Checklist checklist, Standing<? extends Event> line) {
    return line.stands()
        && line.event() instanceof ReadingEntered entered
        && line.step()
            .flatMap(checklist::step)
            .filter(
                step ->
                    step.reading(entered.reading())
                        .filter(reading -> PowerEvidence.isProof(step, reading))
                        .isPresent())
            .isPresent();
  }
}
