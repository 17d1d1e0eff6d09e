package faintwind.job.air;

import faintwind.calibration.field.StretchMean;
import faintwind.calibration.flow.Flow;
import faintwind.calibration.flow.FlowPoint;
import faintwind.calibration.flow.FlowThrough;
import faintwind.calibration.survey.Visit;
import faintwind.files.air.FlowSetup;
import faintwind.files.air.MeasuredRow;
import faintwind.files.air.PointsTable;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The flow through an opening from a filled table of its points.
 *
 * @param setup the opening and its points
 * @param visits what each point read, in their order
 * @param flow what comes of it
 */
public record MeasureFlow(FlowSetup setup, List<Visit> visits, Flow flow) {
  public MeasureFlow {
    visits = List.copyOf(visits);
  }

  /**
   * Reads the table and works out the flow.
   *
   * @param settle_s how long to wait at each point, where a person says it
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<MeasureFlow> of(Path table, AirSource source, Optional<Double> settle_s)
      throws IOException {
    Where where = Where.file(table.toString());
    return PointsTable.read(table)
        .then(
            points ->
                flow(points.setup(), points.rows(), new Measured(source, settle_s, where), where));
  }

  /** The same from rows that are at hand, in the order of the points. */
  static Checked<MeasureFlow> of(
      FlowSetup setup, List<MeasuredRow> rows, AirSource source, Optional<Double> settle_s) {
    return flow(setup, rows, new Measured(source, settle_s, Where.NOWHERE), Where.NOWHERE);
  }

  private static Checked<MeasureFlow> flow(
      FlowSetup setup, List<MeasuredRow> rows, Measured measured, Where where) {
    return measured.visits(rows).then(visits -> flow(setup, visits, where));
  }

  private static Checked<MeasureFlow> flow(FlowSetup setup, List<Visit> visits, Where where) {
    List<Problem> problems = new ArrayList<>();
    List<StretchMean> speeds = new ArrayList<>();
    for (Visit visit : visits) {
      visit.speed().ifPresent(speeds::add);
      if (visit.speed().isEmpty()) {
        problems.add(tooShort(visit, where));
      }
    }
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    FlowThrough through = through(setup);
    List<Problem> notes = new ArrayList<>(unreached(setup, where));
    Flow flow = through.of(speeds);
    if (flow.tooFaint()) {
      notes.add(Problem.warning("flow.too-faint", where, String.valueOf(flow.faintPoints())));
    }
    return Checked.ok(new MeasureFlow(setup, visits, flow), notes);
  }

  /** That a stay was too short to say a speed. */
  static Problem tooShort(Visit visit, Where where) {
    String wait_s = Numerals.shortest(orZero(visit.settled_s()), 0);
    return Problem.error("air.too-short", where, visit.place(), wait_s);
  }

  private static double orZero(OptionalDouble number) {
    return number.orElse(0);
  }

  /** Points that the ball cannot reach, as one note; none where it reaches all. */
  public static List<Problem> unreached(FlowSetup setup, Where where) {
    List<FlowPoint> unreached = through(setup).unreached();
    String names = unreached.stream().map(FlowPoint::name).collect(Collectors.joining(", "));
    return unreached.isEmpty()
        ? List.of()
        : List.of(Problem.warning("flow.at-the-wall", where, names));
  }

  private static FlowThrough through(FlowSetup setup) {
    return new FlowThrough(setup.traverse(), setup.instrument(), setup.u_position_m());
  }
}
