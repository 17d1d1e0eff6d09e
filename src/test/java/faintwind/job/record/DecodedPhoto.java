package faintwind.job.record;

import java.io.IOException;
import java.nio.file.Path;

/** Lets a test of all readers reach the decoding of photos. */
public final class DecodedPhoto {
  private DecodedPhoto() {}

  /** As a report does. */
  public static boolean readable(Path photo) throws IOException {
    return SmallPhoto.jpeg(photo).isPresent();
  }
}
