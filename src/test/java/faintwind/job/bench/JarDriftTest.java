package faintwind.job.bench;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.bench.BenchRow.JarLevel;
import faintwind.message.Amount;
import faintwind.message.Messages;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A jar check in the cold, high up, is no drift; one that reads low in the same air is. */
class JarDriftTest {
  private static final OffsetDateTime LATER = OffsetDateTime.parse("2027-02-01T10:00+01:00");

  @TempDir Path temp;
  private Path folder = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    Path demo = Path.of("demo-projects/cellar");
    folder = temp.resolve("rind");
    try (Stream<Path> all = Files.walk(demo)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, folder.resolve(demo.relativize(file).toString()));
      }
    }
  }

  private Optional<JarLevel> after(String air, String pressure, String delta) throws IOException {
    List<JournalEntry> entries = new ArrayList<>();
    String[][] typed = {
      {"jar-air", air, "°C"}, {"jar-pressure", pressure, "hPa"}, {"jar-delta", delta, "K"}
    };
    for (String[] one : typed) {
      if (!one[1].isEmpty()) {
        Amount amount = Amount.exact(Double.parseDouble(one[1]), one[2]);
        entries.add(
            new JournalEntry(
                one[0] + "-later",
                LATER.plusMinutes(entries.size()),
                "Ida",
                Optional.of("jar-check"),
                new ReadingEntered(one[0], one[1], amount, Optional.empty())));
      }
    }
    assertThat(new InstrumentFolder(folder).append(entries)).isEmpty();
    return new ReadBench(Messages.of(Locale.ENGLISH))
        .look(folder, LATER.plusHours(1))
        .fold((looked, notes) -> looked.row().jar(), problems -> Optional.empty());
  }

  @Test
  void coldAirHighUpIsNoDrift() throws IOException {
    // within the band of a jar, where the bare numbers differ by 8.8 %
    JarLevel level = after("5", "800", "34.5").orElseThrow();
    assertThat(level.drift().orElseThrow()).isLessThan(0.04);
  }

  @Test
  void theSameAirShowsTheWholeChange() throws IOException {
    JarLevel level = after("", "", "28.53").orElseThrow();
    assertThat(level.drift().orElseThrow()).isCloseTo(-0.1, Offset.offset(0.002));
  }
}
