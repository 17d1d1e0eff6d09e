package faintwind.files.arm;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.ArmKnown;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArmFileTest {
  private static final Path PAGE = Path.of("docs/formats/arm.md");

  @TempDir private Path folder;

  private static ArmSession session(String instrument, double share, Optional<Uncertain> turned) {
    ArmKnown shown =
        new ArmKnown(
            Uncertain.of(share, 0.004),
            Uncertain.of(20, 4),
            Uncertain.of(25, 5),
            Uncertain.of(2, 0.3),
            turned);
    List<String> inputs = List.of((instrument.equals("pair 1") ? "1a" : "2b").repeat(32));
    return new ArmSession(instrument, "2026-11-28T15:40:00+01:00", inputs, shown);
  }

  private static List<ArmSession> sessions() {
    return List.of(
        session("pair 1", 0.03, Optional.empty()),
        session("pair 2", 0.032, Optional.of(Uncertain.of(0.002, 0.001))));
  }

  private static List<ArmSession> read(Path file) throws IOException {
    return ArmFile.read(file)
        .fold(
            (sessions, notes) -> sessions,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  @Test
  void exampleOfThePageIsWhatIsWritten() throws IOException {
    String page = Files.readString(PAGE);
    String example = page.substring(page.indexOf("```json\n") + 8, page.lastIndexOf("```"));
    assertThat(ArmFile.text(sessions())).isEqualTo(example);
  }

  @Test
  void whatIsWrittenComesBack() throws IOException {
    Path file = folder.resolve("arm.json");
    ArmFile.write(file, sessions());
    assertThat(ArmFile.is(file)).isTrue();
    assertThat(read(file)).isEqualTo(sessions());
  }

  @Test
  void otherFilesAreRefusedByName() throws IOException {
    Path newer =
        Files.writeString(folder.resolve("newer.json"), "{\"format\":\"faintwind-arm/2\"}");
    Path other =
        Files.writeString(folder.resolve("other.json"), "{\"format\":\"faintwind-plan/1\"}");
    Path empty =
        Files.writeString(
            folder.resolve("empty.json"),
            "{\"format\":\"faintwind-arm/1\",\"expected\":{},\"sessions\":[]}");
    assertThat(ArmFile.read(newer).problems()).extracting(Problem::id).containsOnly("arm.newer");
    assertThat(ArmFile.read(other).problems()).extracting(Problem::id).containsOnly("arm.not-one");
    assertThat(ArmFile.read(empty).problems())
        .extracting(Problem::id)
        .containsOnly("json.key-missing", "json.too-few");
  }
}
