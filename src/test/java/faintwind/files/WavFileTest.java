package faintwind.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WavFileTest {
  private static final int FRAMES = 20_000;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private static final class Heard implements WavFile.Listener {
    private final int rate_Hz;
    private final List<Float> samples = new ArrayList<>();

    Heard(int rate_Hz) {
      this.rate_Hz = rate_Hz;
    }

    @Override
    public void hear(float[] more, int count) {
      for (int i = 0; i < count; i++) {
        samples.add(more[i]);
      }
    }
  }

  /** Code 1: whole numbers, 3: floating point, 65534: extensible with whole numbers inside. */
  @ParameterizedTest(name = "code {0}, {1} bits, {2} channels, {3} Hz")
  @CsvSource({
    "1, 8, 1, 8000",
    "1, 16, 1, 44100",
    "1, 16, 2, 48000",
    "1, 24, 2, 44100",
    "1, 32, 1, 96000",
    "3, 32, 2, 48000",
    "3, 64, 1, 44100",
    "65534, 24, 2, 96000",
    "65534, 16, 6, 48000"
  })
  void everyCommonFormatGivesTheSameSound(int code, int bits, int channels, int rate_Hz)
      throws IOException {
    Path file = folder.resolve("beat.wav");
    Files.write(file, wav(code, bits, channels, rate_Hz, FRAMES));
    Checked<Heard> read = WavFile.read(file, Heard::new);
    assertThat(read.problems()).isEmpty();
    Heard heard = value(read);
    assertThat(heard.rate_Hz).isEqualTo(rate_Hz);
    assertThat(heard.samples).hasSize(FRAMES);
    for (int i = 0; i < FRAMES; i += 997) {
      assertThat((double) heard.samples.get(i)).isCloseTo(wave(i), within(0.009));
    }
  }

  @Test
  void recordingThatIsCutShortIsReadToItsEndAndSaysSo() throws IOException {
    byte[] whole = wav(1, 16, 1, 8000, FRAMES);
    Path file = folder.resolve("cut.wav");
    Files.write(file, Arrays.copyOf(whole, 44 + FRAMES - 800));
    Checked<Heard> read = WavFile.read(file, Heard::new);
    assertThat(read.problems()).extracting(Problem::id).containsExactly("wav.cut-short");
    assertThat(read.problems().get(0).found()).isEqualTo("1.2");
    assertThat(read.problems().get(0).details()).containsExactly("2.5");
    assertThat(value(read).samples).hasSize((FRAMES - 800) / 2);
  }

  @Test
  void fileThatIsNoRecordingIsRefused() throws IOException {
    Path text = folder.resolve("text.wav");
    Files.writeString(text, "time_s,delta_K\n0,1\n", StandardCharsets.UTF_8);
    assertThat(ids(text)).containsExactly("wav.not-a-recording");
    Path head = folder.resolve("head.wav");
    Files.write(head, Arrays.copyOf(wav(1, 16, 1, 8000, FRAMES), 20));
    assertThat(ids(head)).containsExactly("wav.not-a-recording");
    Path silent = folder.resolve("silent.wav");
    Files.write(silent, wav(1, 16, 1, 8000, 0));
    assertThat(ids(silent)).containsExactly("wav.no-sound");
    Path packed = folder.resolve("packed.wav");
    Files.write(packed, wav(7, 8, 1, 8000, FRAMES));
    assertThat(ids(packed)).containsExactly("wav.format");
    Path slow = folder.resolve("slow.wav");
    Files.write(slow, wav(1, 16, 1, 4000, FRAMES));
    assertThat(ids(slow)).containsExactly("wav.rate");
    assertThat(ids(folder.resolve("none.wav"))).containsExactly("file.missing");
  }

  /** A damaged head is a damaged file, never a disk that failed. */
  @Test
  void damagedHeadIsNeverADiskThatFailed() throws IOException {
    byte[] whole = wav(65534, 24, 2, 48000, 50);
    Random random = new Random(17);
    Path file = folder.resolve("damaged.wav");
    for (int i = 0; i < 1500; i++) {
      byte[] bytes = whole.clone();
      for (int k = 0; k <= i % 3; k++) {
        bytes[random.nextInt(68)] = (byte) random.nextInt(256);
      }
      Files.write(file, Arrays.copyOf(bytes, i % 5 == 0 ? random.nextInt(68) : bytes.length));
      Checked<Heard> read = WavFile.read(file, Heard::new);
      assertThat(read.isOk() || read.problems().get(0).id().startsWith("wav.")).isTrue();
    }
  }

  @Test
  void channelsOfOppositeSignAreHeardAsOne() throws IOException {
    byte[] bytes = wav(1, 16, 2, 8000, 1000);
    ByteBuffer samples = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    for (int at = 46; at < bytes.length; at += 4) {
      samples.putShort(at, (short) -samples.getShort(at));
    }
    Path file = folder.resolve("inverted.wav");
    Files.write(file, bytes);
    Heard heard = value(WavFile.read(file, Heard::new));
    assertThat((double) heard.samples.get(500)).isCloseTo(wave(500), within(0.001));
  }

  @Test
  @Tag("long")
  void recordingOfMoreThanTwelveHoursIsRefused() throws IOException {
    Path file = folder.resolve("long.wav");
    byte[] head = wav(1, 8, 1, 8000, 0);
    ByteBuffer.wrap(head).order(ByteOrder.LITTLE_ENDIAN).putInt(40, 400_000_000);
    Files.write(file, head);
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(new byte[1]), 400_000_000L); // a hole in the file: no disk
    }
    long[] heard = new long[1];
    Checked<WavFile.Listener> read =
        WavFile.read(file, rate_Hz -> (samples, count) -> heard[0] += count);
    assertThat(read.problems()).extracting(Problem::id).containsExactly("wav.too-long");
    assertThat(heard[0]).isLessThan(346_000_000L);
  }

  private static List<String> ids(Path file) throws IOException {
    return WavFile.read(file, Heard::new).problems().stream().map(Problem::id).toList();
  }

  private static double wave(int i) {
    return 0.7 * Math.sin(i * 0.01);
  }

  private static byte[] wav(int code, int bits, int channels, int rate_Hz, int frames) {
    int extra = code == 65534 ? 24 : 0;
    int frame = channels * bits / 8;
    ByteBuffer out = ByteBuffer.allocate(44 + extra + frames * frame);
    out.order(ByteOrder.LITTLE_ENDIAN);
    out.put(ascii("RIFF")).putInt(36 + extra + frames * frame).put(ascii("WAVEfmt "));
    out.putInt(16 + extra).putShort((short) code).putShort((short) channels).putInt(rate_Hz);
    out.putInt(rate_Hz * frame).putShort((short) frame).putShort((short) bits);
    if (extra > 0) {
      out.putShort((short) 22).putShort((short) bits).putInt((1 << channels) - 1);
      out.putInt(1).putInt(0x00100000).putInt(0xAA000080).putInt(0x719B3800);
    }
    out.put(ascii("data")).putInt(frames * frame);
    for (int i = 0; i < frames; i++) {
      for (int c = 0; c < channels; c++) {
        put(out, code, bits, wave(i));
      }
    }
    return out.array();
  }

  private static void put(ByteBuffer out, int code, int bits, double value) {
    long whole = Math.round(value * (Math.scalb(1.0, bits - 1) - 1));
    if (code == 3) {
      ByteBuffer ignored = bits == 32 ? out.putFloat((float) value) : out.putDouble(value);
      assertThat(ignored).isSameAs(out);
    } else if (bits == 8) {
      out.put((byte) (whole + 128));
    } else if (bits == 16) {
      out.putShort((short) whole);
    } else if (bits == 24) {
      out.put((byte) whole).put((byte) (whole >> 8)).put((byte) (whole >> 16));
    } else {
      out.putInt((int) whole);
    }
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static Heard value(Checked<Heard> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems);
        });
  }
}
