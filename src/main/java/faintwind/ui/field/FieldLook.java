package faintwind.ui.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.job.JobWatch;
import faintwind.job.field.Convert;
import faintwind.job.field.FieldFindings;
import faintwind.job.field.LookedAtLog;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Converts logs to be looked at, each by the calibration of its own time where there is a record to
 * ask, else by the usual one. Off the JavaFX thread.
 */
record FieldLook(Optional<FieldWays> ways, Way usual) {

  /**
   * What a log is converted by.
   *
   * @param file of the calibration
   * @param notes what a person should know of the choice
   */
  record Way(Optional<Path> file, Calibration by, List<Problem> notes) {
    Way {
      notes = List.copyOf(notes);
    }

    /** The conversion. */
    Convert job(Optional<ImportProfile> lines) {
      Convert plain = new Convert(by, file.map(Path::toString).orElse(""), SpeedSettings.usual(by));
      return lines.map(plain::reading).orElse(plain);
    }
  }

  /** A log, what it was converted by, and what stands out in it. */
  record Found(Way way, LookedAtLog looked, FieldFindings findings) {}

  /** One log. */
  Checked<Found> look(Path log, Optional<ImportProfile> lines, JobWatch watch) throws IOException {
    Checked<Way> way = way(log, lines);
    if (!(way instanceof Checked.Ok<Way> ok)) {
      return Checked.refused(way.problems());
    }
    Calibration by = ok.value().by();
    Checked<LookedAtLog> looked = ok.value().job(lines).look(log, watch);
    if (!(looked instanceof Checked.Ok<LookedAtLog> seen)) {
      return Checked.refused(looked.problems());
    }
    List<Problem> notes = new ArrayList<>(ok.value().notes());
    notes.addAll(seen.notes());
    FieldFindings findings = FieldFindings.of(seen.value().rows(), by.performance().floor_m_s());
    return Checked.ok(new Found(ok.value(), seen.value(), findings), notes);
  }

  /** Several, in order; those that are refused are told and left out. */
  Checked<List<Found>> together(List<Path> logs, JobWatch watch) throws IOException {
    List<Found> all = new ArrayList<>();
    List<Problem> told = new ArrayList<>();
    for (Path log : logs) {
      Checked<Found> one = look(log, Optional.empty(), watch);
      told.addAll(one.problems());
      if (one instanceof Checked.Ok<Found> ok) {
        all.add(ok.value());
      }
    }
    return all.isEmpty() ? Checked.refused(told) : Checked.ok(all, told);
  }

  private Checked<Way> way(Path log, Optional<ImportProfile> lines) throws IOException {
    if (ways.isEmpty()) {
      return Checked.ok(usual);
    }
    FieldWays.Chosen chosen = ways.get().calibrationOf(log, lines);
    if (chosen.file().isEmpty() || chosen.file().equals(usual.file())) {
      return Checked.ok(new Way(usual.file(), usual.by(), chosen.notes()));
    }
    return OpenCalibration.read(chosen.file().get())
        .map(by -> new Way(chosen.file(), by, chosen.notes()));
  }
}
