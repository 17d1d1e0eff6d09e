package faintwind.guide;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.Calibration;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.checklist.Checklist;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Classroom;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a calibration may be put in force. A rehearsal may not, and one that does not meet the
 * build only where somebody explained it by name and reason. What is open in the build does not
 * stand in the way and is listed.
 */
public final class InForceGate {
  /** What the explanation of a calibration is filed under, before the file's name. */
  public static final String EXPLAINED = "build-agreement:";

  private InForceGate() {}

  /**
   * The answer.
   *
   * @param reasons why not; empty where it may
   * @param open what is open in the build: stops, steps, clocks, waivers
   */
  public record Answer(List<Problem> reasons, List<Problem> open) {
    public Answer {
      reasons = List.copyOf(reasons);
      open = List.copyOf(open);
    }

    public boolean opens() {
      return reasons.isEmpty();
    }
  }

  /**
   * Looks at a calibration and at the build.
   *
   * @param file of the calibration, relative to the instrument's folder
   */
  public static Answer check(
      Checklist checklist, Situation situation, String file, Calibration calibration) {
    return new Answer(reasons(situation.state(), file, calibration), open(checklist, situation));
  }

  /** Why a calibration may not count; empty where it may. */
  public static List<Problem> reasons(InstrumentState state, String file, Calibration calibration) {
    if (isRehearsal(state, calibration)) {
      return List.of(Problem.error("calibration.rehearsal", Where.file(file), ""));
    }
    return disagrees(calibration) && explanation(state, file).isEmpty()
        ? List.of(Problem.error("in-force.build-off", Where.file(file), ""))
        : List.of();
  }

  /** Nothing made by the virtual instrument counts, wherever its files were brought. */
  public static boolean isRehearsal(InstrumentState state, Calibration calibration) {
    return state.rehearsal() || calibration.rehearsal();
  }

  private static boolean disagrees(Calibration calibration) {
    return calibration.evidence().build().filter(BuildAgreement::disagrees).isPresent();
  }

  /** The entry that explains why a calibration counts though it does not meet the build. */
  public static Optional<Standing<Waived>> explanation(InstrumentState state, String file) {
    return state.standing(Waived.class).stream()
        .filter(line -> line.event().what().equals(EXPLAINED + file))
        .filter(line -> refusals(state, line.event().reason(), line.who()).isEmpty())
        .reduce((earlier, later) -> later);
  }

  /** Why an explanation may not be written; empty where it may. In a classroom the teacher's. */
  public static List<Problem> refusals(InstrumentState state, String reason, String who) {
    List<Problem> problems = new ArrayList<>();
    if (!Waivers.isName(who)) {
      problems.add(Problem.error("in-force.no-name", Where.NOWHERE, who));
    }
    if (!Waivers.isReason(reason)) {
      problems.add(Problem.error("in-force.no-reason", Where.NOWHERE, reason));
    }
    state
        .teacher()
        .filter(teacher -> !Classroom.isSame(teacher, who))
        .ifPresent(
            teacher ->
                problems.add(
                    Problem.error("in-force.not-the-teacher", Where.NOWHERE, who, teacher)));
    return problems;
  }

  /** What is open in a build: stops first, then steps, clocks and waivers. */
  public static List<Problem> open(Checklist checklist, Situation situation) {
    return open(checklist, situation.state(), Progress.of(checklist, situation));
  }

  /** The same where the progress is worked out already. */
  public static List<Problem> open(Checklist checklist, InstrumentState state, Progress progress) {
    List<Problem> stops = new ArrayList<>();
    List<Problem> steps = new ArrayList<>();
    for (StepProgress step : progress.steps()) {
      open(step, stops, steps);
    }
    List<Problem> all = new ArrayList<>(stops);
    all.addAll(steps);
    for (Standing<Waived> line : state.standing(Waived.class)) {
      all.add(waiver(checklist, line));
    }
    return all;
  }

  private static void open(StepProgress step, List<Problem> stops, List<Problem> steps) {
    Where where = Where.step(step.step().id());
    String title = step.step().title();
    for (Problem reason : step.reasons()) {
      if (reason.id().equals("gate.reading-stop") || reason.id().equals("gate.answer-stops")) {
        stops.add(Problem.warning("open.stop", where, title, reason.found()));
      }
    }
    if (step.state() == StepState.WAITING) {
      steps.add(Problem.warning("open.clock", where, title));
    } else if (!step.state().settled() && !(step.reasons().isEmpty() && step.doubts().isEmpty())) {
      steps.add(Problem.warning("open.step", where, title));
    }
  }

  private static Problem waiver(Checklist checklist, Standing<Waived> line) {
    String title =
        line.step().flatMap(checklist::step).map(step -> step.title()).orElse(line.event().what());
    String id = line.event().what().startsWith(EXPLAINED) ? "open.explained" : "open.waiver";
    String what = line.event().what().replace(EXPLAINED, "");
    return Problem.warning(id, Where.NOWHERE, title, what, line.who(), line.event().reason());
  }
}
