package faintwind.job.record;

import java.awt.Color;
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

/** A photo made small enough for a page, without ever holding all its pixels. */
final class SmallPhoto {
  private static final int LONGEST_SIDE = 1200;

  private SmallPhoto() {}

  /**
   * Every n-th pixel as a JPEG; empty where the picture cannot be decoded.
   *
   * @param photo a whole picture, as the instrument's folder keeps it
   * @throws IOException where the file cannot be read
   */
  static Optional<byte[]> jpeg(Path photo) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(photo.toFile())) {
      if (in == null) {
        return Optional.empty();
      }
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      return readers.hasNext() ? jpeg(readers.next(), in) : Optional.empty();
    }
  }

  private static Optional<byte[]> jpeg(ImageReader reader, ImageInputStream in) throws IOException {
    try {
      reader.setInput(in, true, true);
      int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
      int step = Math.max(1, (longest + LONGEST_SIDE - 1) / LONGEST_SIDE);
      ImageReadParam every = reader.getDefaultReadParam();
      every.setSourceSubsampling(step, step, 0, 0);
      BufferedImage read = reader.read(0, every);
      BufferedImage plain =
          new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
      var g = plain.createGraphics();
      g.drawImage(read, 0, 0, Color.WHITE, null);
      g.dispose();
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
}
