package faintwind.job.pool;

import faintwind.job.formula.Calibrate;
import faintwind.job.formula.KeepFormula;
import faintwind.job.pool.PoolInstruments.Made;
import faintwind.job.record.AtInstrument;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Keeps the calibrations of a class, each in the folder of its instrument and its journal. */
public final class KeepPooled {
  private final Function<Path, AtInstrument> at;
  private final Calibrate calibrate;

  /**
   * Keeps them.
   *
   * @param at how work at an instrument begins
   */
  public KeepPooled(Function<Path, AtInstrument> at, Calibrate calibrate) {
    this.at = at;
    this.calibrate = calibrate;
  }

  /** Why some of these folders cannot be written to now. */
  public List<Problem> trouble(List<Path> folders) throws IOException {
    List<Problem> problems = new ArrayList<>();
    for (Path folder : folders) {
      problems.addAll(at.apply(folder).trouble());
    }
    return problems;
  }

  /**
   * Keeps one; an earlier file is never replaced.
   *
   * @return the file
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Path> keep(Made made) throws IOException {
    KeepFormula formula = new KeepFormula(made.folder(), calibrate);
    return at.apply(made.folder())
        .work(
            (view, enter) -> {
              KeepFormula.Kept kept = formula.keep(made.outcome());
              Checked<JournalEntry> entered = enter.plain(Optional.empty(), formula.events(kept));
              return entered.map(entry -> made.folder().resolve(kept.file()));
            });
  }
}
