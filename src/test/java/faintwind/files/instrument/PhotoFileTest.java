package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.Event.PhotoAdded;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoFileTest {
  @TempDir Path temp;

  private static byte[] picture(String format) throws IOException {
    BufferedImage image = new BufferedImage(120, 80, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(20261125);
    for (int i = 0; i < 120 * 80; i++) {
      image.setRGB(i % 120, i / 120, random.nextInt());
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, format, bytes);
    return bytes.toByteArray();
  }

  private static List<String> ids(byte[] bytes) {
    return PhotoFile.check(bytes, "x").problems().stream().map(Problem::id).toList();
  }

  @ParameterizedTest
  @CsvSource({"jpg, JPEG", "png, PNG"})
  void aWholePictureIsTakenForWhatItIs(String format, String kind) throws IOException {
    Checked<PhotoFile.Kind> checked = PhotoFile.check(picture(format), "x");
    assertThat(((Checked.Ok<PhotoFile.Kind>) checked).value().name()).isEqualTo(kind);
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpg", "png"})
  void cutAnywhereAPictureIsRefused(String format) throws IOException {
    byte[] whole = picture(format);
    for (int length = 8; length < whole.length; length += 97) {
      assertThat(ids(Arrays.copyOf(whole, length)))
          .as(format + " of " + length + " bytes")
          .containsExactly("photo.cut-short");
    }
    assertThat(ids(Arrays.copyOf(whole, whole.length - 1))).containsExactly("photo.cut-short");
  }

  @Test
  void aJpegWithSomethingAfterItsEndIsStillWhole() throws IOException {
    byte[] whole = picture("jpg");
    assertThat(ids(Arrays.copyOf(whole, whole.length + 1000))).isEmpty();
  }

  @Test
  void aDamagedPngIsRefused() throws IOException {
    byte[] bytes = picture("png");
    bytes[bytes.length / 2] ^= 1;
    assertThat(ids(bytes)).containsExactly("photo.cut-short");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "GIF89a....", "<svg/>", "not a picture at all"})
  void whatIsNoPictureIsRefused(String text) {
    assertThat(ids(text.getBytes(StandardCharsets.UTF_8))).containsExactly("photo.not-a-picture");
  }

  @Test
  void aPictureOfTooManyPixelsIsRefusedWithoutBeingDecoded() {
    // a PNG of 20 000 by 20 000 whose few bytes hold no pixel at all
    ByteBuffer png = ByteBuffer.allocate(8 + 25 + 12);
    png.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
    ByteBuffer head = ByteBuffer.allocate(13).putInt(20_000).putInt(20_000);
    chunk(png, "IHDR", head.put(new byte[] {8, 2, 0, 0, 0}).array());
    chunk(png, "IEND", new byte[0]);
    Checked<PhotoFile.Kind> checked = PhotoFile.check(png.array(), "bomb.png");
    assertThat(checked.problems()).extracting(Problem::id).containsExactly("photo.too-many-pixels");
    assertThat(checked.problems().get(0).found()).isEqualTo("400");
  }

  /** 2³²−1 squared is more than a long holds: it came out below zero, and was let in. */
  @Test
  void aPictureOfTheMostPixelsThereCanBeIsRefused() {
    ByteBuffer head = ByteBuffer.allocate(13).putInt(-1).putInt(-1).put(8, (byte) 8);
    ByteBuffer png = ByteBuffer.allocate(8 + 25 + 12).putLong(0x89504E470D0A1A0AL);
    chunk(png, "IHDR", head.array());
    chunk(png, "IEND", new byte[0]);
    assertThat(ids(png.array())).containsExactly("photo.too-many-pixels");
  }

  private static void chunk(ByteBuffer png, String type, byte[] data) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(data);
    png.putInt(data.length).put(name).put(data).putInt((int) crc.getValue());
  }

  @Test
  void anyBytesAtAllGiveAnAnswer() throws IOException {
    Random random = new Random(7);
    for (String format : new String[] {"jpg", "png"}) {
      byte[] whole = picture(format);
      for (int i = 0; i < 2000; i++) {
        byte[] bytes = whole.clone();
        for (int k = 0; k < 5; k++) {
          bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
        }
        assertThat(PhotoFile.check(bytes, "x")).isNotNull();
      }
    }
  }

  @Test
  void aRefusedPhotoLeavesNothingInTheFolder() throws IOException {
    InstrumentFolder folder = new InstrumentFolder(temp.resolve("rind"));
    Files.createDirectories(folder.path());
    Path cut = temp.resolve("cut.jpg");
    Files.write(cut, Arrays.copyOf(picture("jpg"), 500));
    assertThat(folder.keepPhoto(cut, "cut").isOk()).isFalse();
    assertThat(folder.path()).isEmptyDirectory();
  }

  @Test
  void aPhotoOfMoreThanFiftyMegabytesIsRefusedUnread() throws IOException {
    InstrumentFolder folder = new InstrumentFolder(temp.resolve("rind"));
    Files.createDirectories(folder.path());
    Path huge = temp.resolve("huge.jpg");
    try (var channel =
        FileChannel.open(huge, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(new byte[] {1}), PhotoFile.LARGEST_BYTES + 5);
    }
    Checked<PhotoAdded> kept = folder.keepPhoto(huge, "huge");
    assertThat(kept.problems()).extracting(Problem::id).containsExactly("photo.too-large");
    assertThat(folder.path()).isEmptyDirectory();
  }
}
