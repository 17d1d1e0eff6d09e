package faintwind.command.air;

import faintwind.job.air.AirSource;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Work on speeds that are opened first; notes of both are kept. */
@FunctionalInterface
interface AirWork<T> {
  Checked<T> of(AirSource source) throws IOException;

  /** Opens what is named and does the work on it. */
  static <T> Checked<T> with(SourceOptions source, SourceOptions.Stays stays, AirWork<T> work)
      throws IOException {
    Checked<AirSource> opened = source.open(stays.speeds());
    if (!(opened instanceof Checked.Ok<AirSource> ok)) {
      return Checked.refused(opened.problems());
    }
    Checked<T> done = work.of(ok.value());
    List<Problem> notes = new ArrayList<>(ok.notes());
    return done.then(value -> Checked.ok(value, notes));
  }
}
