package faintwind.calibration.fit.setup;

import faintwind.calibration.fit.numerics.Layout;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.numerics.Unknowns;
import faintwind.calibration.fit.track.ArmAt;
import faintwind.calibration.fit.track.FileRows;
import faintwind.calibration.fit.track.PreparedFile;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.track.Turn;
import faintwind.calibration.fit.track.ZeroReading;
import faintwind.calibration.response.ParameterPrior;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.response.TypeLetter;
import faintwind.calibration.run.ArmKnown;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Turns a setting and a model into the unknowns and tracks of a fit. The priors stated here are
 * common practice, no source, except where another is named.
 */
public final class Setup {
  /**
   * By how much the published conductivities of air differ in their rise with temperature, as a
   * change of the signal per kelvin (exponents of 0.85 to 0.89 near 310 K; the loss goes with half
   * of the difference), 1/K. It shows as if the thermocouple's sensitivity rose otherwise.
   */
  private static final double U_BY_TEMPERATURE_1_K = 8e-5;

  private final Setting setting;

  /** What does not hang on the model, by file. */
  private final Map<String, PreparedFile> prepared;

  private final Unknowns unknowns = new Unknowns();
  private final Layout layout;
  private boolean statedShare;
  private final TurnUnknowns moved;
  private final List<Track> tracks = new ArrayList<>();
  private final List<ZeroReading> zeros = new ArrayList<>();
  private final Set<String> freed = new HashSet<>();

  public Setup(Setting setting, ResponseModel model) {
    this(setting, model, new HashMap<>());
  }

  /** The same recordings for another model, every weight and prior as at first. */
  public Setup with(ResponseModel model) {
    return new Setup(setting, model, prepared);
  }

  private Setup(Setting setting, ResponseModel model, Map<String, PreparedFile> prepared) {
    this.setting = setting;
    this.prepared = prepared;
    for (ParameterPrior quantity : model.quantities()) {
      unknowns.add(Unknown.of(quantity));
    }
    double reference_K = setting.referenceAir().temperature_K();
    double bend =
        setting
            .signal()
            .thermocouple()
            .flatMap(TypeLetter::of)
            .map(t -> t.bendAt(reference_K))
            .orElse(0.0);
    layout =
        new Layout(
            model, model.quantities().size(), bend, setting.signal().perKelvin(), reference_K);
    addPath(reference_K);
    BuildPriors.sharpen(setting, layout, unknowns);
    double fromRest = CountingHabit.fromRest(setting.heated());
    moved = new TurnUnknowns(unknowns, layout.arm(), fromRest);
    Optional<Uncertain> stated = stated();
    statedShare = stated.isPresent();
    Optional<ArmKnown> arm = knownArm();
    Uncertain share =
        stated
            .or(() -> arm.map(ArmKnown::carriedShare))
            .orElse(Uncertain.of(OwnChoices.CARRIED_SHARE, OwnChoices.CARRIED_SPREAD));
    ArmPriors.carried(share, arm).forEach(unknowns::add);
    ArmPriors.arm(fromRest, arm).forEach(unknowns::add);
    unknowns.expect(setting.known().others());
    addZeros();
    for (FileRows file : setting.files()) {
      tracks.add(track(file));
    }
  }

  public Layout layout() {
    return layout;
  }

  public Unknowns unknowns() {
    return unknowns;
  }

  /** Relative speed error of each moved run by name: the index of its unknown. */
  public Map<String, Integer> speedColumns() {
    return moved.speedColumns();
  }

  /** Stated relative standard uncertainty of a moved run's own speed. */
  public double statedSpread(String run) {
    return moved.statedSpread(run);
  }

  /** Index of the relative radius error by radius. */
  public Map<Double, Integer> radiusColumns() {
    return moved.radiusColumns();
  }

  /** Whether an arm was turned at all: in reference flows no air is carried round. */
  public boolean turns() {
    return setting.heated().stream().anyMatch(run -> run.kind() == RunKind.SPIN);
  }

  /** Whether the share of carried air was stated rather than left to the recordings. */
  public boolean statedShare() {
    return statedShare;
  }

  /** Whether the share of carried air is left to these recordings and what is believed of arms. */
  public boolean findsCarried() {
    return turns() && !statedShare && knownArm().isEmpty();
  }

  private Optional<ArmKnown> knownArm() {
    return setting.known().arm();
  }

  /**
   * Whether the air carried round by the arm has to be told from short rests alone: no recording
   * goes on for long after a stop, nobody states it, and no other session tells.
   */
  public boolean restsAreShort() {
    return findsCarried()
        && !setting.known().others().expected().containsKey("carried_share")
        && setting.files().stream()
            .flatMap(file -> file.runs().stream())
            .filter(run -> run.kind() == RunKind.SPIN)
            .noneMatch(run -> restAfter_s(run) >= OwnChoices.REST_AFTER_S);
  }

  private static double restAfter_s(Run run) {
    return run.recording().signal().last_s() - run.arm().orElseThrow().spinStop_s();
  }

  public RoomDraught draught() {
    return RoomDraught.of(layout, tracks);
  }

  /** Full speed of a run's arm over the mean speed of its counted time. */
  public double gain(String run, double[] values) {
    return tracks.stream()
        .flatMap(track -> track.turns.stream())
        .filter(turn -> turn.run().equals(run))
        .mapToDouble(turn -> ArmAt.gain(turn, values))
        .findFirst()
        .orElse(1);
  }

  public RunProblem problem() {
    return new RunProblem(layout, unknowns, tracks, zeros);
  }

  private void addPath(double reference_K) {
    for (ParameterPrior quantity : ThermalPath.quantities(setting.signal().unit().symbol())) {
      unknowns.add(Unknown.of(quantity));
    }
    double largest_K = setting.largest() / Math.abs(setting.signal().perKelvin());
    unknowns.replace(
        layout.path(ThermalPath.HEATING),
        Unknown.log("heating", OwnChoices.STILL_LOSS_1_S * largest_K, OwnChoices.U_HEATING));
    double spread = OwnChoices.U_OFFSET * setting.largest();
    double stated = setting.signal().chain().offset().orElse(0);
    unknowns.replace(layout.path(ThermalPath.OFFSET), Unknown.linear("offset", stated, spread));
    setting
        .signal()
        .thermocouple()
        .flatMap(TypeLetter::of)
        .ifPresent(
            type -> {
              double slope = type.slopeAt(reference_K);
              unknowns.replace(
                  layout.path(ThermalPath.SLOPE),
                  Unknown.linear(
                      "sensitivity_slope", slope, Math.hypot(0.03 * slope, U_BY_TEMPERATURE_1_K)));
            });
  }

  /** Share of carried air where it was stated with the runs; empty otherwise. */
  private Optional<Uncertain> stated() {
    List<Uncertain> shares =
        setting.heated().stream()
            .flatMap(run -> run.arm().stream())
            .flatMap(arm -> arm.swirlShare().stream())
            .toList();
    if (shares.isEmpty()) {
      return Optional.empty();
    }
    double share = shares.stream().mapToDouble(Uncertain::value).average().orElseThrow();
    double u =
        shares.stream()
            .mapToDouble(each -> each.u().orElse(0.3 * each.value() + 0.003))
            .average()
            .orElseThrow();
    return Optional.of(Uncertain.of(share, u));
  }

  private void addZeros() {
    for (Run run : setting.zeros()) {
      double least = setting.noise() / Math.sqrt(20.0);
      zeros.add(ZeroReading.of(run.name(), run.recording().signal(), least));
    }
  }

  private PreparedFile prepare(FileRows file) {
    return PreparedFile.of(
        file, setting.noise(), setting.referenceAir(), setting.signal().supply_V().orElse(1));
  }

  private Track track(FileRows file) {
    PreparedFile ready = prepared.computeIfAbsent(file.file(), name -> prepare(file));
    Track.Rows rows = ready.rows().unsettled();
    List<Turn> turns = new ArrayList<>();
    for (Run run : file.runs()) {
      if (run.kind() == RunKind.SPIN) {
        turns.add(moved.spin(run, run.arm().orElseThrow()));
      } else if (run.kind() == RunKind.REFERENCE) {
        turns.add(moved.flow(file, run, run.reference_m_s().orElseThrow()));
      }
    }
    boolean cold = isCold(rows);
    if (cold) {
      // when a heater was switched on is known to a row at best, and what flows between resistor,
      // glue and ball in the first seconds is more than two bodies describe: the difference at the
      // start takes up what the heater gave earlier or later
      rows.setAsideBefore(ready.supply().firstOn_s(rows.time_s[0]) + OwnChoices.SWITCHING_S);
    }
    double start_K = (rows.signal[0] - zeroSignal()) / setting.signal().perKelvin();
    int delta =
        unknowns.add(
            Unknown.linear("start_delta " + file.file(), start_K, cold ? 1 : 0.02 * start_K + 1));
    int power =
        unknowns.add(
            cold
                ? Unknown.linear("start_power " + file.file(), 0, 0.3)
                : Unknown.linear("start_power " + file.file(), 1, 0.03));
    int[] draughts =
        file.runs().stream()
            .mapToInt(run -> unknowns.add(ArmPriors.ownDraught(run.name())))
            .toArray();
    return new Track(file, turns, rows, ready.grid(), delta, power, draughts);
  }

  private double zeroSignal() {
    return zeros.isEmpty()
        ? setting.signal().chain().offset().orElse(0)
        : zeros.stream().mapToDouble(ZeroReading::signal).average().orElse(0);
  }

  private boolean isCold(Track.Rows rows) {
    double first = (rows.signal[0] - zeroSignal()) * Math.signum(setting.signal().perKelvin());
    return first < OwnChoices.COLD * setting.largest();
  }

  /**
   * Leaves the speed of runs that contradict the others to their recordings: their arm's speed no
   * longer counts.
   */
  public void free(Set<String> runs) {
    freed.addAll(runs);
    runs.forEach(moved::free);
  }

  /** Runs whose own speed does not count. */
  public Set<String> freed() {
    return Set.copyOf(freed);
  }

  /** Whether a run's own speed counts. */
  public boolean counts(String run) {
    return !freed.contains(run);
  }
}
