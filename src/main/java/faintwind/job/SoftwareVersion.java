package faintwind.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The version of this program, as every output names it. */
public final class SoftwareVersion {
  private SoftwareVersion() {}

  /** Such as {@code 0.1.0}. */
  public static String text() {
    try (InputStream in = SoftwareVersion.class.getResourceAsStream("/faintwind/version.txt")) {
      if (in == null) {
        throw new IllegalStateException("version.txt is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
