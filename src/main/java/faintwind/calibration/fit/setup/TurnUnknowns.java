package faintwind.calibration.fit.setup;

import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.numerics.Unknowns;
import faintwind.calibration.fit.track.CountedTime;
import faintwind.calibration.fit.track.FileRows;
import faintwind.calibration.fit.track.Turn;
import faintwind.calibration.run.ArmSpeed;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Uncertain;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;

/** What is unknown of each moved run: its speed, its radius, when it began and ended. */
final class TurnUnknowns {
  private final Unknowns unknowns;
  private final Turn.Arm arm;
  private final double fromRest;
  private final Map<String, Integer> speedColumns = new HashMap<>();
  private final Map<String, Double> statedSpread = new HashMap<>();
  private final Map<Double, Integer> radiusColumns = new HashMap<>();

  /**
   * None yet.
   *
   * @param unknowns those of the fit, which grow
   * @param arm columns of what all turns of the arm share
   * @param fromRest how likely turns were counted from rest
   */
  TurnUnknowns(Unknowns unknowns, Turn.Arm arm, double fromRest) {
    this.unknowns = unknowns;
    this.arm = arm;
    this.fromRest = fromRest;
  }

  /** Relative speed error of each moved run by name: the index of its unknown. */
  Map<String, Integer> speedColumns() {
    return Collections.unmodifiableMap(speedColumns);
  }

  /** Stated relative standard uncertainty of a moved run's own speed. */
  double statedSpread(String run) {
    return statedSpread.getOrDefault(run, 0.0);
  }

  /** Index of the relative radius error by radius, m. */
  Map<Double, Integer> radiusColumns() {
    return Collections.unmodifiableMap(radiusColumns);
  }

  /** A run on the arm. */
  Turn spin(Run run, ArmTurning turning) {
    double sign = run.conditions().direction().filter(d -> d == Direction.CCW).isPresent() ? -1 : 1;
    CountingHabit.Window window = CountingHabit.window(turning, ArmPriors.RUN_UP_S);
    double unknownStart =
        turning.firstClick_s().isPresent()
            ? 0
            : (1 - fromRest) * window.u_left() * ArmPriors.RUN_UP_S;
    double clicks =
        Math.hypot(ArmSpeed.uClicks(turning), unknownStart / turning.turnsTime_s().value());
    int radius = radiusColumn(turning);
    return new Turn(
        run.name(),
        sign * turning.speed_m_s(),
        turning.spinStart_s(),
        turning.spinStop_s(),
        1,
        window.count(),
        new Turn.Columns(
            speedColumn(run.name(), clicks),
            radius,
            unknowns.add(ArmPriors.noted("start_delay " + run.name())),
            unknowns.add(ArmPriors.noted("stop_delay " + run.name())),
            unknowns.add(ArmPriors.own("run_up_own " + run.name())),
            unknowns.add(ArmPriors.own("run_down_own " + run.name())),
            arm));
  }

  /** A run in a reference flow. */
  Turn flow(FileRows file, Run run, Uncertain speed) {
    double relative = speed.u().orElse(0.03 * speed.value()) / speed.value();
    double from = run.recording().signal().first_s();
    double to = run.recording().signal().last_s();
    boolean first = from <= file.signal().first_s();
    boolean last = to >= file.signal().last_s();
    return new Turn(
        run.name(),
        speed.value(),
        first ? Double.NEGATIVE_INFINITY : from,
        last ? Double.POSITIVE_INFINITY : to,
        0,
        CountedTime.NONE,
        new Turn.Columns(
            speedColumn(run.name(), relative),
            -1,
            first ? -1 : delay("start_delay " + run.name()),
            last ? -1 : delay("stop_delay " + run.name()),
            first ? -1 : run("run_up " + run.name()),
            last ? -1 : run("run_down " + run.name()),
            Turn.Arm.NONE));
  }

  /** Leaves a run's speed to its recording: what was written of it no longer counts. */
  void free(String run) {
    Integer column = speedColumns.get(run);
    if (column != null) {
      unknowns.replace(column, Unknown.linear("speed " + run, 0, OwnChoices.FREE_SPREAD));
    }
  }

  private int radiusColumn(ArmTurning turning) {
    return radiusColumns.computeIfAbsent(
        turning.radius_m().value(),
        radius_m ->
            unknowns.add(
                Unknown.linear(
                    "radius " + Math.round(1000 * radius_m) + " mm",
                    0,
                    ArmSpeed.uRadius(turning))));
  }

  private int delay(String name) {
    return unknowns.add(Unknown.linear(name, 0, OwnChoices.DELAY_S));
  }

  private int run(String name) {
    return unknowns.add(Unknown.log(name, OwnChoices.FLOW_RUN_S, OwnChoices.U_FLOW_RUN));
  }

  private int speedColumn(String run, double stated) {
    statedSpread.put(run, stated);
    int column =
        unknowns.add(Unknown.linear("speed " + run, 0, Math.hypot(stated, RunScatter.FIRST)));
    speedColumns.put(run, column);
    return column;
  }
}
