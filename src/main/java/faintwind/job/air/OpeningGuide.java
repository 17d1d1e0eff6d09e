package faintwind.job.air;

import faintwind.files.air.FlowSetup;
import faintwind.files.air.PointsTable;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Where;
import java.util.List;
import java.util.Map;

/**
 * Where to measure in an opening.
 *
 * @param setup the opening and its points
 */
public record OpeningGuide(FlowSetup setup) {
  /** From what was said under the keys of the points' table; notes say what to mind. */
  public static Checked<OpeningGuide> of(Map<String, String> said) {
    return FlowSetup.of(said, Where.NOWHERE)
        .then(
            setup ->
                Checked.ok(new OpeningGuide(setup), MeasureFlow.unreached(setup, Where.NOWHERE)));
  }

  /** Cautions first, then the points. */
  public List<String> lines(Messages words) {
    return new FlowText(words).points(setup);
  }

  /** The table to be filled in. */
  public String table() {
    return PointsTable.blank(setup);
  }
}
