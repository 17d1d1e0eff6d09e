package faintwind.job;

import faintwind.files.AtomicFile;
import faintwind.files.ShippedFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Commented files to begin with. */
public final class WriteExample {
  private static final String FOLDER = "assets/examples";

  /** What there is an example of. */
  public enum Kind {
    RUNS("runs.csv"),
    DESIGN("design.json"),
    LOG("log.csv"),
    PROFILE("profile.json"),
    POINTS("points.csv"),
    PLACES("places.csv");

    private final String file;

    Kind(String file) {
      this.file = file;
    }

    /** Its word on the command line. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private WriteExample() {}

  /** The text of an example. */
  public static String text(Kind kind) throws IOException {
    return ShippedFolder.with(FOLDER, folder -> Files.readString(folder.resolve(kind.file)));
  }

  /** Writes it, whole or not at all. */
  public static void write(Kind kind, Path target) throws IOException {
    byte[] bytes =
        ShippedFolder.with(FOLDER, folder -> Files.readAllBytes(folder.resolve(kind.file)));
    AtomicFile.write(target, bytes);
  }
}
