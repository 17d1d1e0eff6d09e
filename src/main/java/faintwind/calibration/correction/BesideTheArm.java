package faintwind.calibration.correction;

import faintwind.calibration.Calibration;
import faintwind.calibration.correction.CarriedShare.Reading;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.physics.AirState;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The air that the arm carries round, read by the instrument itself once a first calibration
 * stands: it stands still beside the path of the arm while that is turned, and its recordings and
 * the arm's turns are written down as a runs table. The speed is that of the signal at rest over
 * the last part of each turning. Of use where the air is above the instrument's smallest speed.
 */
public final class BesideTheArm {
  /** The last share of a turning, when the signal has come to rest. */
  private static final double LAST = 0.3;

  private static final double K95 = 1.96;

  private BesideTheArm() {}

  /**
   * One turning.
   *
   * @param run its name
   * @param reading arm and air
   * @param aboveFloor whether the air was above the smallest speed that can be told from still air
   */
  public record Turned(String run, Reading reading, boolean aboveFloor) {}

  /** Every turning of the table. */
  public static List<Turned> of(RunSet set, Calibration calibration) {
    Formula formula = Formula.of(calibration);
    AirState air = calibration.formula().referenceAir();
    List<Turned> turned = new ArrayList<>();
    for (Run run : set.runs()) {
      if (run.kind() == RunKind.SPIN) {
        ArmTurning arm = run.arm().orElseThrow();
        double from_s = arm.spinStop_s() - LAST * (arm.spinStop_s() - arm.spinStart_s());
        Series last = run.recording().signal().window(from_s, arm.spinStop_s());
        if (!last.isEmpty()) {
          turned.add(turned(run.name(), arm, formula, calibration, air, last.mean()));
        }
      }
    }
    return turned;
  }

  private static Turned turned(
      String run,
      ArmTurning arm,
      Formula formula,
      Calibration calibration,
      AirState air,
      double signal) {
    double floor = calibration.performance().floor_m_s();
    OptionalDouble supply = calibration.signal().supply_V();
    double speed = formula.steadySpeed_m_s(signal, supply, AirPoint.of(air));
    double u =
        speed > floor
            ? formula.u_steady_m_s(speed, supply, air, calibration.formula().covariance())
            : floor / K95;
    return new Turned(run, new Reading(arm.speed_m_s(), speed, Math.max(1e-5, u)), speed > floor);
  }
}
