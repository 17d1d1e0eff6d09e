package faintwind.physics.advice;

import faintwind.message.Numerals;
import faintwind.physics.advice.PartNeed.Kind;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.design.HeaterDesign;
import faintwind.physics.design.SenseDesign;
import faintwind.physics.design.SupplyDesign;
import faintwind.physics.part.Coat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Everything that has to be at hand for a design. Spares are common practice, no source: one in
 * four of what is easily spoilt, at least one ball and two resistors; a ball for practice; a
 * quarter more wire, of thermocouple wire at least enough for two junctions that fail; a second
 * drill. Two balls of each instrument are plated; the others stay bare.
 */
public final class PartsNeeded {
  private static final double SPARE_SHARE = 0.25;

  private static final double SPARE_RESISTORS = 2;

  /** For everybody who builds: the drill is tried on it, and it never becomes an instrument. */
  private static final double PRACTICE_BALLS = 1;

  /** What each lead is cut longer for its joint and its bare end, m. */
  private static final double LEAD_ENDS_M = 0.03;

  /** Two junctions that fail: 50 mm of each conductor at each, and as much to hold, m. */
  private static final double FAILED_M = 0.2;

  private PartsNeeded() {}

  /**
   * The parts, in the order of {@link Kind}.
   *
   * @param instruments how many are to be built, 1 or more
   */
  public static List<PartNeed> of(Design design, int instruments) {
    if (instruments < 1) {
      throw new IllegalArgumentException("instruments = " + instruments + ", at least 1");
    }
    List<PartNeed> all = new ArrayList<>();
    all.addAll(balls(design.ball(), instruments));
    HeaterDesign heater = design.heater();
    String resistor = "resistor-" + heater.style().label().id();
    double spare = Math.max(SPARE_RESISTORS, Math.ceil(SPARE_SHARE * instruments));
    all.add(new PartNeed(Kind.RESISTOR, resistor, instruments, spare));
    double lead_m = 2 * (heater.leadLength_m() + LEAD_ENDS_M) * instruments;
    all.add(metres(Kind.LEAD, "lead-" + heater.leads().label().id(), lead_m));
    SenseDesign sense = design.sense();
    String wire = "thermocouple-" + sense.type().label().id() + "-" + sense.gauge().awg() + "awg";
    double loop_m = sense.lengths().pair_m() * instruments;
    double failed_m = Math.max(SPARE_SHARE * loop_m, FAILED_M * instruments);
    all.add(new PartNeed(Kind.THERMOCOUPLE, wire, loop_m, failed_m));
    double packs = Math.ceil(instruments / (double) Workshop.INSTRUMENTS_A_PACK);
    all.add(new PartNeed(Kind.VARNISH, "varnish", packs, 0));
    all.add(new PartNeed(Kind.EPOXY, "epoxy", packs, 0));
    all.addAll(supply(design.supply(), instruments));
    all.add(new PartNeed(Kind.LOGGER, "logger-" + sense.logger().label().id(), instruments, 0));
    all.addAll(Workshop.of(instruments, design.ball().coat().kind() == Coat.Kind.PLATED));
    return List.copyOf(all);
  }

  private static List<PartNeed> balls(BallDesign ball, int instruments) {
    List<PartNeed> all = new ArrayList<>();
    String size = mm(ball.diameter_m().nominal());
    String blank = "ball-" + ball.metal().label().id() + "-" + size;
    double two = 2.0 * instruments;
    double more = PRACTICE_BALLS + Math.ceil(SPARE_SHARE * two);
    PartNeed balls = new PartNeed(Kind.BALL, blank, two, more);
    all.add(balls);
    String coat = ball.coat().label().id();
    if (ball.coat().kind() == Coat.Kind.PLATED) {
      all.add(new PartNeed(Kind.PLATING, "plating-" + coat, balls.needed(), 0));
    } else if (ball.coat().kind() != Coat.Kind.BARE) {
      double packs = Math.ceil(instruments / (double) Workshop.INSTRUMENTS_A_PACK);
      all.add(new PartNeed(Kind.PAINT, "surface-" + coat, packs, 0));
    }
    all.add(new PartNeed(Kind.DRILL, "drill-" + mm(ball.bore().diameter_m()), 1, 1));
    return all;
  }

  private static List<PartNeed> supply(SupplyDesign supply, int instruments) {
    List<PartNeed> all = new ArrayList<>();
    String kind = supply.regulator().kind().name().toLowerCase(Locale.ROOT);
    all.add(new PartNeed(Kind.SUPPLY, "supply-" + kind, instruments, 0));
    supply
        .battery()
        .ifPresent(b -> all.add(pieces(Kind.BATTERY, "battery-" + b.label().id(), instruments)));
    supply
        .cable()
        .ifPresent(
            c ->
                all.add(
                    metres(
                        Kind.CABLE,
                        "cable-" + c.conductor().label().id(),
                        c.length_m() * instruments)));
    return all;
  }

  private static PartNeed pieces(Kind kind, String key, double needed) {
    return new PartNeed(kind, key, needed, Math.ceil(SPARE_SHARE * needed));
  }

  private static PartNeed metres(Kind kind, String key, double needed) {
    return new PartNeed(kind, key, needed, SPARE_SHARE * needed);
  }

  private static String mm(double length_m) {
    return Numerals.digits(1e3 * length_m) + "mm";
  }
}
