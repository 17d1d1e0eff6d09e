package faintwind.calibration.fit.foretelling;

import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.setup.CarriedKnown;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.ArmSpeed;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.run.Uncertain;
import faintwind.physics.AirState;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What a fit will know after runs that are not made yet: the information JᵀWJ of the very problem
 * that {@link FitToRuns} solves, at the values expected of the instrument (Fisher information; J by
 * the fit's own integration, W by the wandering that the fit assumes before any recording). Nothing
 * in it is fitted to a bench; the doubts about form and time are own choices, no source, their
 * digits good to about a fifth.
 *
 * <p>The unknowns of a run or a recording (start, delays, its own speed error) are integrated out;
 * what is left belongs to the formula, the carried air, each radius of the arm, and the asymmetry
 * of the two directions.
 */
public final class PlannedFit {
  /** Scatter between runs as fits of virtual builds find it (own choice, no source). */
  private static final double RUN_SCATTER = 0.0053;

  /** Share by which heat that glue and resistor take may differ between quick and slow changes. */
  private static final double TIME_DOUBT = 0.06;

  /** Spread of the mixing exponent about 3: builds differ less than the fit's wide prior. */
  private static final double MIXING_SPREAD = 0.16;

  /** A plan counts on a room that was made quiet (own choice, no source). */
  private static final double DRAUGHT_SPREAD_M_S = 0.002;

  private static final int CONDUCTION = 0;
  private static final int LEADS = 3;
  private static final int RADIATION = 4;
  private static final int MIXING = 6;

  private final ExpectedResponse expected;
  private final ExpectedFormula formula;
  private final List<Double> radii_m;
  private final double[] beforehand;
  private final CarriedKnown carried;

  /**
   * A fit to come, of an instrument on an arm.
   *
   * @param expected what is expected of the instrument
   * @param radii_m every radius that a run may use, m
   * @param asymmetry standard deviation of half the relative difference between the directions
   * @param carried how the carried air will be known
   */
  public PlannedFit(
      ExpectedResponse expected, List<Uncertain> radii_m, double asymmetry, CarriedKnown carried) {
    this.expected = expected;
    this.radii_m = radii_m.stream().map(Uncertain::value).toList();
    this.formula = new ExpectedFormula(expected);
    this.carried = carried;
    this.beforehand = beforehand(radii_m, asymmetry);
  }

  private double[] beforehand(List<Uncertain> radii, double asymmetry) {
    Series few = Series.of(new double[] {0, 4, 8}, new double[] {0, 0, 0});
    Setup setup = setup(List.of(still("before", few)));
    double[] slopes = slopes(setup);
    int shared = setup.layout().shared();
    double[] spreads = Arrays.copyOf(slopes, shared + radii.size() + FormDoubt.NODES);
    spreads[MIXING] = MIXING_SPREAD;
    spreads[setup.layout().carriedShare()] = carried.spread();
    for (int i = 0; i < radii.size(); i++) {
      spreads[shared + i] = radii.get(i).u().orElse(ArmSpeed.RADIUS_U_M) / radii.get(i).value();
    }
    spreads[setup.layout().asymmetry()] = asymmetry;
    spreads[setup.layout().draught()] = DRAUGHT_SPREAD_M_S;
    for (int i = 0; i < FormDoubt.NODES; i++) {
      spreads[shared + radii.size() + i] = FormDoubt.SPREAD;
    }
    return spreads;
  }

  private static Run still(String name, Series signal) {
    Recording recording = Recording.of(SignalUnit.DELTA_K, signal);
    return new Run(
        name,
        RunKind.STILL,
        name,
        recording,
        RunConditions.NONE,
        Optional.empty(),
        Optional.empty());
  }

  /** Time constant expected at a speed, s. */
  public double timeConstant_s(double speed_m_s) {
    return formula.timeConstant_s(speed_m_s);
  }

  /** Difference expected at rest at a speed, K. */
  public double steadyDelta_K(double speed_m_s) {
    return formula.steadyDelta_K(speed_m_s);
  }

  /** What is known before any run: the fit's own priors. */
  public Knowledge beforehand() {
    RealMatrix prior = new Array2DRowRealMatrix(beforehand.length, beforehand.length);
    for (int i = 0; i < beforehand.length; i++) {
      prior.setEntry(i, i, 1 / (beforehand[i] * beforehand[i]));
    }
    return new Knowledge(prior);
  }

  /**
   * Relative standard uncertainty of the air speeds that a calibration gives.
   *
   * @param known everything known, {@link #beforehand} included
   */
  public ExpectedUncertainty uncertainty(Knowledge known) {
    return new ExpectedUncertainty(formula, known.settled(), beforehand, carried);
  }

  /**
   * What the runs of one recording, or of one part of it, add.
   *
   * @param runs rows of a runs table that share one file; the signals of their recordings need not
   *     be right, only their times and the difference they begin with
   */
  public Knowledge of(List<Run> runs) {
    Setup setup = setup(runs);
    settleScatter(setup);
    double[] x = point(setup);
    RunProblem problem = setup.problem();
    problem.whiten(x, Wander.FIRST);
    RealMatrix r = new Array2DRowRealMatrix(problem.linearise(x).jacobian, false);
    RealMatrix data = r.transpose().multiply(r);
    for (int i = 0; i < x.length; i++) {
      data.addToEntry(i, i, -1);
    }
    return reduced(setup, data, runs);
  }

  private Setup setup(List<Run> runs) {
    Setting setting = Setting.ahead(runs, expected.noise_K(), expected.still_K());
    return new Setup(setting, new PhysicsShaped(AirState.ROOM));
  }

  private double[] point(Setup setup) {
    double[] values = setup.unknowns().values(new double[setup.unknowns().size()]);
    formula.putInto(values);
    return setup.unknowns().convert(values);
  }

  private double[] slopes(Setup setup) {
    return setup.unknowns().slopes(point(setup));
  }

  private static void settleScatter(Setup setup) {
    setup
        .speedColumns()
        .forEach(
            (run, column) -> {
              double spread = Math.hypot(setup.statedSpread(run), RUN_SCATTER);
              setup.unknowns().replace(column, Unknown.linear("speed " + run, 0, spread));
            });
  }

  /** Kept unknowns in their own units; the others, with their priors, are integrated out. */
  private Knowledge reduced(Setup setup, RealMatrix data, List<Run> runs) {
    int shared = setup.layout().shared();
    int all = data.getRowDimension();
    int kept = beforehand.length;
    double[] slopes = slopes(setup);
    Map<Integer, Integer> radius = new LinkedHashMap<>();
    setup.radiusColumns().forEach((r, column) -> radius.put(column, radii_m.indexOf(r)));
    int size = kept + all - shared - radius.size() + 1;
    RealMatrix into = new Array2DRowRealMatrix(all, size);
    int own = kept;
    for (int i = 0; i < all; i++) {
      Integer which = radius.get(i);
      if (i < shared) {
        into.setEntry(i, i, 1 / slopes[i]);
      } else if (which != null) {
        into.setEntry(i, shared + which, 1 / slopes[i]);
      } else {
        into.setEntry(i, own++, 1);
      }
    }
    addTimeDoubt(setup, into, size - 1);
    addForm(setup, runs, into, kept - FormDoubt.NODES);
    RealMatrix whole = into.transpose().multiply(data).multiply(into);
    for (int i = kept; i < size; i++) {
      whole.addToEntry(i, i, 1);
    }
    return Knowledge.leavingOut(whole, kept);
  }

  /**
   * A heat capacity that is not quite the same for quick and slow changes stretches the time of a
   * recording: every rate (heating, conduction, leads, radiation) changes by the same share.
   */
  private void addTimeDoubt(Setup setup, RealMatrix into, int column) {
    double[] slopes = slopes(setup);
    double[] values = setup.unknowns().values(point(setup));
    int heating = setup.layout().path(ThermalPath.HEATING);
    for (int i : new int[] {CONDUCTION, LEADS, RADIATION, heating}) {
      into.setEntry(i, column, TIME_DOUBT * values[i] / slopes[i]);
    }
  }

  /** The doubt about the formula's form moves a run's speed as its own error does. */
  private static void addForm(Setup setup, List<Run> runs, RealMatrix into, int column) {
    for (Run run : runs) {
      Integer speed = setup.speedColumns().get(run.name());
      if (speed != null && run.kind() == RunKind.SPIN) {
        double spread = setup.unknowns().get(speed).spread();
        double[] doubt = FormDoubt.at(run.arm().orElseThrow().speed_m_s());
        for (int i = 0; i < doubt.length; i++) {
          into.setEntry(speed, column + i, doubt[i] / spread);
        }
      }
    }
  }
}
