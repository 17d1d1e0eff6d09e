package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Remedies;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemediesTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();

  private static List<String> causes(String readings) {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    for (String pair : readings.split(";", -1)) {
      String[] parts = pair.trim().split("=", -1);
      Step step = CHECKLIST.stepOfReading(parts[0]).orElseThrow();
      Reading reading = step.reading(parts[0]).orElseThrow();
      entries.add(
          SampleBuild.entry(
              "t" + entries.size(),
              step.id(),
              new ReadingEntered(
                  parts[0],
                  parts[1],
                  SampleBuild.amount(parts[1], reading.unit()),
                  Optional.empty())));
    }
    return Remedies.of(CHECKLIST, SampleBuild.after(entries)).stream().map(Remedy::id).toList();
  }

  @Test
  void aSoundAssemblyIsNotAccused() {
    assertThat(causes("lead-a-ball=OL")).isEmpty();
  }

  @ParameterizedTest(name = "{0} means {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "lead-a-ball=27 Ω; lead-b-ball=127 Ω | lead-a-touches",
        "lead-a-ball=612 Ω; lead-b-ball=510 Ω | lead-b-touches",
        "lead-a-ball=20k; lead-b-ball=20k | heater-touches",
        "lead-a-ball=420k; lead-b-ball=420k | heater-coats-damp",
        "lead-a-ball=OL 2M; lead-b-ball=OL 2M | range-too-low-heater",
        "meter-tips=OL | meter-cannot-see",
        "meter-proof-10=OL 2M | meter-misreads",
        "meter-proof-after=OL | meter-failed-since",
        "loop-alone=3 | wrong-wire",
        "lead-a-ball-again=40 Ω; lead-b-ball-again=140 Ω | lead-scraped-by-junction",
        "lead-a-ball-again=3M; lead-b-ball-again=3M | soft-leak-again",
        "ball-ball-mounted=2M | soft-leak-mounted",
        "joined-heater-signal=2M | soft-leak-joined",
        "joined-heater-pair=12; joined-signal-pair=101 | pairs-exchanged",
        "joined-heater-pair=109 | cold-joint-heater",
        "joined-signal-pair=29 | cold-joint-signal",
        "supply-current=0.01 | meter-fuse-blown",
        "lead-a-ball=420k | leads-contradict",
        "lead-a-ball=5M; lead-b-ball=7M | heater-coats-damp",
        "lead-a-ball=20 Ω; lead-b-ball=25 Ω; lead-to-lead=41 | both-leads-touch",
        "lead-to-lead=61 | leads-bridged",
        "lead-to-lead=OL | heater-broken",
        "heater-alone=220; lead-to-lead=220 | wrong-resistor",
        "lead-a-plate=12k | pinhole-lead-a",
        "heater-body-plate=12k | pinhole-body",
        "lead-a-soft=27 Ω; lead-b-soft=127 Ω | heater-hurt-soft",
        "lead-a-soft=0.4; lead-b-soft=0.4 | heater-leaks-soft",
        "lead-a-soft=OL 2M | range-too-low-glue",
        "loop-heated-soft=12k | junction-1-hurt-soft",
        "loop-reference-soft=12k | junction-2-hurt-soft",
        "ball-ball-soft=9k; loop-heated-soft=5k; loop-reference-soft=5k | both-junctions-hurt-soft",
        "ball-ball-soft=3 Ω | balls-touch-soft",
        "loop-heater-soft=8k | heater-on-loop-soft",
        "loop-heater-soft=80k; loop-heated-soft=40k | through-ball-soft",
        "lead-a-soft-2=40 Ω; lead-b-soft-2=140 Ω | lead-scraped-soft",
        "ball-ball-soft=2M | junctions-leak-soft",
        "ball-ball-soft=OL 2M | range-too-low-junctions",
        "junction-2-plate=0.3M | pinhole-junction-2",
        "loop-heated-ball=12k | junction-1-touches",
        "loop-reference-ball=12k | junction-2-touches",
        "ball-ball=9k; loop-heated-ball=5k; loop-reference-ball=5k | both-junctions-touch",
        "ball-ball=0.3 | loop-coats-damp",
        "ball-ball=3 Ω | balls-touch-outside",
        "loop=OL | loop-open",
        "loop=3 | loop-shorted-since",
        "loop=0.4 | loop-shorted",
        "loop-heater=80k | loop-coats-damp",
        "loop-heater=8k | heater-touches-loop",
        "loop-heater=80k; loop-heated-ball=40k | leak-through-ball",
        "loop-heated-ball=6M | loop-coats-damp",
        "cable-heater-plus=OL | heater-plus-broken",
        "cable-heater-plus=OL; cable-signal-minus=OL | conductors-exchanged",
        "cable-signal-pair=0.2 | cable-damp",
        "cable-signal-pair=0.2 Ω | signal-pair-shorted",
        "sense-change=-0.3 | leads-exchanged",
        "supply-open=6.1 | supply-open-high",
        "supply-open=4.4 | supply-open-low",
        "supply-open=0.02 | supply-open-dead",
        "supply-open=-5 | supply-open-reversed",
        "supply-volts=4.2; supply-current=42 | supply-sags",
        "supply-volts=9.1; supply-current=91 | supply-too-high",
        "supply-current=42 | heater-drifted",
        "supply-current=61 | something-draws"
      })
  void aPatternOfReadingsLeadsToItsCauseFirst(String readings, String cause) {
    assertThat(causes(readings)).startsWith(cause);
  }

  /** Entries of a sound build in which the heater touches: both leads read as often as said. */
  private static List<JournalEntry> touching(int times) {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    entries.removeIf(
        e -> e.event() instanceof ReadingEntered r && r.reading().matches("lead-[ab]-ball"));
    for (int i = 0; i < times; i++) {
      entries.add(typed("a" + i, "lead-a-ball", "20k"));
      entries.add(typed("b" + i, "lead-b-ball", "20k"));
    }
    return entries;
  }

  private static JournalEntry typed(String id, String name, String text) {
    Step step = CHECKLIST.stepOfReading(name).orElseThrow();
    String unit = step.reading(name).orElseThrow().unit();
    return SampleBuild.entry(
        id,
        step.id(),
        new ReadingEntered(name, text, SampleBuild.amount(text, unit), Optional.empty()));
  }

  /** Whether what cannot be undone is told. */
  private static boolean lastIsTold(List<JournalEntry> entries) {
    Remedy remedy =
        CHECKLIST.remedies().stream().filter(r -> r.id().equals("heater-touches")).findAny().get();
    String todo = Remedies.todo(CHECKLIST, remedy, SampleBuild.after(entries));
    assertThat(todo).startsWith(remedy.words().todo());
    return todo.contains(remedy.words().last().orElseThrow());
  }

  @Test
  void whatCannotBeUndoneIsToldAfterTheLadderAlone() {
    List<JournalEntry> once = touching(1);
    once.add(typed("p", "meter-proof-1", "1.00"));
    assertThat(lastIsTold(once)).as("not measured again").isFalse();
    List<JournalEntry> twice = touching(2);
    assertThat(lastIsTold(twice)).as("meter not proven since").isFalse();
    twice.add(typed("o", "loop-alone", "12.0"));
    assertThat(lastIsTold(twice)).as("another reading proves no meter").isFalse();
    twice.add(typed("p", "meter-proof-1", "1.00"));
    assertThat(lastIsTold(twice)).isTrue();
  }

  @Test
  void aLeadThatReadsGoodNeedsNoSecondReading() {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    assertThat(lastIsTold(entries)).as("nothing is bad").isFalse();
  }
}
