package faintwind.ui.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How long large journals and many instruments take; the numbers are printed. */
@Tag("slow")
class OpeningTimesTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");

  /** Of whole instruments: the window names them before (ManyInstrumentsTest holds that to 1.5). */
  private static final double STILL_TOO_SLOW_S = 3;

  @TempDir Path temp;

  private interface Work {
    void run() throws IOException;
  }

  private static double seconds(Work work) throws IOException {
    long begin = System.nanoTime();
    work.run();
    return (System.nanoTime() - begin) / 1e9;
  }

  private static double cpu_s() {
    OperatingSystemMXBean system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    return system.getProcessCpuTime() / 1e9;
  }

  private static void linkOrCopy(Path file, Path copy) throws IOException {
    try {
      Files.createLink(copy, file.toAbsolutePath());
    } catch (IOException | UnsupportedOperationException elsewhere) {
      Files.copy(file, copy);
    }
  }

  @Test
  void tenThousandEntriesOpenInLessThanASecond() throws IOException {
    InstrumentFolder folder =
        InstrumentFolder.create(
            temp.resolve("long"),
            new JournalEntry(
                "e", AT, "Ida", Optional.empty(), new Event.InstrumentCreated("Long", true)));
    List<JournalEntry> entries = new ArrayList<>();
    for (int i = 1; i < 10_000; i++) {
      Event event =
          i % 3 == 0
              ? new Event.StepOpened()
              : new Event.NoteWritten("note of some length, as people write them, number " + i);
      entries.add(new JournalEntry("e" + i, AT, "Ida", Optional.of("care"), event));
    }
    folder.append(entries);
    Workspace workspace = new Workspace(temp, Clock.systemUTC(), Locale.ENGLISH);
    for (int i = 0; i < 3; i++) {
      double open_s = seconds(() -> folder.open());
      double all_s =
          seconds(() -> assertThat(workspace.read(folders -> {}).instruments()).hasSize(1));
      JournalEntry one =
          new JournalEntry("x" + i, AT, "Ida", Optional.empty(), new Event.NoteWritten("one"));
      double append_s = seconds(() -> folder.append(List.of(one)));
      System.out.printf(
          "10000 entries: journal %.2f s, window %.2f s, one more entry %.2f s%n",
          open_s, all_s, append_s);
    }
    assertThat(seconds(() -> folder.open())).isLessThan(1);
  }

  /**
   * Half-made ones, and whole ones with plan, calibration and log. These take longer, and Home
   * lists their names meanwhile.
   */
  @ParameterizedTest
  @ValueSource(strings = {"ripening-room", "cellar"})
  void fiveHundredInstrumentsAreListedInAMomentAndAHalf(String kind) throws IOException {
    Path room = Path.of("demo-projects", kind);
    for (int i = 0; i < 500; i++) {
      Path target = temp.resolve("many/rind-" + i);
      try (Stream<Path> all = Files.walk(room)) {
        for (Path file : all.sorted().toList()) {
          Path copy = target.resolve(room.relativize(file).toString());
          if (Files.isDirectory(file)) {
            Files.createDirectories(copy);
          } else {
            linkOrCopy(file, copy);
          }
        }
      }
    }
    Workspace workspace = new Workspace(temp.resolve("many"), Clock.systemUTC(), Locale.ENGLISH);
    double cpu_s = 0;
    for (int i = 0; i < 4; i++) {
      double before_s = cpu_s();
      double wall_s =
          seconds(() -> assertThat(workspace.read(folders -> {}).instruments()).hasSize(500));
      cpu_s = cpu_s() - before_s;
      System.out.printf("500 instruments (%s): %.2f s, %.2f s of processor%n", kind, wall_s, cpu_s);
    }
    // the work is shared by two processors at least; a busy machine stretches the wall clock
    assertThat(cpu_s / 2).isLessThan(kind.equals("cellar") ? STILL_TOO_SLOW_S : 1.5);
  }
}
