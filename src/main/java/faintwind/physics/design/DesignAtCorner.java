package faintwind.physics.design;

import faintwind.physics.Ball;
import faintwind.physics.BallPair;
import faintwind.physics.HeatBalance;
import faintwind.physics.Interval;
import faintwind.physics.LeadWire;
import faintwind.physics.ModelForm;
import faintwind.physics.Ranged;
import faintwind.physics.design.Corner.Part;
import faintwind.physics.part.ThermocoupleType;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A design at one corner of its tolerances, as something that heats and cools. */
public final class DesignAtCorner {
  /**
   * Five published forced-convection results lie up to 11 % apart from end to end at one Reynolds
   * number (own comparison); a ball with holes and wires is no smooth sphere.
   */
  private static final Interval CONVECTION = Interval.share(1, 0.12);

  /** Exponents in use for forced and natural convection together (Incropera §9.9: 3 to 4). */
  private static final Interval MIXING = new Interval(2.5, 3, 4);

  /** Cylinder formulas for thin wires are good to about a fifth (Incropera §7.4). */
  private static final Interval WIRE = Interval.share(1, 0.2);

  /** Tolerance class 2, the part that rises with temperature (IEC 60584-1:2013, from memory). */
  private static final double BASE_METAL_CLASS_2 = 0.0075;

  private static final double PLATINUM_CLASS_2 = 0.0025;

  private final Design design;
  private final Corner corner;
  private final HotResistor resistor;
  private final HeatBalance balance;
  private final Room room;

  /**
   * The design at a corner.
   *
   * @param design the design
   * @param corner the corner
   * @param air a balance in the design's air, whose film is shared
   */
  public DesignAtCorner(Design design, Corner corner, HeatBalance air) {
    this.design = design;
    this.corner = corner;
    this.resistor =
        new HotResistor(
            corner.of(Part.RESISTOR, design.heater().resistance_ohm()),
            corner.of(Part.TEMPCO, design.heater().style().tempco_1_K()),
            corner.of(Part.SUPPLY, design.supply().voltage_V()),
            design.supply().cable().map(c -> corner.of(Part.CABLE, c.loop_ohm())).orElse(0.0),
            HotResistor.epoxy_K_W(design));
    ModelForm form =
        new ModelForm(
            corner.of(Part.CONVECTION, CONVECTION),
            corner.of(Part.MIXING, MIXING),
            corner.of(Part.WIRE, WIRE));
    this.balance = air.with(pair(design, corner)).with(form);
    this.room = Room.at(corner);
  }

  private DesignAtCorner(DesignAtCorner other, HeatBalance balance) {
    this.design = other.design;
    this.corner = other.corner;
    this.resistor = other.resistor;
    this.balance = balance;
    this.room = other.room;
  }

  /** The same instrument if no wire took any heat. */
  DesignAtCorner withoutLeads() {
    return new DesignAtCorner(
        this,
        balance.with(
            new BallPair(bare(balance.pair().heated()), bare(balance.pair().reference()))));
  }

  private static Ball bare(Ball ball) {
    return new Ball(ball.diameter_m(), ball.heatCapacity_J_K(), ball.emissivity(), List.of());
  }

  /** A balance in the design's air, to share between its corners. */
  public static HeatBalance air(Design design) {
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
        new LeadWire(d, covered, sense.lengths().free_m(), alloys.positive().conductivity_W_mK()),
        new LeadWire(d, covered, sense.lengths().free_m(), alloys.negative().conductivity_W_mK()));
  }

  public HeatBalance balance() {
    return balance;
  }

  /** What the room does to it. */
  Room room() {
    return room;
  }

  /** The resistor as it heats. */
  HotResistor resistor() {
    return resistor;
  }

  /** Heater power in still air, W: (V/(R + cable))²·R, R at the temperature inside the ball. */
  public double power_W() {
    return power_W(0);
  }

  /** Heater power at equilibrium, W, at an air speed, m/s. */
  public double power_W(double speed_m_s) {
    return resistor.power_W(balance.air_K() + delta_K(speed_m_s));
  }

  /** Heater power at the moment of switching on, W: everything at the air's temperature. */
  public double firstPower_W() {
    return resistor.power_W(balance.air_K());
  }

  /** Temperature of the resistor's body in still air, K. */
  public double body_K() {
    return resistor.body_K(balance.air_K() + delta_K(0));
  }

  /** Delta at equilibrium, K: the reference ball is at the air's temperature. */
  public double delta_K(double speed_m_s) {
    double air_K = balance.air_K();
    return balance.excess_K(
        balance.pair().heated(), excess_K -> resistor.power_W(air_K + excess_K), speed_m_s);
  }

  /** What more heat than the heater's own adds to the heated ball in still air, K. */
  public double warmedBy_K(double more_W) {
    double air_K = balance.air_K();
    double warmer =
        balance.excess_K(
            balance.pair().heated(), excess_K -> more_W + resistor.power_W(air_K + excess_K), 0);
    return warmer - delta_K(0);
  }

  /** Delta at equilibrium, K, with the ranges left. */
  public Ranged ranged_K(double speed_m_s) {
    double delta = delta_K(speed_m_s);
    return new Ranged(delta, balance.nusselt(balance.pair().heated(), delta, speed_m_s).left());
  }

  /** Time constant C/G at equilibrium, s. */
  public double timeConstant_s(double speed_m_s) {
    double delta = delta_K(speed_m_s);
    double conductance = resistor.power_W(balance.air_K() + delta) / delta;
    return balance.pair().heated().heatCapacity_J_K() / conductance;
  }

  /** Heat taken by the leads of the heated ball, W/K. */
  public double leads_W_K(double speed_m_s) {
    return balance.leads_W_K(balance.pair().heated(), delta_K(speed_m_s), speed_m_s);
  }

  /**
   * Signal before the amplifier, V, for a delta: the reference ball is at the air's temperature.
   */
  public double signal_V(double delta_K) {
    double air_K = balance.air_K();
    return corner.of(Part.THERMOCOUPLE, slope())
        * design.sense().type().function().differential_V(air_K + delta_K, air_K);
  }

  private Interval slope() {
    boolean platinum = "RS".contains(design.sense().type().function().letter());
    return Interval.share(1, platinum ? PLATINUM_CLASS_2 : BASE_METAL_CLASS_2);
  }

  /** Slope of delta against speed, K/(m/s), by central difference. */
  double slope_K_per_m_s(double speed_m_s) {
    double step = Math.max(1e-3, 0.01 * speed_m_s);
    double low = Math.max(0, speed_m_s - step);
    return (delta_K(speed_m_s + step) - delta_K(low)) / (speed_m_s + step - low);
  }
}
