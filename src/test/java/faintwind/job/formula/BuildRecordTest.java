package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.Uncertain;
import faintwind.files.checklist.ChecklistFiles;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import faintwind.job.record.Enter;
import faintwind.job.record.Enter.Person;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.record.Event;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuildRecordTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private static final Clock CLOCK = Clock.fixed(NOW.toInstant(), NOW.getOffset());
  private static final String DESIGN =
      """
      {"format": "faintwind-design/1", "name": "Rind 9",
       "ball": {"metal": "copper", "diameter_mm": 12.7, "bore_mm": 3.3,
                "reference_bore_depth_mm": 9.5, "coat": "bare-polished-copper"},
       "heater": {"resistor": "metal-film-half-watt", "series": "E24", "resistance_ohm": 100,
                  "tolerance_pct": 1, "lead_wire": "copper-36awg", "lead_length_mm": 80},
       "supply": {"voltage_V": 5, "tolerance_pct": 2, "regulator": "linear",
                  "battery": "6xaa-alkaline", "cable": "copper-24awg", "cable_length_m": 0.5},
       "sense": {"thermocouple": "T", "awg": 36, "free_length_mm": 80, "loop_length_m": 0.6,
                 "logger": "logger-24bit-256mV"},
       "air": {"temperature_C": 20, "pressure_hPa": 1002, "humidity_pct": 50},
       "use": {"place": "indoors", "contact_s": 10, "slowest_m_s": 0.05, "fastest_m_s": 3}}
      """;

  private final AtomicInteger next = new AtomicInteger();
  private final Person ada = new Person("Ada Test", () -> "e" + next.incrementAndGet());
  @TempDir Path temp;
  private Path folder;

  @BeforeEach
  void begin() throws IOException {
    folder = temp.resolve("rind");
    Enter.begin(folder, new InstrumentCreated("Rind 9", true), CLOCK, ada);
    enter(Optional.empty(), new DesignChosen(DESIGN, "first"));
    Files.createDirectories(folder.resolve("runs"));
    finishEveryStep();
  }

  /** A reading that was typed before its step was reached would count for nothing. */
  private void finishEveryStep() throws IOException {
    Checked<Checklist> shipped = ChecklistFiles.shipped("standard");
    List<JournalEntry> finished = new ArrayList<>();
    for (Step step : ((Checked.Ok<Checklist>) shipped).value().steps()) {
      finished.add(
          new JournalEntry(
              "e" + next.incrementAndGet(),
              NOW,
              "Ada Test",
              Optional.of(step.id()),
              new Event.StepFinished()));
    }
    new InstrumentFolder(folder).append(finished);
  }

  private void enter(Optional<String> step, Event event) throws IOException {
    String id = "e" + next.incrementAndGet();
    new InstrumentFolder(folder)
        .append(List.of(new JournalEntry(id, NOW, "Ada Test", step, event)));
  }

  private void reading(String step, String reading, Amount amount, ReadingVerdict verdict)
      throws IOException {
    enter(
        Optional.of(step),
        new ReadingEntered(reading, String.valueOf(amount.value()), amount, Optional.of(verdict)));
  }

  private BuildFacts facts() throws IOException {
    Checked<BuildRecord> record = BuildRecord.around(folder.resolve("runs/runs.csv"));
    return ((Checked.Ok<BuildRecord>) record).value().facts().orElseThrow();
  }

  @Test
  void whatWasWeighedAndMeasuredTakesThePlaceOfTheDesign() throws IOException {
    double designed_kg = facts().heatedMass_kg().orElseThrow().value();
    double designedU_kg = facts().heatedMass_kg().orElseThrow().u().orElseThrow();
    reading("weigh-drilled", "heated-mass", Amount.exact(8.63, "g"), ReadingVerdict.GOOD);
    reading("heater-alone", "heater-alone", Amount.exact(100.2, "Ω"), ReadingVerdict.GOOD);
    reading("first-power", "supply-volts", Amount.exact(4.93, "V"), ReadingVerdict.DOUBTFUL);
    BuildFacts facts = facts();
    assertThat(facts.heatedMass_kg().orElseThrow().value()).isCloseTo(0.00863, within(1e-9));
    assertThat(facts.heatedMass_kg().orElseThrow().u().orElseThrow()).isLessThan(designedU_kg);
    assertThat(designed_kg).isNotCloseTo(0.00863, within(1e-9));
    assertThat(facts.heater_ohm().orElseThrow().value()).isEqualTo(100.2);
    assertThat(facts.supply_V().orElseThrow().value()).isEqualTo(4.93);
  }

  /**
   * Formulas for thin wires are good to a fifth. A long fin loses as the root of its coefficient: a
   * half-width of a tenth, which as a rectangle is u = 0.1/√3 = 0.058.
   */
  @Test
  void theLossThroughLeadsIsNoSurerThanTheFormulasForThinWires() throws IOException {
    Uncertain leads = facts().wires().leadLoss_W_K().orElseThrow();
    double relative = leads.u().orElseThrow() / leads.value();
    assertThat(relative).isBetween(0.05, 0.08);
  }

  @Test
  void aReadingThatWasJudgedToBeAnotherPartsOrIsOpenDoesNotCount() throws IOException {
    reading("weigh-drilled", "heated-mass", Amount.exact(3.1, "g"), ReadingVerdict.STOP);
    reading("heater-alone", "heater-alone", Amount.overRange("Ω"), ReadingVerdict.DOUBTFUL);
    assertThat(facts().heatedMass_kg().orElseThrow().value()).isGreaterThan(0.007);
    assertThat(facts().heater_ohm().orElseThrow().value()).isEqualTo(100);
  }
}
