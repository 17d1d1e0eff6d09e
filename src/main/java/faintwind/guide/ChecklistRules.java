package faintwind.guide;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Remedy;
import faintwind.guide.checklist.Step;
import faintwind.message.NumberText;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.ReadingVerdict;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What must hold for a checklist beyond its form, so that it can be worked through to its end. */
public final class ChecklistRules {
  /** Gates before what can hurt someone: a checklist without one of them is refused. */
  private static final List<String> NEEDED =
      List.of(Gate.HEATER_POWER, Gate.FIRST_SPIN, Gate.FIRST_FIELD_LOG);

  private static final Set<String> GATES =
      Set.of(Gate.HEATER_POWER, Gate.FIRST_SPIN, Gate.FIRST_FIELD_LOG, Gate.HOME_PLATING);

  private ChecklistRules() {}

  /** Every breach: ids that come twice, unknown names, cycles, steps that can never be begun. */
  public static List<Problem> problems(Checklist checklist) {
    List<Problem> problems = new ArrayList<>();
    for (String gate : NEEDED) {
      if (!checklist.gates().contains(gate)) {
        problems.add(Problem.error("checklist.gate-missing", Where.file("checklist.json"), gate));
      }
    }
    ids(checklist, problems);
    Set<String> readings = new HashSet<>();
    checklist.steps().forEach(s -> s.asks().readings().forEach(r -> readings.add(r.name())));
    checklist.steps().forEach(s -> s.asks().readings().forEach(r -> readings.add(r.errorName())));
    checklist.steps().forEach(s -> s.asks().readings().forEach(r -> readings.add(r.leastName())));
    Set<String> known = new HashSet<>(readings);
    checklist.steps().forEach(step -> known.addAll(answers(step)));
    for (Step step : checklist.steps()) {
      links(checklist, step, problems);
      names(step, known, problems);
      if (checklist.allNeeds(step).contains(step.id())) {
        problems.add(error("checklist.cycle", step, needs(checklist, step)));
      }
    }
    problems.addAll(BenchWalk.problems(checklist));
    for (Remedy remedy : checklist.remedies()) {
      for (String name : new TreeSet<>(remedy.when().names())) {
        if (!readings.contains(name) && !Situation.isSheetName(name)) {
          Where where = Where.file("remedies.json").atColumn(remedy.id());
          problems.add(Problem.error("checklist.unknown-name", where, name));
        }
      }
    }
    return problems;
  }

  private static List<String> answers(Step step) {
    List<String> names = new ArrayList<>();
    for (Question question : step.asks().questions()) {
      for (Question.Choice choice : question.choices()) {
        names.add(step.answerName(question, choice));
      }
    }
    return names;
  }

  private static String needs(Checklist checklist, Step step) {
    return String.join(
        ", ",
        checklist.allNeeds(step).stream()
            .filter(id -> checklist.step(id).isPresent())
            .filter(id -> checklist.allNeeds(checklist.step(id).orElseThrow()).contains(step.id()))
            .sorted()
            .toList());
  }

  private static void ids(Checklist checklist, List<Problem> problems) {
    Set<String> steps = new HashSet<>();
    Set<String> readings = new HashSet<>();
    for (Step step : checklist.steps()) {
      if (!steps.add(step.id())) {
        problems.add(error("checklist.id-twice", step, step.id()));
      }
      for (Reading reading : step.asks().readings()) {
        if (!readings.add(reading.name())) {
          problems.add(error("checklist.id-twice", step, reading.id()));
        }
      }
      twice(step, step.cautions().stream().map(Caution::id).toList(), problems);
      twice(step, step.asks().questions().stream().map(Question::id).toList(), problems);
    }
  }

  private static void twice(Step step, List<String> ids, List<Problem> problems) {
    Set<String> seen = new HashSet<>();
    ids.stream()
        .filter(id -> !seen.add(id))
        .forEach(id -> problems.add(error("checklist.id-twice", step, id)));
  }

  private static void links(Checklist checklist, Step step, List<Problem> problems) {
    List<String> named = new ArrayList<>(step.order().needs());
    step.asks()
        .questions()
        .forEach(question -> question.choices().forEach(choice -> named.addAll(choice.skips())));
    for (String id : named) {
      if (checklist.step(id).isEmpty()) {
        problems.add(error("checklist.unknown-step", step, id));
      }
    }
    List<String> gates = new ArrayList<>(step.order().behind());
    step.order().gate().ifPresent(gates::add);
    for (String gate : gates) {
      if (!GATES.contains(gate)) {
        problems.add(error("checklist.unknown-gate", step, gate, String.join(", ", sorted())));
      } else if (!checklist.gates().contains(gate)) {
        problems.add(error("checklist.gate-never-opens", step, gate));
      }
    }
  }

  /**
   * What protects people in a step and is missing in the copy laid over it: cautions, the gate it
   * helps to open, gates before it, answers that end the way, readings on which heater power stands
   * with what they are judged by.
   */
  public static List<Problem> dropped(Step below, Step above, Where where) {
    List<Problem> problems = new ArrayList<>();
    for (Caution caution : below.cautions()) {
      if (above.caution(caution.id()).isEmpty()) {
        problems.add(Problem.error("checklist.caution-dropped", where, caution.id()));
      }
    }
    Set<String> gates = new TreeSet<>(below.order().behind());
    gates.removeAll(above.order().behind());
    below
        .order()
        .gate()
        .filter(g -> !above.order().gate().equals(below.order().gate()))
        .ifPresent(gates::add);
    gates.forEach(gate -> problems.add(Problem.error("checklist.gate-dropped", where, gate)));
    Set<String> kept = stops(above);
    stops(below).stream()
        .filter(stop -> !kept.contains(stop))
        .forEach(stop -> problems.add(Problem.error("checklist.stop-dropped", where, stop)));
    for (Reading reading : below.asks().readings()) {
      if (PowerEvidence.isOfPower(below, reading) && !isKept(reading, above)) {
        problems.add(Problem.error("checklist.reading-dropped", where, reading.id()));
      }
    }
    return problems;
  }

  /** Words may differ, and another language has others; what counts may not. */
  private static boolean isKept(Reading reading, Step above) {
    return above
        .reading(reading.id())
        .filter(r -> r.unit().equals(reading.unit()) && isAtSamePlace(r, reading))
        .filter(r -> judging(r).equals(judging(reading)))
        .isPresent();
  }

  /** A picture of the proof may be missing: a teacher's page from before there was one. */
  private static boolean isAtSamePlace(Reading above, Reading below) {
    return above.tips().equals(below.tips())
        || (above.tips().isEmpty()
            && below.tips().filter(tips -> tips.one().isOfProof()).isPresent());
  }

  private static List<String> judging(Reading reading) {
    return reading.bands().stream().map(b -> b.verdict() + " " + b.when().text()).toList();
  }

  private static Set<String> stops(Step step) {
    Set<String> stops = new TreeSet<>();
    for (Question question : step.asks().questions()) {
      question.choices().stream()
          .filter(choice -> choice.stop().isPresent())
          .forEach(choice -> stops.add(question.id() + ": " + choice.id()));
      for (Question.Choice choice : question.choices()) {
        choice
            .stopsIf()
            .forEach(s -> stops.add(question.id() + ": " + choice.id() + ", " + s.when().text()));
      }
    }
    return stops;
  }

  private static Set<String> sorted() {
    return new TreeSet<>(GATES);
  }

  private static void names(Step step, Set<String> known, List<Problem> problems) {
    for (String name : step.names()) {
      if (!Situation.isSheetName(name) && !known.contains(name)) {
        problems.add(error("checklist.unknown-name", step, name));
      }
    }
    for (Reading reading : step.asks().readings()) {
      if (!NumberText.knowsUnit(reading.unit())) {
        problems.add(error("checklist.unknown-unit", step, reading.unit(), reading.id()));
      }
      if (reading.bands().stream().noneMatch(b -> b.verdict() == ReadingVerdict.GOOD)) {
        problems.add(error("checklist.never-good", step, reading.id()));
      }
    }
  }

  private static Problem error(String id, Step step, String found, String... details) {
    return Problem.error(id, Where.step(step.id()), found, details);
  }
}
