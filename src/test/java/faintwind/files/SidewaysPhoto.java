package faintwind.files;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** A photo 60 by 40 pixels, red on the left and blue on the right, as a camera stores it. */
public final class SidewaysPhoto {
  private SidewaysPhoto() {}

  /** With nothing noted. */
  public static Path plain(Path file) throws IOException {
    return Files.write(file, jpeg());
  }

  /** With a note of where up was: an Exif segment of one tag right after the begin of the file. */
  public static Path write(Path file, int orientation) throws IOException {
    byte[] jpeg = jpeg();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    byte[] tiff = {
      'M',
      'M',
      0,
      42,
      0,
      0,
      0,
      8,
      0,
      1,
      1,
      18,
      0,
      3,
      0,
      0,
      0,
      1,
      0,
      (byte) orientation,
      0,
      0,
      0,
      0,
      0,
      0
    };
    byte[] head = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    out.write(0xff);
    out.write(0xe1);
    out.write(0);
    out.write(2 + head.length + tiff.length);
    out.write(head);
    out.write(tiff);
    out.write(jpeg, 2, jpeg.length - 2);
    return Files.write(file, out.toByteArray());
  }

  private static byte[] jpeg() throws IOException {
    BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 60; x++) {
      for (int y = 0; y < 40; y++) {
        image.setRGB(x, y, (x < 30 ? Color.RED : Color.BLUE).getRGB());
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpg", out);
    return out.toByteArray();
  }
}
