package faintwind.calibration.speed.state;

import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.BoundLoss;
import faintwind.calibration.response.ExactLoss;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.QuickLoss;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.response.StillDraught;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.response.TypeLetter;
import faintwind.calibration.run.SignalPath;
import java.util.Arrays;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/**
 * The calibrated formula as the estimator needs it: loss of still air, speed from loss, and the
 * uncertainty that the calibration gives to both. Reuses its work space: for one thread.
 */
public final class FieldFormula {
  /** Least speed at which the slope of the speed against the loss is asked for. */
  public static final double LEAST_SPEED_M_S = 0.01;

  /** Parameters of the path that the loss read from a row hangs on. */
  private static final int[] BESIDE = {ThermalPath.HEATING, ThermalPath.OFFSET, ThermalPath.SLOPE};

  private final BoundLoss loss;
  private final int losses;
  private final ThermalPath path;
  private final double diameter_m;
  private final Covariance covariance;
  private final double u_beadTime_s;
  private final double stillDraught_m_s;
  private final double[] out;
  private final double[] gradient;
  private final double[] one = new double[1];

  public FieldFormula(Calibration calibration) {
    this(calibration, ExactLoss::new);
  }

  /** For the many rows of a log: the same within 10⁻⁸, and many times quicker. */
  public static FieldFormula forLog(Calibration calibration) {
    return new FieldFormula(
        calibration,
        (model, q) ->
            model instanceof PhysicsShaped shaped
                ? new QuickLoss(shaped, q)
                : new ExactLoss(model, q));
  }

  private FieldFormula(
      Calibration calibration, BiFunction<ResponseModel, double[], BoundLoss> binding) {
    FormulaFit fit = calibration.formula();
    SignalPath signal = calibration.signal();
    double[] values = fit.values();
    ResponseModel model = ResponseModel.of(fit.model(), fit.referenceAir(), fit.diameter_m());
    losses = model.quantities().size();
    loss = binding.apply(model, Arrays.copyOf(values, losses));
    double reference_K = fit.referenceAir().temperature_K();
    double bend =
        signal.thermocouple().flatMap(TypeLetter::of).map(t -> t.bendAt(reference_K)).orElse(0.0);
    path =
        ThermalPath.of(
            Arrays.copyOfRange(values, losses, values.length),
            signal.perKelvin(),
            reference_K,
            bend);
    diameter_m = fit.diameter_m();
    stillDraught_m_s = StillDraught.of(calibration);
    int[] places = IntStream.range(0, losses + BESIDE.length).toArray();
    for (int i = 0; i < BESIDE.length; i++) {
      places[losses + i] = losses + BESIDE[i];
    }
    covariance = fit.covariance().of(places);
    int bead = losses + ThermalPath.BEAD_TIME;
    u_beadTime_s = Math.sqrt(Math.max(0, fit.covariance().at(bead, bead)));
    out = new double[3 + losses];
    gradient = new double[places.length];
  }

  public ThermalPath path() {
    return path;
  }

  /** Standard uncertainty of the junction's lag by the calibration, s. */
  public double u_beadTime_s() {
    return u_beadTime_s;
  }

  /** Draught that the calibration's recordings showed, see {@link StillDraught}, m/s. */
  public double stillDraught_m_s() {
    return stillDraught_m_s;
  }

  /** Diameter of the ball, m. */
  public double diameter_m() {
    return diameter_m;
  }

  /** Loss of still air, 1/s; {@link #stillSlope} then tells its change with the difference. */
  public double stillLoss_1_s(double delta_K, AirPoint air) {
    return loss.stillLoss_1_s(delta_K, air);
  }

  /** Change of the last still-air loss with the difference, 1/(s K). */
  public double stillSlope() {
    return loss.stillSlope();
  }

  public double loss_1_s(double speed_m_s, double delta_K, AirPoint air) {
    return loss.loss_1_s(speed_m_s, delta_K, air);
  }

  /** Loss at the last point whose slope was asked for, 1/s. */
  public double lastLoss_1_s() {
    return out[0];
  }

  public double speed_m_s(double loss_1_s, double delta_K, AirPoint air) {
    one[0] = loss_1_s;
    loss.speeds_m_s(one, delta_K, air);
    return one[0];
  }

  /** The same for several losses, 1/s, which become speeds. */
  public void speeds_m_s(double[] losses_1_s, double delta_K, AirPoint air) {
    loss.speeds_m_s(losses_1_s, delta_K, air);
  }

  /** Difference of a signal as recorded, lag not undone, K. */
  public double delta_K(double signal, double air_K) {
    return path.curve().delta_K(signal - path.offset(), air_K);
  }

  /** Difference as a row's signal reads, lag not undone, K. */
  double readDelta_K(PreparedRow row) {
    return delta_K(row.signal(), row.air().air_K());
  }

  /** A change of the signal as a share of a difference. */
  public double relative(double signalChange, double delta_K, double air_K) {
    return Math.abs(signalChange / path.curve().signalByDelta(delta_K, air_K) / delta_K);
  }

  /** Difference at which still air lets the balance rest, by bisection, K. */
  double stillDelta_K(double heating_K_s, AirPoint air) {
    double low = 0;
    double high = 300;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (stillLoss_1_s(middle, air) * middle < heating_K_s) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * Slope of speed against the logarithm of the loss, m/s. Infinite towards still air, so asked at
   * no less than 0.01 m/s; {@link #relativeLossUncertainty} then speaks of the same point.
   */
  public double speedByLogLoss_m_s(double speed_m_s, double delta_K, AirPoint air) {
    loss.loss(Math.max(speed_m_s, LEAST_SPEED_M_S), delta_K, air, out);
    return out[0] / out[1];
  }

  /**
   * Standard uncertainty, from the calibration's covariance, of the logarithm of the loss that
   * belongs to the last point whose slope was asked for: of the loss itself, the heating rate, the
   * offset and the sensitivity's slope (JCGM 100:2008, equation 13).
   *
   * @param heatingShare heat put in over heat lost at that moment, 1 at rest
   */
  public double relativeLossUncertainty(double delta_K, double air_K, double heatingShare) {
    for (int i = 0; i < losses; i++) {
      gradient[i] = out[3 + i] / out[0];
    }
    double perSignal = path.curve().signalByDelta(delta_K, air_K);
    double byDelta = (heatingShare / delta_K + out[2] / out[0]) / perSignal;
    gradient[losses] = -heatingShare / path.heating_K_s();
    gradient[losses + 1] = -byDelta;
    gradient[losses + 2] = -byDelta * path.curve().signalBySlope(delta_K, air_K);
    return Math.sqrt(covariance.variance(gradient));
  }
}
