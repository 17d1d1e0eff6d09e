package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.files.asset.MeterFiles;
import faintwind.guide.Situation;
import faintwind.guide.Situation.DatedSheet;
import faintwind.guide.Verdicts;
import faintwind.message.Checked;
import faintwind.record.Event;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeterTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final String SIMPLE = "simple-2000-counts";
  private static final String SHORT = "simple-2000-counts-to-2-Mohm";

  private static Meters shipped() throws IOException {
    return read(List.of());
  }

  private static Meters read(List<Path> own) throws IOException {
    return MeterFiles.read(own).fold((meters, notes) -> meters, problems -> Meters.NONE);
  }

  @ParameterizedTest(name = "{0} {1} on {2}: {3} (share and counts of the class, worked by hand)")
  @CsvSource({
    "100, Ω, simple-2000-counts, 1.3",
    "0.1, kΩ, simple-2000-counts, 0.0013",
    "250, Ω, simple-2000-counts, 5",
    "20, MΩ, simple-2000-counts, 0.35",
    "100, Ω, good-50000-counts, 0.15",
    "5, V, hand-6000-counts, 0.028",
    "50, mA, simple-2000-counts, 1.05"
  })
  void halfWidthIsShareOfTheReadingAndCounts(double value, String unit, String id, double half)
      throws IOException {
    MeterClass meter = shipped().find(id).orElseThrow();
    assertThat(meter.halfWidth(value, unit).orElseThrow()).isCloseTo(half, within(half * 1e-9));
  }

  @Test
  void beyondItsRangesAndInOtherUnitsItSaysNothing() throws IOException {
    MeterClass meter = shipped().find(SHORT).orElseThrow();
    assertThat(meter.halfWidth(3, "MΩ")).isEmpty();
    assertThat(meter.halfWidth(3, "g")).isEmpty();
    assertThat(meter.top("MΩ")).hasValue(2);
    assertThat(meter.top("°C")).isEmpty();
    assertThatThrownBy(() -> new MeterRange("Ω", 0, 1, 0.01, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void everyShippedClassSaysWhereItsNumbersComeFromAndNamesNoMaker() throws IOException {
    Meters meters = shipped();
    assertThat(meters.classes()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(meters.usualClass()).isPresent();
    for (MeterClass meter : meters.classes()) {
      assertThat(meter.sources()).as(meter.id()).isNotEmpty();
      assertThat(meter.name()).as(meter.id()).containsIgnoringCase("counts");
      for (String unit : List.of("Ω", "V", "A")) {
        assertThat(meter.top(unit)).as(meter.id() + " " + unit).isPresent();
      }
    }
  }

  private static Situation with(Meters meters, Event... events) {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    OffsetDateTime at = SampleBuild.LATER.minusHours(2);
    for (Event event : events) {
      at = at.plusMinutes(1);
      String step =
          event instanceof ReadingEntered r
              ? CHECKLIST.stepOfReading(r.reading()).orElseThrow().id()
              : "heater-alone";
      entries.add(new JournalEntry("m" + entries.size(), at, "Ada Test", Optional.of(step), event));
    }
    return new Situation(
        InstrumentState.replay(entries),
        List.of(new DatedSheet(SampleBuild.BEGIN, SampleBuild.sheet())),
        SampleBuild.LATER,
        meters);
  }

  private static ReadingEntered typed(String reading, String typed, String unit) {
    return new ReadingEntered(reading, typed, SampleBuild.amount(typed, unit), Optional.empty());
  }

  private static ReadingVerdict verdict(Situation situation, String reading) {
    Step step = CHECKLIST.stepOfReading(reading).orElseThrow();
    return Verdicts.of(CHECKLIST, step, step.reading(reading).orElseThrow(), situation)
        .orElseThrow()
        .verdict();
  }

  /**
   * The band ends at 99 Ω; at 98 Ω the simple meter may be wrong by 1.284 Ω, the good one by 0.148.
   */
  @Test
  void aCoarseMeterWidensTheBandAndAGoodOneHardly() throws IOException {
    ReadingEntered low = typed("heater-alone", "98", "Ω");
    assertThat(verdict(with(shipped(), new MeterChosen(SIMPLE), low), "heater-alone"))
        .isEqualTo(ReadingVerdict.GOOD);
    assertThat(verdict(with(shipped(), new MeterChosen("good-50000-counts"), low), "heater-alone"))
        .isEqualTo(ReadingVerdict.DOUBTFUL);
    assertThat(verdict(with(Meters.NONE, low), "heater-alone")).isEqualTo(ReadingVerdict.DOUBTFUL);
  }

  @Test
  void overRangeCountsOnlyWithItsRangeAndOnlyFromOneThatCouldShowTheLeak() throws IOException {
    for (String range : List.of("OL", "OL 200k", "OL (2 MΩ)", "over range on 2M")) {
      Situation seen = with(shipped(), new MeterChosen(SIMPLE), typed("lead-a-ball", range, "MΩ"));
      assertThat(verdict(seen, "lead-a-ball")).as(range).isNotEqualTo(ReadingVerdict.GOOD);
      assertThat(isShort(seen)).as(range).isTrue();
    }
    Situation seen = with(shipped(), new MeterChosen(SIMPLE), typed("lead-a-ball", "OL 20M", "MΩ"));
    assertThat(verdict(seen, "lead-a-ball")).isEqualTo(ReadingVerdict.GOOD);
    assertThat(isShort(seen)).isFalse();
    ReadingEntered leak = typed("lead-a-ball", "420k", "MΩ");
    assertThat(isShort(with(shipped(), new MeterChosen(SHORT), leak))).isFalse();
  }

  @Test
  void aMeterThatPicksItsRangeHasItOnRecordOnceItIsChosen() throws IOException {
    ReadingEntered open = typed("lead-a-ball", "OL", "MΩ");
    assertThat(verdict(with(shipped(), open), "lead-a-ball")).isEqualTo(ReadingVerdict.DOUBTFUL);
    assertThat(verdict(with(shipped(), new MeterChosen("hand-6000-counts"), open), "lead-a-ball"))
        .isEqualTo(ReadingVerdict.GOOD);
  }

  private static boolean isShort(Situation situation) {
    Step step = CHECKLIST.step("heater-insulation").orElseThrow();
    return Verdicts.isShortOfRange(
        step.reading("lead-a-ball").orElseThrow(),
        situation.state().reading(step.id(), "lead-a-ball").orElseThrow(),
        situation,
        situation.values(CHECKLIST));
  }

  @Test
  void aBetterMeterChosenLaterSaysNothingOfAnEarlierReading() throws IOException {
    ReadingEntered open = typed("lead-a-ball", "OL", "MΩ");
    Situation situation =
        with(shipped(), new MeterChosen(SHORT), open, new MeterChosen("hand-6000-counts"));
    assertThat(situation.meterAt(situation.now()).orElseThrow().id()).isEqualTo("hand-6000-counts");
    assertThat(verdict(situation, "lead-a-ball")).isEqualTo(ReadingVerdict.DOUBTFUL);
    Situation again =
        with(shipped(), new MeterChosen(SHORT), open, new MeterChosen("hand-6000-counts"), open);
    assertThat(verdict(again, "lead-a-ball")).isEqualTo(ReadingVerdict.GOOD);
  }

  @Test
  void anOwnClassIsAddedAndABrokenOneIsLeftOutInWords(@TempDir Path own) throws IOException {
    Path folder = Files.createDirectories(own.resolve("meters"));
    String text = Files.readString(Path.of("assets/meters/" + SIMPLE + ".json"));
    Files.writeString(folder.resolve("mine.json"), text.replace(SIMPLE, "mine"));
    Files.writeString(folder.resolve("bad.json"), text.replace("\"counts\": 5", "\"counts\": -5"));
    Files.writeString(folder.resolve("torn.json"), text.substring(0, 40));
    Checked<Meters> read = MeterFiles.read(List.of(own));
    assertThat(read(List.of(own)).find("mine")).isPresent();
    assertThat(read(List.of(own)).find(SIMPLE)).isPresent();
    assertThat(read.problems())
        .extracting(p -> p.where().file().orElse(""))
        .contains("meters/bad.json", "meters/torn.json");
  }
}
