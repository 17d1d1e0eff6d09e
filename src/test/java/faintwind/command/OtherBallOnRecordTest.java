package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs of one ball with another one on record are refused in words, whatever the search ran into.
 */
@Tag("long")
class OtherBallOnRecordTest {
  @TempDir Path temp;

  @Test
  void aSmallBallsRunsWithALargeOneOnRecordAreRefused() throws IOException {
    Path demo = Path.of("demo-projects/cellar");
    String design = new InstrumentFolder(demo).open().state().designJson().orElseThrow();
    String larger = design.replaceAll("\"diameter_mm\"\\s*:\\s*12\\.7", "\"diameter_mm\":16");
    assertThat(larger).isNotEqualTo(design);
    Path other = Files.writeString(temp.resolve("design.json"), larger);
    Path folder = temp.resolve("pair");
    Shell shell = new Shell();
    assertThat(shell.run("new", folder, "--design", other)).isZero();
    assertThat(shell.run("note", folder, "--runs", demo.resolve("runs/first-session/runs.csv")))
        .isZero();
    int code = shell.run("calibrate", folder, "--refits", "0");
    assertThat(code).as(shell.said()).isEqualTo(3);
    assertThat(shell.said()).contains("and the ball on record").doesNotContain("Exception");
  }
}
