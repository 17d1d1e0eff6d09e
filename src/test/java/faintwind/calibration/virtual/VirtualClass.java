package faintwind.calibration.virtual;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.virtual.VirtualPlan.Spin;
import faintwind.calibration.virtual.VirtualPlan.Way;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * A made-up class: pairs of one design, made by different hands, turned one after the other on one
 * arm in one room. Design, arm and room come from one draw, what each hand does differently from
 * others (ranges are own choices, no source).
 */
public final class VirtualClass {
  private static final List<List<Double>> LESSONS =
      List.of(List.of(0.2, 0.8, 2.4), List.of(0.3, 1.0, 3.0), List.of(0.15, 0.6, 2.0));

  private final VirtualBuild design;
  private final RandomGenerator hands;

  private VirtualClass(long seed) {
    design = VirtualDraw.build(seed);
    hands = new Well19937c(seed * 7919 + 17);
  }

  /** What may be wrong with one pair. */
  public enum Fault {
    NONE("none"),
    /** A coat of dust keeps a quarter of the moved air's cooling away. */
    FOULED("fouled ball"),
    /** Every radius was taken to the end of the arm, not to the ball. */
    RADIUS("radii 40 % too large"),
    /** Leads that touch something warm-conducting. */
    LEADS("leads that touch the holder");

    private static final double DUST = 0.75;
    private static final double TOO_FAR = 1.4;
    private static final double TOUCHING = 4;

    private final String said;

    Fault(String said) {
      this.said = said;
    }

    /** In each fourth class, one after the other. */
    public static Fault inTurn(long seed) {
      return seed % 4 == 1 ? values()[1 + (int) (seed / 4 % 3)] : NONE;
    }

    public String said() {
      return said;
    }

    /** A build with the fault, where it is one of the build. */
    public VirtualBuild in(VirtualBuild build) {
      VirtualBall ball = build.heated();
      VirtualConvection c = ball.convection();
      return switch (this) {
        case NONE, RADIUS -> build;
        case FOULED ->
            with(
                build,
                ball.leads_W_K(),
                new VirtualConvection(DUST * c.forced(), DUST * c.natural(), c.tilt(), c.mixing()));
        case LEADS -> with(build, TOUCHING * ball.leads_W_K(), c);
      };
    }

    private static VirtualBuild with(
        VirtualBuild build, double leads_W_K, VirtualConvection convection) {
      VirtualBall ball = build.heated();
      VirtualBall other =
          new VirtualBall(
              ball.diameter_m(), ball.capacity_J_K(), ball.emissivity(), leads_W_K, convection);
      return new VirtualBuild(
          other, build.reference(), build.heater(), build.chain(), build.arm(), build.room());
    }

    /** A session with the fault, where it is one of the runs table. */
    public RunSet in(RunSet set) {
      return this == RADIUS ? set.with(set.runs().stream().map(Fault::tooFar).toList()) : set;
    }

    private static Run tooFar(Run run) {
      return run.arm().map(arm -> run.turned(tooFar(arm))).orElse(run);
    }

    private static ArmTurning tooFar(ArmTurning arm) {
      double radius_m = TOO_FAR * arm.radius_m().value();
      return new ArmTurning(
          Uncertain.of(radius_m, arm.radius_m().u().orElse(0.001)),
          arm.turns(),
          arm.turnsTime_s(),
          arm.spinStart_s(),
          arm.spinStop_s(),
          arm.swirlShare(),
          arm.firstClick_s());
    }
  }

  /** So many pairs of a class. */
  public static List<VirtualBuild> pairs(long seed, int count) {
    VirtualClass drawn = new VirtualClass(seed);
    List<VirtualBuild> pairs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pairs.add(drawn.pair());
    }
    return pairs;
  }

  /**
   * What a pair does in one lesson: three speeds, half an hour of turning in all, the direction
   * changed from spin to spin. Pairs in turn take other speeds, so that the class covers the range
   * together. The heater is on and the logger runs from half an hour before.
   */
  public static VirtualPlan lesson(int pair) {
    List<Spin> spins = new ArrayList<>();
    boolean clockwise = pair % 2 == 0;
    for (double speed_m_s : LESSONS.get(pair % LESSONS.size())) {
      double radius_m = speed_m_s < 0.5 ? 0.3 : speed_m_s < 2 ? 0.6 : 0.9;
      spins.add(new Spin(speed_m_s, radius_m, clockwise ? Direction.CW : Direction.CCW));
      clockwise = !clockwise;
    }
    return new VirtualPlan(spins, Way.STAIRCASE, 300, 1800, 150);
  }

  private VirtualBuild pair() {
    VirtualConvection shape = design.heated().convection();
    double scale = near(0.03);
    VirtualConvection own =
        new VirtualConvection(
            shape.forced() * scale,
            shape.natural() * scale * near(0.01),
            shape.tilt() + 0.002 * gauss(),
            shape.mixing() * near(0.01));
    double leads_W_K = design.heated().leads_W_K() * near(0.15);
    VirtualBall heated = ball(design.heated(), leads_W_K, own);
    VirtualBall reference =
        ball(
            design.reference(),
            leads_W_K * design.reference().leads_W_K() / design.heated().leads_W_K() * near(0.1),
            own);
    VirtualHeater heater =
        new VirtualHeater(
            design.heater().resistance_ohm() * near(0.007),
            design.heater().supply_V() * near(0.005),
            -0.004 + 0.008 * hands.nextDouble(),
            design.heater().node_J_K() * near(0.15),
            design.heater().link_W_K() * near(0.15));
    VirtualChain chain = design.chain();
    VirtualChain read =
        new VirtualChain(
            chain.unit(),
            chain.wire(),
            chain.scale() * near(0.005),
            chain.scale() * 0.15 * gauss(),
            chain.reading(),
            chain.bead_s() * near(0.2));
    return new VirtualBuild(heated, reference, heater, read, design.arm(), design.room());
  }

  private VirtualBall ball(VirtualBall like, double leads_W_K, VirtualConvection convection) {
    return new VirtualBall(
        like.diameter_m() * near(0.001),
        like.capacity_J_K() * near(0.02),
        like.emissivity() * near(0.2),
        leads_W_K,
        convection);
  }

  private double near(double spread) {
    return 1 + spread * gauss();
  }

  private double gauss() {
    return Math.max(-2.5, Math.min(2.5, hands.nextGaussian()));
  }
}
