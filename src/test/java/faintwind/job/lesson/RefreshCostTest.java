package faintwind.job.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import faintwind.files.lesson.ClassFile;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.job.record.AtInstrument;
import faintwind.message.Messages;
import faintwind.record.Event.NoteWritten;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What it costs to look at a class of twelve whole instruments again, in processor time. */
@Tag("long")
class RefreshCostTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-12-01T09:55Z");
  private static final Clock CLOCK = Clock.fixed(NOW.toInstant(), ZoneOffset.UTC);
  private static final Path WHOLE = Path.of("demo-projects/cellar");
  private static final int PAIRS = 12;
  private static final int TIMES = 20;

  @TempDir Path folder;

  @Test
  void classOfTwelveIsRefreshedInUnder300Milliseconds() throws IOException {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 1; i <= PAIRS; i++) {
      pairs.add(new Pair(i, "pair-" + i, ""));
      copy(WHOLE, folder.resolve("pair-" + i));
    }
    ClassFile.write(
        folder,
        new SchoolClass(
            "Year 10", "", List.of(), pairs, List.of(), Optional.empty(), Optional.empty()));
    LookAtClass looking = new LookAtClass(folder, Messages.of(Locale.UK));
    double first_ms = cost_ms(looking);
    double same_ms = 0;
    double one_ms = 0;
    for (int i = 0; i < TIMES; i++) {
      same_ms += cost_ms(looking) / TIMES;
      new AtInstrument(folder.resolve("pair-7"), CLOCK, "Ida")
          .work((view, enter) -> enter.plain(Optional.empty(), new NoteWritten("weighed")));
      one_ms += cost_ms(looking) / TIMES;
    }
    System.out.printf(
        "twelve: first %.0f ms, nothing changed %.1f ms, one pair changed %.1f ms of processor%n",
        first_ms, same_ms, one_ms);
    assertThat(same_ms).isLessThan(one_ms);
    assertThat(one_ms).isLessThan(300).isLessThan(first_ms / 3);
  }

  private static double cost_ms(LookAtClass looking) throws IOException {
    OperatingSystemMXBean machine =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long begin_ns = machine.getProcessCpuTime();
    assertThat(looking.look(NOW).isOk()).isTrue();
    return (machine.getProcessCpuTime() - begin_ns) / 1e6;
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }
}
