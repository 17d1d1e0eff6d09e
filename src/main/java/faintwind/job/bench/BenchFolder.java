package faintwind.job.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A folder whose folders are instruments. */
public final class BenchFolder {
  private static final String JOURNAL = "journal.jsonl";
  private static final String SUMMARY = "instrument.json";

  /** What systems put on a stick or disk and let nobody look into. */
  private static final Set<String> OF_SYSTEMS = Set.of("lost+found", "System Volume Information");

  private BenchFolder() {}

  /**
   * The instruments directly in a folder, by the names of theirs, and what may be one: a folder
   * whose journal is gone beside its summary, or that nobody may look into. Hidden folders are
   * passed over.
   */
  public static List<Path> instruments(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(path -> isInstrument(path) || isDamaged(path))
          .filter(path -> !String.valueOf(path.getFileName()).startsWith("."))
          .sorted()
          .toList();
    }
  }

  /** Whether a folder is one instrument: it has a journal, readable or not. */
  public static boolean isInstrument(Path folder) {
    return Files.exists(journal(folder), LinkOption.NOFOLLOW_LINKS);
  }

  private static boolean isDamaged(Path folder) {
    return Files.isDirectory(folder)
        && !OF_SYSTEMS.contains(String.valueOf(folder.getFileName()))
        && (!Files.isReadable(folder) || Files.isRegularFile(folder.resolve(SUMMARY)));
  }

  static Path journal(Path folder) {
    return folder.resolve(JOURNAL);
  }

  /** Whether it is no instrument itself and holds some. */
  public static boolean is(Path folder) throws IOException {
    return !isInstrument(folder) && !instruments(folder).isEmpty();
  }
}
