package faintwind.calibration.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.field.StretchMean;
import faintwind.calibration.flow.Flow.Source;
import faintwind.calibration.flow.Opening.Shape;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlowThroughTest {
  private static final Opening DUCT = Opening.round(0.315, 0);
  private static final InTheWay SMALL = InTheWay.balls(0.006);

  private static StretchMean speed(double v) {
    return new StretchMean(v, 0.04 * v, 0.02 * v, 60, 0, true);
  }

  /** Speeds of the 1/7 law with 1 m/s in the middle. */
  private static List<StretchMean> pipe(Traverse traverse) {
    double radius_m = traverse.opening().width_m() / 2;
    return traverse.points().stream()
        .map(p -> speed(Math.pow(p.fromWall_m() / radius_m, 1.0 / 7)))
        .toList();
  }

  private static double part(Flow flow, Source source) {
    return flow.parts().stream()
        .filter(p -> p.source() == source)
        .mapToDouble(Flow.Part::u)
        .findFirst()
        .orElse(Double.NaN);
  }

  /**
   * Worked example: a duct of 315 mm, 1 m/s in the middle, profile of the 1/7 law. Integral by
   * hand: 49/60 m/s · π/4 · 0.315² m² · 3600 s/h = 229.1 m³/h (own calculation; the law and its
   * mean are textbook matter). The instrument's share of the section is taken off.
   */
  @Test
  void flowOfADuctIsTheIntegralOfItsProfile() {
    double byHand_m3_h = 49.0 / 60 * Math.PI / 4 * 0.315 * 0.315 * 3600;
    assertThat(byHand_m3_h).isCloseTo(229.1, within(0.1));
    for (PointRule rule : PointRule.values()) {
      Traverse traverse = new Traverse(DUCT, rule, 4);
      Flow flow = new FlowThrough(traverse, SMALL, 0.001).of(pipe(traverse));
      double filled = SMALL.share(DUCT);
      assertThat(flow.flow_m3_h()).isCloseTo(byHand_m3_h * (1 - filled / 2), within(0.03 * 229));
      assertThat(Math.abs(flow.flow_m3_h() - byHand_m3_h)).isLessThan(flow.u95_m3_h());
      assertThat(flow.points()).isEqualTo(16);
      assertThat(flow.tooFaint()).isFalse();
    }
  }

  /** What the instrument's points share stays whole; what each has of its own goes with √n. */
  @Test
  void sharedPartDoesNotAverageAway() {
    Traverse traverse = new Traverse(DUCT, PointRule.LOG_TCHEBYCHEFF, 3);
    Flow flow = new FlowThrough(traverse, SMALL, 0.001).of(pipe(traverse));
    assertThat(part(flow, Source.INSTRUMENT)).isCloseTo(0.02, within(1e-9));
    double squares = 0;
    double sum = 0;
    for (StretchMean v : pipe(traverse)) {
      squares += Math.pow(0.01 * v.speed_m_s(), 2);
      sum += v.speed_m_s();
    }
    assertThat(part(flow, Source.UNSTEADY)).isCloseTo(Math.sqrt(squares) / sum, within(1e-12));
  }

  @Test
  void areaCountsTwiceTheDiameter() {
    Traverse traverse = new Traverse(Opening.round(0.2, 0.002), PointRule.LOG_TCHEBYCHEFF, 3);
    Flow flow = new FlowThrough(traverse, SMALL, 0.001).of(pipe(traverse));
    assertThat(part(flow, Source.AREA)).isCloseTo(0.02, within(1e-12));
    assertThat(flow.u95_m3_h()).isEqualTo(2 * flow.u() * flow.flow_m3_h());
  }

  /** A flow that leans to one side: two diameters differ, and that is told. */
  @Test
  void unequalDiametersWidenIt() {
    Traverse traverse = new Traverse(DUCT, PointRule.LOG_TCHEBYCHEFF, 3);
    List<StretchMean> even = pipe(traverse);
    List<StretchMean> leaning =
        traverse.points().stream()
            .map(p -> speed((p.line() == 0 ? 1.1 : 0.9) * Math.pow(p.fromWall_m(), 1.0 / 7)))
            .toList();
    FlowThrough through = new FlowThrough(traverse, SMALL, 0.001);
    assertThat(part(through.of(even), Source.LINES)).isCloseTo(0, within(1e-12));
    assertThat(part(through.of(leaning), Source.LINES)).isCloseTo(0.1, within(1e-9));
  }

  /** A square duct with a power law from each wall: mean (7/8)² of the middle. */
  @Test
  void netOfARectangle() {
    Opening square = new Opening(Shape.RECTANGLE, 0.4, 0.4, 0);
    Traverse traverse = new Traverse(square, PointRule.LOG_TCHEBYCHEFF, 5);
    List<StretchMean> speeds =
        traverse.points().stream()
            .map(p -> speed(law(p.depth_m() / 0.4) * law(p.up_m() / 0.4)))
            .toList();
    Flow flow = new FlowThrough(traverse, SMALL, 0.001).of(speeds);
    assertThat(flow.points()).isEqualTo(25);
    double filled = SMALL.share(square);
    assertThat(flow.mean_m_s()).isCloseTo(49.0 / 64 * (1 - filled / 2), within(0.01));
  }

  private static double law(double share) {
    return Math.pow(2 * Math.min(share, 1 - share), 1.0 / 7);
  }

  /**
   * One row of points sees the middle of a slot only: the mean across it is 2/3 of the middle's
   * speed where the flow is laminar (plane Poiseuille flow, textbook matter), the whole where it is
   * flat; both lie inside the uncertainty.
   */
  @Test
  void slotHoldsLaminarAndFlatFlow() {
    Opening gap = new Opening(Shape.GAP, 0.8, 0.03, 0);
    Traverse traverse = new Traverse(gap, PointRule.EQUAL_AREAS, 8);
    List<StretchMean> speeds = traverse.points().stream().map(p -> speed(0.3)).toList();
    Flow flow = new FlowThrough(traverse, SMALL, 0.001).of(speeds);
    double flat_m3_h = 0.3 * 0.8 * 0.03 * 3600;
    assertThat(flow.flow_m3_h()).isBetween(2.0 / 3 * flat_m3_h, flat_m3_h);
    assertThat(flow.flow_m3_h() - flow.u95_m3_h()).isLessThan(2.0 / 3 * flat_m3_h);
    assertThat(flow.flow_m3_h() + flow.u95_m3_h()).isGreaterThan(flat_m3_h);
  }

  @Test
  void faintPointsAreNoFlow() {
    Traverse traverse = new Traverse(DUCT, PointRule.LOG_TCHEBYCHEFF, 3);
    List<StretchMean> faint =
        traverse.points().stream().map(p -> StretchMean.typed(0.01, 0.02)).toList();
    assertThat(new FlowThrough(traverse, SMALL, 0.001).of(faint).tooFaint()).isTrue();
    List<StretchMean> none =
        traverse.points().stream().map(p -> StretchMean.typed(0, 0.02)).toList();
    assertThat(new FlowThrough(traverse, SMALL, 0.001).of(none).tooFaint()).isTrue();
  }

  @Test
  void instrumentThatFillsTheOpeningIsRefused() {
    Where where = Where.NOWHERE;
    assertThat(ids(InTheWay.balls(0.01).suits(Opening.round(0.04, 0), where)))
        .containsExactly("flow.opening-too-small");
    Opening hive = new Opening(Shape.HIVE, 0.3, 0.01, 0);
    assertThat(ids(InTheWay.balls(0.006).suits(hive, where)))
        .containsExactly("flow.slot-too-narrow");
    Checked<Opening> told = InTheWay.balls(0.01).suits(Opening.round(0.08, 0), where);
    assertThat(told.isOk()).isTrue();
    assertThat(ids(told)).containsExactly("flow.in-the-way");
    assertThat(InTheWay.balls(0.01).suits(DUCT, where).problems()).isEmpty();
  }

  private static List<String> ids(Checked<Opening> checked) {
    return checked.problems().stream().map(Problem::id).toList();
  }

  /** Half of a 10 mm ball does not fit between the wall and a point 3.2 mm from it. */
  @Test
  void pointsAtTheWallAreToldAndWiden() {
    Traverse traverse = new Traverse(Opening.round(0.1, 0), PointRule.LOG_TCHEBYCHEFF, 3);
    FlowThrough thick = new FlowThrough(traverse, InTheWay.balls(0.01), 0.001);
    FlowThrough thin = new FlowThrough(traverse, InTheWay.balls(0.004), 0.001);
    assertThat(thick.unreached())
        .extracting(FlowPoint::name)
        .containsExactly("A1", "A6", "B1", "B6");
    assertThat(thin.unreached()).isEmpty();
    double most = part(thick.of(pipe(traverse)), Source.POSITION);
    assertThat(most).isGreaterThan(part(thin.of(pipe(traverse)), Source.POSITION));
  }

  @Test
  void countsOutsideTheRuleAreNoTraverse() {
    assertThatThrownBy(() -> new Traverse(DUCT, PointRule.LOG_TCHEBYCHEFF, 6))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
