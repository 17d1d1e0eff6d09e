package faintwind.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The wire as a fin, against both end conditions of Incropera, Table 3.4. */
class LeadWireTest {
  private static final AirState AIR = new AirState(293.15, 101_325, 0.5);

  /** A bare rod of 5 mm. */
  private static LeadWire rod(double length_m) {
    return new LeadWire(0.005, 0.005, length_m, 400);
  }

  private static final double K_A = 400 * Math.PI * 0.005 * 0.005 / 4;

  @Test
  void bothEndsAreThoseOfTheTextbookTable() {
    double loss = K_A * 100; // m = 10 /m, so m·L = 1 for 0.1 m, and M = 10·k·A
    // tanh 1 = 0.76159, coth 1 = 1.31304, 1/sinh 1 = 0.85092 (tables of hyperbolic functions)
    assertThat(rod(0.1).free_W_K(loss) / (10 * K_A)).isCloseTo(0.76159, within(5e-6));
    assertThat(rod(0.1).joined_W_K(loss, 0) / (10 * K_A)).isCloseTo(1.31304, within(5e-6));
    // a far end at half the ball's excess: 1.31304 − 0.5·0.85092
    assertThat(rod(0.1).joined_W_K(loss, 0.5) / (10 * K_A)).isCloseTo(0.88758, within(1e-5));
  }

  @Test
  void longRodTakesWhatTheTextbookSaysWhateverItsEnd() {
    // Incropera, example 3.9 (from memory): 5 mm copper, k = 398, h = 100, 100 °C in 25 °C: 8.3 W
    LeadWire copper = new LeadWire(0.005, 0.005, 1, 398);
    double loss = 100 * Math.PI * 0.005;
    assertThat(75 * copper.free_W_K(loss)).isCloseTo(8.3, within(0.05));
    assertThat(75 * copper.joined_W_K(loss, 0)).isCloseTo(8.3, within(0.05));
  }

  @Test
  void shorterWireJoinedToACableTakesMore() {
    FilmAir film = new FilmAir(AIR);
    double before = 0;
    for (double length_m : List.of(0.2, 0.05, 0.02, 0.01, 0.005, 0.002)) {
      double now =
          new LeadWire(0.32e-3, 0.36e-3, length_m, 395).conductance_W_K(film, 293.15, 0, 30, 1);
      assertThat(now).as("%s m", length_m).isGreaterThan(before);
      before = now;
    }
    // in the end it only conducts: k·A/L
    double conducted = 395 * Math.PI * 0.32e-3 * 0.32e-3 / 4 / 0.002;
    assertThat(before / conducted).isCloseTo(1, within(0.01));
  }
}
