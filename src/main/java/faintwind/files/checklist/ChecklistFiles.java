package faintwind.files.checklist;

import faintwind.files.ShippedFolder;
import faintwind.guide.checklist.Checklist;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Reads a checklist folder: {@code checklist.json} (stages and the order of their steps), {@code
 * NN-stage/step-id.json}, {@code remedies.json}, {@code lang/CODE.json}. A folder laid over it (a
 * teacher's) replaces files of the same name and may bring a checklist.json of its own; the hash of
 * the result shows that it did. A step laid over keeps every caution, gate and stop of the one
 * below.
 */
public final class ChecklistFiles {
  private static final String OWN = "checklist";

  private ChecklistFiles() {}

  /** The checklist that ships under a name, such as {@code standard}. */
  public static Checked<Checklist> shipped(String name) throws IOException {
    return ShippedFolder.with(
        "checklists", all -> read(List.of(all.resolve(name)), Locale.ENGLISH));
  }

  /**
   * The shipped checklist with what an instrument's folder, and the folder of instruments around
   * it, lay over it in {@code checklist/}. An own file that is broken is set aside: the shipped one
   * stands in its place, and the notes say why.
   *
   * @param language of the texts; what it lacks is English, and marked
   */
  public static Checked<Checklist> forInstrument(Path instrument, String name, Locale language)
      throws IOException {
    return ShippedFolder.with(
        "checklists",
        all -> {
          List<Path> folders = new ArrayList<>();
          for (Path folder : ownFolders(instrument)) {
            if (Files.isDirectory(folder.resolve(OWN))) {
              folders.add(folder.resolve(OWN));
            }
          }
          folders.add(all.resolve(name));
          return new OwnChecklist(folders, language).read();
        });
  }

  /** Where files of the teacher's own may lie, the first winning: the instrument, its workspace. */
  public static List<Path> ownFolders(Path instrument) {
    Path parent = instrument.toAbsolutePath().getParent();
    return parent == null ? List.of(instrument) : List.of(instrument, parent);
  }

  /**
   * A checklist from folders, the first that has a file wins; refused with all that is wrong.
   *
   * @throws IOException where a file cannot be read
   */
  public static Checked<Checklist> read(List<Path> folders, Locale language) throws IOException {
    return ChecklistReading.read(folders, language, Set.of());
  }
}
