package faintwind.job.formula;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.Calibration;
import faintwind.calibration.Cancelled;
import faintwind.calibration.Evidence.MonteCarloSummary;
import faintwind.calibration.Measured;
import faintwind.calibration.Origin;
import faintwind.calibration.fit.judging.CalibrationAssembly;
import faintwind.calibration.fit.judging.Choice;
import faintwind.calibration.fit.judging.Diagnosis;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.calibration.fit.judging.ModelChoice;
import faintwind.calibration.fit.judging.MonteCarlo;
import faintwind.calibration.fit.pooling.CarriedBelief;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.KnownBefore;
import faintwind.calibration.run.RunSet;
import faintwind.files.Sha256;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.run.RunsTable;
import faintwind.job.JobWatch;
import faintwind.job.PaperFile;
import faintwind.job.SoftwareVersion;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.report.calibration.CalibrationPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * From a runs table to a calibration: read, fit every model, choose, refit, judge, and write the
 * file. The command line, the window, the demo and the tests call this.
 */
public final class Calibrate {
  /** Refits of the Monte Carlo study unless told otherwise. */
  public static final int USUAL_REFITS = 500;

  /** Refits that a person may ask for. */
  public static final Field REFITS = Field.whole("refits", 0, 10_000);

  /** The largest relative expanded uncertainty that a person may accept, %. */
  public static final Field LIMIT = Field.number("limit_pct", 0.001, 1000);

  private static final long SEED = 20_261_125L;

  private final Clock clock;
  private final Messages messages;
  private final Settings settings;

  /** Where the run files of a table may lie. */
  public enum RunFiles {
    /** Beside the table or below it. */
    WITH_THE_TABLE,
    /** A person said so: a table from elsewhere could name any file of this computer. */
    ANYWHERE
  }

  /**
   * What a person may choose.
   *
   * @param instrument name of the instrument; where empty, that on record, else the table's folder
   * @param refits number of refits of the Monte Carlo study; 0 for none
   * @param limit_pct largest relative expanded uncertainty that is accepted over the calibrated
   *     speeds, %
   * @param profile what the lines of the recordings mean, where they are not run files: a file, or
   *     the id of a shipped profile
   * @param measured when and with what the runs were measured, beside what they say themselves
   * @param armFrom earlier calibrations on the same arm
   * @param files where the table's run files may lie
   */
  public record Settings(
      Optional<String> instrument,
      int refits,
      OptionalDouble limit_pct,
      Optional<String> profile,
      MeasuredWhen measured,
      List<Path> armFrom,
      RunFiles files) {
    public Settings {
      armFrom = List.copyOf(armFrom);
    }

    public Settings(Optional<String> instrument, int refits, OptionalDouble limit_pct) {
      this(
          instrument,
          refits,
          limit_pct,
          Optional.empty(),
          MeasuredWhen.NOT_SAID,
          List.of(),
          RunFiles.WITH_THE_TABLE);
    }

    /** The instrument on record, the usual refits, no limit. */
    public static final Settings USUAL =
        new Settings(Optional.empty(), USUAL_REFITS, OptionalDouble.empty());
  }

  /**
   * A calibration that stands.
   *
   * @param calibration the calibration
   * @param shortfalls why it should be looked at before it is used: a limit that was not met, runs
   *     that contradict each other; most often empty
   * @param look what it was drawn from, to be shown beside it
   * @param refitting how long the refits took
   */
  public record Outcome(
      Calibration calibration,
      List<Problem> shortfalls,
      FitLook look,
      Optional<Duration> refitting) {
    public Outcome {
      shortfalls = List.copyOf(shortfalls);
    }
  }

  /** Calibrations with this clock, in these words. */
  public Calibrate(Clock clock, Messages messages, Settings settings) {
    this.clock = clock;
    this.messages = messages;
    this.settings = settings;
  }

  /**
   * Calibrates and puts the file in its place, whole or not at all.
   *
   * @throws IOException where the disk or a permission fails
   * @throws Cancelled where the watch says so
   */
  public Checked<Outcome> write(Path table, Path target, JobWatch watch) throws IOException {
    Checked<Outcome> outcome = of(table, watch);
    if (outcome instanceof Checked.Ok<Outcome> ok) {
      watch.progress("write", 0, 1);
      CalibrationFile.write(target, ok.value().calibration());
    }
    return outcome;
  }

  /**
   * Puts a page about a calibration in a file's place, whole or not at all.
   *
   * @throws IOException where the disk or a permission fails
   */
  public void writePage(Outcome outcome, Path target) throws IOException {
    PaperFile.write(
        target,
        CalibrationPage.of(outcome.calibration(), outcome.look(), outcome.refitting(), messages));
  }

  /**
   * Runs that a model was chosen for, before it is judged.
   *
   * @param choice the model with its fit
   * @param set what it was fitted to
   * @param origin whose runs, from which files
   * @param notes what came up on the way
   */
  public record Begun(Choice choice, RunSet set, Origin origin, List<Problem> notes) {
    public Begun {
      notes = List.copyOf(notes);
    }
  }

  /** The same without a file. Reading notes stand among the calibration's warnings. */
  public Checked<Outcome> of(Path table, JobWatch watcher) throws IOException {
    JobWatch watch = new FitSteps(watcher, settings.refits());
    return begin(table, watch).map(begun -> finish(begun, watch));
  }

  /** Reads the runs and chooses their model. */
  public Checked<Begun> begin(Path table, JobWatch watch) throws IOException {
    watch.progress("read", 0, 1);
    Checked<RunsTable> read = read(table);
    Checked<BuildRecord> build = BuildRecord.around(table);
    if (!(read instanceof Checked.Ok<RunsTable> runs)) {
      List<Problem> all = new ArrayList<>(read.problems());
      all.addAll(build.isOk() ? List.of() : build.problems());
      return Checked.refused(all);
    }
    if (!(build instanceof Checked.Ok<BuildRecord> record)) {
      return Checked.refused(build.problems());
    }
    RunSet turned = runs.value().runSet();
    Optional<Measured> measured = settings.measured().of(turned.runs(), record.value().by());
    Origin origin = origin(table, record.value(), runs.value().files(), measured);
    Checked<EarlierArm> earlier = earlier(table, turned, origin);
    if (!(earlier instanceof Checked.Ok<EarlierArm> arm)) {
      return Checked.refused(earlier.problems());
    }
    KnownBefore known = new KnownBefore(record.value().facts(), arm.value().known());
    RunSet set = new RunSet(turned.runs(), turned.chain(), known).counted();
    List<Problem> notes = new ArrayList<>(runs.notes());
    notes.addAll(arm.value().notes());
    if (measured.isEmpty() && record.value().journalHead().isPresent()) {
      notes.add(Problem.warning("calibrate.no-date", Where.NOWHERE, ""));
    }
    if (known.build().isEmpty() && set.runs().stream().anyMatch(run -> run.arm().isPresent())) {
      notes.add(Problem.warning("calibrate.scale-alone", Where.NOWHERE, ""));
    }
    watch.progress("fit", 0, 1);
    return ModelChoice.choose(set, watch::cancelled)
        .map(choice -> new Begun(choice, set, origin, notes));
  }

  private Checked<EarlierArm> earlier(Path table, RunSet set, Origin origin) throws IOException {
    return EarlierArm.of(
        settings.armFrom().isEmpty()
            ? EarlierArm.onRecord(table, set, origin.inputSha256())
            : settings.armFrom(),
        origin.inputSha256());
  }

  private Checked<RunsTable> read(Path table) throws IOException {
    Optional<ImportProfile> profile = Optional.empty();
    if (settings.profile().isPresent()) {
      Checked<ImportProfile> found = Profiles.find(settings.profile().get());
      if (!(found instanceof Checked.Ok<ImportProfile> ok)) {
        return Checked.refused(found.problems());
      }
      profile = Optional.of(ok.value());
    }
    if (settings.files() == RunFiles.ANYWHERE) {
      return RunsTable.readAnywhere(table, profile);
    }
    return profile.isEmpty() ? RunsTable.read(table) : RunsTable.readForeign(table, profile.get());
  }

  /** Refits, judges and puts the calibration together. */
  public Outcome finish(Begun begun, JobWatch watch) {
    Choice choice = begun.choice();
    RunSet set = begun.set();
    Instant from = clock.instant();
    Optional<MonteCarloSummary> study =
        settings.refits() > 0 ? Optional.of(study(choice, watch)) : Optional.empty();
    Optional<Duration> refitting = study.map(s -> Duration.between(from, clock.instant()));
    watch.progress("judge", 0, 1);
    Calibration fitted = CalibrationAssembly.of(choice, set, begun.origin(), study);
    List<Problem> shortfalls = new ArrayList<>();
    limit(fitted).ifPresent(shortfalls::add);
    if (Diagnosis.runsContradict(choice.fit(), set)) {
      shortfalls.add(Problem.warning("calibrate.runs-contradict", Where.NOWHERE, ""));
    }
    Diagnosis.unlikeABall(choice.fit()).ifPresent(shortfalls::add);
    CarriedBelief.contradicted(choice.fit(), set, watch::cancelled).ifPresent(shortfalls::add);
    if (fitted.evidence().build().filter(BuildAgreement::disagrees).isPresent()) {
      shortfalls.add(Problem.warning("calibrate.build-off", Where.NOWHERE, ""));
    }
    List<Problem> warnings = new ArrayList<>(begun.notes());
    warnings.addAll(fitted.warnings());
    warnings.removeAll(shortfalls);
    warnings.addAll(shortfalls);
    Calibration calibration =
        new Calibration(
            fitted.origin(),
            fitted.signal(),
            fitted.formula(),
            fitted.coverage(),
            fitted.evidence(),
            fitted.performance(),
            warnings);
    return new Outcome(
        calibration, shortfalls, FitLook.of(choice.fit(), calibration, set.runs()), refitting);
  }

  private MonteCarloSummary study(Choice choice, JobWatch watch) {
    int wanted = settings.refits();
    List<double[]> draws = SharedRefits.draws(choice.fit(), wanted, SEED, watch);
    return MonteCarlo.summary(choice.fit(), draws, wanted - draws.size(), SEED);
  }

  private Optional<Problem> limit(Calibration fitted) {
    if (settings.limit_pct().isEmpty()) {
      return Optional.empty();
    }
    double limit = settings.limit_pct().getAsDouble();
    return fitted.performance().speeds().stream()
        .filter(s -> s.speed_m_s() >= fitted.coverage().lowest_m_s())
        .filter(s -> s.speed_m_s() <= fitted.coverage().highest_m_s())
        .filter(s -> 100 * s.u95_m_s() / s.speed_m_s() > limit)
        .findFirst()
        .map(
            s ->
                Problem.warning(
                    "calibrate.limit-not-met",
                    Where.NOWHERE,
                    Numerals.digits(100 * s.u95_m_s() / s.speed_m_s(), 2),
                    Numerals.digits(s.speed_m_s(), 2),
                    Numerals.digits(limit, 2)));
  }

  private Origin origin(
      Path table, BuildRecord record, Map<String, Path> files, Optional<Measured> measured)
      throws IOException {
    Map<String, String> hashes = new TreeMap<>();
    for (Map.Entry<String, Path> file : files.entrySet()) {
      hashes.put(file.getKey(), Sha256.of(file.getValue()));
    }
    Optional<Path> profile = settings.profile().map(Path::of).filter(Files::isRegularFile);
    if (profile.isPresent()) {
      hashes.put(String.valueOf(profile.get().getFileName()), Sha256.of(profile.get()));
    }
    Path folder = table.toAbsolutePath().normalize().getParent();
    String folderName =
        folder == null || folder.getFileName() == null ? "" : folder.getFileName().toString();
    String instrument = settings.instrument().or(record::instrument).orElse(folderName);
    OffsetDateTime now = OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
    return new Origin(
        instrument,
        now,
        SoftwareVersion.text(),
        hashes,
        record.journalHead(),
        measured,
        Optional.empty());
  }
}
