package faintwind.job.record;

import faintwind.files.AtomicFile;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * An instrument whose folder cannot be written to any more: the stick was pulled out, the disk is
 * full. Its journal is in memory and goes to another place byte for byte, with every file of the
 * folder that can still be read. What cannot be read is missing there, and {@code check} names it.
 *
 * @param lines of the journal, as they were when the folder was last read
 */
public record Rescue(List<String> lines) {

  public Rescue {
    lines = List.copyOf(lines);
  }

  /**
   * Keeps the journal of a folder in memory.
   *
   * @throws IOException where it cannot be read
   */
  public static Rescue of(Path folder) throws IOException {
    return new Rescue(Files.readString(Journal.in(folder).file()).lines().toList());
  }

  /**
   * Writes everything to another place.
   *
   * @param former the folder that fails
   * @param place a folder that is not there yet
   * @return the place
   * @throws IOException where it is there already or cannot be written to
   */
  public Path to(Path former, Path place) throws IOException {
    if (Files.exists(place)) {
      throw new FileAlreadyExistsException(place.toString());
    }
    Files.createDirectories(place);
    String text = String.join("\n", lines) + "\n";
    AtomicFile.write(Journal.in(place).file(), text.getBytes(StandardCharsets.UTF_8));
    for (Path file : readable(former)) {
      Path target = place.resolve(former.relativize(file).toString());
      if (!Files.exists(target)) {
        copy(file, target);
      }
    }
    new InstrumentFolder(place).writeSummary();
    return place;
  }

  private static List<Path> readable(Path former) {
    try (Stream<Path> all = Files.walk(former)) {
      return all.filter(Files::isRegularFile)
          .filter(file -> !String.valueOf(file.getFileName()).equals("writer.lock"))
          .toList();
    } catch (IOException | UncheckedIOException gone) {
      return List.of();
    }
  }

  /** A file that cannot be read is left out; one that cannot be written is not. */
  private static void copy(Path file, Path target) throws IOException {
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(file);
    } catch (IOException unreadable) {
      return;
    }
    Files.createDirectories(AtomicFile.folderOf(target));
    AtomicFile.write(target, bytes);
  }
}
