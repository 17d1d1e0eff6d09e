package faintwind.calibration.fit.judging;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static faintwind.calibration.fit.solving.HealthyFit.SET;
import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.FaultyRuns;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.HealthyFit;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.message.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** One healthy fit, held against tables from which a row or a stretch was taken away. */
class DiagnosisTest {
  private static List<String> of(RunSet set) {
    return Diagnosis.warnings(FIT, set).stream().map(Problem::id).toList();
  }

  private static RunSet without(Predicate<Run> which) {
    return FaultyRuns.only(SET, which.negate());
  }

  /** The arm of these runs turned one way only, and nothing else is to be said. */
  @Test
  void healthyRunsAreWarnedOfTheirOneDirectionOnly() {
    assertThat(of(SET)).containsExactly("fit.one-direction");
    assertThat(Diagnosis.runsContradict(FIT, SET)).isFalse();
    assertThat(Diagnosis.whyNot(FIT, SET)).isEmpty();
  }

  @Test
  void missingKindsOfRunsAreNamed() {
    assertThat(of(without(r -> r.kind() == RunKind.ZERO))).contains("fit.no-zero-run");
    assertThat(of(without(r -> r.kind() == RunKind.STILL))).contains("fit.no-still-run");
  }

  /** Spins 2, 4 and 6 are at 0.4, 0.1 and 0.2 m/s, the others at 0.8 m/s or more. */
  @Test
  void missingLowSpeedsAreNamed() {
    RunSet fast = without(r -> Set.of("spin02", "spin04", "spin06").contains(r.name()));
    assertThat(of(fast)).contains("fit.no-low-speed");
    assertThat(of(without(r -> r.name().equals("spin04")))).doesNotContain("fit.no-low-speed");
  }

  @Test
  void aHoleInARecordingIsNamedWithItsPlace() {
    Series signal = HealthyFit.run("spin02").recording().signal();
    double from_s = signal.first_s() + 100;
    List<Problem> found =
        RecordingNotes.of(FIT, cut("spin02", t -> t > from_s && t < from_s + 200));
    Problem gap = found.stream().filter(p -> p.id().equals("fit.gap")).findFirst().orElseThrow();
    assertThat(gap.where().run()).contains("spin02");
    assertThat(Double.parseDouble(gap.found())).isBetween(200.0, 220.0);
    assertThat(of(cut("spin02", t -> t > from_s && t < from_s + 60))).doesNotContain("fit.gap");
  }

  private static RunSet cut(String run, DoublePredicate away) {
    Series all = HealthyFit.run(run).recording().signal();
    int[] kept = IntStream.range(0, all.size()).filter(i -> !away.test(all.time_s(i))).toArray();
    double[] times = Arrays.stream(kept).mapToDouble(all::time_s).toArray();
    double[] values = Arrays.stream(kept).mapToDouble(all::value).toArray();
    return FaultyRuns.each(
        SET, FaultyRuns.run(run, r -> FaultyRuns.with(r, Series.of(times, values))));
  }

  @Test
  void spikesInARecordingAreCounted() {
    RunSet spiked =
        FaultyRuns.each(
            SET,
            FaultyRuns.run(
                "spin04",
                r -> FaultyRuns.signal(r, (t, s) -> Math.floor(t / 10) % 10 == 0 ? s + 3 : s)));
    assertThat(of(spiked)).contains("fit.spikes");
  }

  /** The first row of a spin below 12 % of the difference in still air. */
  @Test
  void aSpinThatBeginsColdIsNamed() {
    double still_K = still_K();
    for (double share : new double[] {0.11, 0.13}) {
      RunSet cold =
          FaultyRuns.each(
              SET, FaultyRuns.run("spin04", r -> FaultyRuns.signal(r, (t, s) -> share * still_K)));
      assertThat(
              RecordingNotes.of(FIT, cold).stream().anyMatch(p -> p.id().equals("fit.cold-start")))
          .isEqualTo(share < 0.12);
    }
  }

  private static double still_K() {
    return FIT.formula()
        .steadyDelta_K(0, FIT.signal().supply_V(), AirPoint.of(FIT.setting().referenceAir()));
  }

  @Test
  void aRunSetAsideIsToldWithItsReason() {
    FitResult aside = FIT.withoutRuns(Set.of("spin03"));
    assertThat(Diagnosis.whyNot(aside, SET)).isEqualTo(Map.of("spin03", "why.set-aside"));
    assertThat(Diagnosis.runsContradict(aside, SET)).isTrue();
    assertThat(Diagnosis.warnings(aside, SET))
        .filteredOn(p -> p.where().run().equals(Optional.of("spin03")))
        .isNotEmpty();
  }

  /** Nothing ails the run that was set aside here, so that no cause is named. */
  @Test
  void withoutAPatternTheCauseIsAnother() {
    Causes causes = new Causes(FIT.withoutRuns(Set.of("spin03")), SET);
    assertThat(causes.problems()).extracting(Problem::id).containsExactly("fit.ails.other");
    assertThat(causes.told()).containsExactly("spin03");
    assertThat(causes.restsOff("spin03")).isFalse();
    assertThat(new Causes(FIT, SET).problems()).isEmpty();
    assertThat(new Causes(FIT, SET).told()).isEmpty();
  }

  @Test
  void aHealthyFitContradictsNothing() {
    assertThat(UnusableFit.of(FIT, SET)).isEmpty();
  }

  @Test
  void moreCarriedAirThanInMostRoomsIsTold() {
    assertThat(carried(0.05)).doesNotContain("fit.much-carried");
    assertThat(carried(0.08)).contains("fit.much-carried");
  }

  private static List<String> carried(double share) {
    FitResult fit = HealthyFit.moved(Map.of("carried_share", share));
    return Diagnosis.warnings(fit, SET).stream().map(Problem::id).toList();
  }
}
