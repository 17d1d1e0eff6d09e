package faintwind.job.record;

import faintwind.files.Sha256;
import faintwind.job.EnteredFile;
import faintwind.job.JobWatch;
import faintwind.job.formula.FormulaRuns;
import faintwind.job.formula.KeepFormula;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Calibrations of an instrument's folder: made there, and entered. */
public final class KeepCalibration {
  private final AtInstrument instrument;

  public KeepCalibration(AtInstrument instrument) {
    this.instrument = instrument;
  }

  /**
   * Fits the last runs table on record, keeps calibration and page, and enters both.
   *
   * @return refused where no runs were brought in, or the fit refuses them
   * @throws IOException where the disk or a permission fails
   */
  public Checked<KeepFormula.Kept> make(KeepFormula formula, JobWatch watch) throws IOException {
    return instrument.work((view, enter) -> make(view, enter, formula, watch));
  }

  private static Checked<KeepFormula.Kept> make(
      InstrumentView view, Enter enter, KeepFormula formula, JobWatch watch) throws IOException {
    List<Path> tables = FormulaRuns.tables(view.state(), view.path());
    if (tables.isEmpty()) {
      String folder = view.path().toString();
      return Checked.refused(Problem.error("calibrate.no-runs", Where.file(folder), folder));
    }
    Checked<KeepFormula.Kept> fitted = formula.fit(tables.get(0), watch);
    if (!(fitted instanceof Checked.Ok<KeepFormula.Kept> kept)) {
      return fitted;
    }
    Checked<JournalEntry> entered = enter.plain(Optional.empty(), formula.events(kept.value()));
    return entered.isOk() ? fitted : Checked.refused(entered.problems());
  }

  /**
   * Enters a calibration that was written into the folder.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<JournalEntry> enter(Path file) throws IOException {
    return instrument.work(
        (view, enter) ->
            enter.plain(
                Optional.empty(),
                new CalibrationMade(EnteredFile.name(view.path(), file), Sha256.of(file))));
  }
}
