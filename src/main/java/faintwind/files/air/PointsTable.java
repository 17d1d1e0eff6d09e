package faintwind.files.air;

import faintwind.calibration.flow.FlowPoint;
import faintwind.calibration.flow.InTheWay;
import faintwind.calibration.flow.Opening;
import faintwind.calibration.flow.Opening.Shape;
import faintwind.calibration.flow.Traverse;
import faintwind.files.ProblemList;
import faintwind.files.run.LogHead;
import faintwind.files.run.TableFile;
import faintwind.files.table.FirstLines;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Numerals;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The points of an opening as a table to be filled in: what the opening is stands in lines before
 * the header, {@code # key: value}; each row is a point with its depth, then when the instrument
 * was there or what it read.
 *
 * @param setup the opening and its points
 * @param rows as filled in, in the order of the points
 */
public record PointsTable(FlowSetup setup, List<MeasuredRow> rows) {
  private static final String POINT = "point";
  private static final int HEAD_LINES = 40;
  private static final String HEADER = POINT + ",depth_mm,up_mm," + MeasuredRow.head();

  public PointsTable {
    rows = List.copyOf(rows);
  }

  /**
   * Reads a table.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<PointsTable> read(Path path) throws IOException {
    String name = path.toString();
    Where where = Where.file(name);
    Checked<TableFile> read = TableFile.read(path, name, MeasuredRow.columns(POINT));
    if (!(read instanceof Checked.Ok<TableFile> ok)) {
      return Checked.refused(read.problems());
    }
    Checked<FirstLines> head = FirstLines.of(path, HEAD_LINES);
    if (!(head instanceof Checked.Ok<FirstLines> first)) {
      return Checked.refused(head.problems());
    }
    Map<String, String> said = new LinkedHashMap<>();
    for (String line : first.value().lines()) {
      int colon = line.indexOf(':');
      if (line.startsWith("#") && colon > 0) {
        said.put(line.substring(1, colon).strip(), line.substring(colon + 1).strip());
      }
    }
    return FlowSetup.of(said, where).then(setup -> rows(setup, ok.value(), where));
  }

  private static Checked<PointsTable> rows(FlowSetup setup, TableFile table, Where where) {
    ProblemList problems = new ProblemList();
    problems.addAll(table.problems());
    if (problems.hasErrors()) {
      return Checked.refused(problems.list());
    }
    if (!table.columns().contains(POINT)) {
      String found = LogHead.excerpt(String.join(", ", table.columns()));
      problems.error("file.column-missing", where, found, POINT);
      return Checked.refused(problems.list());
    }
    Map<String, MeasuredRow> byName = new LinkedHashMap<>();
    Set<String> wanted =
        setup.traverse().points().stream().map(FlowPoint::name).collect(Collectors.toSet());
    for (MeasuredRow row : MeasuredRow.read(table, POINT, where, problems)) {
      Where here = where.atLine(row.line()).atColumn(POINT);
      if (!wanted.contains(row.name())) {
        problems.error("flow.point-unknown", here, row.name());
      } else if (byName.put(row.name(), row) != null) {
        problems.error("flow.point-twice", here, row.name());
      }
    }
    for (FlowPoint point : setup.traverse().points()) {
      if (!byName.containsKey(point.name())) {
        problems.error("flow.point-missing", where, point.name());
      }
    }
    if (problems.hasErrors()) {
      return Checked.refused(problems.list());
    }
    List<MeasuredRow> rows =
        setup.traverse().points().stream().map(p -> byName.get(p.name())).toList();
    return Checked.ok(new PointsTable(setup, rows), problems.list());
  }

  /** A table to be filled in. */
  public static String blank(FlowSetup setup) {
    return text(setup, List.of());
  }

  /**
   * A table of rows as they were filled in.
   *
   * @param rows in the order of the points; none for a table to be filled in
   */
  public static String text(FlowSetup setup, List<MeasuredRow> rows) {
    Traverse traverse = setup.traverse();
    Opening opening = traverse.opening();
    InTheWay instrument = setup.instrument();
    StringBuilder text = new StringBuilder();
    head(text, FlowSetup.SHAPE, Field.word(opening.shape()));
    head(text, Opening.WIDTH, mm(opening.width_m()));
    if (opening.shape() != Shape.ROUND) {
      head(text, Opening.HEIGHT, mm(opening.height_m()));
    }
    head(text, Opening.U_SIZE, mm(opening.u_size_m()));
    head(text, FlowSetup.RULE, Field.word(traverse.rule()));
    head(text, FlowSetup.COUNT, String.valueOf(traverse.count()));
    head(text, FlowSetup.BALL, mm(instrument.ball_m()));
    head(text, FlowSetup.FRONT, Numerals.shortest(1e4 * instrument.front_m2(), 4));
    head(text, FlowSetup.U_POSITION, mm(setup.u_position_m()));
    text.append(HEADER).append('\n');
    List<FlowPoint> points = traverse.points();
    for (int i = 0; i < points.size(); i++) {
      FlowPoint point = points.get(i);
      text.append(point.name()).append(',');
      text.append(mm(point.depth_m())).append(',');
      text.append(opening.shape() == Shape.ROUND ? "" : mm(point.up_m()));
      text.append(',').append(rows.isEmpty() ? ",,,," : rows.get(i).cells()).append('\n');
    }
    return text.toString();
  }

  private static void head(StringBuilder text, Field field, String value) {
    text.append("# ").append(field.key()).append(": ").append(value).append('\n');
  }

  private static String mm(double length_m) {
    return Numerals.shortest(1000 * length_m, 1);
  }
}
