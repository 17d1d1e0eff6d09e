package faintwind.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) of files and bytes, in lower-case hexadecimal. */
public final class Sha256 {
  private final MessageDigest digest = digest();

  /** For many pieces, one after the other. Mutable; for one thread. */
  public Sha256() {}

  /** Of a piece of some bytes. */
  public String of(byte[] bytes, int from, int length) {
    digest.update(bytes, from, length);
    return HexFormat.of().formatHex(digest.digest());
  }

  public static String of(byte[] bytes) {
    return HexFormat.of().formatHex(digest().digest(bytes));
  }

  /** Of a whole file, read in pieces. */
  public static String of(Path file) throws IOException {
    MessageDigest digest = digest();
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
      in.transferTo(OutputStream.nullOutputStream());
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      // every Java platform has to provide it
      throw new IllegalStateException(e);
    }
  }
}
