package faintwind.physics.design;

import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.AirProperties;
import faintwind.physics.part.Coat;
import faintwind.physics.part.Metal;
import faintwind.physics.plating.PlatingPlan;
import faintwind.physics.sheet.DesignSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What cannot be in a design at all, whatever its verdicts: sizes that contradict one another,
 * surfaces that do not go with the metal, speeds outside every correlation. A design with such a
 * problem is refused; everything else is a verdict of the {@link DesignSheet}.
 */
public final class DesignRules {
  private static final double FASTEST_RE = 7.6e4; // Whitaker 1972

  /** A wider hole leaves no ball to speak of (own choice). */
  private static final double WIDEST_BORE = 0.5;

  /** Metal that has to be left beyond the drill's point, m (common practice, no source). */
  private static final double THINNEST_BOTTOM_M = 0.5e-3;

  private DesignRules() {}

  /**
   * All problems of a design.
   *
   * @param design the design
   * @param where its file
   */
  public static List<Problem> problems(Design design, Where where) {
    List<Problem> all = new ArrayList<>(bore(design, where));
    all.addAll(surface(design, where));
    all.addAll(speeds(design, where));
    all.addAll(source(design.supply(), where));
    return all;
  }

  private static List<Problem> bore(Design design, Where where) {
    BallDesign ball = design.ball();
    double d = ball.diameter_m().low();
    double bore = ball.bore().diameter_m();
    if (bore >= d) {
      return List.of(
          Problem.error(
              "design.bore-larger-than-ball",
              where.atColumn("ball.bore_mm"),
              mm(bore),
              mm(d),
              mm(d / 3)));
    }
    List<Problem> all = new ArrayList<>();
    if (bore > WIDEST_BORE * d) {
      all.add(
          Problem.error(
              "design.bore-thin-wall",
              where.atColumn("ball.bore_mm"),
              mm(bore),
              mm((d - bore) / 2),
              mm(WIDEST_BORE * d)));
    }
    if (ball.bore().referenceDepth_m().isEmpty()) {
      all.add(
          Problem.error(
              "design.reference-bored-through",
              where.atColumn("ball.reference_bore"),
              mm(0.75 * d)));
    }
    depth(ball, ball.bore().heatedDepth_m(), where.atColumn("ball.heated_bore_depth_mm"), all);
    depth(
        ball, ball.bore().referenceDepth_m(), where.atColumn("ball.reference_bore_depth_mm"), all);
    return all;
  }

  private static void depth(
      BallDesign ball, OptionalDouble depth_m, Where where, List<Problem> all) {
    if (depth_m.isEmpty()) {
      return;
    }
    double depth = depth_m.getAsDouble();
    double deepest = ball.diameter_m().low() - ball.dome_m() - ball.point_m();
    if (depth > deepest) {
      all.add(
          Problem.error(
              "design.bore-breaks-through", where, mm(depth), mm(deepest - THINNEST_BOTTOM_M)));
    } else if (depth > deepest - THINNEST_BOTTOM_M) {
      all.add(
          Problem.error(
              "design.bore-thin-bottom",
              where,
              mm(depth),
              mm(deepest - depth),
              mm(deepest - THINNEST_BOTTOM_M)));
    } else if (depth <= ball.dome_m()) {
      all.add(Problem.error("design.bore-too-shallow", where, mm(depth), mm(ball.dome_m())));
    }
  }

  private static List<Problem> surface(Design design, Where where) {
    BallDesign ball = design.ball();
    Coat coat = ball.coat();
    String metal = ball.metal().label().name();
    List<Problem> all = new ArrayList<>();
    if (!coat.suits(ball.metal())) {
      all.add(
          Problem.error(
              "design.coat-of-another-metal",
              where.atColumn("ball.coat"),
              coat.label().name(),
              metal));
    }
    boolean plated = coat.kind() == Coat.Kind.PLATED;
    if (ball.plating().isPresent() && !plated) {
      all.add(
          Problem.error(
              "design.plating-without-coat", where.atColumn("ball.plating"), coat.label().name()));
    }
    boolean atHome = ball.plating().filter(p -> p.by() == PlatingPlan.By.HOME).isPresent();
    Metal.FirstBath first = ball.metal().firstBath();
    if (plated && first == Metal.FirstBath.NONE) {
      all.add(Problem.error("design.cannot-be-plated", where.atColumn("ball.coat"), metal));
    } else if (atHome && first == Metal.FirstBath.ZINCATE) {
      all.add(Problem.error("design.zincate-at-home", where.atColumn("ball.plating.by"), metal));
    }
    return all;
  }

  private static List<Problem> speeds(Design design, Where where) {
    Use use = design.use();
    List<Problem> all = new ArrayList<>();
    if (use.slowest_m_s() >= use.fastest_m_s()) {
      all.add(
          Problem.error(
              "design.speeds-reversed",
              where.atColumn("use.slowest_m_s"),
              Numerals.digits(use.slowest_m_s()),
              Numerals.digits(use.fastest_m_s())));
    }
    double nu = AirProperties.of(design.air()).kinematicViscosity_m2_s();
    double most = FASTEST_RE * nu / design.ball().diameter_m().high();
    if (use.fastest_m_s() > most) {
      all.add(
          Problem.error(
              "design.speed-outside",
              where.atColumn("use.fastest_m_s"),
              Numerals.digits(use.fastest_m_s()),
              Numerals.digits(most)));
    }
    return all;
  }

  private static List<Problem> source(SupplyDesign supply, Where where) {
    boolean mains = supply.regulator().kind() == SupplyDesign.Kind.MAINS;
    return mains && supply.battery().isPresent()
        ? List.of(
            Problem.error(
                "design.mains-with-battery",
                where.atColumn("supply.battery"),
                supply.battery().get().label().name()))
        : List.of();
  }

  private static String mm(double length_m) {
    return Numerals.digits(1e3 * length_m);
  }
}
