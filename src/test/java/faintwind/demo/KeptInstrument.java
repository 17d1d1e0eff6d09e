package faintwind.demo;

import faintwind.calibration.run.Series;
import faintwind.calibration.virtual.VirtualBall;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualCalibration;
import faintwind.calibration.virtual.VirtualClass;
import faintwind.calibration.virtual.VirtualConvection;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.StepState;
import faintwind.job.JobWatch;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.KeepFormula;
import faintwind.job.record.KeepRuns;
import faintwind.message.Messages;
import faintwind.record.Event;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A made-up instrument that is kept over years; every entry goes through a job. */
final class KeptInstrument {
  private static final double STILL_s = 3600;
  private static final int MOST_STEPS = 60;
  private static final Calibrate.Settings QUICK =
      new Calibrate.Settings(Optional.empty(), 0, OptionalDouble.empty());

  private final Path folder;
  private final DemoWalk walk;
  private final long seed;
  private VirtualBuild build = DemoCellar.onTheTurntable();
  private int sessions;
  private double firstJar_K;

  private KeptInstrument(Path folder, DemoWalk walk, long seed) {
    this.folder = folder;
    this.walk = walk;
    this.seed = seed;
  }

  /** Builds and calibrates it in September 2026, up to its first field log. */
  static KeptInstrument built(Path folder, long seed, boolean camera) throws IOException {
    OffsetDateTime start = OffsetDateTime.parse("2026-09-03T13:24:00Z");
    KeptInstrument it = new KeptInstrument(folder, new DemoWalk(folder, start), seed);
    DemoWalk walk = it.walk;
    String name = String.valueOf(folder.getFileName());
    DemoProjects.begin(walk, name, DemoProjects.design(name, "80", "T"));
    walk.by("Käthe");
    DemoProjects.steps(walk, "spin-runs");
    it.calibrated("bring-in-runs", "fit-formula", "judge-formula", "write-build-log");
    it.steps("field-cautions");
    it.firstJar_K = it.jar();
    if (camera) {
      it.steps("place-probe", "convert-log", "care");
    } else {
      walk.begun("place-probe");
      walk.ok(walk.enter().waive("place-probe", "photo", "no camera in the cellar"));
      walk.ok(walk.enter().finish("place-probe"));
      it.steps("convert-log");
    }
    return it;
  }

  /** The same instrument as somebody else got it. */
  KeptInstrument with(String keeper, Path theirs) throws IOException {
    DemoWalk other = new DemoWalk(theirs, walk.now());
    other.by(keeper);
    KeptInstrument it = new KeptInstrument(theirs, other, seed);
    it.build = build;
    it.sessions = sessions;
    return it;
  }

  DemoWalk at(String day) {
    walk.until(OffsetDateTime.parse(day + "T09:00:00Z"));
    return walk;
  }

  /** What the jar showed after the first calibration. */
  double firstJar_K() {
    return firstJar_K;
  }

  private void steps(String... ids) throws IOException {
    for (String id : ids) {
      walk.done(id, DemoProjects.TYPED, DemoProjects.ANSWERS.getOrDefault(id, Map.of()));
    }
  }

  /** Dust on the heated ball keeps a share of the air's cooling away. */
  void dusty(double share) {
    VirtualBall ball = build.heated();
    VirtualConvection c = ball.convection();
    VirtualConvection less =
        new VirtualConvection(
            (1 - share) * c.forced(), (1 - share) * c.natural(), c.tilt(), c.mixing());
    VirtualBall dusty =
        new VirtualBall(
            ball.diameter_m(), ball.capacity_J_K(), ball.emissivity(), ball.leads_W_K(), less);
    build =
        new VirtualBuild(
            dusty, build.reference(), build.heater(), build.chain(), build.arm(), build.room());
  }

  /** What it shows in a closed jar of the workshop's air now, typed as the step asks. */
  double jar() throws IOException {
    Series signal =
        VirtualRehearsal.warmFieldLog(build, STILL_s, time_s -> 0, seed + ++sessions)
            .recording()
            .signal();
    double sum = 0;
    for (int i = 0; i < signal.size(); i++) {
      sum += signal.value(i);
    }
    Double perKelvin =
        walk.view().situation(walk.now()).values(walk.view().checklist()).get("sensitivity_uV_K");
    String delta_K =
        String.format(
            Locale.ROOT,
            "%.1f",
            sum / signal.size() / Optional.ofNullable(perKelvin).orElseThrow());
    Map<String, String> typed = new HashMap<>(DemoProjects.TYPED);
    typed.putAll(Map.of("jar-air", "19.5", "jar-pressure", "1002", "jar-delta", delta_K));
    walk.tried("jar-check", typed);
    return Double.parseDouble(delta_K);
  }

  /** A session at the turntable, fitted and put in force, with the steps that go with it. */
  void calibrated(String... steps) throws IOException {
    walk.wait(Duration.ofHours(5));
    Path set = Files.createDirectories(folder.resolve("runs/session-" + ++sessions));
    Path table = DemoProjects.runs(walk, set, session(VirtualClass.lesson(0)));
    walk.ok(KeepRuns.keep(folder, table, walk.enter()));
    KeepFormula job =
        new KeepFormula(folder, new Calibrate(walk.clock(), Messages.of(Locale.ENGLISH), QUICK));
    KeepFormula.Kept kept = walk.ok(job.fit(table, JobWatch.NOBODY));
    walk.ok(walk.enter().plain(Optional.empty(), job.events(kept)));
    steps(steps);
    walk.plain(new Event.CalibrationPutInForce(kept.file()));
  }

  private VirtualCalibration session(VirtualPlan plan) {
    return VirtualRehearsal.calibration(build, plan, seed + sessions);
  }

  /** Ten minutes at the arm with what is in force. */
  Event.Rechecked checked() throws IOException {
    Path outside = folder.resolveSibling(".check-" + folder.getFileName());
    VirtualCalibration session = session(VirtualClass.lesson(1));
    DemoProjects.runs(walk, Files.createDirectories(outside), session);
    String inForce =
        walk.view().state().last(Event.CalibrationPutInForce.class).orElseThrow().event().file();
    return (Event.Rechecked)
        walk.ok(
                KeepRuns.recheck(
                    folder,
                    inForce,
                    outside.resolve("runs.csv"),
                    walk.enter(),
                    Messages.of(Locale.ENGLISH)))
            .event();
  }

  /** Does again every step that something before it made doubtful, in their order. */
  List<String> again() throws IOException {
    List<String> done = new ArrayList<>();
    Optional<StepProgress> next = pressing();
    while (next.isPresent() && done.size() < MOST_STEPS) {
      done.add(next.get().step().id());
      steps(next.get().step().id());
      next = pressing();
    }
    return done;
  }

  private Optional<StepProgress> pressing() throws IOException {
    return walk.view().progress(walk.now()).steps().stream()
        .filter(s -> s.state() == StepState.NEEDS_ATTENTION)
        .filter(s -> !(s.reasons().isEmpty() && s.doubts().isEmpty()))
        .filter(s -> !s.step().id().equals("jar-check"))
        .findFirst();
  }
}
