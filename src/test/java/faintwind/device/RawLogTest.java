package faintwind.device;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RawLogTest {
  private static final Instant BEGIN = Instant.parse("2026-11-25T18:00:00Z");

  @TempDir Path folder;

  private Path file() {
    return folder.resolve("log.raw");
  }

  private static List<String> lines(Path file) throws IOException {
    RawSource source = new RawSource(file);
    List<String> lines = new ArrayList<>();
    for (SourceEvent event = source.next();
        !(event instanceof SourceEvent.Ended);
        event = source.next()) {
      if (event instanceof SourceEvent.Line line) {
        lines.add(line.text() + " " + line.received().getEpochSecond() % 1000);
      }
    }
    return lines;
  }

  private List<String> written(RawLog log, int count) throws IOException {
    List<String> lines = new ArrayList<>();
    long begin_s = BEGIN.getEpochSecond();
    for (int i = 0; i < count; i++) {
      // each piece ends in the middle of a line
      Instant at = BEGIN.plusSeconds(i);
      log.append(new RawPiece(RawPiece.Kind.BYTES, at, "end" + i + "\nbegin" + i));
      lines.add((i == 0 ? "" : "begin" + (i - 1)) + "end" + i + " " + (begin_s + i) % 1000);
    }
    return lines;
  }

  @Test
  void aFullPartIsPackedAndTheNextGoesOnInTheMiddleOfALine() throws IOException {
    List<String> expected;
    try (RawLog log = new RawLog(file(), "tcp:a:1", 400)) {
      expected = written(log, 60);
      assertThat(RawLog.parts(file())).hasSizeGreaterThan(5).contains(file());
      assertThat(lines(file())).isEqualTo(expected);
    }
    assertThat(file()).doesNotExist();
    assertThat(lines(file())).isEqualTo(expected);
    assertThat(RawSource.origin(file())).isEqualTo("tcp:a:1");
  }

  @Test
  void aPartThatSomebodyDeletedIsPackedAllTheSame() throws IOException {
    List<String> expected;
    try (RawLog log = new RawLog(file(), "tcp:a:1")) {
      expected = written(log, 5);
      Files.delete(file());
      Files.writeString(file(), "somebody else's");
    }
    assertThat(file()).hasContent("somebody else's");
    assertThat(lines(file())).isEqualTo(expected);
  }

  @Test
  void whatACrashLeftIsRead() throws IOException {
    RawLog log = new RawLog(file(), "tcp:a:1");
    List<String> expected = written(log, 5);
    byte[] torn = "@2026-11-25T18:00:09Z bytes 40\nonly a part".getBytes(StandardCharsets.UTF_8);
    Files.write(file(), torn, StandardOpenOption.APPEND);
    assertThat(lines(file())).isEqualTo(expected);
    log.close();
    // packed, and the plain one not deleted yet
    try (var in = new GZIPInputStream(Files.newInputStream(RawLog.packed(file(), 1)))) {
      Files.copy(in, file());
    }
    assertThat(lines(file())).isEqualTo(expected);
  }
}
