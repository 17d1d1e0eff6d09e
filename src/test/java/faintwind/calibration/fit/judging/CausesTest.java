package faintwind.calibration.fit.judging;

import static faintwind.calibration.fit.solving.HealthyFit.SET;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.FaultyRuns;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.HealthyFit;
import faintwind.calibration.fit.solving.LeftOutRuns;
import faintwind.calibration.fit.solving.ResidualReport;
import faintwind.calibration.fit.solving.SetAside;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.run.RunSet;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/**
 * By hand: the formula of a healthy fit is asked about recordings of which one was made faulty, and
 * about speeds that were put elsewhere. Nothing is fitted again.
 */
class CausesTest {
  private static RunSet faulty(DoubleBinaryOperator change, String... runs) {
    RunSet set = SET;
    for (String run : runs) {
      set = FaultyRuns.each(set, FaultyRuns.run(run, r -> FaultyRuns.signal(r, change)));
    }
    return set;
  }

  private static Problem only(RunSet set, String run) {
    FitResult fit = HealthyFit.told(set, Set.of(), Map.of()).withoutRuns(Set.of(run));
    List<Problem> found = new Causes(fit, set).problems();
    assertThat(found).isNotEmpty();
    assertThat(found.get(0).where().run()).contains(run);
    return found.get(0);
  }

  /** A signal that is a tenth larger throughout: more heat, and nobody recorded the supply. */
  @Test
  void aLargerSignalIsTheSupply() {
    Problem found = only(faulty((t, s) -> 1.1 * s, "spin01"), "spin01");
    assertThat(found.id()).isEqualTo("fit.ails.supply.up");
    assertThat(Double.parseDouble(found.found())).isBetween(8.0, 17.0);
    assertThat(Double.parseDouble(found.details().get(0))).isBetween(3041.0, 3200.0);
  }

  @Test
  void aSmallerSignalIsLessSupply() {
    assertThat(only(faulty((t, s) -> 0.88 * s, "spin01"), "spin01").id())
        .isEqualTo("fit.ails.supply.down");
  }

  @Test
  void aSignalThatFallsToNothingIsALostHeater() {
    Problem found =
        only(faulty((t, s) -> t < 4950 ? s : s * Math.exp(-(t - 4950) / 150), "spin04"), "spin04");
    assertThat(found.id()).isEqualTo("fit.ails.heater-lost");
    assertThat(Double.parseDouble(found.details().get(0))).isBetween(4850.0, 5250.0);
  }

  /** From the sixth run on a tenth more. */
  @Test
  void aTenthMoreInAllLaterRunsIsALastingChange() {
    RunSet set = faulty((t, s) -> 1.12 * s, "spin06", "spin07");
    FitResult fit = HealthyFit.told(set, Set.of(), Map.of());
    assertThat(SetAside.recordings(fit)).containsExactlyInAnyOrder("spin06", "spin07");
    Causes causes = new Causes(fit.withoutRuns(Set.of("spin06", "spin07")), set);
    Problem found = causes.problems().get(0);
    assertThat(found.id()).isEqualTo("fit.fouled-or-supply.up");
    assertThat(found.where().run()).contains("spin06");
    assertThat(Double.parseDouble(found.found())).isBetween(9.0, 18.0);
    assertThat(found.details()).containsExactly("spin06, spin07", "spin06, spin07");
    assertThat(causes.told()).containsExactlyInAnyOrder("spin06", "spin07");
    assertThat(causes.problems()).hasSize(1);
  }

  @Test
  void aLargeLastingChangeIsTheGain() {
    RunSet set = faulty((t, s) -> 1.5 * s, "spin06", "spin07");
    FitResult fit =
        HealthyFit.told(set, Set.of(), Map.of()).withoutRuns(Set.of("spin06", "spin07"));
    assertThat(new Causes(fit, set).problems().get(0).id()).isEqualTo("fit.gain.up");
  }

  private static FitResult speeds(Map<String, Double> off) {
    Map<String, Double> values = new HashMap<>();
    off.forEach((run, by) -> values.put("speed " + run, by));
    return HealthyFit.told(SET, off.keySet(), values);
  }

  private static List<String> warnings(FitResult fit) {
    return Diagnosis.warnings(fit, SET).stream()
        .filter(p -> !p.id().equals("fit.one-direction"))
        .map(p -> p.id() + " " + p.where().run().orElse(""))
        .toList();
  }

  @Test
  void theLastSpeedsOffAlikeAreALastingChange() {
    FitResult fit = speeds(Map.of("spin06", 0.1, "spin07", 0.11));
    SetAside.Change change = SetAside.speedChange(fit).orElseThrow();
    assertThat(change.after()).containsExactly("spin06", "spin07");
    assertThat(change.size()).isCloseTo(0.105, within(1e-9));
    assertThat(new Causes(fit, SET).problems().get(0).id()).isEqualTo("fit.moved.up");
  }

  /** Where the first ones are off, the change is the other way. */
  @Test
  void theFirstSpeedsOffAlikeAreALastingChangeToo() {
    SetAside.Change change =
        SetAside.speedChange(speeds(Map.of("spin01", 0.1, "spin02", 0.11))).orElseThrow();
    assertThat(change.before()).containsExactly("spin01", "spin02");
    assertThat(change.size()).isCloseTo(-0.105, within(1e-9));
    assertThat(SetAside.speedChange(speeds(Map.of("spin02", 0.1, "spin04", 0.1)))).isEmpty();
    assertThat(SetAside.speedChange(speeds(Map.of("spin06", 0.1, "spin07", -0.1)))).isEmpty();
    assertThat(SetAside.speedChange(speeds(Map.of("spin07", 0.1)))).isEmpty();
  }

  /** 300 mm written where it was 600: twice as fast; half the turns counted would say the same. */
  @Test
  void twiceAsFastIsAnotherRadiusOrHalfTheTurns() {
    FitResult fit = speeds(Map.of("spin04", 1.0));
    assertThat(warnings(fit)).contains("fit.wrong-radius spin04", "fit.slip-one.half spin04");
    Problem radius =
        Diagnosis.warnings(fit, SET).stream()
            .filter(p -> p.id().equals("fit.wrong-radius"))
            .findFirst()
            .orElseThrow();
    assertThat(radius.details()).containsExactly("300", "600");
    assertThat(Double.parseDouble(radius.found())).isCloseTo(100, within(3.0));
    assertThat(Diagnosis.runsContradict(fit, SET)).isTrue();
    assertThat(Diagnosis.whyNot(fit, SET)).containsEntry("spin04", "why.contradicts");
  }

  @Test
  void aFactorThatNothingExplainsIsAWrongCount() {
    assertThat(warnings(speeds(Map.of("spin04", 0.4)))).contains("fit.wrong-count spin04");
  }

  /** 0.4 and 0.8 m/s: each run asks for the speed that was written of the other. */
  @Test
  void twoRunsThatAskForEachOthersSpeedAreExchanged() {
    FitResult fit = speeds(Map.of("spin02", 1.0, "spin07", -0.5));
    assertThat(LeftOutRuns.exchanged(fit, "spin02", "spin07")).isTrue();
    assertThat(LeftOutRuns.exchanged(fit, "spin02", "spin01")).isFalse();
    List<String> found = new ArrayList<>(warnings(fit));
    assertThat(found).contains("fit.runs-exchanged spin02", "fit.runs-exchanged spin07");
    assertThat(found).noneMatch(w -> w.startsWith("fit.slip-one"));
  }

  /** Half as warm as the formula says in all runs: its residuals are not those of a heated ball. */
  @Test
  void recordingsThatNoFormulaFollowsContradictPhysics() {
    RunSet set =
        FaultyRuns.each(
            SET, r -> FaultyRuns.signal(r, (t, s) -> s * (1 + 0.6 * Math.sin(t / 700))));
    FitResult fit = HealthyFit.told(set, Set.of(), Map.of());
    Problem found =
        UnusableFit.of(fit, set).stream()
            .filter(p -> p.id().equals("fit.contradicts-physics"))
            .findFirst()
            .orElseThrow();
    double share = ResidualReport.of(fit).rms() / fit.setting().largest();
    assertThat(Double.parseDouble(found.found())).isCloseTo(100 * share, within(0.1));
    assertThat(share).isBetween(0.1, 0.6);
  }

  /** Four of seven moved runs that contradict the others are too many. */
  @Test
  void runsOfWhichMostContradictCarryNoCalibration() {
    FitResult four = speeds(Map.of("spin01", 0.5, "spin03", -0.4, "spin05", 0.6, "spin06", -0.4));
    assertThat(UnusableFit.of(four, SET)).extracting(Problem::id).contains("fit.runs-contradict");
    FitResult three = speeds(Map.of("spin01", 0.5, "spin03", -0.4, "spin05", 0.6));
    assertThat(UnusableFit.of(three, SET))
        .extracting(Problem::id)
        .doesNotContain("fit.runs-contradict");
  }

  /** More heat than the recordings came up to: 100 · largest / expected per cent. */
  @Test
  void aWarmUpThatEndedTooSoonIsNamed() {
    double heating = HealthyFit.value("heating");
    FitResult fit = HealthyFit.moved(Map.of("heating", 1.3 * heating));
    Problem found =
        RecordingNotes.of(fit, SET).stream()
            .filter(p -> p.id().equals("fit.not-warmed-up"))
            .findFirst()
            .orElseThrow();
    double still =
        fit.formula()
            .steadyDelta_K(
                fit.draught_m_s(),
                fit.signal().supply_V(),
                AirPoint.of(fit.setting().referenceAir()));
    assertThat(Double.parseDouble(found.found()))
        .isCloseTo(100 * fit.setting().largest() / still, within(0.1));
  }
}
