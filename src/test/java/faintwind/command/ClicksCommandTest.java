package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.Main;
import faintwind.calibration.beat.BeatTrack;
import faintwind.calibration.plan.Beat;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClicksCommandTest {
  private static final int RATE_HZ = 8000;
  private static final String TABLE =
      """
      # noted at the bench
      run,file,kind,turns,turns_time_s,note
      a,a.csv,spin,7,8,"one, two"
      b,a.csv,still,,,
      """;

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int clicks(Object... arguments) {
    String[] all = new String[arguments.length + 1];
    all[0] = "clicks";
    Arrays.setAll(all, i -> i == 0 ? "clicks" : String.valueOf(arguments[i - 1]));
    return Main.run(
        Terminal.of(new ByteArrayInputStream(new byte[0]), out, err, Messages.of(Locale.ENGLISH)),
        all);
  }

  @Test
  void turnsFillTheRowOfARunsTableAndNothingElse() throws IOException {
    Path table = Files.writeString(folder.resolve("runs.csv"), TABLE);
    Path filled = folder.resolve("new.csv");
    Object[] arguments = {
      beat(), "--per-turn", 4, "--begins-s", 100, "--table", table, "--run", "a", "--out", filled
    };
    assertThat(clicks(arguments)).isZero();
    assertThat(Files.readString(filled))
        .isEqualToIgnoringNewLines(
            "# noted at the bench\nrun,file,kind,turns,turns_time_s,note,u_turns_time_s,"
                + "first_click_s\na,a.csv,spin,8,30,\"one, two\","
                + cell(2)
                + ","
                + cell(3)
                + "\nb,a.csv,still,,,,,\n");
    assertThat(Double.parseDouble(cell(3))).isBetween(100.0, 101.0);
    assertThat(err.toString(StandardCharsets.UTF_8)).startsWith("8 turns from");
  }

  @Test
  void withoutATableTheCellsAreWrittenAndTheFirstClickIsNotKnown() throws IOException {
    assertThat(clicks(beat(), "--per-turn", 4)).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8))
        .startsWith("turns,turns_time_s,u_turns_time_s,first_click_s")
        .endsWith(",\n");
  }

  @Test
  void missingRowAndHalfAnOrderAreRefused() throws IOException {
    Path table = Files.writeString(folder.resolve("runs.csv"), TABLE);
    Path filled = folder.resolve("new.csv");
    assertThat(clicks(beat(), "--table", table, "--run", "c", "--out", filled)).isEqualTo(3);
    assertThat(filled).doesNotExist();
    assertThat(clicks(beat(), "--table", table)).isEqualTo(2);
    assertThat(clicks(beat(), "--table", table, "--run", "a", "--out", table)).isEqualTo(2);
  }

  private String cell(int index) {
    return out.toString(StandardCharsets.UTF_8)
        .lines()
        .skip(1)
        .findFirst()
        .orElseThrow()
        .split(",", -1)[index];
  }

  private Path beat() throws IOException {
    return beat(folder);
  }

  /** A sound of eight turns, four clicks each. */
  static Path beat(Path folder) throws IOException {
    float[] samples = new BeatTrack(new Beat(64, 4), RATE_HZ, 0).samples(0, RATE_HZ * 31);
    byte[] bytes = new byte[2 * samples.length];
    for (int i = 0; i < samples.length; i++) {
      int value = Math.round(samples[i] * 20_000);
      bytes[2 * i] = (byte) value;
      bytes[2 * i + 1] = (byte) (value >> 8);
    }
    Path file = folder.resolve("beat.wav");
    AudioFormat format = new AudioFormat(RATE_HZ, 16, 1, true, false);
    try (AudioInputStream sound =
        new AudioInputStream(new ByteArrayInputStream(bytes), format, samples.length)) {
      AudioSystem.write(sound, AudioFileFormat.Type.WAVE, file.toFile());
    }
    return file;
  }
}
