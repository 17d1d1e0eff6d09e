package faintwind.calibration.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Covariance;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sessions drawn from a normal population, without a fit. */
class PoolTest {
  private static final List<String> NAMES = names();
  private static final double SPREAD = 0.5;

  private static List<String> names() {
    List<String> names = new ArrayList<>(Shared.unknowns());
    names.addAll(List.of("conduction", "heating", "leads"));
    return names;
  }

  /**
   * A session whose recordings alone would say {@code truth + off} ± {@code u} of every unknown,
   * after what was believed before: 0 ± {@link #SPREAD}.
   */
  private static SessionShown session(double truth, double[] off, double u) {
    double keep = SPREAD * SPREAD / (SPREAD * SPREAD + u * u);
    List<Double> estimates = new ArrayList<>();
    double[][] covariance = new double[NAMES.size()][NAMES.size()];
    for (int i = 0; i < NAMES.size(); i++) {
      estimates.add(keep * (truth + off[i]));
      covariance[i][i] = keep * u * u;
    }
    List<Double> before = NAMES.stream().map(name -> 0.0).toList();
    List<Double> spreads = NAMES.stream().map(name -> SPREAD).toList();
    return new SessionShown(NAMES, estimates, Covariance.of(covariance), before, spreads);
  }

  private static List<SessionShown> class6(double truth, double u) {
    Random random = new Random(5);
    List<SessionShown> sessions = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double[] off = random.doubles(NAMES.size()).map(each -> 1.7 * u * (2 * each - 1)).toArray();
      sessions.add(session(truth, off, u));
    }
    return sessions;
  }

  private static Pool pool(List<SessionShown> sessions) {
    return new Pool(sessions.get(0), sessions);
  }

  private static Uncertain tilt(Pool pool, int session) {
    return Objects.requireNonNull(pool.known(session).expected().get("tilt"));
  }

  @Test
  void othersSayMoreThanOneSessionAlone() {
    Pool pool = pool(class6(0.1, 0.01));
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
    List<SessionShown> sessions = class6(0.1, 0.01);
    Uncertain without = tilt(pool(sessions), 0);
    double[] off = new double[NAMES.size()];
    off[NAMES.indexOf("tilt")] = 0.4;
    sessions.set(3, session(0.1, off, 0.01));
    Pool pool = pool(sessions);
    double unknowns = Shared.values().length;
    assertThat(pool.standsOut(3, 400).orElseThrow().what()).isEqualTo("TILT");
    assertThat(pool.standsOut(1, unknowns)).as("what is to be expected").isEmpty();
    assertThat(tilt(pool, 0).value()).isCloseTo(without.value(), within(0.01));
  }

  @Test
  void ownConvectionIsComparedToo() {
    List<SessionShown> sessions = class6(0.1, 0.01);
    double[] off = new double[NAMES.size()];
    off[NAMES.indexOf("conduction")] = -0.4;
    sessions.set(1, session(0.1, off, 0.01));
    Pool pool = pool(sessions);
    assertThat(pool.ownStandsOut(1).orElseThrow().what()).isEqualTo("CONVECTION");
    assertThat(List.of(0, 2, 3, 4, 5)).allMatch(i -> pool.ownStandsOut(i).isEmpty());
    assertThat(pool.known(0).expected()).doesNotContainKey("conduction");
  }

  @Test
  void spreadIsLearned() {
    List<SessionShown> sessions = new ArrayList<>();
    double[] off = new double[NAMES.size()];
    for (int i = 0; i < 6; i++) {
      off[NAMES.indexOf("tilt")] = 0.04 * (i - 2.5);
      sessions.add(session(0.1, off, 0.002));
    }
    double between =
        pool(sessions).spread().between().get(List.of(Shared.values()).indexOf(Shared.TILT));
    assertThat(between).isCloseTo(0.06, within(0.01));
  }
}
