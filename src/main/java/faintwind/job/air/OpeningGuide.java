package faintwind.job.air;

import faintwind.calibration.flow.InTheWay;
import faintwind.calibration.flow.Traverse;
import faintwind.files.air.FlowSetup;
import faintwind.files.air.PointsTable;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Where;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where to measure in an opening.
 *
 * @param setup the opening and its points
 */
public record OpeningGuide(FlowSetup setup) {
  /** What is asked of an opening and of what is put into it, in the order of the table. */
  public static final List<Field> FIELDS = FlowSetup.FIELDS;

  /** From what was said under the keys of the points' table; notes say what to mind. */
  public static Checked<OpeningGuide> of(Map<String, String> said) {
    return FlowSetup.of(said, Where.NOWHERE)
        .then(
            setup ->
                Checked.ok(new OpeningGuide(setup), MeasureFlow.unreached(setup, Where.NOWHERE)));
  }

  /** The opening with its points. */
  public Traverse traverse() {
    return setup.traverse();
  }

  /** What is put into it. */
  public InTheWay instrument() {
    return setup.instrument();
  }

  /** Cautions first, then the points. */
  public List<String> lines(Messages words) {
    return new FlowText(words).points(setup);
  }

  /** The flow from what was read at each point, in the order of the points. */
  public Checked<MeasureFlow> flow(List<Reading> readings, AirSource source) {
    return MeasureFlow.of(setup, Reading.rows(readings), source, Optional.empty());
  }

  /** The table to be filled in. */
  public String table() {
    return PointsTable.blank(setup);
  }
}
