package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Standing;
import faintwind.record.Standing.Strike;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a later change made doubtful: a step that was finished with other numbers of the design, or
 * before something it rests on was corrected. Finishing the step again settles it. Remembers what
 * it worked out for one checklist in one situation; mutable, for one thread.
 */
public final class Doubts {
  private static final double SAME = 1e-3;

  /** The sizes of the arm hold margins of two: a tenth more is none of them (own choice). */
  private static final double ARM_MORE = 0.1;

  private final Checklist checklist;
  private final Situation situation;
  private final Map<String, List<Problem>> known = new HashMap<>();
  private final IdentityHashMap<DesignSheet, Set<String>> changed = new IdentityHashMap<>();
  private final Map<String, Integer> places = new HashMap<>();
  private final List<String> brought;

  Doubts(Checklist checklist, Situation situation) {
    this.checklist = checklist;
    this.situation = situation;
    this.brought = situation.bringing();
    situation.state().lines().forEach(line -> places.putIfAbsent(line.entry(), places.size()));
  }

  /** The doubts about one step; none where it is not finished. */
  public static List<Problem> of(Checklist checklist, Step step, Situation situation) {
    return new Doubts(checklist, situation).of(step);
  }

  /** The same. */
  List<Problem> of(Step step) {
    List<Problem> doubts = known.get(step.id());
    if (doubts == null) {
      doubts = find(step);
      known.put(step.id(), doubts);
    }
    return doubts;
  }

  private List<Problem> find(Step step) {
    Optional<Standing<StepFinished>> finished = situation.state().finished(step.id());
    if (finished.isEmpty()) {
      return List.of();
    }
    List<Problem> doubts = new ArrayList<>();
    byDesign(step, finished.get()).ifPresent(doubts::add);
    byCorrection(step, finished.get(), doubts);
    List<Standing<? extends Event>> lines = situation.state().lines();
    int end = place(finished.get());
    List<Standing<? extends Event>> since = lines.subList(end + 1, lines.size());
    since.forEach(line -> byReading(step, line).ifPresent(doubts::add));
    if (step.order().gate().filter(Gate.HEATER_POWER::equals).isPresent()) {
      since.forEach(line -> byPart(step, line, lines).ifPresent(doubts::add));
    }
    return doubts.stream().distinct().toList();
  }

  private int place(Standing<?> entry) {
    return places.getOrDefault(entry.entry(), -1);
  }

  private void byCorrection(Step step, Standing<StepFinished> finished, List<Problem> doubts) {
    List<Standing<? extends Event>> struck =
        situation.state().lines().stream().filter(line -> !line.stands()).toList();
    if (struck.isEmpty()) {
      return;
    }
    Set<String> needs = checklist.allNeeds(step);
    for (Standing<? extends Event> line : struck) {
      boolean answer =
          line.event() instanceof ReadingEntered || line.event() instanceof QuestionAnswered;
      boolean later = line.strike().filter(strike -> isLater(strike, finished)).isPresent();
      boolean below = line.step().filter(needs::contains).isPresent();
      if (answer && later && below) {
        String id = line.step().orElseThrow();
        String title = checklist.step(id).map(Step::title).orElse(id);
        doubts.add(Problem.warning("doubt.corrected-before", Where.step(step.id()), title, id));
      }
    }
  }

  /** By the clock or by the order of the journal: a clock set back hides nothing. */
  private boolean isLater(Strike strike, Standing<StepFinished> finished) {
    if (strike.at().isAfter(finished.at())) {
      return true;
    }
    return places.getOrDefault(strike.entry(), -1) > place(finished);
  }

  /** A reading on which heater power stands was typed anew after its step was finished. */
  private static Optional<Problem> byReading(Step step, Standing<? extends Event> line) {
    if (!(line.event() instanceof ReadingEntered entered)
        || !line.stands()
        || !line.inStep(step.id())) {
      return Optional.empty();
    }
    return step.reading(entered.reading())
        .filter(reading -> PowerEvidence.isOfPower(step, reading))
        .map(r -> warning("doubt.reading-changed", step, r.label(), entered.typed()));
  }

  /** Another lot of a part was recorded after a step was finished that opens heater power. */
  private Optional<Problem> byPart(
      Step step, Standing<? extends Event> line, List<Standing<? extends Event>> lines) {
    if (!line.stands() || !(line.event() instanceof PartRecorded part)) {
      return Optional.empty();
    }
    boolean other =
        lines.subList(0, place(line)).stream()
            .map(Standing::event)
            .filter(PartRecorded.class::isInstance)
            .map(PartRecorded.class::cast)
            .anyMatch(was -> was.part().equals(part.part()) && !was.lot().equals(part.lot()));
    return other
        ? Optional.of(warning("doubt.part-changed", step, part.part(), part.lot()))
        : Optional.empty();
  }

  private Optional<Problem> byDesign(Step step, Standing<StepFinished> finished) {
    Optional<DesignSheet> then = sheetAt(finished);
    Optional<DesignSheet> now = situation.sheet();
    if (now.isEmpty() || then.equals(now)) {
      return Optional.empty();
    }
    Set<String> among = then.isEmpty() ? changed(now.get()) : changed(then.get(), now.get());
    List<String> changed =
        among.isEmpty()
            ? List.of()
            : checklist.names(step).stream().filter(among::contains).toList();
    if (changed.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        then.isEmpty()
            ? warning("doubt.no-design-then", step, step.title())
            : warning("doubt.design-changed", step, String.join(", ", changed)));
  }

  /**
   * The sheet that was in the journal when a step was finished: by the order of the journal, so
   * that a computer's clock set back hides no change. Where a sheet comes from elsewhere, by time.
   */
  private Optional<DesignSheet> sheetAt(Standing<StepFinished> finished) {
    if (brought.size() != situation.designs().size()) {
      return situation.sheetAt(finished.at());
    }
    Optional<DesignSheet> found = Optional.empty();
    int latest = -1;
    for (int i = 0; i < brought.size(); i++) {
      int place = places.getOrDefault(brought.get(i), Integer.MAX_VALUE);
      if (place < place(finished) && place > latest) {
        latest = place;
        found = Optional.of(situation.designs().get(i).sheet());
      }
    }
    return found;
  }

  /** Every name has changed where there was no sheet. */
  private static Set<String> changed(DesignSheet now) {
    return Situation.values(now).keySet();
  }

  /** The names whose values differ from those of the sheet in force: as many steps ask. */
  private Set<String> changed(DesignSheet then, DesignSheet now) {
    return changed.computeIfAbsent(then, sheet -> changes(Situation.values(sheet), now));
  }

  private static Set<String> changes(Map<String, Double> before, DesignSheet now) {
    Map<String, Double> after = Situation.values(now);
    Set<String> names = new HashSet<>(before.keySet());
    names.addAll(after.keySet());
    names.removeIf(
        name ->
            !differs(before.get(name), after.get(name))
                || (isArm(name) && !grew(before.get(name), after.get(name))));
    return names;
  }

  private static Problem warning(String id, Step step, String found, String... details) {
    return Problem.warning(id, Where.step(step.id()), found, details);
  }

  private static boolean isArm(String name) {
    return OutcomeId.of(name).filter(id -> id.group() == OutcomeId.Group.ARM).isPresent();
  }

  /** A plan that asks for less than what the arm was built for raises no doubt. */
  private static boolean grew(@Nullable Double a, @Nullable Double b) {
    if (a == null || b == null) {
      return !Objects.equals(a, b);
    }
    return b > (1 + ARM_MORE) * a;
  }

  private static boolean differs(@Nullable Double a, @Nullable Double b) {
    if (a == null || b == null) {
      return !Objects.equals(a, b);
    }
    return Math.abs(a - b) > SAME * Math.max(Math.abs(a), Math.abs(b));
  }
}
