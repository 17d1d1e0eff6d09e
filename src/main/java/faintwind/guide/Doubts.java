package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Standing;
import faintwind.record.Standing.Strike;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What a later change made doubtful: a step that was finished with other numbers of the design, or
 * before something it rests on was corrected. Finishing the step again settles it. Remembers what
 * it worked out for one checklist in one situation; mutable, for one thread.
 */
public final class Doubts {
  private static final Set<OutcomeId> BY_CALIBRATION =
      Set.of(
          OutcomeId.SENSITIVITY,
          OutcomeId.JAR_DELTA,
          OutcomeId.JAR_AIR,
          OutcomeId.JAR_SLOPE,
          OutcomeId.JAR_PRESSURE,
          OutcomeId.JAR_PRESSURE_SLOPE);

  private final Checklist checklist;
  private final Situation situation;
  private final Map<String, List<Problem>> known = new HashMap<>();
  private final Map<OptionalInt, Set<String>> changed = new HashMap<>();

  /** Where in the journal the entry stands that brought each sheet; none where it is not known. */
  private final List<OptionalInt> brought;

  /** What a person took back; what is void is asked for anew. */
  private final List<Standing<? extends Event>> struck;

  Doubts(Checklist checklist, Situation situation) {
    this.checklist = checklist;
    this.situation = situation;
    List<OptionalInt> places = situation.bringing().stream().map(situation.state()::place).toList();
    this.brought = places.size() == situation.designs().size() ? places : List.of();
    this.struck =
        situation.state().lines().stream()
            .filter(line -> !line.stands() && line.voidCause().isEmpty())
            .toList();
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
    int end = place(finished.get());
    List<Problem> doubts = new ArrayList<>();
    byDesign(step, finished.get()).ifPresent(doubts::add);
    byCorrection(step, finished.get(), doubts);
    situation.state().lines(step.id()).stream()
        .filter(line -> place(line) > end)
        .forEach(line -> byReading(step, line).ifPresent(doubts::add));
    if (step.order().gate().filter(Gate.HEATER_POWER::equals).isPresent()) {
      List<Standing<? extends Event>> lines = situation.state().lines();
      lines
          .subList(end + 1, lines.size())
          .forEach(line -> byPart(step, line, lines).ifPresent(doubts::add));
    }
    return doubts.stream().distinct().toList();
  }

  private int place(Standing<?> entry) {
    return situation.state().place(entry.entry()).orElseThrow();
  }

  private void byCorrection(Step step, Standing<StepFinished> finished, List<Problem> doubts) {
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
    OptionalInt struck = situation.state().place(strike.entry());
    return struck.isPresent() && struck.getAsInt() > place(finished);
  }

  /** A reading on which heater power stands was typed anew after its step was finished. */
  private static Optional<Problem> byReading(Step step, Standing<? extends Event> line) {
    if (!(line.event() instanceof ReadingEntered entered) || !line.stands()) {
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
    OptionalInt then = designAt(finished);
    int designs = situation.designs().size();
    if (designs == (then.isPresent() ? then.getAsInt() + 1 : 0)) {
      return Optional.empty();
    }
    boolean redesigned = then.isEmpty() || isDesignedSince(finished);
    Set<String> uses = checklist.names(step);
    List<String> names =
        changed.computeIfAbsent(then, this::changed).stream()
            .filter(uses::contains)
            .filter(name -> redesigned || !isKnownByCalibration(name))
            .toList();
    if (names.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        then.isEmpty()
            ? warning("doubt.no-design-then", step, step.title())
            : warning("doubt.design-changed", step, String.join(", ", names)));
  }

  private boolean isDesignedSince(Standing<StepFinished> finished) {
    return situation
        .state()
        .last(DesignChosen.class)
        .filter(design -> place(design) > place(finished))
        .isPresent();
  }

  /** A new calibration says what the jar has to show: nothing was made by the earlier number. */
  private static boolean isKnownByCalibration(String name) {
    return OutcomeId.of(Situation.plainName(name)).filter(BY_CALIBRATION::contains).isPresent();
  }

  /**
   * Which sheet was in the journal when a step was finished, empty for none: by the order of the
   * journal, so that a computer's clock set back hides no change. Where a sheet comes from
   * elsewhere, by time.
   */
  private OptionalInt designAt(Standing<StepFinished> finished) {
    if (brought.isEmpty()) {
      return situation.designAt(finished.at());
    }
    int end = place(finished);
    return IntStream.range(0, brought.size())
        .filter(i -> brought.get(i).isPresent() && brought.get(i).getAsInt() < end)
        .boxed()
        .max(Comparator.comparingInt(i -> brought.get(i).getAsInt()))
        .map(OptionalInt::of)
        .orElseGet(OptionalInt::empty);
  }

  /** The names whose values the sheet in force gives otherwise; every one where there was none. */
  private Set<String> changed(OptionalInt then) {
    DesignSheet now = situation.sheet().orElseThrow();
    return then.isEmpty()
        ? new TreeSet<>(Situation.values(now).keySet())
        : changes(situation.designs().get(then.getAsInt()).sheet(), now);
  }

  private static Set<String> changes(DesignSheet then, DesignSheet now) {
    Map<String, Double> before = others(then, now);
    Map<String, Double> after = others(now, then);
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(after.keySet());
    names.removeIf(
        name ->
            !differs(before.get(name), after.get(name))
                || (isArm(name) && !grew(before.get(name), after.get(name))));
    return names;
  }

  /** What a sheet does not share with another: most of it follows from the same design. */
  private static Map<String, Double> others(DesignSheet sheet, DesignSheet than) {
    Set<Outcome> shared = Collections.newSetFromMap(new IdentityHashMap<>());
    shared.addAll(than.quantities());
    return Situation.values(
        new DesignSheet(sheet.quantities().stream().filter(q -> !shared.contains(q)).toList()));
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
    return b > (1 + OwnChoices.ARM_MORE) * a;
  }

  private static boolean differs(@Nullable Double a, @Nullable Double b) {
    if (a == null || b == null) {
      return !Objects.equals(a, b);
    }
    return Math.abs(a - b) > OwnChoices.SAME_NUMBER * Math.max(Math.abs(a), Math.abs(b));
  }
}
