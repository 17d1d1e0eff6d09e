package faintwind.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Spoiled files for every reader ({@link FuzzRun}): nothing comes through, nothing hangs. What was
 * ever found stays as a file in {@code src/test/resources/fuzz}, in the folder of its reader.
 */
class ReaderFuzzTest {
  private static final Path FOUND = Path.of("src/test/resources/fuzz");

  @TempDir Path folder;

  /** Else spoiled ones would be refused at their first byte, and show nothing. */
  @Test
  void everySoundFileIsTaken() throws IOException {
    FuzzRun run = new FuzzRun(folder, folder.resolve("kept"), 1);
    for (Reader reader : Reader.values()) {
      if (run.sound(reader) instanceof Checked<?> checked) {
        assertThat(checked.isOk()).as(reader + ": " + checked.problems()).isTrue();
      }
    }
  }

  @Test
  void aFewSpoiledFilesOfEachKindGetAnAnswer() throws IOException {
    FuzzRun run = new FuzzRun(folder, folder.resolve("kept"), 20261129);
    assertTimeoutPreemptively(Duration.ofSeconds(60), () -> run.run(200));
    assertThat(run.findings()).isEmpty();
  }

  @Test
  @Tag("slow")
  void aMillionSpoiledFilesGetAnAnswer() throws IOException {
    FuzzRun run = new FuzzRun(folder, folder.resolve("kept"), 7);
    run.run(1_000_000);
    assertThat(run.findings()).isEmpty();
  }

  @Test
  void whatWasEverFoundGetsAnAnswer() throws IOException {
    FuzzRun run = new FuzzRun(folder, folder.resolve("kept"), 1);
    for (Reader reader : Reader.values()) {
      for (Path input : inputs(FOUND.resolve(reader.name()))) {
        assertThat(run.finding(reader, Files.readAllBytes(input))).as(input.toString()).isEmpty();
      }
    }
    List<String> names = Arrays.stream(Reader.values()).map(Reader::name).toList();
    assertThat(inputs(FOUND).stream().map(p -> p.getFileName().toString())).isSubsetOf(names);
  }

  private static List<Path> inputs(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> inputs = Files.list(folder)) {
      return inputs.sorted().toList();
    }
  }
}
