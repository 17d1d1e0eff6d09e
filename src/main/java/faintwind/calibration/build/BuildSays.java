package faintwind.calibration.build;

import faintwind.calibration.BuildQuantity;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.Uncertain;
import faintwind.physics.AirState;
import faintwind.physics.Ball;
import faintwind.physics.BallPair;
import faintwind.physics.HeatBalance;
import faintwind.physics.ModelForm;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the record of a build says its runs must show: P = V²/R, C by {@link BuiltHeat}, and the
 * still-air difference at which P = Δ · (convection + radiation + leads) by {@link HeatBalance}.
 * All in logarithms, each with its change with every part, so that uncertainties of parts combine
 * in quadrature and what two numbers share is known (JCGM 100:2008, 5.1.2 and F.1.2.3).
 */
public final class BuildSays {
  /** Standard uncertainty of the logarithm of what is not known at all. */
  static final double UNKNOWN = 1e3;

  /**
   * Usual time in which a resistor warms a ball through its glue, s (common practice, no source).
   */
  private static final double GLUE_S = 10;

  private static final double USUAL_EMISSIVITY = 0.1;

  private static final double STEP = 0.02;

  private final Map<BuildPart, Double> nominal;
  private final Map<BuildPart, Double> u;
  private final AirState air;
  private final Map<BuildQuantity, Double> values;
  private final Map<BuildPart, Map<BuildQuantity, Double>> slopes = new EnumMap<>(BuildPart.class);

  private BuildSays(Map<BuildPart, Double> nominal, Map<BuildPart, Double> u, AirState air) {
    this.nominal = nominal;
    this.u = u;
    this.air = air;
    this.values = at(Map.of());
    for (BuildPart part : BuildPart.values()) {
      Map<BuildQuantity, Double> up = at(Map.of(part, STEP));
      Map<BuildQuantity, Double> down = at(Map.of(part, -STEP));
      Map<BuildQuantity, Double> slope = new EnumMap<>(BuildQuantity.class);
      up.forEach(
          (quantity, value) -> slope.put(quantity, (value - get(down, quantity)) / 2 / STEP));
      slopes.put(part, slope);
    }
  }

  /**
   * What a record says.
   *
   * @param build what is on record
   * @param supply_V mean supply in the recordings, where they carry one: it counts before the
   *     record's
   * @param air of the runs
   * @param scale kelvin of the fit for a kelvin of the build; where empty, only numbers free of it
   *     can be compared
   * @return empty where the record does not name ball, mass, metal, resistor and supply
   */
  public static Optional<BuildSays> of(
      BuildFacts build, OptionalDouble supply_V, AirState air, OptionalDouble scale) {
    Optional<Uncertain> supply =
        supply_V.isPresent()
            ? Optional.of(Uncertain.of(supply_V.getAsDouble(), 0.004 * supply_V.getAsDouble()))
            : build.supply_V();
    if (build.diameter_m().isEmpty()
        || build.heatedMass_kg().isEmpty()
        || build.specificHeat_J_kgK().isEmpty()
        || build.heater_ohm().isEmpty()
        || supply.isEmpty()
        || build.wires().leadLoss_W_K().isEmpty()) {
      return Optional.empty();
    }
    Map<BuildPart, Double> nominal = new EnumMap<>(BuildPart.class);
    Map<BuildPart, Double> u = new EnumMap<>(BuildPart.class);
    for (BuildPart part : BuildPart.values()) {
      u.put(part, part.usual());
    }
    put(BuildPart.SUPPLY, supply.get(), nominal, u);
    put(BuildPart.RESISTOR, build.heater_ohm().get(), nominal, u);
    put(BuildPart.MASS, build.heatedMass_kg().get(), nominal, u);
    put(BuildPart.SPECIFIC_HEAT, build.specificHeat_J_kgK().get(), nominal, u);
    put(BuildPart.DIAMETER, build.diameter_m().get(), nominal, u);
    put(BuildPart.LEADS, build.wires().leadLoss_W_K().get(), nominal, u);
    put(
        BuildPart.EMISSIVITY,
        build.emissivity().orElse(Uncertain.of(USUAL_EMISSIVITY)),
        nominal,
        u);
    nominal.put(BuildPart.FILLING, BuiltHeat.FILLED);
    nominal.put(BuildPart.CONVECTION, 1.0);
    nominal.put(BuildPart.SCALE, scale.orElse(1));
    nominal.put(BuildPart.GLUE, GLUE_S);
    if (scale.isEmpty()) {
      u.put(BuildPart.SCALE, UNKNOWN);
    }
    return Optional.of(new BuildSays(nominal, u, air));
  }

  private static void put(
      BuildPart part, Uncertain fact, Map<BuildPart, Double> nominal, Map<BuildPart, Double> u) {
    nominal.put(part, fact.value());
    u.put(part, BuiltHeat.relative(fact, part.usual()));
  }

  /** Logarithms of the quantities where parts are off by these logarithms. */
  private Map<BuildQuantity, Double> at(Map<BuildPart, Double> off) {
    Map<BuildPart, Double> x = new EnumMap<>(BuildPart.class);
    nominal.forEach((part, value) -> x.put(part, value * Math.exp(off.getOrDefault(part, 0.0))));
    double power_W =
        get(x, BuildPart.SUPPLY) * get(x, BuildPart.SUPPLY) / get(x, BuildPart.RESISTOR);
    double capacity_J_K =
        get(x, BuildPart.FILLING) * get(x, BuildPart.MASS) * get(x, BuildPart.SPECIFIC_HEAT);
    double leads_W_K = get(x, BuildPart.LEADS);
    Ball ball =
        new Ball(
            get(x, BuildPart.DIAMETER),
            capacity_J_K,
            Math.min(1, get(x, BuildPart.EMISSIVITY)),
            List.of());
    HeatBalance balance =
        new HeatBalance(BallPair.equal(ball), air)
            .with(new ModelForm(get(x, BuildPart.CONVECTION), 3, 1));
    double still_K = balance.excess_K(ball, delta_K -> power_W - leads_W_K * delta_K, 0);
    double scale = Math.log(get(x, BuildPart.SCALE));
    Map<BuildQuantity, Double> logs = new EnumMap<>(BuildQuantity.class);
    logs.put(BuildQuantity.HEATING, Math.log(power_W / capacity_J_K) + scale);
    logs.put(BuildQuantity.STILL, Math.log(still_K) + scale);
    logs.put(BuildQuantity.TIME_CONSTANT, Math.log(still_K * capacity_J_K / power_W));
    logs.put(BuildQuantity.LEAD_SHARE, Math.log(leads_W_K * still_K / power_W));
    logs.put(BuildQuantity.GLUE_TIME, Math.log(get(x, BuildPart.GLUE)));
    return logs;
  }

  /** Kelvin of the fit for a kelvin of the build. */
  double scale() {
    return get(nominal, BuildPart.SCALE);
  }

  /** Logarithm of what is expected. */
  double log(BuildQuantity quantity) {
    return get(values, quantity);
  }

  /** Covariance of two expected logarithms. */
  double covariance(BuildQuantity one, BuildQuantity other) {
    double sum = 0;
    for (BuildPart part : BuildPart.values()) {
      double each = get(u, part);
      sum += slope(part, one) * slope(part, other) * each * each;
    }
    return sum;
  }

  /** Change of the logarithm of a quantity with that of a part. */
  double slope(BuildPart part, BuildQuantity quantity) {
    return get(get(slopes, part), quantity);
  }

  private static <K, V> V get(Map<K, V> map, K key) {
    V value = map.get(key);
    if (value == null) {
      throw new IllegalArgumentException(key + " is not among " + map.keySet());
    }
    return value;
  }
}
