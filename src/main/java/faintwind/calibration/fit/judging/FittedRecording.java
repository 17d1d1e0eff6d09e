package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.run.Series;
import java.util.ArrayList;
import java.util.List;

/**
 * One recording as the fit saw it: the averaged rows, and what the fitted formula gives at them.
 *
 * @param file run file as the table names it
 * @param measured averaged rows, signal unit
 * @param fitted the formula at the same times, signal unit
 */
public record FittedRecording(String file, Series measured, Series fitted) {

  /** Every heated recording of a fit, in its order. */
  public static List<FittedRecording> of(FitResult fit) {
    List<FittedRecording> all = new ArrayList<>();
    for (int k = 0; k < fit.problem().tracks().size(); k++) {
      Track track = fit.problem().tracks().get(k);
      all.add(
          new FittedRecording(
              track.file,
              Series.of(track.rows.time_s, track.rows.signal),
              Series.of(track.rows.time_s, fit.problem().predicted(k))));
    }
    return all;
  }
}
