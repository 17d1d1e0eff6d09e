package faintwind.job.formula;

import faintwind.calibration.profile.ImportProfile;
import faintwind.files.ShippedFolder;
import faintwind.files.asset.ProfileFile;
import faintwind.files.instrument.Journal;
import faintwind.job.EnteredFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.FileRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Import profiles: those that ship with the program, and files. */
public final class Profiles {
  private static final String SHIPPED = "assets";
  private static final String FOLDER = "profiles";

  private Profiles() {}

  /**
   * A profile by what a person wrote.
   *
   * @param text a file, or the id of a shipped profile
   * @throws IOException where the disk or a permission fails; what is not there is refused
   */
  public static Checked<ImportProfile> find(String text) throws IOException {
    if (text.matches("[A-Za-z0-9-]+") && !Files.exists(Path.of(text))) {
      for (ImportProfile profile : shipped()) {
        if (profile.id().equals(text)) {
          return Checked.ok(profile);
        }
      }
      String known = String.join(", ", shipped().stream().map(ImportProfile::id).toList());
      return Checked.refused(Problem.error("profile.unknown", Where.NOWHERE, text, known));
    }
    return ProfileFile.read(Path.of(text), text);
  }

  /**
   * Those that ship with the program, in the order of their ids.
   *
   * @throws IOException where the program's own files cannot be read
   */
  public static List<ImportProfile> shipped() throws IOException {
    return ShippedFolder.with(SHIPPED, folder -> all(folder.resolve(FOLDER)));
  }

  /**
   * Every profile of a folder that can be read, in the order of their file names; a folder that is
   * not there has none.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static List<ImportProfile> all(Path folder) throws IOException {
    List<ImportProfile> profiles = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      for (Path file : jsonFiles(folder)) {
        ProfileFile.read(file, file.toString()).map(profiles::add);
      }
    }
    return profiles;
  }

  /**
   * Those for an instrument: its own first, then the shipped ones.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static List<ImportProfile> allFor(Path instrument) throws IOException {
    List<ImportProfile> all = new ArrayList<>(all(folderOf(instrument)));
    all.addAll(shipped());
    return all;
  }

  /** Where an instrument's own profiles stand. */
  public static Path folderOf(Path instrument) {
    return instrument.resolve(FOLDER);
  }

  /**
   * Keeps a profile with an instrument and enters it; one of the same id is replaced.
   *
   * @param now when
   * @return the file
   * @throws IOException where the disk or a permission fails
   */
  public static Path keep(Path instrument, ImportProfile profile, OffsetDateTime now)
      throws IOException {
    Path folder = Files.createDirectories(folderOf(instrument));
    Path file = folder.resolve(profile.id() + ".json");
    ProfileFile.write(file, profile);
    if (Files.exists(Journal.in(instrument).file())) {
      EnteredFile.note(instrument, FileRole.OTHER, file, now);
    }
    return file;
  }

  private static List<Path> jsonFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }
}
