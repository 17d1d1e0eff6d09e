package faintwind.job.formula;

import faintwind.calibration.draft.ProfileDraft;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.profile.Understood;
import faintwind.files.asset.ProfileFile;
import faintwind.files.table.FirstLines;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;

/**
 * A profile drafted from a sample, and what it makes of the sample's first lines. A person looks at
 * both before the profile is used.
 *
 * @param profile the draft
 * @param understood the first readings by it
 * @param readAs how the bytes of the sample were read
 * @param notes what was taken for granted and what was left out
 */
public record DraftProfile(
    ImportProfile profile, Understood understood, String readAs, List<Problem> notes) {
  private static final int LOOKED_AT_LINES = 200;

  public DraftProfile {
    notes = List.copyOf(notes);
  }

  /**
   * Drafts it.
   *
   * @param zone whose clock dates without an offset are taken to be of
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public static Checked<DraftProfile> of(Path sample, ZoneId zone) throws IOException {
    String name = sample.toString();
    Where where = Where.file(name);
    if (!Files.exists(sample)) {
      return Checked.refused(Problem.error("file.missing", where, name));
    }
    if (Files.isDirectory(sample)) {
      return Checked.refused(Problem.error("file.is-folder", where, name));
    }
    return FirstLines.of(sample, LOOKED_AT_LINES).then(first -> of(first, sample, zone));
  }

  private static Checked<DraftProfile> of(FirstLines first, Path sample, ZoneId zone) {
    String name = String.valueOf(sample.getFileName());
    Checked<ImportProfile> drafted = ProfileDraft.of(first.lines(), name, zone);
    return drafted.map(
        profile ->
            new DraftProfile(
                profile,
                Understood.of(first.lines(), profile, LineReader.Begin.FILE, name),
                first.form().word(),
                drafted.problems()));
  }

  /** The profile as the text of its file. */
  public String text() {
    return ProfileFile.text(profile);
  }

  /**
   * Writes the profile, whole or not at all.
   *
   * @throws IOException where the disk or a permission fails
   */
  public void write(Path target) throws IOException {
    ProfileFile.write(target, profile);
  }
}
