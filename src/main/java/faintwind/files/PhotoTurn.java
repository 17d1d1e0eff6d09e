package faintwind.files;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.plugins.tiff.BaselineTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.stream.ImageInputStream;

/**
 * How a photo is to be turned to stand upright. A camera that was held sideways keeps its rows as
 * they come and notes where up was: a JPEG file's segment Exif is a small TIFF file with the tag
 * Orientation. The photo itself is never altered, since the journal holds its hash.
 */
public final class PhotoTurn {
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
  private static final int BEGIN = 0xffd8;
  private static final int APP1 = 0xffe1;

  /** Segments of an application or a comment; the picture begins where others follow. */
  private static final int FIRST_APP = 0xffe0;

  private static final int COMMENT = 0xfffe;

  private PhotoTurn() {}

  /**
   * Quarter turns clockwise, 0 to 3; 0 where the file does not say or cannot be decoded. Mirrored
   * pictures, which no camera makes, are turned as their unmirrored twins.
   *
   * @throws IOException where the file cannot be read
   */
  public static int quartersClockwise(Path photo) throws IOException {
    try (DataInputStream in = new DataInputStream(Files.newInputStream(photo))) {
      Optional<byte[]> exif = exif(in);
      return exif.isPresent() ? quarters(orientation(exif.get())) : 0;
    } catch (EOFException cut) {
      return 0;
    }
  }

  private static Optional<byte[]> exif(DataInputStream in) throws IOException {
    if (in.readUnsignedShort() != BEGIN) {
      return Optional.empty();
    }
    while (true) {
      int marker = in.readUnsignedShort();
      int length = in.readUnsignedShort() - 2;
      if (marker < FIRST_APP || marker > COMMENT || length < 0) {
        return Optional.empty();
      }
      byte[] segment = in.readNBytes(length);
      if (marker == APP1 && Arrays.mismatch(EXIF, segment) == EXIF.length) {
        return Optional.of(Arrays.copyOfRange(segment, EXIF.length, segment.length));
      }
    }
  }

  private static int orientation(byte[] tiff) {
    ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(tiff))) {
      reader.setInput(in, true, false);
      TIFFField field =
          TIFFDirectory.createFromMetadata(reader.getImageMetadata(0))
              .getTIFFField(BaselineTIFFTagSet.TAG_ORIENTATION);
      return field == null ? 0 : field.getAsInt(0);
    } catch (IOException | RuntimeException spoiled) {
      // the decoder tells of damage in many ways, none of them documented
      return 0;
    } finally {
      reader.dispose();
    }
  }

  private static int quarters(int orientation) {
    return switch (orientation) {
      case BaselineTIFFTagSet.ORIENTATION_ROW_0_RIGHT_COLUMN_0_TOP,
          BaselineTIFFTagSet.ORIENTATION_ROW_0_RIGHT_COLUMN_0_BOTTOM ->
          1;
      case BaselineTIFFTagSet.ORIENTATION_ROW_0_BOTTOM_COLUMN_0_RIGHT,
          BaselineTIFFTagSet.ORIENTATION_ROW_0_BOTTOM_COLUMN_0_LEFT ->
          2;
      case BaselineTIFFTagSet.ORIENTATION_ROW_0_LEFT_COLUMN_0_BOTTOM,
          BaselineTIFFTagSet.ORIENTATION_ROW_0_LEFT_COLUMN_0_TOP ->
          3;
      default -> 0;
    };
  }
}
