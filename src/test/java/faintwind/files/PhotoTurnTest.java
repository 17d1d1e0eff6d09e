package faintwind.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhotoTurnTest {
  @TempDir Path folder;

  /**
   * Where row 0 and column 0 lie by the tag's number: TIFF 6.0, tag 274, whose words the constants
   * of javax.imageio.plugins.tiff.BaselineTIFFTagSet carry. A row 0 that lies at the right side
   * comes to the top by three quarters counterclockwise, or one clockwise of the picture as stored.
   */
  @ParameterizedTest
  @CsvSource({"1, 0", "3, 2", "6, 1", "8, 3", "2, 0", "99, 0"})
  void turnsAsTheCameraNoted(int orientation, int quarters) throws IOException {
    Path photo = SidewaysPhoto.write(folder.resolve("photo.jpg"), orientation);
    assertThat(PhotoTurn.quartersClockwise(photo)).isEqualTo(quarters);
  }

  @Test
  void staysWhereNothingIsNoted() throws IOException {
    assertThat(PhotoTurn.quartersClockwise(SidewaysPhoto.plain(folder.resolve("plain.jpg"))))
        .isZero();
    Path text = Files.writeString(folder.resolve("text.jpg"), "not a picture");
    assertThat(PhotoTurn.quartersClockwise(text)).isZero();
    Path empty = Files.createFile(folder.resolve("empty.jpg"));
    assertThat(PhotoTurn.quartersClockwise(empty)).isZero();
  }

  @Test
  void aCutOrSpoiledFileDoesNotTurn() throws IOException {
    byte[] whole = Files.readAllBytes(SidewaysPhoto.write(folder.resolve("photo.jpg"), 6));
    for (int length = 0; length < 60; length++) {
      Path cut = Files.write(folder.resolve("cut.jpg"), Arrays.copyOf(whole, length));
      assertThat(PhotoTurn.quartersClockwise(cut)).isBetween(0, 1);
    }
    for (int at = 0; at < 60; at++) {
      byte[] spoiled = whole.clone();
      spoiled[at] ^= 0x55;
      Path file = Files.write(folder.resolve("spoiled.jpg"), spoiled);
      assertThat(PhotoTurn.quartersClockwise(file)).isBetween(0, 3);
    }
  }
}
