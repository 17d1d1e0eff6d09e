package faintwind.calibration.response;

import faintwind.calibration.Calibration;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalPath;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The straight-line method as a first look: the slope of the signal just after the arm starts,
 * against the arm's speed, forced through zero. It holds only near full difference and near one
 * speed; it is shown beside the formula with its error, and never written as a calibration.
 *
 * @param slope_per_m slope per speed, signal unit per metre
 * @param points the runs it is drawn through
 * @param errors its relative error at speeds of interest, against the formula
 */
public record StraightLineLook(double slope_per_m, List<Point> points, List<Misreading> errors) {
  private static final List<Double> SPEEDS = List.of(0.1, 0.3, 1.0, 3.0);

  /** Difference at the start over the full one (own choice; the stretch after it is ours too). */
  private static final double NEAR_FULL = 0.9;

  private static final double FROM_S = 12;
  private static final double TO_S = 42;

  public StraightLineLook {
    points = List.copyOf(points);
    errors = List.copyOf(errors);
  }

  /**
   * One run.
   *
   * @param run name
   * @param speed_m_s speed of the arm
   * @param slope_per_s fall of the signal just after the start, signal unit per second
   */
  public record Point(String run, double speed_m_s, double slope_per_s) {}

  /**
   * What the straight line reads at a speed.
   *
   * @param speed_m_s true air speed
   * @param relative its reading over that, less one
   */
  public record Misreading(double speed_m_s, double relative) {}

  /** The look at the runs that a calibration was made from. */
  public static StraightLineLook of(Calibration calibration, List<Run> runs) {
    Formula formula = Formula.of(calibration);
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    Fitted fit = new Fitted(formula, air, calibration.signal());
    List<Point> points = new ArrayList<>();
    for (Run run : runs) {
      run.arm()
          .ifPresent(
              arm -> {
                Series signal =
                    run.recording()
                        .signal()
                        .window(arm.spinStart_s() + FROM_S, arm.spinStart_s() + TO_S);
                if (signal.size() >= 3 && nearFull(fit, run, arm.spinStart_s())) {
                  double fall = -slope(signal) * Math.signum(fit.signal.perKelvin());
                  points.add(new Point(run.name(), arm.speed_m_s(), fall));
                }
              });
    }
    double line = line(points);
    List<Misreading> errors = new ArrayList<>();
    for (double speed : SPEEDS) {
      errors.add(new Misreading(speed, line > 0 ? foretold(fit, speed) / line / speed - 1 : 0));
    }
    return new StraightLineLook(line, points, errors);
  }

  private record Fitted(Formula formula, AirPoint air, SignalPath signal) {
    double still_K() {
      return formula.steadyDelta_K(0, signal.supply_V(), air);
    }
  }

  /** The method asks for a start near the full difference of still air. */
  private static boolean nearFull(Fitted fit, Run run, double start_s) {
    double signal = run.recording().signal().at(start_s);
    double full = fit.formula.signal(fit.still_K(), fit.air.air_K());
    double zero = fit.formula.path().offset();
    return (signal - zero) / (full - zero) > NEAR_FULL;
  }

  private static double line(List<Point> points) {
    double above = points.stream().mapToDouble(p -> p.speed_m_s() * p.slope_per_s()).sum();
    double below = points.stream().mapToDouble(p -> p.speed_m_s() * p.speed_m_s()).sum();
    return below > 0 ? above / below : 0;
  }

  /** Mean slope over the same stretch by the formula from still air, signal unit per second. */
  private static double foretold(Fitted fit, double speed_m_s) {
    Formula formula = fit.formula;
    AirPoint air = fit.air;
    double p = formula.heating_K_s(fit.signal.supply_V());
    double delta = fit.still_K();
    double early = 0;
    double step = 0.5;
    for (double t = 0; t < TO_S; t += step) {
      if (Math.abs(t - FROM_S) < step / 2) {
        early = delta;
      }
      delta += step * (p - formula.loss_1_s(speed_m_s, delta, air) * delta);
    }
    double late = delta;
    double perKelvin =
        Math.abs(formula.path().curve().signalByDelta(0.5 * (early + late), air.air_K()));
    return (early - late) / (TO_S - FROM_S) * perKelvin;
  }

  /** Slope by least squares. */
  private static double slope(Series signal) {
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < signal.size(); i++) {
      line.addData(signal.time_s(i), signal.value(i));
    }
    return line.getSlope();
  }
}
