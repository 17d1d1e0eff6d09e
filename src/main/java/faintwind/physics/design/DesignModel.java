package faintwind.physics.design;

import faintwind.physics.Ball;
import faintwind.physics.BallPair;
import faintwind.physics.HeatBalance;
import faintwind.physics.Heating;
import faintwind.physics.LeadWire;
import faintwind.physics.Ranged;
import faintwind.physics.design.Corner.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A design at one corner of its tolerances, as something that heats and cools. */
public final class DesignModel {
  /** Published forced-convection results lie up to 11 % apart from end to end. */
  private static final Interval CONVECTION = Interval.share(1, 0.055);

  /** Slope of a pair cut from one reel: 0.4–0.75 % (common practice, no source). */
  private static final Interval SLOPE = Interval.share(1, 0.0075);

  private final Design design;
  private final Corner corner;
  private final double power_W;
  private final HeatBalance balance;

  /**
   * The design at a corner.
   *
   * @param design the design
   * @param corner the corner
   * @param air a balance in the design's air, whose film is shared
   */
  DesignModel(Design design, Corner corner, HeatBalance air) {
    this.design = design;
    this.corner = corner;
    double v = corner.of(Part.SUPPLY, design.supply().voltage_V());
    double current_A = v / (heater_ohm() + cable_ohm());
    this.power_W = current_A * current_A * heater_ohm();
    this.balance =
        air.with(pair(design, corner)).withConvection(corner.of(Part.CONVECTION, CONVECTION));
  }

  /** A balance in the design's air, to share between its corners. */
  static HeatBalance air(Design design) {
    return new HeatBalance(pair(design, Corner.NOMINAL), design.air());
  }

  private static BallPair pair(Design design, Corner corner) {
    BallDesign.Bore bore = design.ball().bore();
    List<LeadWire> sense = senseLeads(design.sense());
    List<LeadWire> all = new ArrayList<>(sense);
    LeadWire heater = design.heater().leads().lead(design.heater().leadLength_m());
    all.add(heater);
    all.add(heater);
    return new BallPair(
        ball(design, corner, bore.heatedDepth_m(), all),
        ball(design, corner, bore.referenceDepth_m(), sense));
  }

  private static Ball ball(
      Design design, Corner corner, OptionalDouble depth_m, List<LeadWire> leads) {
    BallDesign b = design.ball();
    double d = corner.of(Part.DIAMETER, b.diameter_m());
    double c = corner.of(Part.SPECIFIC_HEAT, b.metal().specificHeat_J_kgK());
    double capacity = b.heatCapacity_J_K(depth_m, new BallDesign.Sizes(d, c));
    return new Ball(d, capacity, corner.of(Part.EMISSIVITY, b.coat().emissivity()), leads);
  }

  private static List<LeadWire> senseLeads(SenseDesign sense) {
    double d = sense.gauge().diameter_m();
    double covered = d + 0.1e-3; // thin lacquer or glass covering, common practice, no source
    ThermocoupleType.Alloys alloys = sense.type().alloys();
    return List.of(
        new LeadWire(d, covered, sense.freeLength_m(), alloys.positive().conductivity_W_mK()),
        new LeadWire(d, covered, sense.freeLength_m(), alloys.negative().conductivity_W_mK()));
  }

  public HeatBalance balance() {
    return balance;
  }

  /** Heater power, W: (V/(R + cable))²·R. */
  public double power_W() {
    return power_W;
  }

  private double heater_ohm() {
    return corner.of(Part.RESISTOR, design.heater().resistance_ohm());
  }

  private double cable_ohm() {
    return design.supply().cable().map(c -> corner.of(Part.CABLE, c.loop_ohm())).orElse(0.0);
  }

  /** Delta at equilibrium, K. */
  public double delta_K(double speed_m_s) {
    return ranged_K(speed_m_s).value();
  }

  /** Delta at equilibrium, K, with the ranges left. */
  Ranged ranged_K(double speed_m_s) {
    return balance.delta_K(Heating.heater(power_W), speed_m_s);
  }

  /** Time constant C/G at equilibrium, s. */
  public double timeConstant_s(double speed_m_s) {
    return balance.timeConstant_s(power_W, speed_m_s);
  }

  /** Heat taken by the leads of the heated ball, W/K. */
  double leads_W_K(double speed_m_s) {
    return balance.leads_W_K(balance.pair().heated(), delta_K(speed_m_s), speed_m_s);
  }

  /**
   * Signal before the amplifier, V, for a delta: the reference ball is at the air's temperature.
   */
  public double signal_V(double delta_K) {
    double air_K = balance.air_K();
    return corner.of(Part.THERMOCOUPLE, SLOPE)
        * design.sense().type().function().differential_V(air_K + delta_K, air_K);
  }

  /** Slope of delta against speed, K/(m/s), by central difference. */
  double slope_K_per_m_s(double speed_m_s) {
    double step = Math.max(1e-3, 0.01 * speed_m_s);
    double low = Math.max(0, speed_m_s - step);
    return (delta_K(speed_m_s + step) - delta_K(low)) / (speed_m_s + step - low);
  }
}
