package faintwind.demo;

import faintwind.calibration.speed.SpeedSettings;
import faintwind.calibration.virtual.VirtualCalibration;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.job.JobWatch;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.KeepFormula;
import faintwind.job.record.KeepConversion;
import faintwind.job.record.KeepRuns;
import faintwind.message.Messages;
import faintwind.record.Event;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Makes the three demonstration instruments: one finished, one half built, one with faults in its
 * readings. Everything in them is invented; runs come from the virtual instrument, entries go
 * through the same jobs as a person's, and the calibration is fitted, never typed.
 */
final class DemoProjects {
  private static final String DESIGN =
      """
      {
        "format": "faintwind-design/1",
        "name": "NAME",
        "note": "Made-up data: an invented cheese-ageing cellar and its draughts.",
        "ball": {"metal": "copper", "diameter_mm": 12.7, "bore_mm": 3.3, "reference_bore_depth_mm": 9.5, "coat": "bare-polished-copper"},
        "heater": {"resistor": "metal-film-half-watt", "series": "E24", "resistance_ohm": 100, "tolerance_pct": 1, "lead_wire": "copper-36awg", "lead_length_mm": LEAD},
        "supply": {"voltage_V": 5, "tolerance_pct": 2, "regulator": "linear", "battery": "6xaa-alkaline", "cable": "copper-24awg", "cable_length_m": 0.5},
        "sense": {"thermocouple": "TYPE", "awg": 36, "free_length_mm": 80, "loop_length_m": 0.6, "logger": "logger-24bit-256mV"},
        "air": {"temperature_C": 12, "pressure_hPa": 1002, "humidity_pct": 85},
        "use": {"place": "indoors", "contact_s": 10, "slowest_m_s": 0.05, "fastest_m_s": 3}
      }
      """;

  /** What the made-up builder's meter showed, by reading. */
  static final Map<String, String> TYPED = readings();

  static final Map<String, Map<String, String>> ANSWERS =
      Map.ofEntries(
          Map.entry("choose-use", Map.of("place", "indoors", "group", "no")),
          Map.entry("choose-design", Map.of("sheet", "none")),
          Map.entry("check-clearance", Map.of("fits", "yes")),
          Map.entry("plating-needed", Map.of("needed", "no")),
          Map.entry("set-up-input", Map.of("input", "voltage", "chain", "written")),
          Map.entry("ready-supply", Map.of("fuse", "yes", "source", "battery")),
          Map.entry("choose-arm", Map.of("data", "ride", "drive", "hand", "room", "yes")),
          Map.entry("balance-arm", Map.of("stays", "yes")),
          Map.entry("arm-drive", Map.of("stops", "yes")),
          Map.entry("arm-safety", Map.of("balanced", "yes", "fixed", "yes", "clear", "yes")),
          Map.entry("quiet-room", Map.of("smoke", "yes")),
          Map.entry("spin-runs", Map.of("done", "yes")),
          Map.entry("bring-in-runs", Map.of("checked", "yes")),
          Map.entry("judge-formula", Map.of("warnings", "yes")));

  private DemoProjects() {}

  static void writeAll(Path into) throws IOException {
    finished(into.resolve("cellar"));
    halfBuilt(into.resolve("ripening-room"));
    faulty(into.resolve("cellar-door"));
  }

  /** Rind 1: from the first choice to a day's log in the cellar. */
  static void finished(Path folder) throws IOException {
    DemoWalk walk = new DemoWalk(folder, OffsetDateTime.parse("2026-09-03T13:24:00+02:00"));
    begin(walk, "Rind 1, north shelf", design("Rind 1, north shelf", "80", "T"));
    walk.plain(
        new Event.PartRecorded(
            "two copper balls 12.7 mm", "lot 7 (made up)", OptionalDouble.of(6.4), "EUR"));
    walk.plain(
        new Event.PartRecorded(
            "resistor 100 Ω, 1 %, half a watt, metal film",
            "reel 2 (made up)", OptionalDouble.of(0.1), "EUR"));
    steps(walk, "quiet-room");
    walk.done("plan-runs", TYPED, Map.of());
    walk.done("warm-up-run", TYPED, Map.of());
    walk.done("spin-runs", TYPED, ANSWERS.getOrDefault("spin-runs", Map.of()));
    Path table = runs(walk, folder);
    walk.ok(KeepRuns.keep(folder, table, walk.enter()));
    walk.done("bring-in-runs", TYPED, ANSWERS.getOrDefault("bring-in-runs", Map.of()));
    formula(walk, folder, table);
    steps(walk, "place-probe");
    fieldLog(walk, folder);
    walk.done("convert-log", TYPED, Map.of());
    walk.done("care", TYPED, Map.of());
  }

  /** Rind 3: the coats are curing. */
  static void halfBuilt(Path folder) throws IOException {
    DemoWalk walk = new DemoWalk(folder, OffsetDateTime.parse("2026-11-14T10:00:00+01:00"));
    begin(walk, "Rind 3, ripening room", design("Rind 3, ripening room", "60", "K"));
    steps(walk, "join-leads");
    Map<String, String> typeK = new HashMap<>(TYPED);
    typeK.put("loop-alone", "73.6");
    walk.done("make-junctions", typeK, Map.of());
    walk.begun("coat-parts");
  }

  /** Rind 2: a coat was pierced in the bore, and the blanks were first weighed wrong. */
  static void faulty(Path folder) throws IOException {
    DemoWalk walk = new DemoWalk(folder, OffsetDateTime.parse("2026-10-17T14:00:00+02:00"));
    begin(walk, "Rind 2, by the door", design("Rind 2, by the door", "80", "T"));
    steps(walk, "check-parts");
    walk.done("ready-workplace", TYPED, Map.of());
    String wrong = walk.ok(walk.enter().reading("weigh-blanks", "blank-a", "95.8")).id();
    walk.ok(walk.enter().correctReading(wrong, "9,58", "decimal point misread"));
    walk.ok(walk.enter().reading("weigh-blanks", "blank-b", "9.57"));
    walk.ok(walk.enter().finish("weigh-blanks"));
    steps(walk, "glue-heater", Set.of("ready-workplace", "weigh-blanks"));
    walk.begun("heater-insulation");
    walk.ok(walk.enter().reading("heater-insulation", "lead-a-ball", "27 Ω"));
    walk.ok(walk.enter().reading("heater-insulation", "lead-b-ball", "127,4 Ω"));
    walk.ok(walk.enter().reading("heater-insulation", "lead-to-lead", "100,4"));
  }

  static void begin(DemoWalk walk, String name, String design) throws IOException {
    walk.begin(name);
    walk.plain(
        new Event.NoteWritten("Made-up data: an invented cheese-ageing cellar and its draughts."));
    walk.plain(new Event.DesignChosen(design, "first design"));
  }

  static String design(String name, String lead_mm, String type) {
    return DESIGN.replace("NAME", name).replace("LEAD", lead_mm).replace("TYPE", type);
  }

  static void steps(DemoWalk walk, String last) throws IOException {
    steps(walk, last, Set.of());
  }

  /** Every needed step that is not finished yet, up to and with the last. */
  private static void steps(DemoWalk walk, String last, Set<String> done) throws IOException {
    for (Stage stage : walk.view().checklist().stages()) {
      for (Step step : stage.steps()) {
        boolean finished = walk.view().state().finished(step.id()).isPresent();
        boolean skipped = step.id().startsWith("plating-") && !step.id().equals("plating-needed");
        if (!finished && !skipped && !done.contains(step.id())) {
          walk.done(step.id(), TYPED, ANSWERS.getOrDefault(step.id(), Map.of()));
        }
        if (step.id().equals(last)) {
          return;
        }
      }
      walk.wait(Duration.ofHours(20));
    }
  }

  private static Path runs(DemoWalk walk, Path folder) throws IOException {
    return runs(
        walk,
        Files.createDirectories(folder.resolve("runs/first-session")),
        VirtualRehearsal.calibration(
            DemoCellar.onTheTurntable(), VirtualPlan.staircase(), DemoCellar.SEED));
  }

  /** A session of four hours that ends now, as files of a folder. */
  static Path runs(DemoWalk walk, Path set, VirtualCalibration session) throws IOException {
    String start = walk.now().minusHours(4).toString();
    for (String file : session.files().keySet()) {
      DemoTables.recording(set.resolve(file), session.file(file), start);
    }
    Path table = set.resolve("runs.csv");
    DemoTables.runs(table, session.runs());
    Files.writeString(
        set.resolve("chain.json"),
        """
        {
          "note": "made-up data",
          "input": "voltage",
          "type": "T",
          "gain": 1,
          "sign": 1
        }
        """,
        StandardCharsets.UTF_8);
    return table;
  }

  private static void formula(DemoWalk walk, Path folder, Path table) throws IOException {
    Calibrate calibrate =
        new Calibrate(walk.clock(), Messages.of(Locale.ENGLISH), Calibrate.Settings.USUAL);
    KeepFormula job = new KeepFormula(folder, calibrate);
    KeepFormula.Kept kept = walk.ok(job.fit(table, JobWatch.NOBODY));
    walk.ok(walk.enter().plain(Optional.empty(), job.events(kept)));
    walk.done("fit-formula", TYPED, Map.of());
    walk.done("judge-formula", TYPED, ANSWERS.getOrDefault("judge-formula", Map.of()));
    walk.plain(new Event.CalibrationPutInForce(kept.file()));
    walk.done("write-build-log", TYPED, Map.of());
  }

  private static void fieldLog(DemoWalk walk, Path folder) throws IOException {
    Path log = Files.createDirectories(folder.resolve("logs")).resolve("north-shelf-day.csv");
    DemoTables.recording(
        log,
        VirtualRehearsal.coldFieldLog(
                DemoCellar.inTheCellar(), 24 * 3600, DemoCellar::draught_m_s, DemoCellar.SEED + 1)
            .recording(),
        walk.now().toString());
    walk.wait(Duration.ofHours(25));
    walk.ok(walk.enter().file(Event.FileRole.FIELD_LOG, log));
    String calibration =
        walk.view().state().last(Event.CalibrationPutInForce.class).orElseThrow().event().file();
    KeepConversion.How how =
        new KeepConversion.How(
            folder.resolve(calibration), SpeedSettings::usual, Optional.empty(), Optional.empty());
    walk.ok(new KeepConversion(walk.view(), walk.enter(), how).keep(log, JobWatch.NOBODY));
  }

  private static Map<String, String> readings() {
    Map<String, String> typed = new HashMap<>();
    for (String open :
        List.of(
            "lead-a-plate",
            "lead-b-plate",
            "junction-1-plate",
            "junction-2-plate",
            "heater-body-plate",
            "lead-a-soft",
            "lead-b-soft",
            "loop-heated-soft",
            "loop-reference-soft",
            "loop-heater-soft",
            "ball-ball-soft",
            "lead-a-soft-2",
            "lead-b-soft-2",
            "lead-a-ball",
            "lead-b-ball",
            "loop-heated-ball",
            "loop-reference-ball",
            "loop-heater",
            "ball-ball",
            "lead-a-ball-again",
            "lead-b-ball-again",
            "lead-a-ball-mounted",
            "lead-b-ball-mounted",
            "loop-heated-mounted",
            "loop-reference-mounted",
            "loop-heater-mounted",
            "ball-ball-mounted",
            "joined-heater-signal",
            "joined-heater-ball",
            "joined-signal-heated",
            "joined-signal-reference",
            "cable-heater-pair",
            "cable-signal-pair",
            "cable-heater-signal",
            "heater-signal-on-arm")) {
      typed.put(open, "OL 20M");
    }
    for (String conductor :
        List.of(
            "cable-heater-plus", "cable-heater-minus", "cable-signal-plus", "cable-signal-minus")) {
      typed.put(conductor, "0.3");
    }
    typed.putAll(
        Map.of(
            "diameter-a", "12.70",
            "diameter-b", "12,69",
            "blank-a", "9.58",
            "blank-b", "9.57",
            "heated-depth", "12.7",
            "reference-depth", "9.5",
            "heated-mass", "8.63",
            "reference-mass", "8.84",
            "heater-alone", "100.2",
            "lead-to-lead", "100,4"));
    typed.putAll(
        Map.of(
            "meter-tips", "0.2",
            "meter-proof-1", "1.00",
            "meter-proof-10", "10,02",
            "meter-proof-after", "1.00",
            "heater-with-leads", "100.4",
            "lead-to-lead-again", "100.4",
            "lead-to-lead-mounted", "100.4",
            "joined-heater-pair", "100.9",
            "joined-signal-pair", "9.0",
            "heater-pair-closed", "100.9"));
    typed.putAll(
        Map.of(
            "loop-alone", "8.4",
            "loop-mounted", "8.5",
            "supply-open", "5.02",
            "radius-growth", "0.5",
            "arm-radius", "900"));
    typed.putAll(
        Map.of(
            "loop", "8.5",
            "supply-volts", "4.99",
            "supply-current", "49.8",
            "zero-signal", "-0.002",
            "noise", "0.4",
            "sense-change", "0.29",
            "breath-drop", "0.12",
            "radius", "900",
            "u-radius", "1",
            "jar-delta", "31.7"));
    typed.put("jar-air", "19.5");
    typed.put("jar-pressure", "1004");
    typed.put("signal-pair-closed", "9.0");
    typed.put("heater-pair-on-arm", "100.9");
    typed.put("signal-pair-on-arm", "9.0");
    typed.putAll(Map.of("air-temperature", "19.5", "air-pressure", "1002", "air-humidity", "48"));
    return typed;
  }
}
