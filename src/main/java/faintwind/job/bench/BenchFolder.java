package faintwind.job.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A folder whose folders are instruments. */
public final class BenchFolder {
  private static final String JOURNAL = "journal.jsonl";

  private BenchFolder() {}

  /**
   * The instruments directly in a folder, by the names of theirs; hidden folders are passed over.
   */
  public static List<Path> instruments(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(BenchFolder::isInstrument)
          .filter(path -> !String.valueOf(path.getFileName()).startsWith("."))
          .sorted()
          .toList();
    }
  }

  /** Whether a folder is one instrument: it has a journal. */
  public static boolean isInstrument(Path folder) {
    return Files.exists(journal(folder));
  }

  static Path journal(Path folder) {
    return folder.resolve(JOURNAL);
  }

  /** Whether it is no instrument itself and holds some. */
  public static boolean is(Path folder) throws IOException {
    return !isInstrument(folder) && !instruments(folder).isEmpty();
  }
}
