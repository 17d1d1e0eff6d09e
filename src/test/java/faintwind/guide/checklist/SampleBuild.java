package faintwind.guide.checklist;

import faintwind.guide.Situation;
import faintwind.guide.Situation.DatedSheet;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.physics.Interval;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.StepOpened;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A sound build of a 12.7 mm copper pair, made up, as entries for the tests of the guide. */
public final class SampleBuild {
  public static final OffsetDateTime BEGIN = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  public static final OffsetDateTime LATER = BEGIN.plusDays(60);

  private SampleBuild() {}

  /** Numbers near those of the first example of the design; round, made up for the tests. */
  public static DesignSheet sheet() {
    return sheet(Map.of());
  }

  /** The same with some quantities replaced. */
  public static DesignSheet sheet(Map<OutcomeId, Interval> other) {
    Map<OutcomeId, Interval> values = new HashMap<>();
    values.put(OutcomeId.BALL_DIAMETER, Interval.share(12.7, 0.002));
    values.put(OutcomeId.BORE, Interval.exact(3));
    values.put(OutcomeId.HEATED_BORE_DEPTH, Interval.exact(9.5));
    values.put(OutcomeId.REFERENCE_BORE_DEPTH, Interval.exact(9.5));
    values.put(OutcomeId.BALL_MASS, Interval.share(9.58, 0.02));
    values.put(OutcomeId.BLANK_MASS_AGREEMENT, Interval.exact(0.048));
    values.put(OutcomeId.HEATED_BALL_MASS, Interval.share(8.98, 0.005));
    values.put(OutcomeId.REFERENCE_BALL_MASS, Interval.share(8.98, 0.005));
    values.put(OutcomeId.BORE_MASS_PER_MM, Interval.exact(0.063));
    values.put(OutcomeId.HEATER_RESISTANCE, Interval.share(100, 0.01));
    values.put(OutcomeId.LEAD_TO_LEAD_LOW, Interval.exact(98));
    values.put(OutcomeId.LEAD_TO_LEAD_HIGH, Interval.exact(102));
    values.put(OutcomeId.HEATER_VOLTAGE, new Interval(4.85, 4.97, 5.09));
    values.put(OutcomeId.SUPPLY_LOW, Interval.exact(4.9));
    values.put(OutcomeId.SUPPLY_HIGH, Interval.exact(5.1));
    values.put(OutcomeId.CURRENT_LOW, Interval.exact(48));
    values.put(OutcomeId.CURRENT_HIGH, Interval.exact(52));
    values.put(OutcomeId.STILL_DELTA, Interval.share(30, 0.1));
    values.put(OutcomeId.JAR_DELTA, Interval.share(29, 0.04));
    values.put(OutcomeId.JAR_AIR, Interval.exact(20));
    values.put(OutcomeId.JAR_SLOPE, Interval.exact(-0.03));
    values.put(OutcomeId.JAR_PRESSURE, Interval.exact(1013.25));
    values.put(OutcomeId.JAR_PRESSURE_SLOPE, Interval.exact(-0.006));
    values.put(OutcomeId.JAR_TIME, Interval.exact(45));
    values.put(OutcomeId.WARM_UP_RATE, Interval.share(0.07, 0.05));
    values.put(OutcomeId.WARM_UP_TIME, Interval.exact(45));
    values.put(OutcomeId.SENSITIVITY, Interval.exact(41));
    values.put(OutcomeId.SIGNAL_STILL, Interval.exact(1.23));
    values.put(OutcomeId.RESOLUTION_DELTA, Interval.exact(0.02));
    values.put(OutcomeId.ZERO_BAND, new Interval(-0.01, 0, 0.01));
    values.put(OutcomeId.LOOP_RESISTANCE_LOW, Interval.exact(10));
    values.put(OutcomeId.LOOP_RESISTANCE_HIGH, Interval.exact(14));
    values.put(OutcomeId.INSULATION_GOOD, Interval.exact(20));
    values.put(OutcomeId.INSULATION_STOP, Interval.exact(1));
    values.put(OutcomeId.CABLE_END_TO_END, Interval.exact(1.5));
    values.putAll(other);
    List<Outcome> quantities = new ArrayList<>();
    for (OutcomeId id : OutcomeId.values()) {
      quantities.add(Outcome.plain(id, values.getOrDefault(id, Interval.exact(1))));
    }
    return new DesignSheet(quantities);
  }

  /** What a sound build reads, by reading. */
  public static Map<String, String> readings() {
    Map<String, String> typed = new HashMap<>();
    typed.put("diameter-a", "12.70");
    typed.put("diameter-b", "12.69");
    typed.put("blank-a", "9.57");
    typed.put("blank-b", "9.59");
    typed.put("heated-depth", "9.4");
    typed.put("reference-depth", "9.6");
    typed.put("heated-mass", "8.97");
    typed.put("reference-mass", "8.99");
    typed.put("heater-alone", "100,3");
    typed.put("lead-to-lead", "100.4");
    typed.put("meter-tips", "0.2");
    typed.put("meter-proof-1", "1.00");
    typed.put("meter-proof-10", "10.0");
    typed.put("meter-proof-after", "1.00");
    for (String pair : List.of("heater-with-leads", "lead-to-lead-again", "lead-to-lead-mounted")) {
      typed.put(pair, "100.4");
    }
    typed.put("loop", "12.1");
    typed.put("loop-alone", "12.0");
    typed.put("loop-mounted", "12.1");
    typed.put("joined-heater-pair", "101.2");
    typed.put("joined-signal-pair", "12.9");
    typed.put("heater-pair-closed", "101.2");
    typed.put("signal-pair-closed", "12.9");
    typed.put("heater-pair-on-arm", "101.2");
    typed.put("signal-pair-on-arm", "12.9");
    typed.put("supply-open", "5.01");
    typed.put("cable-heater-plus", "0.6");
    typed.put("cable-heater-minus", "0.6");
    typed.put("cable-signal-plus", "0.7");
    typed.put("cable-signal-minus", "0.6");
    typed.put("zero-signal", "-0.004");
    typed.put("noise", "1.1");
    typed.put("supply-volts", "4.97");
    typed.put("supply-current", "49.6");
    typed.put("sense-change", "0.28");
    typed.put("breath-drop", "0.2");
    typed.put("arm-radius", "600");
    typed.put("radius", "612");
    typed.put("u-radius", "1.5");
    typed.put("radius-growth", "0.5");
    typed.put("air-temperature", "21.4");
    typed.put("air-pressure", "981");
    typed.put("air-humidity", "46");
    typed.put("jar-air", "21");
    typed.put("jar-pressure", "1009");
    typed.put("jar-delta", "29.4");
    return typed;
  }

  /** Every entry of a complete, sound build. */
  public static List<JournalEntry> complete(Checklist checklist) {
    Script script = new Script();
    script.add(Optional.empty(), new InstrumentCreated("Test pair", true));
    checklist.steps().forEach(script::doStep);
    return script.entries;
  }

  /** The situation after some entries, long after. */
  public static Situation after(List<JournalEntry> entries) {
    return new Situation(
        InstrumentState.replay(entries), List.of(new DatedSheet(BEGIN, sheet())), LATER);
  }

  /** An amount, as the reading of a step would take it. */
  public static Amount amount(String typed, String unit) {
    Checked<Amount> read = NumberText.read(typed, unit);
    return ((Checked.Ok<Amount>) read).value();
  }

  /** An entry at a time after {@link #LATER}'s day before. */
  public static JournalEntry entry(String id, String step, Event event) {
    return new JournalEntry(id, LATER.minusHours(1), "Ada Test", Optional.of(step), event);
  }

  private static final class Script {
    private final List<JournalEntry> entries = new ArrayList<>();
    private OffsetDateTime now = BEGIN;

    void add(Optional<String> step, Event event) {
      now = now.plusMinutes(1);
      entries.add(new JournalEntry("e" + entries.size(), now, "Ada Test", step, event));
    }

    void doStep(Step step) {
      Optional<String> id = Optional.of(step.id());
      add(id, new StepOpened());
      step.cautions().forEach(c -> add(id, new CautionAcknowledged(c.id())));
      for (Question question : step.asks().questions()) {
        Question.Choice choice =
            question.choices().stream().filter(c -> c.stop().isEmpty()).findFirst().orElseThrow();
        add(id, new QuestionAnswered(question.id(), choice.id()));
      }
      for (Reading reading : step.asks().readings()) {
        String typed = readings().getOrDefault(reading.id(), "OL 20M");
        add(
            id,
            new ReadingEntered(
                reading.id(), typed, amount(typed, reading.unit()), Optional.empty()));
      }
      step.asks().clock().ifPresent(clock -> add(id, new ClockStarted(clock.id(), 60)));
      step.asks().photo().ifPresent(p -> add(id, new PhotoAdded("photos/x.jpg", "0", p)));
      now = now.plusMinutes(2);
      add(id, new StepFinished());
    }
  }
}
