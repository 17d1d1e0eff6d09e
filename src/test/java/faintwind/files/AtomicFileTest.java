package faintwind.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AtomicFileTest {
  private static final byte[] OLD = "old".getBytes(StandardCharsets.UTF_8);
  private static final byte[] NEW = "new, and longer".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;

  @Test
  void fileAppearsWhole() throws IOException {
    Path target = folder.resolve("cal.json");
    AtomicFile.write(target, NEW);
    assertThat(target).hasBinaryContent(NEW);
    assertThat(names()).containsExactly("cal.json");
  }

  @Test
  void nameOfTwoHundredAndFiftyCharactersIsWritten() throws IOException {
    Path target = folder.resolve("x".repeat(245) + ".json");
    AtomicFile.write(target, NEW);
    assertThat(names()).containsExactly(target.getFileName().toString());
  }

  /** No process has the number of the first; the second is that of this test. */
  @Test
  void whatADeadProcessLeftIsTakenAwayAndWhatALivingOneWritesStays() throws IOException {
    long alive = ProcessHandle.current().parent().orElseThrow().pid();
    Files.write(folder.resolve(".cal.json.999999999999.part"), OLD);
    Files.write(folder.resolve(".cal.json." + alive + ".part"), OLD);
    Files.write(folder.resolve(".other.json.999999999999.part"), OLD);
    AtomicFile.write(folder.resolve("cal.json"), NEW);
    assertThat(names())
        .containsExactlyInAnyOrder(
            "cal.json", ".cal.json." + alive + ".part", ".other.json.999999999999.part");
  }

  @Test
  void withoutACommitNothingStays() throws IOException {
    Path target = folder.resolve("cal.json");
    try (AtomicFile file = AtomicFile.begin(target)) {
      file.stream().write(NEW);
    }
    assertThat(names()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(
      value = AtomicFile.Step.class,
      names = {"CREATE", "WRITE", "SYNC", "MOVE"})
  void failureOfAStepLeavesTheOldFileAndNothingElse(AtomicFile.Step failing) throws IOException {
    Path target = folder.resolve("cal.json");
    Files.write(target, OLD);
    assertThatThrownBy(() -> AtomicFile.write(target, NEW, failAt(failing)))
        .isInstanceOf(IOException.class)
        .hasMessage("No space left on device");
    assertThat(target).hasBinaryContent(OLD);
    assertThat(names()).containsExactly("cal.json");
  }

  @Test
  void failureAfterTheMoveLeavesTheNewFileWhole() throws IOException {
    Path target = folder.resolve("cal.json");
    Files.write(target, OLD);
    assertThatThrownBy(() -> AtomicFile.write(target, NEW, failAt(AtomicFile.Step.SYNC_FOLDER)))
        .isInstanceOf(IOException.class);
    assertThat(target).hasBinaryContent(NEW);
    assertThat(names()).containsExactly("cal.json");
  }

  @ParameterizedTest
  @EnumSource(AtomicFile.Step.class)
  void processThatDiesMidSaveLeavesTheOldOrTheNewFileWhole(AtomicFile.Step step) throws Exception {
    Path target = folder.resolve("cal.json");
    Files.write(target, OLD);
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Dying.class.getName(),
                target.toString(),
                step.name())
            .redirectErrorStream(true)
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isEqualTo(9);
    assertThat(target).hasBinaryContent(step == AtomicFile.Step.SYNC_FOLDER ? NEW : OLD);
    AtomicFile.write(target, NEW);
    assertThat(target).hasBinaryContent(NEW);
  }

  @Test
  void symbolicLinkStaysAndItsFileIsReplaced() throws IOException {
    Path real = folder.resolve("real.json");
    Files.write(real, OLD);
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
    AtomicFile.write(link, NEW);
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(real).hasBinaryContent(NEW);
  }

  @Test
  void deviceOrFolderIsNeverReplaced() {
    assertThatThrownBy(() -> AtomicFile.write(Path.of("/dev/null"), NEW))
        .isInstanceOf(IOException.class);
    assertThatThrownBy(() -> AtomicFile.write(folder, NEW)).isInstanceOf(IOException.class);
  }

  private static AtomicFile.Before failAt(AtomicFile.Step failing) {
    return step -> {
      if (step == failing) {
        throw new IOException("No space left on device");
      }
    };
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }

  /** Saves a file and stops dead before one of the steps, as in a power cut. */
  static final class Dying {
    private Dying() {}

    public static void main(String[] arguments) throws IOException {
      AtomicFile.write(
          Path.of(arguments[0]),
          NEW,
          step -> {
            if (step.name().equals(arguments[1])) {
              Runtime.getRuntime().halt(9);
            }
          });
    }
  }
}
