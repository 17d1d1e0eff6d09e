package faintwind.files.instrument;

import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * Whether bytes are a whole JPEG (ISO/IEC 10918-1, Annex B) or PNG (ISO/IEC 15948): its parts are
 * walked to the end without decoding a single pixel, so that a huge picture costs no memory.
 */
final class PhotoFile {
  /** Largest file that is kept, bytes. */
  static final long LARGEST_BYTES = 50L << 20;

  /** Most pixels a picture may have. */
  static final long MOST_PIXELS = 100_000_000L;

  private static final int END_OF_IMAGE = 0xD9;
  private static final int START_OF_SCAN = 0xDA;
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10};

  private final byte[] bytes;
  private int place;

  private PhotoFile(byte[] bytes) {
    this.bytes = bytes;
  }

  /** What a picture is. */
  enum Kind {
    JPEG(".jpg"),
    PNG(".png");

    private final String ending;

    Kind(String ending) {
      this.ending = ending;
    }

    String ending() {
      return ending;
    }
  }

  /** What a walk through the parts shows. */
  private record Picture(Kind kind, long width, long height, boolean whole) {}

  /**
   * The kind of picture; refused where it is neither JPEG nor PNG, is cut short or damaged, or has
   * too many pixels.
   *
   * @param name of the file, for the words
   */
  static Checked<Kind> check(byte[] bytes, String name) {
    Where where = Where.file(name);
    Optional<Picture> walked = new PhotoFile(bytes).walk();
    if (walked.isEmpty()) {
      return Checked.refused(Problem.error("photo.not-a-picture", where, name));
    }
    Picture picture = walked.get();
    double pixels = (double) picture.width() * picture.height(); // a long would overflow
    if (pixels > MOST_PIXELS) {
      String megapixels = Numerals.places(pixels / 1e6, 0);
      return Checked.refused(
          Problem.error(
              "photo.too-many-pixels",
              where,
              megapixels,
              String.valueOf(picture.width()),
              String.valueOf(picture.height())));
    }
    return picture.whole()
        ? Checked.ok(picture.kind())
        : Checked.refused(Problem.error("photo.cut-short", where, name));
  }

  private Optional<Picture> walk() {
    if (startsWith(PNG)) {
      return Optional.of(png());
    }
    return bytes.length > 3 && at(0) == 0xFF && at(1) == 0xD8 && at(2) == 0xFF
        ? Optional.of(jpeg())
        : Optional.empty();
  }

  private boolean startsWith(byte[] head) {
    return bytes.length >= head.length
        && Arrays.equals(bytes, 0, head.length, head, 0, head.length);
  }

  /** Chunks: length, type, data, CRC over type and data; the last is IEND. */
  private Picture png() {
    long width = 0;
    long height = 0;
    place = PNG.length;
    while (left() >= 12) {
      long length = four(place);
      if (length > left() - 12) {
        break;
      }
      String type = new String(bytes, place + 4, 4, StandardCharsets.ISO_8859_1);
      CRC32 crc = new CRC32();
      crc.update(bytes, place + 4, (int) length + 4);
      if (crc.getValue() != four(place + 8 + (int) length)) {
        break;
      }
      if (type.equals("IHDR") && length == 13) {
        width = four(place + 8);
        height = four(place + 12);
      }
      place += 12 + (int) length;
      if (type.equals("IEND")) {
        return new Picture(Kind.PNG, width, height, width > 0 && height > 0);
      }
    }
    return new Picture(Kind.PNG, width, height, false);
  }

  /**
   * Segments: FF, marker, length; scans run to the next marker that is neither 00 nor a restart.
   */
  private Picture jpeg() {
    long width = 0;
    long height = 0;
    boolean scanned = false;
    place = 2;
    while (left() >= 2 && at(place) == 0xFF) {
      int marker = at(place + 1);
      if (marker == 0xFF) {
        place++; // fill byte
        continue;
      }
      if (marker == END_OF_IMAGE) {
        return new Picture(Kind.JPEG, width, height, scanned && width > 0 && height > 0);
      }
      if (left() < 4) {
        break;
      }
      int length = two(place + 2);
      if (length < 2 || length > left() - 2) {
        break;
      }
      if (isFrame(marker) && length >= 8) {
        height = two(place + 5);
        width = two(place + 7);
      }
      place += 2 + length;
      if (marker == START_OF_SCAN) {
        scanned = true;
        toNextMarker();
      }
    }
    return new Picture(Kind.JPEG, width, height, false);
  }

  /** SOF0 to SOF15 without DHT (C4), JPG (C8) and DAC (CC). */
  private static boolean isFrame(int marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
  }

  private void toNextMarker() {
    while (left() >= 2) {
      int next = at(place + 1);
      boolean marker = at(place) == 0xFF && next != 0 && next != 0xFF;
      if (marker && !(next >= 0xD0 && next <= 0xD7)) {
        return;
      }
      place++;
    }
  }

  private int left() {
    return bytes.length - place;
  }

  private int at(int index) {
    return bytes[index] & 0xFF;
  }

  private int two(int index) {
    return at(index) << 8 | at(index + 1);
  }

  private long four(int index) {
    return (long) two(index) << 16 | two(index + 2);
  }
}
