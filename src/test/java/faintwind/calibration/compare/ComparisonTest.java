package faintwind.calibration.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.EnScore;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Measured;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.compare.Comparison.Cause;
import faintwind.calibration.compare.Comparison.Kind;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.speed.TestCalibration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** By hand: one calibration beside itself with a single number changed. */
class ComparisonTest {
  private static final Calibration ONE = with(TestCalibration.ofModel(), "nothing", 1);

  /** One parameter times a factor; a table of two speeds. */
  private static Calibration with(Calibration base, String name, double factor) {
    FormulaFit fit = base.formula();
    List<Parameter> parameters = new ArrayList<>();
    double[][] covariance = new double[fit.parameters().size()][fit.parameters().size()];
    for (Parameter each : fit.parameters()) {
      double value = each.value() * (each.name().equals(name) ? factor : 1);
      int i = parameters.size();
      covariance[i][i] = Math.pow(0.002 * value, 2);
      parameters.add(new Parameter(each.name(), value, 0.002 * Math.abs(value), each.unit()));
    }
    FormulaFit changed =
        new FormulaFit(
            fit.model(),
            fit.equation(),
            parameters,
            Covariance.of(covariance),
            fit.referenceAir(),
            fit.ball_m());
    return with(base, changed, base.signal(), base.origin());
  }

  private static Calibration with(
      Calibration base, FormulaFit formula, SignalPath signal, Origin origin) {
    Performance was = base.performance();
    Performance performance =
        new Performance(
            was.floor_m_s(),
            was.stillSignal(),
            was.noise(),
            was.rowStep_s(),
            was.runScatter(),
            List.of(new AtSpeed(0.1, 0.01, 500, List.of()), new AtSpeed(1.6, 0.04, 90, List.of())));
    return new Calibration(
        origin, signal, formula, base.coverage(), base.evidence(), performance, base.warnings());
  }

  private static Calibration by(Measured.By by, String text) {
    Origin was = ONE.origin();
    Measured measured =
        new Measured(was.created(), was.created(), Measured.Basis.STATED, Map.of(by, text));
    Origin origin =
        new Origin(
            was.instrumentId(),
            was.created(),
            was.softwareVersion(),
            was.inputSha256(),
            Optional.empty(),
            Optional.of(measured),
            Optional.empty());
    return with(ONE, ONE.formula(), ONE.signal(), origin);
  }

  private static double weight(List<Cause> causes, Kind kind) {
    return causes.stream().filter(c -> c.kind() == kind).findFirst().orElseThrow().weight();
  }

  /** Straight in logarithms: a quarter of the way from 0.1 to 1.6 is 0.2, √2 times 0.01. */
  @Test
  void uncertaintyBetweenSpeedsIsStraightInLogarithms() {
    assertThat(CompareCalibrations.u95_m_s(ONE, 0.1)).isCloseTo(0.01, within(1e-12));
    assertThat(CompareCalibrations.u95_m_s(ONE, 0.2)).isCloseTo(0.01 * Math.sqrt(2), within(1e-12));
    assertThat(CompareCalibrations.u95_m_s(ONE, 0.4)).isCloseTo(0.02, within(1e-12));
    assertThat(CompareCalibrations.u95_m_s(ONE, 1.6)).isCloseTo(0.04, within(1e-12));
    assertThat(CompareCalibrations.u95_m_s(ONE, 3.2)).isCloseTo(0.08, within(1e-12));
    assertThat(CompareCalibrations.u95_m_s(ONE, 0.05)).isCloseTo(0.005, within(1e-12));
  }

  @Test
  void theSameTwiceDiffersInNothing() {
    List<Cause> causes = new LikelyCause(ONE, ONE).list();
    for (Cause cause : causes) {
      assertThat(cause.by()).isCloseTo(0, within(1e-9));
    }
    assertThat(causes.stream().mapToDouble(Cause::weight).sum()).isCloseTo(1, within(1e-9));
  }

  /**
   * Ten per cent more heat at the same loss: a gain that moved; both recordings tell the supply.
   */
  @Test
  void moreHeatAtAKnownSupplyIsTheLogger() {
    List<Cause> causes = new LikelyCause(ONE, with(ONE, "heating", 1.1)).list();
    assertThat(causes.get(0).kind()).isEqualTo(Kind.LOGGER);
    assertThat(causes.get(0).by()).isBetween(0.09, 0.101);
    assertThat(causes.get(0).weight()).isGreaterThan(0.9);
  }

  /** A supply 5 % higher, recorded with neither: 1.05² of the heat; the loss stays. */
  @Test
  void moreHeatMayBeTheSupplyWhereNobodyRecordedIt() {
    Calibration blind = unsupplied(ONE);
    Calibration later = unsupplied(with(ONE, "heating", 1.05 * 1.05));
    List<Cause> causes = new LikelyCause(blind, later).list();
    Cause supply = causes.stream().filter(c -> c.kind() == Kind.SUPPLY).findFirst().orElseThrow();
    assertThat(supply.by()).isCloseTo(0.05, within(0.003));
    assertThat(supply.weight()).isGreaterThan(weight(causes, Kind.DIRT));
  }

  private static Calibration unsupplied(Calibration calibration) {
    SignalPath was = calibration.signal();
    SignalPath signal =
        new SignalPath(
            was.unit(), was.chain(), was.thermocouple(), was.perKelvin(), OptionalDouble.empty());
    return with(calibration, calibration.formula(), signal, calibration.origin());
  }

  @Test
  void moreLossInWindAloneIsTheArm() {
    List<Cause> causes = new LikelyCause(ONE, with(ONE, "forced", 1.05)).list();
    assertThat(causes.get(0).kind()).isEqualTo(Kind.ARM);
    assertThat(causes.get(0).by()).isBetween(0.02, 0.06);
  }

  @Test
  void moreLossThroughTheLeadsIsNotTheArm() {
    List<Cause> causes = new LikelyCause(ONE, with(ONE, "leads", 1.3)).list();
    assertThat(causes.get(0).kind()).isIn(Kind.LEAD, Kind.DIRT);
    assertThat(weight(causes, Kind.ARM)).isLessThan(weight(causes, Kind.LEAD));
  }

  /** Odds of three to one where both say by which logger, and not the same. */
  @Test
  void anotherLoggerOnRecordIsTheLikelier() {
    List<Cause> same =
        new LikelyCause(by(Measured.By.LOGGER, "a"), by(Measured.By.LOGGER, "a")).list();
    List<Cause> other =
        new LikelyCause(by(Measured.By.LOGGER, "a"), by(Measured.By.LOGGER, "b")).list();
    double before = weight(same, Kind.LOGGER) / weight(same, Kind.DIRT);
    assertThat(weight(other, Kind.LOGGER) / weight(other, Kind.DIRT))
        .isCloseTo(3 * before, within(1e-9));
    List<Cause> half = new LikelyCause(ONE, by(Measured.By.LOGGER, "b")).list();
    assertThat(weight(half, Kind.LOGGER) / weight(half, Kind.DIRT)).isCloseTo(before, within(1e-9));
    List<Cause> arm = new LikelyCause(by(Measured.By.ARM, "a"), by(Measured.By.ARM, "b")).list();
    assertThat(weight(arm, Kind.ARM) / weight(arm, Kind.DIRT))
        .isCloseTo(3 * weight(same, Kind.ARM) / weight(same, Kind.DIRT), within(1e-9));
  }

  private static Comparison.AtSpeed at(double speed_m_s, double later_m_s, double u95_m_s) {
    return new Comparison.AtSpeed(
        speed_m_s, later_m_s, u95_m_s, EnScore.ofDifference(later_m_s - speed_m_s, u95_m_s));
  }

  @Test
  void theWorstIsTheFarthestForItsUncertainty() {
    Comparison comparison =
        new Comparison(
            List.of(at(0.1, 0.11, 0.02), at(1, 0.98, 0.01), at(2, 2.1, 0.2)), List.of(), List.of());
    assertThat(comparison.worst().speed_m_s()).isEqualTo(1);
    assertThat(comparison.worst().difference_m_s()).isCloseTo(-0.02, within(1e-12));
    assertThat(comparison.agrees()).isFalse();
    assertThat(comparison.likeliest()).isEmpty();
    Comparison agrees =
        new Comparison(
            List.of(at(0.1, 0.11, 0.02)), List.of(), List.of(new Cause(Kind.DIRT, 0.1, 0.6)));
    assertThat(agrees.agrees()).isTrue();
    assertThat(agrees.likeliest()).map(Cause::kind).contains(Kind.DIRT);
    assertThat(Kind.DIRT.key()).isEqualTo("cause.dirt");
  }

  private static Comparison compared(Calibration later) {
    return CompareCalibrations.of(ONE, later)
        .fold(
            (value, notes) -> value,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  @Test
  void numbersOfBothAreHeldTogether() {
    Comparison comparison = compared(with(ONE, "heating", 1.1));
    Comparison.Change most = comparison.changes().get(0);
    assertThat(most.later() / most.earlier()).isCloseTo(1.1, within(0.01));
    Comparison same = compared(ONE);
    assertThat(same.agrees()).isTrue();
    assertThat(same.causes()).isEmpty();
    for (Comparison.AtSpeed speed : same.speeds()) {
      assertThat(speed.later_m_s()).isCloseTo(speed.speed_m_s(), within(1e-6));
    }
    for (Comparison.Change change : same.changes()) {
      assertThat(change.later()).isEqualTo(change.earlier());
    }
  }

  /**
   * A ball that stays as in still air beside an arm that says 2π · 0.4 · 60/300 = 0.5027 m/s, less
   * 3 % of carried air: 0.4876 m/s.
   */
  @Test
  void aRecheckHoldsTheReadingAgainstTheArm() {
    double still = ONE.performance().stillSignal();
    ArmTurning arm =
        new ArmTurning(
            Uncertain.of(0.4, 0.004), 60, Uncertain.of(300, 0.0), 100, 400, Optional.empty());
    Run run = MadeRuns.spin("a", MadeRuns.series(0, 2, 400, t -> still), arm);
    Recheck.AtRun at =
        Recheck.of(ONE, List.of(MadeRuns.still("s", run.recording().signal()), run)).get(0);
    double turned = 2 * Math.PI * 0.4 * 60 / 300;
    assertThat(at.run()).isEqualTo("a");
    assertThat(at.speed_m_s()).isCloseTo(0.97 * turned, within(1e-9));
    assertThat(at.u95_m_s()).isCloseTo(2 * turned * Math.hypot(0.01 * 0.97, 0.02), within(1e-9));
    assertThat(at.read_m_s()).isLessThan(0.1);
    assertThat(at.en().value()).isLessThan(-1);
    assertThat(at.en().value())
        .isCloseTo(
            (at.read_m_s() - at.speed_m_s()) / Math.hypot(at.u95_m_s(), at.u95_read_m_s()),
            within(1e-9));
  }

  @Test
  void aStatedShareOfCarriedAirCountsBeforeTheUsualOne() {
    ArmTurning arm =
        new ArmTurning(
            Uncertain.of(0.4, 0.0),
            60,
            Uncertain.of(300, 0.0),
            100,
            400,
            Optional.of(Uncertain.of(0.1, 0.05)));
    Run run = MadeRuns.spin("a", MadeRuns.series(0, 2, 400, t -> 20), arm);
    Recheck.AtRun at = Recheck.of(ONE, List.of(run)).get(0);
    double turned = 2 * Math.PI * 0.4 * 60 / 300;
    assertThat(at.speed_m_s()).isCloseTo(0.9 * turned, within(1e-9));
    assertThat(at.u95_m_s()).isCloseTo(0.1 * turned, within(1e-9));
  }
}
