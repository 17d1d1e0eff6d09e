package faintwind.job.record;

import faintwind.files.PhotoTurn;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** A photo made small enough for a page and upright, without ever holding all its pixels. */
final class SmallPhoto {
  private static final int LONGEST_SIDE = 1200;

  private SmallPhoto() {}

  /**
   * Every n-th pixel as a JPEG, turned as the camera noted; empty where the picture cannot be
   * decoded.
   *
   * @param photo a whole picture, as the instrument's folder keeps it
   * @throws IOException where the file cannot be read
   */
  static Optional<byte[]> jpeg(Path photo) throws IOException {
    int quarters = PhotoTurn.quartersClockwise(photo);
    try (ImageInputStream in = ImageIO.createImageInputStream(photo.toFile())) {
      if (in == null) {
        return Optional.empty();
      }
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      return readers.hasNext() ? jpeg(readers.next(), in, quarters) : Optional.empty();
    }
  }

  private static Optional<byte[]> jpeg(ImageReader reader, ImageInputStream in, int quarters)
      throws IOException {
    try {
      reader.setInput(in, true, true);
      int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
      int step = Math.max(1, (longest + LONGEST_SIDE - 1) / LONGEST_SIDE);
      ImageReadParam every = reader.getDefaultReadParam();
      every.setSourceSubsampling(step, step, 0, 0);
      BufferedImage plain = upright(reader.read(0, every), quarters);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      return ImageIO.write(plain, "jpg", bytes)
          ? Optional.of(bytes.toByteArray())
          : Optional.empty();
    } catch (IIOException | IllegalArgumentException | IndexOutOfBoundsException undecodable) {
      // the decoders tell of damage in either way
      return Optional.empty();
    } finally {
      reader.dispose();
    }
  }

  /** On white, turned clockwise about the middle. */
  private static BufferedImage upright(BufferedImage read, int quarters) {
    boolean lies = quarters % 2 == 1;
    int width = lies ? read.getHeight() : read.getWidth();
    int height = lies ? read.getWidth() : read.getHeight();
    BufferedImage plain = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    AffineTransform turned = AffineTransform.getTranslateInstance(width / 2.0, height / 2.0);
    turned.quadrantRotate(quarters);
    turned.translate(-read.getWidth() / 2.0, -read.getHeight() / 2.0);
    Graphics2D g = plain.createGraphics();
    g.setTransform(turned);
    g.drawImage(read, 0, 0, Color.WHITE, null);
    g.dispose();
    return plain;
  }
}
