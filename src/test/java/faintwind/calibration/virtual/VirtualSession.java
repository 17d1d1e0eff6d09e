package faintwind.calibration.virtual;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.virtual.VirtualPlan.Spin;
import faintwind.calibration.virtual.VirtualPlan.Way;
import faintwind.calibration.virtual.VirtualStage.Heater;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Runs one made-up turntable session from the zero run to the last rest. For one use. */
final class VirtualSession {
  private static final double LEAD_IN_SEPARATE_S = 200;
  private static final double LEAD_IN_STAIRCASE_S = 20;
  private static final double WARM_AGAIN_S = 900;
  private static final double U_CLICKS_S = 0.3;
  private static final double NOTED_ERROR_S = 0.5;
  private static final String STAIRCASE_FILE = "session.csv";

  private final VirtualBuild build;
  private final VirtualPlan plan;
  private final VirtualInstrument instrument;
  private final RandomGenerator hand;
  private final Counting counting;
  private final Map<String, VirtualRows> files = new LinkedHashMap<>();
  private final List<Window> windows = new ArrayList<>();
  private final Map<String, VirtualCalibration.SpinTruth> truth = new HashMap<>();

  /** From which click the turns are counted. */
  private enum Counting {
    /** The start of the motion is the first; nobody notes its time. */
    FROM_REST,
    /** One at full speed, whose time is noted. */
    AT_SPEED
  }

  private record Window(
      String name,
      RunKind kind,
      String file,
      double from_s,
      double to_s,
      Optional<ArmTurning> arm,
      RunConditions conditions) {}

  VirtualSession(VirtualBuild build, VirtualPlan plan, long seed) {
    this.build = build;
    this.plan = plan;
    this.instrument = new VirtualInstrument(build, seed);
    this.counting = seed % 2 == 0 ? Counting.FROM_REST : Counting.AT_SPEED;
    this.hand = new Well19937c(seed + 0x9E3779B97F4A7C15L);
  }

  VirtualCalibration run() {
    zero();
    warmUp();
    for (int i = 0; i < plan.spins().size(); i++) {
      spin(String.format(Locale.ROOT, "spin%02d", i + 1), plan.spins().get(i));
    }
    Map<String, Recording> recordings = new LinkedHashMap<>();
    files.forEach((name, rows) -> recordings.put(name, rows.recording(build.chain().unit())));
    List<Run> runs = windows.stream().map(w -> run(w, recordings)).toList();
    return new VirtualCalibration(runs, recordings, truth);
  }

  private void zero() {
    VirtualRows rows = newFile("zero.csv");
    double from_s = instrument.time_s();
    record(rows, VirtualStage.rest(plan.zero_s(), Heater.OFF));
    window("zero", RunKind.ZERO, "zero.csv", from_s);
  }

  private void warmUp() {
    String file = plan.way() == Way.STAIRCASE ? STAIRCASE_FILE : "still.csv";
    VirtualRows rows = newFile(file);
    double from_s = instrument.time_s();
    record(rows, VirtualStage.rest(plan.warmUp_s(), Heater.ON));
    window("still", RunKind.STILL, file, from_s);
  }

  private void spin(String name, Spin spin) {
    String file = plan.way() == Way.STAIRCASE ? STAIRCASE_FILE : name + ".csv";
    if (plan.way() == Way.SEPARATE) {
      instrument.stage(VirtualStage.rest(WARM_AGAIN_S, Heater.ON));
      instrument.advanceTo(instrument.time_s() + WARM_AGAIN_S);
    }
    VirtualRows rows = files.containsKey(file) ? existing(file) : newFile(file);
    double from_s = instrument.time_s();
    double leadIn_s = plan.way() == Way.SEPARATE ? LEAD_IN_SEPARATE_S : LEAD_IN_STAIRCASE_S;
    record(rows, VirtualStage.rest(leadIn_s, Heater.ON));
    ArmTurning arm = turn(name, spin, rows);
    record(rows, VirtualStage.rest(plan.rest_s(), Heater.ON));
    windows.add(
        new Window(
            name,
            RunKind.SPIN,
            file,
            rows.fileTime_s(from_s),
            rows.fileTime_s(instrument.time_s()),
            Optional.of(arm),
            conditions(Optional.of(spin))));
  }

  private ArmTurning turn(String name, Spin spin, VirtualRows rows) {
    double start_s = instrument.time_s();
    double air_m = instrument.throughAir_m();
    Clicks clicks = new Clicks(instrument, 2 * Math.PI * spin.radius_m());
    record(
        rows,
        VirtualStage.spin(spin.duration_s(), spin.speed_m_s(), spin.radius_m(), spin.direction()),
        clicks::look);
    double lasted_s = instrument.time_s() - start_s;
    double first_s = counting == Counting.FROM_REST ? start_s : clicks.firstAfter_s(start_s + 8);
    double counted_s = clicks.last_s() - first_s + U_CLICKS_S * hand.nextGaussian();
    truth.put(
        name,
        new VirtualCalibration.SpinTruth(
            build.arm().ballSpeed_m_s(wanted(spin)),
            (instrument.throughAir_m() - air_m) / lasted_s));
    return new ArmTurning(
        Uncertain.of(spin.radius_m(), build.arm().u_radius_m()),
        clicks.turnsFrom(first_s),
        Uncertain.of(counted_s, U_CLICKS_S),
        noted(rows.fileTime_s(start_s)),
        noted(rows.fileTime_s(instrument.time_s())),
        Optional.empty(),
        counting == Counting.FROM_REST
            ? OptionalDouble.empty()
            : OptionalDouble.of(rows.fileTime_s(first_s)));
  }

  private static VirtualStage wanted(Spin spin) {
    return VirtualStage.spin(1, spin.speed_m_s(), spin.radius_m(), spin.direction());
  }

  private void record(VirtualRows rows, VirtualStage stage) {
    record(rows, stage, () -> {});
  }

  private void record(VirtualRows rows, VirtualStage stage, Runnable look) {
    double step_s = build.chain().reading().step_s();
    long count = Math.round(stage.duration_s() / step_s);
    double start_s = instrument.time_s();
    rows.add(instrument.sampleAt(start_s));
    instrument.stage(stage);
    for (long i = 1; i <= count; i++) {
      double at_s = start_s + i * step_s;
      if (i < count) {
        rows.add(instrument.sampleAt(at_s));
      } else {
        instrument.advanceTo(at_s);
      }
      look.run();
    }
  }

  private VirtualRows newFile(String file) {
    double lead_s = Math.rint(10 * (5 + 40 * hand.nextDouble())) / 10;
    VirtualRows rows = new VirtualRows(instrument.time_s() - lead_s);
    files.put(file, rows);
    return rows;
  }

  private VirtualRows existing(String file) {
    VirtualRows rows = files.get(file);
    if (rows == null) {
      throw new IllegalArgumentException("file = " + file + ", not begun");
    }
    return rows;
  }

  private void window(String name, RunKind kind, String file, double from_s) {
    VirtualRows rows = existing(file);
    windows.add(
        new Window(
            name,
            kind,
            file,
            rows.fileTime_s(from_s),
            rows.fileTime_s(instrument.time_s()),
            Optional.empty(),
            conditions(Optional.empty())));
  }

  private RunConditions conditions(Optional<Spin> spin) {
    return new RunConditions(
        OptionalDouble.of(Math.rint(instrument.air().temperature_K() * 10) / 10),
        OptionalDouble.of(Math.rint(instrument.air().pressure_Pa() / 10) * 10),
        OptionalDouble.of(Math.rint(instrument.air().relativeHumidity() * 100) / 100),
        spin.map(Spin::direction),
        Optional.of(build.chain().wire().name()),
        "made up");
  }

  private double noted(double time_s) {
    return Math.rint(10 * (time_s + NOTED_ERROR_S * hand.nextGaussian())) / 10;
  }

  private static Run run(Window window, Map<String, Recording> recordings) {
    Recording whole = recordings.get(window.file());
    if (whole == null) {
      throw new IllegalArgumentException("file = " + window.file() + ", not recorded");
    }
    return new Run(
        window.name(),
        window.kind(),
        window.file(),
        whole.window(window.from_s(), window.to_s()),
        window.conditions(),
        window.arm(),
        Optional.empty());
  }
}
