package faintwind.job;

import faintwind.files.Sha256;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.InstrumentFolder.Access;
import faintwind.files.instrument.Journal;
import faintwind.record.Event.Attached;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Files of an instrument's folder and the journal that enters them. */
public final class EnteredFile {
  private static final int FOLDERS_UP = 4;

  private EnteredFile() {}

  /** The name of a file of the folder as the journal writes it. */
  public static String name(Path folder, Path file) {
    Path root = folder.toAbsolutePath().normalize();
    return root.relativize(file.toAbsolutePath().normalize()).toString().replace('\\', '/');
  }

  /**
   * The event that enters a file of the folder as it is now.
   *
   * @throws IOException where the file cannot be read
   */
  public static FileAdded added(Path folder, FileRole role, Path file) throws IOException {
    return new FileAdded(role, name(folder, file), Sha256.of(file));
  }

  /** The instrument's folder that a file lies in, or would lie in. */
  public static Optional<Path> folderAround(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    for (int i = 0; i < FOLDERS_UP && folder != null; i++) {
      if (Files.exists(Journal.in(folder).file())) {
        return Optional.of(folder);
      }
      folder = folder.getParent();
    }
    return Optional.empty();
  }

  /**
   * Whether the record of a folder rests on a file: the journal itself, and whatever it names but
   * reports, which can be made again.
   *
   * @throws IOException where the journal cannot be read
   */
  public static boolean isEvidence(Path folder, Path file) throws IOException {
    String name = name(folder, file);
    return InstrumentFolder.isOwn(name)
        || new InstrumentFolder(folder)
            .open().state().lines().stream()
                .filter(
                    line -> line.event().attached().filter(a -> a.file().equals(name)).isPresent())
                .anyMatch(
                    line ->
                        !(line.event() instanceof FileAdded added
                            && added.kind() == FileRole.REPORT));
  }

  /**
   * Enters a file that the program wrote into an instrument's folder, with the hash it has now;
   * nothing where it is entered as it is, or where nothing may be entered.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static void note(Path folder, FileRole role, Path file, OffsetDateTime now)
      throws IOException {
    InstrumentFolder.Opened opened = new InstrumentFolder(folder).open();
    Attached attached = new Attached(name(folder, file), Sha256.of(file));
    boolean known =
        opened.state().lines().stream()
            .flatMap(line -> line.event().attached().stream())
            .filter(was -> was.file().equals(attached.file()))
            .reduce((first, second) -> second)
            .equals(Optional.of(attached));
    if (!known && opened.access() == Access.READ_WRITE) {
      FileAdded added = new FileAdded(role, attached.file(), attached.sha256());
      String id = UUID.randomUUID().toString();
      new InstrumentFolder(folder)
          .append(List.of(new JournalEntry(id, now, Journal.PROGRAM, Optional.empty(), added)));
    }
  }
}
