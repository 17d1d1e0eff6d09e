package faintwind.fuzz;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Spoils bytes, the same way for the same seed. */
final class Mutation {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final List<String> PIECES =
      List.of(
          "1e999",
          "-1e999",
          "NaN",
          "Infinity",
          "-0",
          "1e-320",
          "2147483648",
          "-9223372036854775809",
          "99999999999999999999999999999999999999",
          "0.1e",
          "1,5",
          "\"",
          "\"\"",
          ",",
          ";",
          "\t",
          "\n",
          "\r\n",
          "\0",
          "#",
          "=1+1",
          "\uFEFF",
          "\u2028",
          "{",
          "}",
          "[",
          "]",
          "null",
          "true",
          ":",
          "{\"a\":",
          "[[[[[[[[",
          "/*",
          "//",
          "\\u0000",
          "\\",
          "../../etc/passwd",
          "%s",
          "{0}",
          "''",
          "# start: 9999-12-31T23:59:60+18:00",
          "2026-02-30",
          "24:61",
          "A".repeat(3000),
          "9".repeat(400),
          "e9999999999",
          "<!DOCTYPE a [<!ENTITY b \"c\">]>",
          "&b;",
          "</row>");
  private static final int[] BYTES = {0, 1, 0x7F, 0x80, 0xFF, ' ', '0', '-', '"', ','};

  private final Random random;

  Mutation(long seed) {
    random = new Random(seed);
  }

  /** The bytes with one to five things done to them; within a zip, half of the time. */
  byte[] of(byte[] whole) throws IOException {
    boolean zip = whole.length > 4 && whole[0] == 'P' && whole[1] == 'K' && random.nextBoolean();
    return zip ? zipped(whole) : spoiled(whole);
  }

  private byte[] spoiled(byte[] whole) {
    byte[] bytes = whole.clone();
    int times = 1 + random.nextInt(5);
    for (int i = 0; i < times; i++) {
      bytes = once(bytes);
    }
    return bytes;
  }

  private byte[] zipped(byte[] whole) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(whole));
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] inner = in.readAllBytes();
        zip.putNextEntry(new ZipEntry(entry.getName()));
        zip.write(random.nextInt(3) == 0 ? spoiled(inner) : inner);
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }

  private byte[] once(byte[] bytes) {
    if (bytes.length == 0) {
      return piece();
    }
    int from = random.nextInt(bytes.length);
    int to = Math.min(bytes.length, from + 1 + random.nextInt(1 + bytes.length / 4));
    return switch (random.nextInt(9)) {
      case 0 -> flipped(bytes, from);
      case 1 -> set(bytes, from);
      case 2 -> spliced(bytes, from, to, new byte[0]);
      case 3 -> spliced(bytes, to, to, Arrays.copyOfRange(bytes, from, to));
      case 4 -> Arrays.copyOf(bytes, from);
      case 5 -> spliced(bytes, from, from, piece());
      case 6 -> spliced(bytes, from, Math.min(bytes.length, from + 1), piece());
      default -> number(bytes, from);
    };
  }

  private byte[] flipped(byte[] bytes, int at) {
    bytes[at] ^= (byte) (1 << random.nextInt(8));
    return bytes;
  }

  private byte[] set(byte[] bytes, int from) {
    int to = Math.min(bytes.length, from + 1 + random.nextInt(8));
    Arrays.fill(bytes, from, to, (byte) BYTES[random.nextInt(BYTES.length)]);
    return bytes;
  }

  private byte[] piece() {
    return PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8);
  }

  /** The next number after a place becomes another. */
  private byte[] number(byte[] bytes, int from) {
    Matcher next = NUMBER.matcher(new String(bytes, StandardCharsets.ISO_8859_1));
    return next.find(from) ? spliced(bytes, next.start(), next.end(), piece()) : piece();
  }

  private static byte[] spliced(byte[] bytes, int from, int to, byte[] between) {
    byte[] all = new byte[bytes.length - (to - from) + between.length];
    System.arraycopy(bytes, 0, all, 0, from);
    System.arraycopy(between, 0, all, from, between.length);
    System.arraycopy(bytes, to, all, from + between.length, bytes.length - to);
    return all;
  }
}
