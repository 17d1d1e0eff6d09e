package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Checked;
import faintwind.message.Where;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The quick way into a journal says what the strict one says, or nothing. */
final class QuickLineTest {
  private static final String PUT_IN = "\"\\{}[]:,0123456789.-+eT xnullΩ\u0001\t";

  @Test
  void mostLinesAreReadQuicklyAndAlike() throws IOException {
    int quick = 0;
    for (String line : lines()) {
      Optional<JournalEntry> read = QuickLine.read(line);
      read.ifPresent(entry -> assertThat(entry).isEqualTo(strictly(line).orElseThrow()));
      quick += read.isPresent() ? 1 : 0;
    }
    assertThat(quick).isGreaterThan(lines().size() * 8 / 10);
  }

  @Test
  void alteredLinesAreReadAlikeOrLeftToTheStrictWay() throws IOException {
    Random random = new Random(11);
    List<String> lines = lines();
    for (int i = 0; i < 20_000; i++) {
      String line = altered(lines.get(random.nextInt(lines.size())), random);
      QuickLine.read(line)
          .ifPresent(entry -> assertThat(Optional.of(entry)).as(line).isEqualTo(strictly(line)));
    }
  }

  private static Optional<JournalEntry> strictly(String line) {
    Checked<JournalEntry> read = JournalLine.strictly(line, Where.NOWHERE);
    return read.fold((entry, notes) -> Optional.of(entry), problems -> Optional.empty());
  }

  private static String altered(String line, Random random) {
    int at = random.nextInt(line.length() - 80);
    int end = Math.min(line.length(), at + random.nextInt(3));
    int put = random.nextInt(PUT_IN.length());
    String piece = random.nextBoolean() ? PUT_IN.substring(put, put + 1) : "";
    return line.substring(0, at) + piece + line.substring(end);
  }

  private static List<String> lines() throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> projects = Files.list(Path.of("demo-projects"))) {
      for (Path project : projects.sorted().toList()) {
        lines.addAll(Files.readAllLines(project.resolve("journal.jsonl")));
      }
    }
    return lines;
  }
}
