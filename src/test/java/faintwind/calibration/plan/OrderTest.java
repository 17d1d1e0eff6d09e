package faintwind.calibration.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** By hand: speeds of one beat a second at radii of 0.3 and 0.6 m. */
class OrderTest {
  private static final Uncertain R300 = Uncertain.of(0.3, 0.001);
  private static final Uncertain R600 = Uncertain.of(0.6, 0.001);
  private static final Response COPPER =
      new Response(Interval.share(520, 0.1), Interval.share(190, 0.1), 32, 0.01, 1);

  private static Candidate at(Uncertain radius, int perMinute) {
    return new Candidate(radius, new Beat(perMinute, 1), 60);
  }

  private static PlanRequest request(DataWay way, PlanWish.Directions directions) {
    return PlanRequest.of(
        new ArmSetup(List.of(R600, R300), way),
        new PlanWish(0.1, 2.5, PlanWish.Beats.usual(), directions, PlanWish.Time.free()),
        COPPER);
  }

  @Test
  void everyOtherSpeedGoesUpAndTheRestComesDown() {
    List<Candidate> chosen = new ArrayList<>();
    for (int beat : new int[] {50, 40, 30, 20, 10}) {
      chosen.add(at(R600, beat));
    }
    assertThat(Order.of(chosen))
        .extracting(c -> c.beat().perMinute())
        .containsExactly(10, 30, 50, 40, 20);
    assertThat(Order.of(chosen.subList(1, 5)))
        .extracting(c -> c.beat().perMinute())
        .containsExactly(10, 30, 40, 20);
  }

  @Test
  void radiusByRadiusWithTheSmallestFirst() {
    List<Candidate> ordered = Order.of(List.of(at(R600, 10), at(R300, 30), at(R300, 20)));
    assertThat(ordered).extracting(c -> c.radius_m().value()).containsExactly(0.3, 0.3, 0.6);
    assertThat(ordered).extracting(c -> c.beat().perMinute()).containsExactly(20, 30, 10);
  }

  /** 60 beats a minute are a turn a second: 60 turns, 2π · 0.3 m/s. */
  @Test
  void turnsAndSpeedFollowFromTheBeat() {
    assertThat(at(R300, 60).turns()).isCloseTo(60, within(1e-9));
    assertThat(at(R300, 60).speed_m_s()).isCloseTo(1.884956, within(1e-6));
    assertThat(new Beat(60, 4).turns_1_s()).isEqualTo(0.25);
    assertThat(new Beat(40, 4).period_s()).isEqualTo(1.5);
    assertThatThrownBy(() -> new Beat(0, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void directionsGoByTurnsWhereBothAreWanted() {
    List<Candidate> three = List.of(at(R600, 10), at(R600, 20), at(R600, 30));
    DataWay radio = DataWay.of(DataWay.Kind.WIRELESS);
    assertThat(Order.directions(three, request(radio, PlanWish.Directions.BOTH_WAYS)))
        .containsExactly(Direction.CW, Direction.CCW, Direction.CW);
    assertThat(Order.directions(three, request(radio, PlanWish.Directions.ONE_WAY)))
        .containsOnly(Direction.CW);
  }

  /** 10 turns one way, 20 back make −10: then the way out again. */
  @Test
  void aCableIsAlwaysUntwisted() {
    List<Candidate> four = List.of(at(R600, 10), at(R600, 20), at(R600, 30), at(R600, 10));
    assertThat(Order.directions(four, request(DataWay.cable(100), PlanWish.Directions.BOTH_WAYS)))
        .containsExactly(Direction.CW, Direction.CCW, Direction.CW, Direction.CCW);
    List<Candidate> long_ = List.of(at(R600, 30), at(R600, 10), at(R600, 10), at(R600, 10));
    assertThat(Order.directions(long_, request(DataWay.cable(100), PlanWish.Directions.BOTH_WAYS)))
        .containsExactly(Direction.CW, Direction.CCW, Direction.CCW, Direction.CCW);
    assertThatThrownBy(() -> DataWay.cable(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> DataWay.of(DataWay.Kind.CABLE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static PlannedSpin planned(Uncertain radius) {
    return new PlannedSpin(1, radius, new Beat(60, 4), 20, Direction.CW, 0.01);
  }

  /** 20 turns in 80 s at this radius, as planned, or so many times as fast. */
  private static ArmTurning noted(double radius_m, double times) {
    return new ArmTurning(
        Uncertain.of(radius_m), 20 * times, Uncertain.of(80), 0, 90, Optional.empty());
  }

  private static List<String> asked(List<PlannedSpin> planned, ArmTurning... noted) {
    return NotedSpins.questions(planned, List.of(noted)).stream()
        .map(p -> p.id() + " " + p.found() + " " + p.details())
        .toList();
  }

  @Test
  void radiiWrittenTheOtherWayRoundAreAsked() {
    List<PlannedSpin> planned = List.of(planned(R300), planned(R600), planned(R600));
    assertThat(asked(planned, noted(0.6, 1), noted(0.3, 1), noted(0.6, 1)))
        .containsExactly("plan.noted-exchanged 1 [2]");
    assertThat(asked(planned, noted(0.3, 1), noted(0.6, 1), noted(0.6, 1))).isEmpty();
    assertThat(asked(planned, noted(0.3, 1))).isEmpty();
  }

  /** Planned 2π · 0.6 · 0.25 = 0.942 m/s. */
  @Test
  void aSpeedFarFromThePlannedIsAsked() {
    List<PlannedSpin> planned = List.of(planned(R600));
    List<Problem> asked = NotedSpins.questions(planned, List.of(noted(0.6, 2)));
    assertThat(asked).extracting(Problem::id).containsExactly("plan.noted-speed");
    assertThat(asked.get(0).found()).isEqualTo("1.885");
    assertThat(asked.get(0).details()).containsExactly("0.942", "1");
    assertThat(asked(planned, noted(0.6, 0.5))).hasSize(1);
    assertThat(asked(planned, noted(0.6, 1.01))).isEmpty();
  }

  @Test
  void anArmNeedsARadius() {
    assertThatThrownBy(() -> new ArmSetup(List.of(), DataWay.of(DataWay.Kind.WIRELESS)))
        .isInstanceOf(IllegalArgumentException.class);
    ArmSetup arm = new ArmSetup(List.of(R600, R300, R600), DataWay.of(DataWay.Kind.WIRELESS));
    assertThat(arm.radii_m()).containsExactly(R300, R600);
    assertThatThrownBy(
            () -> new ArmSetup(List.of(Uncertain.of(0.01)), DataWay.of(DataWay.Kind.WIRELESS)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(OptionalDouble.empty()).isEqualTo(DataWay.of(DataWay.Kind.WIRELESS).battery_s());
  }

  @Test
  void aResponseMustBeQuickerInABreeze() {
    assertThatThrownBy(
            () -> new Response(Interval.share(190, 0.1), Interval.share(190, 0.1), 32, 0.01, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> new Response(Interval.share(520, 0.1), Interval.share(190, 0.1), 0, 0.01, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> new Response(Interval.share(520, 0.1), Interval.share(190, 0.1), 32, 0.01, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
