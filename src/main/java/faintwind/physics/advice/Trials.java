package faintwind.physics.advice;

import faintwind.message.Numerals;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.BoreFit;
import faintwind.physics.design.Corner;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignAtCorner;
import faintwind.physics.design.Detection;
import faintwind.physics.design.HeaterDesign;
import faintwind.physics.design.SenseDesign;
import faintwind.physics.design.Spread;
import faintwind.physics.design.SunLoad;
import faintwind.physics.design.TouchLimit;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Coat;
import faintwind.physics.part.ESeries;
import faintwind.physics.part.Metal;
import faintwind.physics.part.ResistorStyle;
import faintwind.physics.part.ThermocoupleType;
import faintwind.physics.part.Wire;
import faintwind.physics.plating.PlatingPlan;
import faintwind.physics.sheet.TouchSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** All combinations of parts that answer a wish and are safe. */
final class Trials {
  private static final List<Double> DIAMETERS_M = List.of(0.009525, 0.0127, 0.015875, 0.01905);
  private static final List<Double> POWERS_W = List.of(0.03, 0.06, 0.1, 0.15, 0.2, 0.25, 0.35, 0.5);
  private static final List<String> TYPES = List.of("E", "K", "T");
  private static final int THERMOCOUPLE_AWG = 36;
  private static final String LEADS = "copper-36awg";

  /** What makes a ball hotter. */
  private static final List<Corner.Part> HOTTER =
      List.of(
          Corner.Part.SUPPLY,
          Corner.Part.RESISTOR,
          Corner.Part.TEMPCO,
          Corner.Part.CONVECTION,
          Corner.Part.EMISSIVITY,
          Corner.Part.DIAMETER,
          Corner.Part.WIRE);

  private final Wish wish;
  private final Catalogue catalogue;
  private final List<Trial> trials = new ArrayList<>();

  private Trials(Wish wish, Catalogue catalogue) {
    this.wish = wish;
    this.catalogue = catalogue;
  }

  static List<Trial> of(Wish wish, Catalogue catalogue) {
    Trials all = new Trials(wish, catalogue);
    for (Metal metal : catalogue.metals()) {
      for (Coat coat : catalogue.coats()) {
        if (all.allowed(coat, metal)) {
          DIAMETERS_M.forEach(d -> all.sizes(metal, coat, d));
        }
      }
    }
    return all.trials;
  }

  private boolean allowed(Coat coat, Metal metal) {
    boolean plater = wish.spend() == Wish.Spend.SOME && metal.firstBath() != Metal.FirstBath.NONE;
    boolean sunny = wish.use().isSunny();
    // out of the sun a bare polished ball does all that another surface would
    boolean useful = sunny || (coat.kind() == Coat.Kind.BARE && coat.emissivity().high() < 0.3);
    return coat.suits(metal) && useful && (coat.kind() != Coat.Kind.PLATED || plater);
  }

  private void sizes(Metal metal, Coat coat, double d) {
    double v = wish.atHand().supply().voltage_V().nominal();
    TreeSet<Double> ohms = new TreeSet<>();
    POWERS_W.forEach(p -> ohms.add(ESeries.E24.nearest_ohm(v * v / p)));
    for (double ohm : ohms) {
      for (String type : TYPES) {
        heater(ohm)
            .flatMap(h -> design(metal, coat, d, new Inside(h, type)))
            .ifPresent(this::tryOut);
      }
    }
  }

  private record Inside(HeaterDesign heater, String type) {}

  /** The thinnest resistor with leads whose rating, halved by heat, still does. */
  private Optional<HeaterDesign> heater(double ohm) {
    double v = wish.atHand().supply().voltage_V().high();
    double needed_W = 1.25 * v * v / ohm;
    Optional<ResistorStyle> style =
        catalogue.resistors().stream()
            .filter(s -> s.body().lead_m() > 0 && s.rating_W() >= needed_W)
            .filter(s -> s.tempco_1_K().low() > -2e-4)
            .min(Comparator.comparingDouble(s -> s.body().diameter_m().high()));
    Optional<Wire> leads = catalogue.wire(LEADS);
    if (style.isEmpty() || leads.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new HeaterDesign(
            ESeries.E24,
            OptionalDouble.empty(),
            Interval.share(ohm, 0.01),
            style.get(),
            leads.get(),
            0.06,
            5e-5));
  }

  private Optional<Design> design(Metal metal, Coat coat, double d, Inside inside) {
    Optional<ThermocoupleType> type = catalogue.thermocouple(inside.type());
    Optional<ThermocoupleType.Gauge> gauge = type.flatMap(t -> t.gauge(THERMOCOUPLE_AWG));
    if (gauge.isEmpty()) {
      return Optional.empty();
    }
    double bore = Math.ceil(BoreFit.needed_m(inside.heater(), gauge.get()).high() * 1e4 + 1) * 1e-4;
    boolean goesIn = bore < 0.4 * d && BoreFit.length_m(inside.heater()) <= d;
    if (!goesIn) {
      return Optional.empty();
    }
    Optional<PlatingPlan> plating =
        coat.kind() == Coat.Kind.PLATED ? Optional.of(plater(coat)) : Optional.empty();
    Wish.AtHand atHand = wish.atHand();
    Interval size = new Interval(d - 5e-5, d, d + 5e-5);
    double tenths = Math.round(7500 * d) * 1e-4;
    var holes = new BallDesign.Bore(bore, OptionalDouble.empty(), OptionalDouble.of(tenths));
    BallDesign ball = new BallDesign(metal, coat, size, holes, plating);
    String inches = ball.inches().map(i -> " (" + i + " in)").orElse("");
    return Optional.of(
        new Design(
            metal.label().name() + " " + Numerals.digits(1e3 * d) + " mm" + inches,
            ball,
            inside.heater(),
            atHand.supply(),
            new SenseDesign(
                type.orElseThrow(),
                gauge.get(),
                new SenseDesign.Lengths(0.08, 0.5, 0.15),
                atHand.logger(),
                atHand.gain(),
                atHand.averaging_s()),
            wish.air(),
            wish.use()));
  }

  private static PlatingPlan plater(Coat coat) {
    boolean gold = coat.label().id().contains("gold");
    return new PlatingPlan(
        PlatingPlan.By.PLATER,
        new PlatingPlan.Layer(5e-6, 100),
        new PlatingPlan.Layer(gold ? 5e-7 : 0, 30),
        30);
  }

  private void tryOut(Design design) {
    Spread hotter = new Spread(design, HOTTER);
    DesignAtCorner model = hotter.nominal();
    double still = model.delta_K(0);
    double hottest_K = hotter.of(m -> m.delta_K(0)).high();
    double sun_K = wish.use().isSunny() ? TouchSheet.sunlit_K(design, model).high() : 0;
    double hottest_C = wish.air().temperature_K() - Constants.ZERO_C_K + hottest_K + sun_K;
    double signal_V = design.sense().gain() * model.signal_V(hottest_K);
    boolean safe = hottest_C <= TouchLimit.temperature_C(wish.use());
    if (!safe || signal_V > design.sense().logger().high_V()) {
      return;
    }
    Detection detection = new Detection(design.sense(), model);
    double sun = wish.use().isSunny() ? sunShare(design, model) : 0;
    trials.add(
        new Trial(
            design,
            Detection.range_m_s(design).high(),
            model.timeConstant_s(1),
            still,
            detection.betweenBallsShare(1) + 2 * sun,
            model.leads_W_K(0) * still / model.power_W()));
  }

  private static double sunShare(Design design, DesignAtCorner model) {
    Interval alpha = design.ball().coat().solarAbsorptance();
    double d = design.ball().diameter_m().nominal();
    return SunLoad.absorbed_W(alpha, SunLoad.FULL_SUN_W_M2, d).nominal() / model.power_W();
  }
}
