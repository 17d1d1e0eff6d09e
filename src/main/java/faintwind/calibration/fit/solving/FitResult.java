package faintwind.calibration.fit.solving;

import faintwind.calibration.Covariance;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Parameter;
import faintwind.calibration.fit.numerics.Minimum;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.setup.RunScatter;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.squares.Optimiser;
import faintwind.calibration.fit.squares.Optimum;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.pool.SessionShown;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.ParameterPrior;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.ClassKnown;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** One fit of one model to all recordings. Read-only once made; not for several threads at once. */
public final class FitResult {
  private static final Optimiser FINE = new Optimiser(200, 1e-6);

  private final Setting setting;
  private final Setup setup;
  private final RunProblem problem;
  private final Solution solution;
  private final Set<String> aside;

  FitResult(Setting setting, Setup setup, RunProblem problem, Solution solution) {
    this(setting, setup, problem, solution, Set.of());
  }

  private FitResult(
      Setting setting, Setup setup, RunProblem problem, Solution solution, Set<String> aside) {
    this.setting = setting;
    this.setup = setup;
    this.problem = problem;
    this.solution = solution;
    this.aside = Set.copyOf(aside);
  }

  /** The same fit, these runs noted as set aside. */
  public FitResult withoutRuns(Set<String> runs) {
    return new FitResult(setting, setup, problem, solution, runs);
  }

  /** Runs whose recordings did not count, because their heat contradicts the others'. */
  public Set<String> aside() {
    return aside;
  }

  /**
   * Where a fit came to rest.
   *
   * @param optimum least squares of the whitened problem
   * @param wander strength of the wandering found
   * @param runScatter standard deviation between runs beyond what was stated, relative
   * @param deviance −2 log likelihood with the priors, without its constant
   */
  public record Solution(Optimum optimum, Wander wander, double runScatter, double deviance) {}

  public Setting setting() {
    return setting;
  }

  public Setup setup() {
    return setup;
  }

  public RunProblem problem() {
    return problem;
  }

  public Solution solution() {
    return solution;
  }

  /** Id of the model. */
  public String model() {
    return setup.layout().model().id();
  }

  /** −2 log likelihood of the recordings with the priors, without its constant; lower is better. */
  public double deviance() {
    return solution.deviance();
  }

  /** Standard deviation between runs beyond their stated speed uncertainty, relative. */
  public double runScatter() {
    return solution.runScatter();
  }

  /** Degrees of freedom of the scatter between runs. */
  public double runFreedom() {
    return RunScatter.freedom(setup);
  }

  /** Draught that the recordings showed, m/s; 0 where no arm was turned. */
  public double draught_m_s() {
    return setup.turns() ? setup.draught().m_s(values()) : 0;
  }

  /** Signal unit, chain, thermocouple and scale. */
  public SignalPath signal() {
    return setting.signal();
  }

  /** Values of all unknowns. */
  public double[] values() {
    return setup.unknowns().values(solution.optimum().point());
  }

  /** Covariance of all unknowns, in their own units. */
  public double[][] covariance() {
    double[] slopes = setup.unknowns().slopes(solution.optimum().point());
    double[][] covariance = solution.optimum().unitCovariance();
    for (int i = 0; i < slopes.length; i++) {
      for (int j = 0; j < slopes.length; j++) {
        covariance[i][j] *= slopes[i] * slopes[j];
      }
    }
    return covariance;
  }

  /** Share of the arm's speed at which air is carried round, with its standard uncertainty. */
  public Uncertain carriedShare() {
    int i = setup.layout().carriedShare();
    double slope = setup.unknowns().slopes(solution.optimum().point())[i];
    double u = slope * Math.sqrt(solution.optimum().unitCovariance()[i][i]);
    return Uncertain.of(values()[i], u);
  }

  /**
   * What was said of that share before the runs, with them or by the record of the arm; empty where
   * nothing was.
   */
  public Optional<Uncertain> carriedSaid() {
    boolean said = setup.statedShare() || setting.known().arm().isPresent();
    if (!said || !setup.turns()) {
      return Optional.empty();
    }
    Unknown prior = setup.unknowns().get(setup.layout().carriedShare());
    return Optional.of(Uncertain.of(prior.value(0), prior.spread()));
  }

  /** What it says of the unknowns that all runs share, where instruments can be pooled by it. */
  public SessionShown shown() {
    double[] point = solution.optimum().point();
    double[][] unit = solution.optimum().unitCovariance();
    int size = setup.layout().shared();
    double[][] covariance = new double[size][size];
    List<Unknown> unknowns = IntStream.range(0, size).mapToObj(setup.unknowns()::get).toList();
    List<Double> estimates = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      estimates.add(unknowns.get(i).normal(point[i]));
      for (int j = 0; j < size; j++) {
        covariance[i][j] = unit[i][j] * unknowns.get(i).spread() * unknowns.get(j).spread();
      }
    }
    return new SessionShown(
        unknowns.stream().map(Unknown::name).toList(),
        estimates,
        Covariance.of(covariance),
        unknowns.stream().map(each -> each.normal(0)).toList(),
        Covariance.of(setup.unknowns().believed(size)));
  }

  /**
   * What it costs the recordings to agree with the others of a class: chi-squared, all weights as
   * this fit settled them, since a fit that may count its own speeds for less, or take its loss for
   * wilder, agrees with anything. It may lie a little below 0, as a fit rests at the median of the
   * carried share.
   */
  public double costOfAgreeing(ClassKnown others, BooleanSupplier cancelled) {
    Setup among = new Setup(setting.among(others), setup.layout().model());
    among.free(setup.freed());
    setup
        .speedColumns()
        .values()
        .forEach(i -> among.unknowns().replace(i, setup.unknowns().get(i)));
    RunProblem agreeing = among.problem().withWeightsOf(problem);
    double[] start = among.unknowns().convert(values());
    return Minimum.of(FINE, agreeing, start, cancelled).sumOfSquares()
        - solution.optimum().sumOfSquares();
  }

  /** The formula with its covariance, the allowance for its form included. */
  public FormulaFit formulaFit() {
    int size = setup.layout().formula();
    double[] values = values();
    double[][] all = covariance();
    double[][] covariance = new double[size][size];
    for (int i = 0; i < size; i++) {
      System.arraycopy(all[i], 0, covariance[i], 0, size);
    }
    FormAllowance.add(setup, values, covariance);
    return formula(values, covariance);
  }

  private FormulaFit formula(double[] values, double[][] covariance) {
    List<Parameter> parameters = new ArrayList<>();
    List<ParameterPrior> quantities = new ArrayList<>(setup.layout().model().quantities());
    quantities.addAll(ThermalPath.quantities(setting.signal().unit().symbol()));
    for (int i = 0; i < quantities.size(); i++) {
      ParameterPrior quantity = quantities.get(i);
      parameters.add(
          new Parameter(quantity.name(), values[i], Math.sqrt(covariance[i][i]), quantity.unit()));
    }
    return new FormulaFit(
        model(),
        setup.layout().model().equationKey(),
        parameters,
        Covariance.of(covariance),
        setting.referenceAir(),
        setting.ball_m());
  }

  /** The formula ready for use. */
  public Formula formula() {
    return Formula.of(formulaFit(), signal());
  }
}
