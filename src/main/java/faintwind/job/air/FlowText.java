package faintwind.job.air;

import faintwind.calibration.flow.Flow;
import faintwind.calibration.flow.FlowPoint;
import faintwind.calibration.flow.Opening;
import faintwind.calibration.flow.Opening.Shape;
import faintwind.calibration.flow.Traverse;
import faintwind.calibration.survey.Visit;
import faintwind.files.JsonForm;
import faintwind.files.air.FlowSetup;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Points and flow of an opening in words, and for another program. */
public final class FlowText {
  private static final int MM_S = 3;

  private final Messages words;

  public FlowText(Messages words) {
    this.words = words;
  }

  /** Cautions first, then where to go, point by point. */
  List<String> points(FlowSetup setup) {
    Traverse traverse = setup.traverse();
    Opening opening = traverse.opening();
    List<String> lines = new ArrayList<>();
    lines.add(words.text("flow.caution.head", words.text("flow.caution")));
    if (opening.shape() == Shape.HIVE) {
      lines.add(words.text("flow.caution.head", words.text("flow.caution-hive")));
    }
    lines.add(opening(traverse));
    lines.add(rule(traverse));
    traverse.points().forEach(point -> lines.add(point(opening, point)));
    lines.add(words.text("flow.points.how"));
    return lines;
  }

  /** What the opening is, and how many points it has. */
  public String opening(Traverse traverse) {
    Opening opening = traverse.opening();
    return words.text(
        "flow.points." + Field.word(opening.shape()),
        mm(opening.width_m()),
        mm(opening.height_m()),
        traverse.count());
  }

  /** By which rule its points are laid. */
  public String rule(Traverse traverse) {
    return words.text("flow.rule." + Field.word(traverse.rule()));
  }

  /** Where a point lies. */
  public String point(Opening opening, FlowPoint point) {
    String key = opening.shape() == Shape.RECTANGLE ? "flow.point-net" : "flow.point";
    return words.text(key, point.name(), mm(point.depth_m()), mm(point.up_m()));
  }

  /** The flow with where its uncertainty comes from. */
  public List<String> flow(MeasureFlow measured) {
    List<String> lines = new ArrayList<>();
    for (Visit visit : measured.visits()) {
      visit
          .speed()
          .ifPresent(
              s ->
                  lines.add(
                      words.text(
                          "flow.speed",
                          visit.place(),
                          places(s.speed_m_s()),
                          places(s.u95_m_s()))));
    }
    lines.addAll(result(measured.flow()));
    return lines;
  }

  /** The flow in a sentence. */
  public String sentence(Flow flow) {
    String value = Numerals.beside(flow.u95_m3_h(), 2, flow.flow_m3_h());
    return words.text("flow.flow", value, digits2(flow.u95_m3_h()));
  }

  /** The same without the speeds. */
  public List<String> result(Flow flow) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text("flow.mean", places(flow.mean_m_s())));
    lines.add(sentence(flow));
    for (Flow.Part part : flow.parts()) {
      String name = words.text("flow.part." + Field.word(part.source()));
      lines.add(words.text("flow.part", name, Numerals.places(100 * part.u(), 1)));
    }
    lines.add(words.text("flow.direction"));
    return lines;
  }

  /**
   * The flow as JSON.
   *
   * @param inputs hashes of the files it was made from, by name
   */
  public static String json(MeasureFlow measured, Map<String, String> inputs) {
    Flow flow = measured.flow();
    Opening opening = measured.setup().traverse().opening();
    return JsonForm.text(
        new Told(
            "faintwind-flow/1",
            new Place(
                opening,
                opening.area_m2(),
                Field.word(measured.setup().traverse().rule()),
                measured.setup().traverse().count()),
            measured.visits().stream().map(FlowText::point).toList(),
            new Result(
                flow.mean_m_s(), flow.flow_m3_h(), flow.u95_m3_h(), flow.tooFaint(), flow.parts()),
            inputs));
  }

  private static Point point(Visit visit) {
    return new Point(
        visit.place(),
        visit.speed().map(s -> s.speed_m_s()).orElse(0.0),
        visit.speed().map(s -> s.u95_m_s()).orElse(0.0),
        visit.settled_s().isPresent()
            ? Optional.of(visit.settled_s().getAsDouble())
            : Optional.empty());
  }

  private record Told(
      String format,
      Place opening,
      List<Point> points,
      Result result,
      Map<String, String> inputs) {}

  private record Place(Opening size, double area_m2, String rule, int count) {}

  private record Point(
      String point, double speed_m_s, double u95_m_s, Optional<Double> settled_s) {}

  private record Result(
      double mean_m_s,
      double flow_m3_h,
      double u95_m3_h,
      boolean tooFaint,
      List<Flow.Part> parts) {}

  private static String mm(double length_m) {
    return Numerals.shortest(1000 * length_m, 1);
  }

  private static String places(double speed_m_s) {
    return Numerals.places(speed_m_s, MM_S);
  }

  private static String digits2(double number) {
    return Numerals.digits(number, 2);
  }
}
