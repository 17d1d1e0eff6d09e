package faintwind.job.demo;

import faintwind.files.ShippedFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Copies the made-up demonstration instruments into a folder, where they can be worked with. */
public final class CopyDemo {
  private static final String JOURNAL = "journal.jsonl";

  private CopyDemo() {}

  /**
   * Copies every shipped demonstration instrument that the folder does not have yet.
   *
   * @param into the folder of instruments; made where it is missing
   * @return the folders of all demonstration instruments there
   * @throws IOException where something cannot be read or written; instruments copied before it
   *     stay
   */
  public static List<Path> into(Path into) throws IOException {
    Files.createDirectories(into);
    return ShippedFolder.with("demo-projects", shipped -> copyAll(shipped, into));
  }

  private static List<Path> copyAll(Path shipped, Path into) throws IOException {
    List<Path> copies = new ArrayList<>();
    try (Stream<Path> all = Files.walk(shipped, 2)) {
      for (Path folder : all.filter(f -> Files.exists(f.resolve(JOURNAL))).sorted().toList()) {
        Path target = into.resolve(String.valueOf(folder.getFileName()));
        if (!Files.exists(target)) {
          copy(folder, target);
        }
        copies.add(target);
      }
    }
    return copies;
  }

  private static void copy(Path folder, Path target) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.sorted().toList()) {
        Path copy = target.resolve(folder.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
    }
  }
}
