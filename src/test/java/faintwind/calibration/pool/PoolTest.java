package faintwind.calibration.pool;

import static faintwind.calibration.pool.MadeSessions.NAMES;
import static faintwind.calibration.pool.MadeSessions.SPREAD;
import static faintwind.calibration.pool.MadeSessions.off;
import static faintwind.calibration.pool.MadeSessions.session;
import static faintwind.calibration.pool.MadeSessions.sound;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Covariance;
import faintwind.calibration.Parameter;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class PoolTest {
  private static Pool pool(List<SessionShown> sessions) {
    return new Pool(sessions.get(0), sessions);
  }

  private static Uncertain tilt(Pool pool, int session) {
    return Objects.requireNonNull(pool.known(session).expected().get("tilt"));
  }

  @Test
  void othersSayMoreThanOneSessionAlone() {
    Pool pool = pool(sound(6, 0.1, 0.01));
    Uncertain expected = tilt(pool, 2);
    assertThat(expected.value()).isCloseTo(0.1, within(0.01));
    assertThat(expected.u().orElseThrow()).isBetween(0.004, 0.009);
  }

  /** Six sessions that show nothing leave the belief as it was, and no sharper. */
  @Test
  void whatWasBelievedCountsOnce() {
    double[] nothing = new double[NAMES.size()];
    List<SessionShown> sessions = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      sessions.add(session(0, nothing, 500 * SPREAD));
    }
    Uncertain expected = tilt(pool(sessions), 0);
    assertThat(expected.value()).isCloseTo(0, within(1e-6));
    assertThat(expected.u().orElseThrow()).isCloseTo(SPREAD, within(0.01));
  }

  @Test
  void faultyOneIsNamedAndDoesNotMoveTheOthers() {
    List<SessionShown> sessions = sound(6, 0.1, 0.01);
    Uncertain without = tilt(pool(sessions), 0);
    sessions.set(3, session(0.1, off("tilt", 0.4), 0.01));
    Pool pool = pool(sessions);
    double unknowns = Shared.values().length;
    assertThat(pool.standsOut(3, 400).orElseThrow().what()).isEqualTo("TILT");
    assertThat(pool.standsOut(1, unknowns)).as("what is to be expected").isEmpty();
    assertThat(tilt(pool, 0).value()).isCloseTo(without.value(), within(0.01));
  }

  @Test
  void ownConvectionIsComparedToo() {
    List<SessionShown> sessions = sound(6, 0.1, 0.01);
    sessions.set(1, session(0.1, off("conduction", -0.4), 0.01));
    Pool pool = pool(sessions);
    assertThat(pool.ownStandsOut(1).orElseThrow().what()).isEqualTo("CONVECTION");
    assertThat(List.of(0, 2, 3, 4, 5)).allMatch(i -> pool.ownStandsOut(i).isEmpty());
    assertThat(pool.known(0).expected()).doesNotContainKey("conduction");
  }

  @Test
  void spreadIsLearned() {
    List<SessionShown> sessions = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      sessions.add(session(0.1, off("tilt", 0.04 * (i - 2.5)), 0.002));
    }
    double between =
        pool(sessions).spread().between().get(List.of(Shared.values()).indexOf(Shared.TILT));
    assertThat(between).isCloseTo(0.06, within(0.01));
  }

  /** What the recordings say is the same, whatever was believed of two unknowns at once before. */
  @Test
  void beliefInPairsIsTakenOffAgain() {
    Pool plain = pool(sound(6, 0.1, 0.01));
    List<SessionShown> tied = sound(6, 0.1, 0.01).stream().map(PoolTest::tied).toList();
    Pool same = new Pool(session(0, new double[NAMES.size()], SPREAD), tied);
    assertThat(tilt(same, 2).value()).isCloseTo(tilt(plain, 2).value(), within(1e-9));
    assertThat(tilt(same, 2).u().orElseThrow())
        .isCloseTo(tilt(plain, 2).u().orElseThrow(), within(1e-9));
  }

  /** The same recordings where forced convection and tilt were believed to move together by 0.8. */
  private static SessionShown tied(SessionShown plain) {
    int one = NAMES.indexOf("forced");
    int other = NAMES.indexOf("tilt");
    double[][] believed = new double[NAMES.size()][NAMES.size()];
    double[][] covariance = new double[NAMES.size()][NAMES.size()];
    for (int i = 0; i < NAMES.size(); i++) {
      believed[i][i] = SPREAD * SPREAD;
      covariance[i][i] = plain.covariance().at(i, i);
    }
    believed[one][other] = 0.8 * SPREAD * SPREAD;
    believed[other][one] = believed[one][other];
    // of the two unknowns: (J + B⁻¹)⁻¹, J = 1/c − 1/s² by the recordings, and J of the plain centre
    double own = 1 / plain.covariance().at(one, one) - 1 / (SPREAD * SPREAD);
    double along = 1 / (SPREAD * SPREAD * (1 - 0.64));
    double across = -0.8 * along;
    double both = (own + along) * (own + along) - across * across;
    covariance[one][one] = (own + along) / both;
    covariance[other][other] = covariance[one][one];
    covariance[one][other] = -across / both;
    covariance[other][one] = covariance[one][other];
    List<Double> estimates = new ArrayList<>(plain.estimates());
    double first = plain.estimates().get(one) / plain.covariance().at(one, one);
    double second = plain.estimates().get(other) / plain.covariance().at(other, other);
    estimates.set(one, covariance[one][one] * first + covariance[one][other] * second);
    estimates.set(other, covariance[other][one] * first + covariance[other][other] * second);
    return new SessionShown(
        NAMES, estimates, Covariance.of(covariance), plain.before(), Covariance.of(believed));
  }

  /** Believed where it is normal: of what is positive by nature that is its logarithm. */
  @Test
  void aSharedQuantityIsToldInItsOwnUnit() {
    assertThat(Shared.RUN_UP.parameter(Math.log(2), 0.1))
        .isEqualTo(
            new Parameter("run_up", Math.exp(Math.log(2)), 0.1 * Math.exp(Math.log(2)), "s"));
    assertThat(Shared.TILT.parameter(-0.01, 0.003))
        .isEqualTo(new Parameter("tilt", -0.01, 0.003, "1"));
    assertThat(new StandsOut("CARRIED_SHARE", 4).word()).isEqualTo("carried-share");
    assertThat(new StandsOut("CARRIED_SHARE", 4).key()).isEqualTo("field.pool.carried-share");
  }

  /** Held against the distributions themselves, of as many unknowns as instruments share. */
  @Test
  void deviationsAreThoseOfANormalNumber() {
    int freedom = Shared.values().length;
    for (double deviations : new double[] {0, 1, 3}) {
      double probability = new NormalDistribution().cumulativeProbability(deviations);
      double square = new ChiSquaredDistribution(freedom).inverseCumulativeProbability(probability);
      assertThat(StandsOut.deviations(square, freedom)).isCloseTo(deviations, within(0.03));
    }
  }
}
