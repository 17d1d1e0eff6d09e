package faintwind.network;

import faintwind.guide.Situation;
import faintwind.guide.Verdicts;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.MeterClass;
import faintwind.guide.checklist.Meters;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.Step.ClockSpec;
import faintwind.guide.checklist.Tips;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.record.Event;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.random.RandomGenerator;

/**
 * A builder who measures an assembly step by step where the checklist puts the tips, and stops at
 * the first step with a reading that is not good.
 */
final class MeasuredBuild {
  private static final OffsetDateTime THEN = BenchDesign.SINCE.plusDays(1);

  /** The meter in the way of the current, Ω: usual for a range of 200 mA, no source. */
  private static final double BURDEN_OHM = 1;

  private static final double MINUTES_2_S = 120;

  private final Checklist checklist;
  private final BenchDesign design;
  private final MeterClass meter;
  private final RandomGenerator random;
  private final List<JournalEntry> entries = new ArrayList<>();
  private boolean openWhileSoft;
  private String stoppedAt = "";
  private ReadingVerdict worst = ReadingVerdict.GOOD;

  MeasuredBuild(Checklist checklist, BenchDesign design, MeterClass meter, RandomGenerator random) {
    this.checklist = checklist;
    this.design = design;
    this.meter = meter;
    this.random = random;
    entries.add(entry("choose-design", new MeterChosen(meter.id())));
  }

  /** The same builder; what is wrong came while the epoxy set: all was open while it was soft. */
  MeasuredBuild openWhileSoft() {
    openWhileSoft = true;
    return this;
  }

  /** Measures until a step is not good, or to the end. */
  MeasuredBuild measure(Assembly assembly) {
    for (Step step : checklist.steps()) {
      int before = entries.size();
      if (openWhileSoft && step.asks().clock().filter(ClockSpec::afterReadings).isPresent()) {
        continue;
      }
      for (Reading reading : step.asks().readings()) {
        value(assembly, reading).ifPresent(typed -> enter(step, reading, typed));
      }
      worst = entries.size() == before ? ReadingVerdict.GOOD : worstOf(step);
      if (worst != ReadingVerdict.GOOD) {
        stoppedAt = step.id();
        return this;
      }
    }
    return this;
  }

  private ReadingVerdict worstOf(Step step) {
    Situation now = situation();
    Map<String, Double> values = now.values(checklist);
    return step.asks().readings().stream()
        .flatMap(r -> now.state().reading(step.id(), r.id()).stream().map(l -> Map.entry(r, l)))
        .flatMap(e -> Verdicts.of(e.getKey(), e.getValue(), now, values).stream())
        .map(Reading.Judgement::verdict)
        .reduce(ReadingVerdict.GOOD, BinaryOperator.maxBy(Comparator.naturalOrder()));
  }

  /** The step with a reading that was not good; empty where none was. */
  String stoppedAt() {
    return stoppedAt;
  }

  ReadingVerdict worst() {
    return worst;
  }

  Situation situation() {
    return new Situation(
        InstrumentState.replay(entries),
        List.of(new Situation.DatedSheet(BenchDesign.SINCE, design.sheet())),
        THEN.plusHours(1),
        new Meters(List.of(meter), ""));
  }

  /** Everything typed, for the message of a test that fails. */
  String typed() {
    StringBuilder all = new StringBuilder(meter.id());
    for (JournalEntry entry : entries) {
      if (entry.event() instanceof ReadingEntered r) {
        all.append(", ").append(r.reading()).append(' ').append(r.typed());
      }
    }
    return all.toString();
  }

  private void enter(Step step, Reading reading, String typed) {
    Checked<Amount> read = NumberText.read(typed, reading.unit());
    var amount =
        read.fold(
            (a, notes) -> a,
            problems -> {
              throw new AssertionError(reading.id() + " " + typed + problems);
            });
    entries.add(
        entry(step.id(), new ReadingEntered(reading.id(), typed, amount, Optional.empty())));
  }

  private JournalEntry entry(String step, Event event) {
    return new JournalEntry("n" + entries.size(), THEN, "Model builder", Optional.of(step), event);
  }

  private Optional<String> value(Assembly assembly, Reading reading) {
    ModelMeter shown = new ModelMeter(meter, random);
    return switch (reading.id()) {
      case "supply-open" -> Optional.of(shown.show(assembly.supply_V(), "V"));
      case "supply-volts" -> Optional.of(shown.show(assembly.voltage_V(), "V"));
      case "supply-current" -> Optional.of(shown.show(assembly.current_A(BURDEN_OHM), "A"));
      case "sense-change" -> Optional.of(milli(assembly.senseShare() * straightRise_mV()));
      case "zero-signal" ->
          Optional.of(milli(design.value("high_zero_band_mV") * (2 * random.nextDouble() - 1)));
      default ->
          reading
              .tips()
              .filter(t -> !t.one().isOfProof()) // BuildFaultsTest has the meters that mislead
              .map(t -> shown.ohms(ohm(assembly, t, reading.id().equals("cable-heater-signal"))));
    };
  }

  private static double ohm(Assembly assembly, Tips tips, boolean clipped) {
    return assembly.ohm(tips.scene(), tips.one().word(), tips.other().word(), clipped);
  }

  private double straightRise_mV() {
    return MINUTES_2_S * design.value("warm_up_rate_K_s") * design.value("sensitivity_uV_K") / 1e3;
  }

  private static String milli(double value) {
    return String.format(Locale.ROOT, "%.4f mV", value);
  }
}
