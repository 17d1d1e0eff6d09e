package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.SidewaysPhoto;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SmallPhotoTest {
  @TempDir Path folder;

  private BufferedImage small(int orientation) throws IOException {
    Path photo = SidewaysPhoto.write(folder.resolve("photo.jpg"), orientation);
    return ImageIO.read(new ByteArrayInputStream(SmallPhoto.jpeg(photo).orElseThrow()));
  }

  private static boolean isRed(BufferedImage image, int x, int y) {
    Color color = new Color(image.getRGB(x, y));
    return color.getRed() > 200 && color.getBlue() < 60;
  }

  /** What lies at the left as stored comes to the top where the photo is turned clockwise. */
  @Test
  void standsUpright() throws IOException {
    BufferedImage asStored = small(1);
    assertThat(asStored.getWidth()).isEqualTo(60);
    assertThat(isRed(asStored, 5, 20)).isTrue();
    BufferedImage clockwise = small(6);
    assertThat(clockwise.getWidth()).isEqualTo(40);
    assertThat(clockwise.getHeight()).isEqualTo(60);
    assertThat(isRed(clockwise, 20, 5)).isTrue();
    assertThat(isRed(clockwise, 20, 55)).isFalse();
    BufferedImage round = small(3);
    assertThat(isRed(round, 5, 20)).isFalse();
    assertThat(isRed(round, 55, 20)).isTrue();
    BufferedImage back = small(8);
    assertThat(isRed(back, 20, 5)).isFalse();
    assertThat(isRed(back, 20, 55)).isTrue();
  }
}
