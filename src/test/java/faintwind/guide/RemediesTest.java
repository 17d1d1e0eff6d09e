package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

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
        "lead-a-ball=420k | lead-a-pierced",
        "lead-b-ball=3k | lead-b-pierced",
        "lead-a-ball=5M; lead-b-ball=7M | both-leads-damp",
        "lead-a-ball=2k; lead-b-ball=2.1k | epoxy-over-rim",
        "lead-to-lead=61 | leads-bridged",
        "lead-to-lead=OL | heater-broken",
        "heater-alone=220; lead-to-lead=220 | wrong-resistor",
        "loop-heated-ball=12k | junction-1-pierced",
        "loop-reference-ball=12k | junction-2-pierced",
        "ball-ball=9k; loop-heated-ball=5k; loop-reference-ball=5k | both-junctions-pierced",
        "ball-ball=0.3 | balls-touch-outside",
        "loop=OL | loop-open",
        "loop=3 | loop-shorted",
        "loop-heater=80k | heater-in-loop",
        "loop-heater=80k; loop-heated-ball=40k; lead-a-ball=40k | leak-through-ball",
        "sense-change=-0.3 | leads-exchanged",
        "supply-volts=4.2; supply-current=42 | supply-sags",
        "supply-current=61 | heater-drifted"
      })
  void aPatternOfReadingsLeadsToItsCauseFirst(String readings, String cause) {
    assertThat(causes(readings)).startsWith(cause);
  }
}
