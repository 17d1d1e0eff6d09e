package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real way through GTK, in a process of its own; needs a display (mvn -Pdisplay). */
@Tag("display")
class DisplaySmokeTest {
  private static final long MOST_MS = 2500;

  @TempDir
  @SuppressWarnings("NullAway.Init")
  Path folder;

  @Test
  void realWindowIsShownInTime() throws IOException, InterruptedException {
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            "faintwind.ui.ShowOnce",
            folder.toString());
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    assertThat(said).contains("shown ");
    String ms = said.substring(said.indexOf("shown ") + 6).strip();
    assertThat(Long.parseLong(ms)).as("time to the window, ms").isLessThan(MOST_MS);
  }
}
