package faintwind.job.record;

import faintwind.calibration.Calibration;
import faintwind.files.Sha256;
import faintwind.files.calibration.CalibrationFile;
import faintwind.guide.InForceGate;
import faintwind.job.EnteredFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.JournalEntry;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Puts a calibration of an instrument's folder in force, as long as it is what was entered. */
public final class PutInForce {
  private final InstrumentView view;
  private final Enter enter;

  public PutInForce(InstrumentView view, Enter enter) {
    this.view = view;
    this.enter = enter;
  }

  /**
   * Puts a calibration in force.
   *
   * @param wanted a file of the folder, by its path or by its name in the folder; the last one made
   *     where empty
   * @param reason why it counts though it does not meet the build; stands on every later report
   * @return its name in the folder, what is open in the build as notes; refused where it is none,
   *     was not entered, or has changed since
   * @throws IOException where the disk or a permission fails
   */
  public Checked<String> put(Optional<String> wanted, Optional<String> reason) throws IOException {
    Checked<String> sound = sound(wanted);
    if (!(sound instanceof Checked.Ok<String> name)) {
      return sound;
    }
    Checked<JournalEntry> put =
        reason.isPresent()
            ? enter.forceExplained(name.value(), reason.get())
            : enter.plain(Optional.empty(), new CalibrationPutInForce(name.value()));
    return put.isOk()
        ? Checked.ok(name.value(), InForceGate.open(view.checklist(), enter.situation()))
        : Checked.refused(put.problems());
  }

  /** Puts a calibration in force that does not meet the build, for a reason; else the same. */
  public Checked<JournalEntry> explained(String file, String reason) throws IOException {
    Checked<String> sound = sound(Optional.of(file));
    return sound instanceof Checked.Ok<String> name
        ? enter.forceExplained(name.value(), reason)
        : Checked.refused(sound.problems());
  }

  /** The name in the folder of a calibration that is what was entered. */
  private Checked<String> sound(Optional<String> wanted) throws IOException {
    List<CalibrationMade> made =
        view.state().standing(CalibrationMade.class).stream().map(Standing::event).toList();
    Optional<String> name =
        wanted.map(this::nameInFolder).or(() -> last(made).map(CalibrationMade::file));
    if (name.isEmpty()) {
      return refused("put-in-force.none-made", view.path().toString());
    }
    Optional<CalibrationMade> entered =
        last(made.stream().filter(m -> m.file().equals(name.get())).toList());
    if (entered.isEmpty()) {
      return refused("put-in-force.not-entered", name.get());
    }
    Path file = view.path().resolve(name.get());
    if (!Files.isRegularFile(file)) {
      return refused("folder.file-missing", name.get());
    }
    String now = Sha256.of(file);
    if (!now.equals(entered.get().sha256())) {
      return Checked.refused(
          Problem.error("folder.file-changed", Where.file(name.get()), name.get(), now));
    }
    Checked<Calibration> read = CalibrationFile.read(file, name.get());
    return read.isOk() ? Checked.ok(name.get()) : Checked.refused(read.problems());
  }

  private String nameInFolder(String wanted) {
    boolean inFolder =
        !Path.of(wanted).isAbsolute() && Files.isRegularFile(view.path().resolve(wanted));
    return inFolder ? wanted.replace('\\', '/') : EnteredFile.name(view.path(), Path.of(wanted));
  }

  private static Checked<String> refused(String id, String name) {
    return Checked.refused(Problem.error(id, Where.file(name), name));
  }

  private static Optional<CalibrationMade> last(List<CalibrationMade> made) {
    return made.isEmpty() ? Optional.empty() : Optional.of(made.get(made.size() - 1));
  }
}
