package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line says by its bytes what it says by its text, whatever became of it. */
class RawLineTest {
  private static final long SEED = 20261130;
  private static final Path JOURNAL = Path.of("demo-projects/cellar/journal.jsonl");
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private interface Json {
    Object read() throws IOException;
  }

  private static String said(Json json) {
    try {
      return String.valueOf(json.read());
    } catch (IOException e) {
      return "no JSON";
    }
  }

  private static void same(byte[] line) {
    byte[] bytes = new byte[line.length + 6];
    Arrays.fill(bytes, (byte) '"');
    System.arraycopy(line, 0, bytes, 3, line.length);
    RawLine raw = new RawLine(bytes, 3, 3 + line.length);
    String text = new String(line, StandardCharsets.UTF_8);
    assertThat(raw.text()).isEqualTo(text);
    assertThat(said(() -> raw.json(JSON))).as(text).isEqualTo(said(() -> JSON.readTree(text)));
    assertThat(raw.length()).isEqualTo(text.length());
    int end = Math.max(0, text.length() - 2);
    assertThat(raw.has(end, "\"}")).isEqualTo(text.endsWith("\"}"));
    assertThat(raw.has(end + 1, "\"}")).isFalse();
    assertThat(raw.has(-1, "\"}")).isFalse();
    assertThat(raw.text(0, end)).isEqualTo(text.substring(0, end));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "{",
        "{\"",
        "{\"a\":1}",
        "{\"a\":1} ",
        "{\"a\":1}}",
        " {\"a\":1}",
        "{ \"a\":1}",
        "\0{\"a\":1}",
        "{\0\"a\":1}",
        "{\"a\":\"\0\"}",
        "{\"\0a\":1}",
        "{\"a\":\"\t\"}",
        "{\"a\":\"\\u0000\\ud800\"}",
        "{\"a\":1,\"a\":2}",
        "{\"a\":NaN}",
        "{\"a\":01}",
        "{\"a\":1e999}",
        "{\"a\":1}\r",
        "{\"a\":1}\u001e",
        "\ufeff{\"a\":1}",
        "{\"Ω\":\"µ–\"}",
        "[\"a\"]",
      })
  void ofAnyForm(String text) {
    same(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void ofAJournalWithAnyByteAltered() throws IOException {
    List<String> lines = Files.readAllLines(JOURNAL);
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 30_000; i++) {
      String line = lines.get(random.nextInt(lines.size()));
      byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
      for (int k = random.nextInt(1, 4); k > 0; k--) {
        bytes[random.nextInt(bytes.length)] =
            (byte) random.nextInt(random.nextBoolean() ? 128 : 256);
      }
      int from = random.nextInt(10) == 0 ? random.nextInt(bytes.length) : 0;
      same(Arrays.copyOfRange(bytes, from, bytes.length));
    }
  }
}
