package faintwind.job.formula;

import faintwind.calibration.Measured.By;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.Uncertain;
import faintwind.files.asset.Library;
import faintwind.files.checklist.ChecklistFiles;
import faintwind.files.design.DesignFile;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.Voids;
import faintwind.job.EnteredFile;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import faintwind.physics.design.SenseDesign;
import faintwind.physics.design.Spread;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What is on record of the instrument that a runs table belongs to: a {@code design.json} beside
 * the table, or the journal of the instrument folder around it.
 *
 * @param instrument its name
 * @param facts what the builder measured of the balls, and for the rest what the design says
 * @param by who works on it, with which meter and logger, as far as the journal says
 * @param journalHead hash of the journal's last line, where there is a journal
 */
public record BuildRecord(
    Optional<String> instrument,
    Optional<BuildFacts> facts,
    Map<By, String> by,
    Optional<String> journalHead) {
  private static final BuildRecord NONE =
      new BuildRecord(Optional.empty(), Optional.empty(), Map.of(), Optional.empty());
  private static final String DESIGN = "design.json";
  private static final String REHEARSAL = " (rehearsal)";
  private static final String MADE_UP = " (made-up data)";

  /** A scale with a hundredth of a gram. */
  private static final double SCALE_U_G = 0.01;

  /**
   * Standard uncertainty of a usual hand meter, relative, and of its tips (own choice, no source).
   */
  private static final double METER_U = 0.004;

  private static final double TIPS_U_OHM = 0.1;

  /**
   * The record around a table; empty where there is none.
   *
   * @return refused where a design beside the table is wrong
   * @throws IOException where something that is there cannot be read
   */
  static Checked<BuildRecord> around(Path table) throws IOException {
    Path design = table.resolveSibling(DESIGN);
    if (Files.exists(design)) {
      return DesignFile.read(design, Library.shipped())
          .map(
              d ->
                  new BuildRecord(
                      Optional.of(d.name()), Optional.of(facts(d)), Map.of(), Optional.empty()));
    }
    Optional<Path> folder = EnteredFile.folderAround(table);
    if (folder.isEmpty()) {
      return Checked.ok(NONE);
    }
    InstrumentState state = counting(folder.get());
    Optional<String> head = Optional.of(state.head()).filter(hash -> !hash.isEmpty());
    if (state.designJson().isEmpty()) {
      return Checked.ok(new BuildRecord(name(state), Optional.empty(), by(state), head));
    }
    return DesignFile.parse(state.designJson().get(), Library.shipped())
        .map(
            d -> {
              Map<By, String> by = by(state);
              by.put(By.LOGGER, d.sense().logger().label().id());
              return new BuildRecord(name(state), Optional.of(measured(facts(d), state)), by, head);
            });
  }

  /** Who brought the runs in, and the meter in use. */
  private static Map<By, String> by(InstrumentState state) {
    Map<By, String> by = new EnumMap<>(By.class);
    state.standing(Event.FileAdded.class).stream()
        .filter(line -> line.event().kind() == Event.FileRole.RUNS_TABLE)
        .reduce((earlier, later) -> later)
        .ifPresent(line -> by.put(By.OPERATOR, line.who()));
    state.last(Event.MeterChosen.class).ifPresent(line -> by.put(By.METER, line.event().meter()));
    return by;
  }

  /** The record with void readings struck: what tested something else says nothing of the build. */
  private static InstrumentState counting(Path folder) throws IOException {
    InstrumentState state = new InstrumentFolder(folder).open().state();
    String name = state.checklist().map(chosen -> chosen.checklist()).orElse("standard");
    return ChecklistFiles.forInstrument(folder, name, Locale.ENGLISH)
        .fold((checklist, notes) -> Voids.applied(checklist, state), problems -> state);
  }

  /** What the builder weighed and measured stands in the place of what the design says. */
  private static BuildFacts measured(BuildFacts designed, InstrumentState state) {
    return new BuildFacts(
        designed.diameter_m(),
        reading(state, "weigh-drilled", "heated-mass", "g")
            .map(g -> Uncertain.of(1e-3 * g, 1e-3 * SCALE_U_G))
            .or(designed::heatedMass_kg),
        designed.specificHeat_J_kgK(),
        reading(state, "heater-alone", "heater-alone", "Ω")
            .map(ohm -> Uncertain.of(ohm, Math.hypot(METER_U * ohm, TIPS_U_OHM)))
            .or(designed::heater_ohm),
        reading(state, "first-power", "supply-volts", "V")
            .map(volts -> Uncertain.of(volts, METER_U * volts))
            .or(designed::supply_V),
        designed.emissivity(),
        designed.wires());
  }

  /** The value of a reading that counts and was not judged to be another part's. */
  private static Optional<Double> reading(
      InstrumentState state, String step, String reading, String unit) {
    return state
        .reading(step, reading)
        .map(Standing::event)
        .filter(entry -> entry.verdict().filter(ReadingVerdict.STOP::equals).isEmpty())
        .map(entry -> entry.amount())
        .filter(amount -> amount.bound() == Amount.Bound.EXACT && amount.unit().equals(unit))
        .map(Amount::value);
  }

  /** What was made up says so in every file made from it. */
  private static Optional<String> name(InstrumentState state) {
    return state
        .name()
        .map(name -> state.rehearsal() ? name + REHEARSAL : state.madeUp() ? name + MADE_UP : name);
  }

  private static BuildFacts facts(Design design) {
    return new BuildFacts(
        Optional.of(uncertain(design.ball().diameter_m())),
        Optional.of(uncertain(design.ball().drilled_kg(design.ball().bore().heatedDepth_m()))),
        Optional.of(uncertain(design.ball().metal().specificHeat_J_kgK())),
        Optional.of(uncertain(design.heater().resistance_ohm())),
        Optional.of(uncertain(design.supply().voltage_V())),
        Optional.of(uncertain(design.ball().coat().emissivity())),
        wires(design));
  }

  private static BuildFacts.Wires wires(Design design) {
    SenseDesign sense = design.sense();
    double air_K = design.air().temperature_K();
    double bare_V_K = sense.type().function().differential_V(air_K + 0.5, air_K - 0.5);
    return new BuildFacts.Wires(
        Optional.of(uncertain(new Spread(design).of(model -> model.leads_W_K(0)))),
        Optional.of(Uncertain.of(sense.gain() * bare_V_K)));
  }

  /** A tolerance band as a rectangular distribution: u = half width / √3 (JCGM 100:2008, 4.3.7). */
  private static Uncertain uncertain(Interval band) {
    return Uncertain.of(band.nominal(), (band.high() - band.low()) / 2 / Math.sqrt(3));
  }
}
