package faintwind.calibration.plan;

import faintwind.calibration.Cancelled;
import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.fit.foretelling.ExpectedResponse;
import faintwind.calibration.fit.foretelling.ExpectedUncertainty;
import faintwind.calibration.fit.foretelling.Knowledge;
import faintwind.calibration.fit.foretelling.PlannedFit;
import faintwind.calibration.fit.setup.CarriedKnown;
import faintwind.calibration.run.Run;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Plans a turntable session: among the speeds that arm, beat and cable can carry, those that make
 * the mean relative uncertainty over the wanted range least, as {@link PlannedFit} expects it; and
 * among the paces that fit into the time, the one that promises most.
 */
public final class Planner {
  /** Two time constants are as good as four; one is not. */
  private static final List<Double> CONSTANTS = List.of(2.0, 1.5, 3.0);

  private static final List<Double> RESTS_S = List.of(150.0, 120.0);
  private static final List<Double> WARM_UPS = List.of(5.0, 4.0, 3.0);

  private final PlanRequest request;
  private final BooleanSupplier cancelled;
  private final PlannedFit fit;
  private final Candidates candidates;
  private final double slow;
  private final Map<Pace, Palette> palettes = new HashMap<>();

  private Planner(PlanRequest request, BooleanSupplier cancelled) {
    this.request = request;
    this.cancelled = cancelled;
    Response response = request.response();
    this.fit =
        new PlannedFit(
            new ExpectedResponse(
                response.still_s().nominal(),
                response.breeze_s().nominal(),
                response.still_K(),
                response.noise_K() * Math.sqrt(response.step_s() / OwnChoices.STEP_S)),
            request.arm().radii_m(),
            request.asymmetry(),
            request.uCarried().isPresent()
                ? CarriedKnown.stated(request.uCarried().getAsDouble())
                : CarriedKnown.byRecordings());
    this.candidates = new Candidates(request, fit);
    this.slow = Math.min(1.25, response.still_s().high() / response.still_s().nominal());
  }

  /**
   * The staircase and, where it fits, the separate runs.
   *
   * @param request what is wanted, what there is
   * @param cancelled asked at every step
   * @return refused where arm, beat, way or time cannot carry a plan, with what would fit
   * @throws Cancelled where {@code cancelled} says so
   */
  public static Checked<PlanChoice> plan(PlanRequest request, BooleanSupplier cancelled) {
    Planner planner = new Planner(request, cancelled);
    List<Problem> refusals =
        new ArrayList<>(PlanRules.refusals(request, planner.candidates, planner.fit));
    if (!refusals.isEmpty()) {
      return Checked.refused(refusals);
    }
    Optional<Plan> staircase = planner.best(Plan.Form.STAIRCASE);
    if (staircase.isEmpty()) {
      return Checked.refused(List.of(PlanRules.noTime(request, planner.shortest_s())));
    }
    Optional<Plan> separate = planner.best(Plan.Form.SEPARATE);
    PlanChoice choice = new PlanChoice(staircase.get(), separate);
    return Checked.ok(choice, PlanRules.notes(request, planner.candidates, choice));
  }

  /** Candidates at a pace with what each would bring. */
  private record Palette(List<Candidate> candidates, List<Knowledge> knowledge) {}

  private Optional<Plan> best(Plan.Form form) {
    Optional<Plan> best = Optional.empty();
    for (Pace pace : paces()) {
      check();
      Optional<Plan> plan = most(form, pace);
      if (plan.isPresent()
          && (best.isEmpty() || plan.get().promise().mean() < best.get().promise().mean() * 0.99)) {
        best = plan;
      }
    }
    return best;
  }

  /** Without a limit the usual pace; with one, every pace that may fit into it. */
  private List<Pace> paces() {
    double still_s = slow * fit.timeConstant_s(0);
    if (limit_s() == Double.POSITIVE_INFINITY) {
      return List.of(
          new Pace(slow * CONSTANTS.get(0), RESTS_S.get(0), minutes(WARM_UPS.get(0) * still_s)));
    }
    List<Pace> paces = new ArrayList<>();
    for (double constants : CONSTANTS) {
      for (double rest_s : RESTS_S) {
        for (double warmUps :
            request.wish().time().lesson().isPresent() ? WARM_UPS.subList(0, 1) : WARM_UPS) {
          paces.add(new Pace(slow * constants, rest_s, minutes(warmUps * still_s)));
        }
      }
    }
    return paces;
  }

  private static double minutes(double seconds) {
    return 60 * Math.ceil(seconds / 60);
  }

  /** Time there is in all, s. */
  private double limit_s() {
    PlanWish.Time time = request.wish().time();
    double limit = time.available_s().orElse(Double.POSITIVE_INFINITY);
    limit = Math.min(limit, request.arm().way().battery_s().orElse(Double.POSITIVE_INFINITY));
    return time.lesson().isPresent()
        ? Math.min(limit, time.lesson().get().most() * time.lesson().get().length_s())
        : limit;
  }

  /** The plan of a pace with the most speeds that fit into the time. */
  private Optional<Plan> most(Plan.Form form, Pace pace) {
    Palette palette = palette(pace);
    boolean free = limit_s() == Double.POSITIVE_INFINITY;
    int most =
        Math.min(
            free ? OwnChoices.USUAL_SPEEDS : OwnChoices.MOST_SPEEDS, palette.candidates().size());
    for (int some = most; some >= OwnChoices.FEWEST_SPEEDS; some--) {
      if (shortestOf(palette, some, pace, form) > limit_s()) {
        continue;
      }
      List<Candidate> chosen = choose(palette, some);
      List<PlannedStep> steps = Schedule.of(chosen, request, fit, pace, form);
      if (fits(steps)) {
        return Optional.of(new Plan(form, steps, promise(steps)));
      }
    }
    return quickest(palette, pace, form);
  }

  /** The fewest speeds, those that take least time, where nothing better fits. */
  private Optional<Plan> quickest(Palette palette, Pace pace, Plan.Form form) {
    List<Candidate> quick = quickest(palette);
    if (quick.size() < OwnChoices.FEWEST_SPEEDS) {
      return Optional.empty();
    }
    List<PlannedStep> steps = Schedule.of(quick, request, fit, pace, form);
    return fits(steps) ? Optional.of(new Plan(form, steps, promise(steps))) : Optional.empty();
  }

  private static List<Candidate> quickest(Palette palette) {
    return palette.candidates().stream()
        .sorted(Comparator.comparingDouble(Candidate::spin_s))
        .limit(OwnChoices.FEWEST_SPEEDS)
        .toList();
  }

  /** No plan with so many speeds is shorter than this, s. */
  private static double shortestOf(Palette palette, int some, Pace pace, Plan.Form form) {
    double spins =
        palette.candidates().stream().mapToDouble(Candidate::spin_s).sorted().limit(some).sum();
    return form == Plan.Form.STAIRCASE ? spins + some * pace.rest_s() : spins;
  }

  private boolean fits(List<PlannedStep> steps) {
    double total_s = steps.stream().mapToDouble(PlannedStep::duration_s).sum();
    int lessons = steps.stream().mapToInt(PlannedStep::lesson).max().orElse(1);
    Optional<PlanWish.Lesson> lesson = request.wish().time().lesson();
    boolean longest =
        lesson.isEmpty() || steps.stream().allMatch(s -> s.end_s() <= lesson.get().length_s() - 60);
    return total_s <= limit_s() && longest && (lesson.isEmpty() || lessons <= lesson.get().most());
  }

  private Palette palette(Pace pace) {
    return palettes.computeIfAbsent(
        new Pace(pace.constants(), pace.rest_s(), 0),
        p -> {
          List<Candidate> all = candidates.at(p.constants());
          List<Knowledge> knowledge = new ArrayList<>();
          for (Candidate candidate : all) {
            check();
            knowledge.add(known(alone(candidate, p)));
          }
          return new Palette(all, knowledge);
        });
  }

  /** A candidate by itself: a spin from full temperature and its rest. */
  private List<PlannedStep> alone(Candidate candidate, Pace pace) {
    List<PlannedStep> steps =
        Schedule.of(List.of(candidate), request, fit, pace.withWarmUp(60), Plan.Form.STAIRCASE);
    return steps.stream()
        .filter(s -> s.kind() == PlannedStep.Kind.SPIN || s.kind() == PlannedStep.Kind.REST)
        .toList();
  }

  private List<Candidate> choose(Palette palette, int some) {
    List<Double> looks = reached();
    Knowledge before = fit.beforehand().plus(known(List.of(warmUp())));
    List<Integer> chosen =
        Exchange.choose(
            palette.candidates().size(),
            some,
            choice -> {
              check();
              Knowledge sum = before;
              for (int i : choice) {
                sum = sum.plus(palette.knowledge().get(i));
              }
              return mean(fit.uncertainty(sum), looks);
            });
    return chosen.stream().map(palette.candidates()::get).toList();
  }

  private PlannedStep warmUp() {
    return new PlannedStep(
        PlannedStep.Kind.WARM_UP, 0, 4 * fit.timeConstant_s(0), 1, 1, Optional.empty());
  }

  private Knowledge known(List<PlannedStep> steps) {
    Knowledge sum = Knowledge.none();
    for (List<Run> part : PlannedRuns.parts(steps, fit)) {
      sum = sum.plus(fit.of(part));
    }
    return sum;
  }

  private Promise promise(List<PlannedStep> steps) {
    ExpectedUncertainty expected = fit.uncertainty(fit.beforehand().plus(known(steps)));
    double[] turned =
        steps.stream()
            .flatMap(s -> s.spin().stream())
            .mapToDouble(PlannedSpin::speed_m_s)
            .sorted()
            .toArray();
    double slowest = turned[0];
    double fastest = turned[turned.length - 1];
    List<Double> speeds = looks(slowest, fastest);
    return new Promise(
        mean(expected, reached()),
        speeds.stream().map(v -> new Promise.AtSpeed(v, expected.u(v))).toList(),
        expected.budget(Math.sqrt(slowest * fastest)).stream()
            .sorted(Comparator.comparingDouble(BudgetShare::u_m_s).reversed())
            .toList());
  }

  /** Speeds of the wanted range that this arm can turn: what plans are compared over. */
  private List<Double> reached() {
    List<Candidate> all = candidates.at(OwnChoices.LEAST_CONSTANTS);
    return looks(all.get(0).speed_m_s(), all.get(all.size() - 1).speed_m_s());
  }

  /** Wanted speeds from the slowest to the fastest that are turned: beyond them nothing is said. */
  private List<Double> looks(double slowest, double fastest) {
    PlanWish wish = request.wish();
    return Candidates.spaced(
        Math.max(wish.least_m_s(), slowest), Math.min(wish.most_m_s(), fastest), OwnChoices.LOOKS);
  }

  private static double mean(ExpectedUncertainty expected, List<Double> speeds) {
    return speeds.stream().mapToDouble(expected::u).average().orElseThrow();
  }

  private double shortest_s() {
    Pace pace =
        new Pace(
            slow * CONSTANTS.get(1),
            OwnChoices.LEAST_REST_S,
            minutes(WARM_UPS.get(2) * slow * fit.timeConstant_s(0)));
    List<Candidate> quickest = quickest(palette(pace));
    return Schedule.of(quickest, request, fit, pace, Plan.Form.STAIRCASE).stream()
        .mapToDouble(PlannedStep::duration_s)
        .sum();
  }

  private void check() {
    if (cancelled.getAsBoolean()) {
      throw new Cancelled();
    }
  }
}
