package faintwind.guide;

import faintwind.guide.Situation.DatedSheet;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.message.NumberText;
import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.message.Where;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.physics.sheet.Outcome;
import faintwind.record.Event;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What must hold before there is power on the heater beside the steps that open its gate: a design
 * that can be worked out and says no stop, and a meter proven on a known resistor before and after
 * the readings. Nothing of it can be waived.
 */
final class PowerEvidence {
  private final Checklist checklist;
  private final Situation situation;
  private final Map<String, Double> values;

  PowerEvidence(Checklist checklist, Situation situation, Map<String, Double> values) {
    this.checklist = checklist;
    this.situation = situation;
    this.values = values;
  }

  /** Whether heater power stands on a reading: one of the gate's steps, or one of the supply. */
  static boolean isOfPower(Step step, Reading reading) {
    return isOpener(step)
        || (reading.tips().isPresent() && step.order().behind().contains(Gate.HEATER_POWER));
  }

  private static boolean isOpener(Step step) {
    return step.order().gate().filter(Gate.HEATER_POWER::equals).isPresent();
  }

  /** A resistance at no place of the instrument: one of a known resistor or of the tips alone. */
  static boolean isProof(Step step, Reading reading) {
    return isOpener(step)
        && reading.tips().filter(tips -> !tips.one().isOfProof()).isEmpty()
        && reading.recorded().isEmpty()
        && NumberText.measureTheSame("Ω", reading.unit());
  }

  /** What is missing or says stop; empty where nothing is. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>(design(situation));
    problems.addAll(meter());
    return problems;
  }

  /** The stops of the design in force; a design that is missing or cannot be worked out is one. */
  static List<Problem> design(Situation situation) {
    List<Standing<DesignChosen>> chosen = situation.state().standing(DesignChosen.class);
    Optional<DesignSheet> sheet = situation.sheet();
    if (!chosen.isEmpty() && isLost(chosen, situation.designs())) {
      return List.of(Problem.error("power.design-unreadable", Where.NOWHERE, ""));
    }
    if (sheet.isEmpty()) {
      return List.of(Problem.error("power.no-design", Where.NOWHERE, ""));
    }
    return stops(sheet.get());
  }

  /** Whether the design chosen last has no sheet; those of others say nothing of it. */
  private static boolean isLost(List<Standing<DesignChosen>> chosen, List<DatedSheet> sheets) {
    Standing<DesignChosen> last = chosen.get(chosen.size() - 1);
    if (sheets.stream().anyMatch(sheet -> sheet.entry().isPresent())) {
      return sheets.stream()
          .noneMatch(sheet -> sheet.entry().filter(last.entry()::equals).isPresent());
    }
    return sheets.size() < chosen.size()
        && sheets.stream()
            .reduce((a, b) -> b)
            .filter(sheet -> sheet.since().equals(last.at()))
            .isEmpty();
  }

  private static List<Problem> stops(DesignSheet sheet) {
    List<Outcome> stops =
        sheet.quantities().stream().filter(q -> q.verdict() == DesignVerdict.STOP).toList();
    if (stops.isEmpty()) {
      return List.of();
    }
    List<Problem> problems = new ArrayList<>();
    problems.add(Problem.error("power.design-stops", Where.NOWHERE, String.valueOf(stops.size())));
    stops.stream()
        .flatMap(q -> q.reason().stream())
        .map(p -> p.as(Severity.ERROR))
        .distinct()
        .forEach(problems::add);
    return problems;
  }

  /** Readings that no good proof of the same meter stands before or after. */
  private List<Problem> meter() {
    List<Standing<? extends Event>> lines = situation.state().lines();
    List<Integer> proofs = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).stands() && isGoodProof(lines.get(i))) {
        proofs.add(i);
      }
    }
    List<String> before = new ArrayList<>();
    List<String> after = new ArrayList<>();
    for (Step step : checklist.stepsOfGate(Gate.HEATER_POWER)) {
      for (Reading reading : step.asks().readings()) {
        OptionalInt place =
            isInsulation(step, reading) ? place(step, reading) : OptionalInt.empty();
        place.ifPresent(
            at -> {
              if (proofs.stream().noneMatch(p -> p < at && isSameMeter(p, at))) {
                before.add(reading.label());
              }
              if (proofs.stream().noneMatch(p -> p > at && isSameMeter(at, p))) {
                after.add(reading.label());
              }
            });
      }
    }
    List<Problem> problems = new ArrayList<>();
    unproven("power.meter-not-proven-before", before).ifPresent(problems::add);
    unproven("power.meter-not-proven-after", after).ifPresent(problems::add);
    return problems;
  }

  private static Optional<Problem> unproven(String id, List<String> labels) {
    return labels.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Problem.error(id, Where.NOWHERE, labels.get(0), String.valueOf(labels.size() - 1)));
  }

  private static boolean isInsulation(Step step, Reading reading) {
    return !isProof(step, reading) && NumberText.measureTheSame("Ω", reading.unit());
  }

  /** Where in the journal the entry of a reading stands that counts; empty where there is none. */
  private OptionalInt place(Step step, Reading reading) {
    return situation
        .state()
        .reading(step.id(), reading.id())
        .map(line -> situation.state().place(line.entry()))
        .orElseGet(OptionalInt::empty);
  }

  private boolean isGoodProof(Standing<? extends Event> line) {
    if (!(line.event() instanceof ReadingEntered entered)) {
      return false;
    }
    Optional<Step> step = line.step().flatMap(checklist::step);
    Optional<Reading> reading = step.flatMap(s -> s.reading(entered.reading()));
    return step.isPresent()
        && reading.filter(r -> isProof(step.get(), r) && r.unit().startsWith("M")).isPresent()
        && Verdicts.judge(reading.get(), entered.amount(), line.at(), situation, values)
            .filter(j -> j.verdict() == ReadingVerdict.GOOD)
            .isPresent();
  }

  /** Whether no other meter was chosen between two places of the journal. */
  private boolean isSameMeter(int from, int to) {
    Optional<String> was = Optional.empty();
    for (Standing<MeterChosen> chosen : situation.state().standing(MeterChosen.class)) {
      int at = situation.state().place(chosen.entry()).orElseThrow();
      if (at > from && at <= to && !was.equals(Optional.of(chosen.event().meter()))) {
        return false;
      }
      was = Optional.of(chosen.event().meter());
    }
    return true;
  }
}
