package faintwind.calibration.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ArmKnownTest {
  private static ArmKnown session(double share, double u) {
    return new ArmKnown(
        Uncertain.of(share, u),
        Uncertain.of(20, 4),
        Uncertain.of(25, 5),
        Uncertain.of(2, 0.3),
        Optional.of(Uncertain.of(share / 10, u / 10)));
  }

  private static Uncertain shareOf(ArmKnown... sessions) {
    return ArmKnown.ofSessions(List.of(sessions)).orElseThrow().carriedShare();
  }

  @Test
  void nothingIsKnownBeforeAnySession() {
    assertThat(ArmKnown.ofSessions(List.of())).isEmpty();
  }

  /**
   * One session: its own uncertainty, twice the spread between sessions: 4, 3 and 3 thousandths.
   */
  @Test
  void oneSessionSaysLessOfTheNextThanOfItself() {
    Uncertain next = shareOf(session(0.03, 0.004));
    assertThat(next.value()).isEqualTo(0.03);
    assertThat(next.u().orElseThrow()).isCloseTo(0.00583, within(1e-5));
  }

  @Test
  void sessionsThatAgreeSayMore() {
    Uncertain next = shareOf(session(0.03, 0.004), session(0.03, 0.004), session(0.03, 0.004));
    assertThat(next.u().orElseThrow()).isLessThan(0.0045);
  }

  @Test
  void sessionsThatLieApartTeachTheSpread() {
    Uncertain next = shareOf(session(0.02, 0.001), session(0.03, 0.001), session(0.04, 0.001));
    assertThat(next.value()).isCloseTo(0.03, within(1e-12));
    assertThat(next.u().orElseThrow()).isGreaterThan(0.007);
  }

  @Test
  void theSharperSessionCountsMore() {
    assertThat(shareOf(session(0.02, 0.001), session(0.04, 0.02)).value()).isLessThan(0.021);
  }

  /** Directions that two sessions told to lie a thousandth apart; of sessions without, nothing. */
  @Test
  void directionsAreLearnedFromTheSessionsThatHaveThem() {
    ArmKnown none =
        new ArmKnown(
            Uncertain.of(0.03, 0.004),
            Uncertain.of(20, 4),
            Uncertain.of(25, 5),
            Uncertain.of(2, 0.3),
            Optional.empty());
    assertThat(ArmKnown.ofSessions(List.of(none)).orElseThrow().asymmetry()).isEmpty();
    ArmKnown learned =
        ArmKnown.ofSessions(List.of(none, session(0.02, 0.001), session(0.03, 0.001)))
            .orElseThrow();
    assertThat(learned.asymmetry().orElseThrow().value()).isCloseTo(0.0025, within(1e-9));
  }
}
