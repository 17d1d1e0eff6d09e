package faintwind.physics.sheet;

import faintwind.message.Problem;
import faintwind.physics.design.CoursePoint;
import faintwind.physics.design.CurvePoint;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignCourse;
import faintwind.physics.design.DesignCurve;
import faintwind.physics.design.Spread;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Every quantity that follows from a design. A quantity that the design says nothing about (a
 * battery where there is none, plating where the balls stay bare) is absent.
 *
 * @param quantities in the order of {@link OutcomeId}
 * @param curve delta, time constant, signal and resolution against speed
 * @param budget what each part's tolerance does to delta at 1 m/s, K, the largest first
 * @param course warm-up and cool-down in still air
 * @param design what it follows from; empty where only numbers are known
 */
public record DesignSheet(
    List<Outcome> quantities,
    List<CurvePoint> curve,
    List<Spread.Line> budget,
    List<CoursePoint> course,
    Optional<Design> design) {

  public DesignSheet {
    quantities = quantities.stream().sorted(Comparator.comparing(Outcome::id)).toList();
    curve = List.copyOf(curve);
    budget = List.copyOf(budget);
    course = List.copyOf(course);
  }

  /** A sheet of quantities alone. */
  public DesignSheet(List<Outcome> quantities) {
    this(quantities, List.of(), List.of(), List.of(), Optional.empty());
  }

  /** Everything that follows from a design. */
  public static DesignSheet of(Design design) {
    Spread spread = new Spread(design);
    DesignCourse course = new DesignCourse(spread.nominal());
    List<Outcome> all = new ArrayList<>();
    all.addAll(BallSheet.of(design));
    all.addAll(HeaterSheet.of(design, spread));
    all.addAll(HeatSheet.of(design, spread, course));
    all.addAll(JarSheet.of(design, spread));
    all.addAll(SignalSheet.of(design, spread));
    all.addAll(PlatingSheet.of(design));
    all.addAll(ArmSheet.of(design));
    return new DesignSheet(
        all,
        DesignCurve.of(design, spread),
        spread.budget(m -> m.delta_K(1.0)),
        course.points(),
        Optional.of(design));
  }

  /** The same with some quantities known better, such as from a calibration. */
  public DesignSheet with(List<Outcome> better) {
    List<OutcomeId> known = better.stream().map(Outcome::id).toList();
    List<Outcome> all = new ArrayList<>(better);
    quantities.stream().filter(q -> !known.contains(q.id())).forEach(all::add);
    return new DesignSheet(all, curve, budget, course, design);
  }

  /** The same of a design that differs by its name alone. */
  public DesignSheet named(String name) {
    return new DesignSheet(quantities, curve, budget, course, design.map(d -> d.named(name)));
  }

  /** A quantity by its name, such as {@code heater_ohm}; empty where this design has none. */
  public Optional<Outcome> quantity(String id) {
    return quantities.stream().filter(q -> q.id().id().equals(id)).findFirst();
  }

  /** A quantity; empty where this design has none. */
  public Optional<Outcome> quantity(OutcomeId id) {
    return quantities.stream().filter(q -> q.id() == id).findFirst();
  }

  /**
   * The reasons of every verdict that is not good, those that stop the design first; a range that
   * several quantities leave alike stands once.
   */
  public List<Problem> reasons() {
    Map<List<String>, Problem> once = new LinkedHashMap<>();
    quantities.stream()
        .sorted(Comparator.comparing(q -> q.verdict() == DesignVerdict.STOP ? 0 : 1))
        .flatMap(q -> q.reason().stream())
        .forEach(
            p -> once.putIfAbsent(List.of(p.id(), p.found(), String.join(" ", p.details())), p));
    return List.copyOf(once.values());
  }

  /** Whether something in it cannot work or is not safe. */
  public boolean stops() {
    return quantities.stream().anyMatch(q -> q.verdict() == DesignVerdict.STOP);
  }
}
