package faintwind.guide;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.StepClock;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.InstrumentState;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is missing, worked out once for one checklist in one situation. Remembers which steps count
 * as done, so that a long chain of needs is walked once. Mutable; for one thread.
 */
final class Requirements {
  static final String CAUTION_OF_PAIR = "gate.caution-of-pair";

  private final Checklist checklist;
  private final Situation situation;
  private final Map<String, Double> values;
  private final Set<String> skipped;
  private final Map<String, Boolean> done = new HashMap<>();
  private final Map<String, Boolean> gates = new HashMap<>();
  private final Map<String, List<Problem>> hindrances = new HashMap<>();
  private final Map<String, List<Problem>> missing = new HashMap<>();
  private final Doubts doubts;
  private Optional<List<Problem>> power = Optional.empty();

  Requirements(Checklist checklist, Situation situation) {
    this.checklist = checklist;
    this.situation = situation;
    this.values = situation.values(checklist);
    this.skipped = skipped(checklist, situation.state());
    this.doubts = new Doubts(checklist, situation);
  }

  /** What a later change made doubtful of a step. */
  List<Problem> doubts(Step step) {
    return doubts.of(step);
  }

  /** Ids of the steps that the answers on record leave out. */
  static Set<String> skipped(Checklist checklist, InstrumentState state) {
    Set<String> ids = new HashSet<>();
    for (Step step : checklist.steps()) {
      for (Question question : step.asks().questions()) {
        answered(state, step, question).ifPresent(choice -> ids.addAll(choice.skips()));
      }
    }
    return ids;
  }

  boolean isSkipped(Step step) {
    return skipped.contains(step.id());
  }

  /** Whether a step is finished with all it needs, or is not needed. */
  boolean isDone(Step step) {
    Boolean known = done.get(step.id());
    if (known != null) {
      return known;
    }
    // a cycle of needs (refused when a checklist is read) must not run for ever
    done.put(step.id(), false);
    boolean is =
        isSkipped(step)
            || (situation.state().finished(step.id()).isPresent() && toFinish(step).isEmpty());
    done.put(step.id(), is);
    return is;
  }

  List<Problem> gate(String gate) {
    List<Problem> reasons = new ArrayList<>();
    List<Step> openers = checklist.stepsOfGate(gate);
    if (openers.isEmpty()) {
      reasons.add(Problem.error("gate.no-step", Where.NOWHERE, gate));
    }
    for (Step step : openers) {
      if (isSkipped(step)) {
        reasons.add(error("gate.not-needed", step, step.title(), step.id()));
      } else if (!isDone(step)) {
        reasons.addAll(toFinish(step));
        if (situation.state().finished(step.id()).isEmpty()) {
          reasons.add(error("gate.not-finished", step, step.title(), step.id()));
        }
      }
    }
    if (gate.equals(Gate.HEATER_POWER)) {
      reasons.addAll(power());
    }
    return reasons;
  }

  /** What no step shows and heater power stands on: design, meter, changes after it was passed. */
  private List<Problem> power() {
    if (power.isEmpty()) {
      power = Optional.of(List.copyOf(findPower()));
    }
    return power.get();
  }

  private List<Problem> findPower() {
    List<Problem> reasons =
        new ArrayList<>(new PowerEvidence(checklist, situation, values).problems());
    Set<String> before = new LinkedHashSet<>();
    for (Step opener : checklist.stepsOfGate(Gate.HEATER_POWER)) {
      before.addAll(checklist.allNeeds(opener));
      before.add(opener.id());
    }
    for (String id : before) {
      checklist
          .step(id)
          .filter(step -> !isSkipped(step))
          .ifPresent(
              step ->
                  doubts.of(step).stream()
                      .map(d -> error(d.id(), step, d.found(), d.details().toArray(new String[0])))
                      .forEach(reasons::add));
    }
    return reasons;
  }

  private boolean isGateOpen(String gate) {
    Boolean known = gates.get(gate);
    if (known != null) {
      return known;
    }
    // as with needs: a gate that waits for itself stays shut and is not asked for ever
    gates.put(gate, false);
    boolean open = gate(gate).isEmpty();
    gates.put(gate, open);
    return open;
  }

  List<Problem> toBegin(Step step) {
    List<Problem> known = hindrances.get(step.id());
    if (known == null) {
      known = List.copyOf(findHindrances(step));
      hindrances.put(step.id(), known);
    }
    return known;
  }

  private List<Problem> findHindrances(Step step) {
    List<Problem> reasons = new ArrayList<>();
    for (String need : step.order().needs()) {
      checklist
          .step(need)
          .filter(needed -> !isDone(needed))
          .ifPresent(n -> reasons.add(error("gate.step-needed", step, n.title(), n.id())));
    }
    for (String gate : step.order().behind()) {
      if (!isGateOpen(gate)) {
        reasons.add(error("gate.closed." + gate, step, gate));
        if (gate.equals(Gate.HEATER_POWER)) {
          reasons.addAll(power());
        }
      }
    }
    return reasons;
  }

  List<Problem> toFinish(Step step) {
    List<Problem> known = missing.get(step.id());
    if (known == null) {
      known = List.copyOf(findMissing(step));
      missing.put(step.id(), known);
    }
    return known;
  }

  /** That a caution was not read; where some of a pair did, who and how many. */
  private Problem caution(Step step, Caution caution) {
    List<String> readers = situation.state().readers(step.id(), caution.id());
    return readers.isEmpty()
        ? error("gate.caution", step, caution.text(), caution.id())
        : error(
            CAUTION_OF_PAIR,
            step,
            caution.text(),
            caution.id(),
            String.join(", ", readers),
            String.valueOf(readers.size()),
            String.valueOf(situation.state().members()));
  }

  private List<Problem> findMissing(Step step) {
    List<Problem> reasons = new ArrayList<>(toBegin(step));
    for (Caution caution : unread(step, situation)) {
      reasons.add(caution(step, caution));
    }
    for (Question question : step.asks().questions()) {
      question(step, question).ifPresent(reasons::add);
    }
    for (Reading reading : step.asks().readings()) {
      reading(step, reading).ifPresent(reasons::add);
    }
    step.asks()
        .clock()
        .filter(clock -> clock.runs(values))
        .flatMap(clock -> clock(step, clock))
        .ifPresent(reasons::add);
    if (step.asks().photo().isPresent() && !hasPhoto(step)) {
      reasons.add(error("gate.photo", step, step.asks().photo().get()));
    }
    return reasons;
  }

  private static Optional<Question.Choice> answered(
      InstrumentState state, Step step, Question question) {
    return state
        .answer(step.id(), question.id())
        .flatMap(line -> question.choice(line.event().choice()));
  }

  private Optional<Problem> question(Step step, Question question) {
    Optional<Question.Choice> choice = answered(situation.state(), step, question);
    if (choice.isEmpty()) {
      return Optional.of(error("gate.unanswered", step, question.text(), question.id()));
    }
    return choice
        .get()
        .stop(values)
        .map(stop -> error("gate.answer-stops", step, stop, question.id()));
  }

  /** The judgement of the entry of a reading that counts. */
  Optional<Reading.Judgement> judgement(Step step, Reading reading) {
    return situation
        .state()
        .reading(step.id(), reading.id())
        .flatMap(line -> Verdicts.of(reading, line, situation, values));
  }

  private Optional<Problem> reading(Step step, Reading reading) {
    Optional<ReadingVerdict> verdict = judgement(step, reading).map(Reading.Judgement::verdict);
    if (Waivers.counts(step, reading.id(), verdict, situation)) {
      return Optional.empty();
    }
    Optional<String> typed =
        situation.state().reading(step.id(), reading.id()).map(line -> line.event().typed());
    if (typed.isEmpty() && isVoid(step, reading)) {
      return Optional.of(error("gate.reading-void", step, reading.label(), reading.id()));
    }
    if (typed.isEmpty()) {
      return Optional.of(error("gate.reading-missing", step, reading.label(), reading.id()));
    }
    if (verdict.isEmpty()) {
      return Optional.of(error("gate.reading-not-judged", step, reading.label(), reading.id()));
    }
    String id = "gate.reading-" + verdict.get().word();
    return verdict.get() == ReadingVerdict.GOOD
        ? Optional.empty()
        : Optional.of(error(id, step, reading.label(), reading.id(), said(typed.get(), reading)));
  }

  /** As typed; a bare number with the unit that it was asked in. */
  private static String said(String typed, Reading reading) {
    boolean bare = typed.chars().noneMatch(Character::isLetter) && !reading.unit().isEmpty();
    return bare && !typed.contains(reading.unit()) ? typed + "\u00a0" + reading.unit() : typed;
  }

  /** Whether the last entry of a reading is one that has to be taken again. */
  private boolean isVoid(Step step, Reading reading) {
    List<Standing<ReadingEntered>> history = situation.state().history(step.id(), reading.id());
    return !history.isEmpty() && history.get(history.size() - 1).voidCause().isPresent();
  }

  private Optional<Problem> clock(Step step, Step.ClockSpec clock) {
    if (Waivers.counts(step, clock.id(), Optional.empty(), situation)) {
      return Optional.empty();
    }
    Optional<StepClock> running = Verdicts.clock(step, situation);
    if (running.isEmpty()) {
      return Optional.of(error("gate.clock-not-started", step, clock.label(), clock.id()));
    }
    return switch (running.get().stand()) {
      case ENDED -> Optional.empty();
      case RUNNING ->
          Optional.of(
              error(
                  "gate.clock-runs",
                  step,
                  clock.label(),
                  clock.id(),
                  String.valueOf((long) Math.ceil(running.get().left_s() / 60))));
      case TIME_SET_BACK ->
          Optional.of(error("gate.clock-set-back", step, clock.label(), clock.id()));
      case TIME_LEAPT -> Optional.of(error("gate.clock-leapt", step, clock.label(), clock.id()));
    };
  }

  private boolean hasPhoto(Step step) {
    List<Standing<PhotoAdded>> photos = situation.state().standing(PhotoAdded.class, step.id());
    return !photos.isEmpty() || Waivers.counts(step, "photo", Optional.empty(), situation);
  }

  static List<Caution> unread(Step step, Situation situation) {
    return step.cautions().stream()
        .filter(caution -> situation.state().unread(step.id(), caution.id()) > 0)
        .toList();
  }

  private static Problem error(String id, Step step, String found, String... details) {
    return Problem.error(id, Where.step(step.id()), found, details);
  }
}
