package faintwind.guide;

import faintwind.guide.checklist.Bench.Mark;
import faintwind.guide.checklist.BenchFact;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.ProbePoint;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Recorded;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.Tips;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Walks the steps of a checklist in order and keeps book of what is true on the bench. A step that
 * asks for something that is not so, and a reading that nobody could take then, is a problem.
 */
public final class BenchWalk {
  private static final Set<BenchFact> AT_FIRST = EnumSet.of(BenchFact.BORES_EMPTY);
  private static final String NOT = "not ";

  private final EnumSet<BenchFact> facts = EnumSet.copyOf(AT_FIRST);
  private final List<Problem> problems = new ArrayList<>();

  private BenchWalk() {}

  /** Everything that cannot be done when its turn comes. */
  static List<Problem> problems(Checklist checklist) {
    BenchWalk walk = new BenchWalk();
    checklist.steps().forEach(walk::take);
    return walk.problems;
  }

  /** What is true after a step, by what it leaves. */
  public static Set<BenchFact> after(Set<BenchFact> before, Step step) {
    return with(before, step.order().bench().leaves());
  }

  /** What is true while the readings of a step are taken. */
  public static Set<BenchFact> during(Set<BenchFact> before, Step step) {
    return with(after(before, step), step.order().bench().during());
  }

  private static Set<BenchFact> with(Set<BenchFact> before, List<Mark> marks) {
    Set<BenchFact> facts = EnumSet.noneOf(BenchFact.class);
    facts.addAll(before);
    for (Mark mark : marks) {
      if (mark.holds()) {
        facts.add(mark.fact());
      } else {
        facts.remove(mark.fact());
      }
    }
    return facts;
  }

  /** What is true before the first step. */
  public static Set<BenchFact> atFirst() {
    return EnumSet.copyOf(AT_FIRST);
  }

  private void take(Step step) {
    for (Mark mark : step.order().bench().asks()) {
      if (facts.contains(mark.fact()) != mark.holds()) {
        problems.add(error("checklist.bench-asks", step, mark.word()));
      }
    }
    Set<BenchFact> after = after(facts, step);
    become(during(facts, step));
    step.asks().readings().forEach(reading -> take(step, reading));
    become(after);
  }

  private void become(Set<BenchFact> now) {
    facts.clear();
    facts.addAll(now);
  }

  private void take(Step step, Reading reading) {
    reading.tips().ifPresent(tips -> tips(step, reading, tips));
    reading.recorded().ifPresent(kind -> recorded(step, reading, kind));
  }

  private void tips(Step step, Reading reading, Tips tips) {
    for (ProbePoint point : List.of(tips.one(), tips.other())) {
      if (!isBare(point)) {
        problems.add(error("checklist.bench-not-bare", step, point.word(), reading.id()));
      }
    }
    boolean ohms = reading.unit().endsWith("Ω");
    if (ohms) {
      without(step, reading, BenchFact.POWER_ON);
      without(step, reading, BenchFact.SUPPLY_ON_CABLE);
      if (isOfSignal(tips.one()) || isOfSignal(tips.other())) {
        without(step, reading, BenchFact.LOGGER_ON_CABLE);
      }
    } else if (tips.one() == ProbePoint.FUSED_PLUS) {
      without(step, reading, BenchFact.POWER_ON);
    } else {
      with(step, reading, BenchFact.POWER_ON);
    }
  }

  private static boolean isOfSignal(ProbePoint point) {
    return switch (point) {
      case LOOP_PLUS,
          LOOP_MINUS,
          JUNCTION_1,
          JUNCTION_2,
          SIGNAL_PLUS_NEAR,
          SIGNAL_PLUS_BALLS,
          SIGNAL_MINUS_NEAR,
          SIGNAL_MINUS_BALLS ->
          true;
      case LEG_A,
          LEG_B,
          LEAD_A,
          LEAD_B,
          HEATER_BODY,
          HEATED_BALL,
          REFERENCE_BALL,
          PLATE,
          HEATER_PLUS_NEAR,
          HEATER_PLUS_BALLS,
          HEATER_MINUS_NEAR,
          HEATER_MINUS_BALLS,
          SUPPLY_PLUS,
          FUSED_PLUS,
          FUSED_MINUS,
          PROOF_1_A,
          PROOF_1_B,
          PROOF_10_A,
          PROOF_10_B,
          TIP_RED,
          TIP_BLACK ->
          false;
    };
  }

  private void recorded(Step step, Reading reading, Recorded kind) {
    with(step, reading, BenchFact.LOGGER_ON_CABLE);
    switch (kind) {
      case ZERO, SCATTER -> without(step, reading, BenchFact.POWER_ON);
      case RISE, DROP, LEVEL -> with(step, reading, BenchFact.POWER_ON);
    }
  }

  private void with(Step step, Reading reading, BenchFact fact) {
    if (!facts.contains(fact)) {
      problems.add(error("checklist.bench-reading", step, fact.word(), reading.id()));
    }
  }

  private void without(Step step, Reading reading, BenchFact fact) {
    if (facts.contains(fact)) {
      problems.add(error("checklist.bench-reading", step, NOT + fact.word(), reading.id()));
    }
  }

  /** Whether a tip of the meter finds metal at a point now. */
  private boolean isBare(ProbePoint point) {
    return switch (point) {
      case LEG_A, LEG_B -> facts.contains(BenchFact.LEGS_BARE);
      case LEAD_A, LEAD_B, HEATER_BODY -> facts.contains(BenchFact.LEAD_ENDS_BARE);
      case HEATED_BALL, REFERENCE_BALL -> facts.contains(BenchFact.BALL_SPOT_BARE);
      case LOOP_PLUS, LOOP_MINUS, JUNCTION_1, JUNCTION_2 ->
          facts.contains(BenchFact.LOOP_ENDS_BARE);
      case HEATER_PLUS_NEAR, HEATER_MINUS_NEAR, SIGNAL_PLUS_NEAR, SIGNAL_MINUS_NEAR ->
          facts.contains(BenchFact.CABLE_NEAR_BARE);
      case HEATER_PLUS_BALLS, HEATER_MINUS_BALLS ->
          facts.contains(BenchFact.CABLE_FAR_BARE) || facts.contains(BenchFact.HEATER_JOINTS_BARE);
      case SIGNAL_PLUS_BALLS, SIGNAL_MINUS_BALLS ->
          facts.contains(BenchFact.CABLE_FAR_BARE) || facts.contains(BenchFact.SIGNAL_JOINTS_BARE);
      case PLATE, PROOF_1_A, PROOF_1_B, PROOF_10_A, PROOF_10_B, TIP_RED, TIP_BLACK -> true;
      case SUPPLY_PLUS -> facts.contains(BenchFact.FUSE_FITTED);
      case FUSED_PLUS, FUSED_MINUS ->
          facts.contains(BenchFact.FUSE_FITTED) && !facts.contains(BenchFact.SUPPLY_ON_CABLE);
    };
  }

  private static Problem error(String id, Step step, String found, String... details) {
    return Problem.error(id, Where.step(step.id()), found, details);
  }
}
