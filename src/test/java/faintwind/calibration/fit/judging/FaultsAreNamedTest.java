package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.FaultyRuns;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.solving.LeftOutRuns;
import faintwind.calibration.fit.solving.RunOutcomes;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@DisplayName("Faulty data sets are named in plain words (seed 5)")
@Tag("long")
class FaultsAreNamedTest {
  private static final RunSet HEALTHY = SampleRuns.of("bench-b");

  @Test
  void reversedSignIsRefused() {
    assertThat(refusals(FaultyRuns.each(HEALTHY, r -> FaultyRuns.signal(r, (t, s) -> -s))))
        .containsExactly("fit.sign-reversed");
  }

  @Test
  void saturatedChannelIsRefused() {
    assertThat(
            refusals(
                FaultyRuns.each(HEALTHY, r -> FaultyRuns.signal(r, (t, s) -> Math.min(s, 20.48)))))
        .contains("fit.saturated");
  }

  @Test
  void clockInMinutesIsRefused() {
    assertThat(refusals(FaultyRuns.each(HEALTHY, r -> FaultyRuns.clock(r, 1 / 60.0))))
        .contains("fit.clock-in-minutes");
  }

  @Test
  void clockInMillisecondsIsRefused() {
    assertThat(refusals(FaultyRuns.each(HEALTHY, r -> FaultyRuns.clock(r, 1000))))
        .contains("fit.clock-in-ms");
  }

  @Test
  void singleRunIsRefused() {
    assertThat(refusals(FaultyRuns.only(HEALTHY, r -> r.name().equals("spin03"))))
        .contains("fit.too-few-runs");
  }

  @Test
  void runsWithoutMovingAirAreRefused() {
    assertThat(refusals(FaultyRuns.only(HEALTHY, r -> r.kind() != RunKind.SPIN)))
        .contains("fit.no-moved-run");
  }

  @Test
  void heaterThatWasNeverOnIsRefused() {
    Random random = new Random(5);
    assertThat(
            refusals(
                FaultyRuns.each(
                    HEALTHY,
                    r -> FaultyRuns.signal(r, (t, s) -> 0.25 + 0.01 * random.nextGaussian()))))
        .contains("fit.not-heated");
  }

  @Test
  void wrongCountInOneRunIsNamedWithItsRun() {
    Found found = found(FaultyRuns.run("spin04", r -> FaultyRuns.turned(r, 1.25)));
    assertThat(found.idsOf("spin04")).contains("fit.wrong-count");
    assertThat(found.accusedRuns()).containsExactly("spin04");
  }

  @Test
  void wrongRadiusInOneRunIsNamedWithTheRadiusThatFits() {
    Found found = found(FaultyRuns.run("spin05", r -> FaultyRuns.turned(r, 2)));
    assertThat(found.idsOf("spin05")).contains("fit.wrong-radius");
    assertThat(found.accusedRuns()).containsExactly("spin05");
  }

  @Test
  void twoExchangedRunsAreNamed() {
    Found found = found(r -> FaultyRuns.exchanged(r, HEALTHY.runs(), "spin04", "spin05"));
    assertThat(found.idsOf("spin04")).contains("fit.runs-exchanged");
    assertThat(found.idsOf("spin05")).contains("fit.runs-exchanged");
    assertThat(found.accusedRuns()).containsExactlyInAnyOrder("spin04", "spin05");
  }

  @Test
  void countedTurnsExchangedBetweenTwoRunsNameBothEachWithTheOther() {
    RunSet faulty =
        FaultyRuns.each(
            HEALTHY, r -> FaultyRuns.turnsExchanged(r, HEALTHY.runs(), "spin01", "spin06"));
    Checked<Choice> checked = ModelChoice.choose(faulty, () -> false);
    assertThat(checked.problems())
        .filteredOn(p -> p.id().equals("fit.turns-exchanged"))
        .extracting(p -> p.where().run().orElse("") + " " + p.details().get(1))
        .containsExactlyInAnyOrder("spin01 spin06", "spin06 spin01");
  }

  @Test
  void aContradictingRunIsLeftOutAsItsEntrySays() {
    RunSet faulty =
        FaultyRuns.each(HEALTHY, FaultyRuns.run("spin04", r -> FaultyRuns.turned(r, 1.25)));
    FitResult fit = SampleRuns.value(FitToRuns.fit(faulty, () -> false));
    RunSet without = FaultyRuns.only(HEALTHY, r -> !r.name().equals("spin04"));
    FitResult clean = SampleRuns.value(FitToRuns.fit(without, () -> false));
    assertThat(fit.setup().freed()).containsExactly("spin04");
    assertThat(RunOutcomes.of(fit, faulty, Diagnosis.whyNot(fit, faulty)))
        .filteredOn(outcome -> !outcome.used())
        .extracting(faintwind.calibration.RunOutcome::run)
        .containsExactly("spin04");
    assertThat(SampleRuns.rms(SampleRuns.probe("bench-b", fit)))
        .isCloseTo(
            SampleRuns.rms(SampleRuns.probe("bench-b", clean)),
            org.assertj.core.api.Assertions.within(0.006));
  }

  @Test
  void supplyThatSaggedUnrecordedInOneRunIsNamed() {
    double offset = 0.26;
    Found found =
        found(
            r -> {
              Run unrecorded = FaultyRuns.withoutSupply(r);
              return r.name().equals("spin03")
                  ? FaultyRuns.signal(unrecorded, (t, s) -> offset + 0.95 * (s - offset))
                  : unrecorded;
            });
    assertThat(found.idsOf("spin03")).contains("fit.ails.supply.down");
    assertThat(found.accusedRuns()).containsExactly("spin03");
  }

  @Test
  void draughtInTheStillRunIsNamed() {
    Random random = new Random(5);
    double[] wander = {0};
    Found found =
        found(
            FaultyRuns.run(
                "still",
                r ->
                    FaultyRuns.signal(
                        r,
                        (t, s) -> {
                          wander[0] += -wander[0] / 200 + 0.09 * random.nextGaussian();
                          return t > 1200 ? s - Math.abs(wander[0]) : s;
                        })));
    assertThat(found.idsOf("still")).contains("fit.wild-part");
    assertThat(found.accusedRuns()).containsExactly("still");
  }

  @Test
  void wanderingBeyondWhatARoomDoesIsSaid() {
    Random random = new Random(5);
    double[] wander = {0};
    Found found =
        found(
            r ->
                FaultyRuns.signal(
                    r,
                    (t, s) -> {
                      wander[0] += -wander[0] / 60 + 0.004 * random.nextGaussian();
                      return s * (1 + wander[0]);
                    }));
    assertThat(found.problems().stream().map(Problem::id)).contains("fit.beyond-a-room");
  }

  @Test
  void currentLeakingIntoTheSignalIsNamed() {
    Found found =
        found(
            r ->
                r.kind() == RunKind.ZERO
                    ? r
                    : FaultyRuns.signal(
                        r, (t, s) -> s + (r.kind() == RunKind.STILL && t < 19 ? 0 : 2.0)));
    assertThat(found.idsOf("still")).contains("fit.leak");
  }

  @Test
  void spikesAndMissingRowsDoNoHarm() {
    Random random = new Random(5);
    RunSet faulty =
        FaultyRuns.each(
            HEALTHY,
            r -> {
              Run spiked = FaultyRuns.signal(r, (t, s) -> random.nextDouble() < 0.01 ? s + 5 : s);
              return FaultyRuns.with(spiked, thinned(spiked.recording().signal(), random));
            });
    FitResult fit = SampleRuns.value(FitToRuns.fit(faulty, () -> false));
    assertThat(SampleRuns.rms(SampleRuns.probe("bench-b", fit))).isLessThan(0.02);
    assertThat(Diagnosis.warnings(fit, faulty).stream().map(Problem::id)).contains("fit.spikes");
    assertThat(LeftOutRuns.contradicting(fit)).isEmpty();
  }

  @Test
  void shortWarmUpIsNamed() {
    RunSet faulty =
        FaultyRuns.only(
            FaultyRuns.each(
                HEALTHY, r -> r.kind() == RunKind.STILL ? FaultyRuns.cut(r, 0, 500) : r),
            r -> true);
    FitResult fit = SampleRuns.value(FitToRuns.fit(faulty, () -> false));
    assertThat(SampleRuns.rms(SampleRuns.probe("bench-b", fit))).isLessThan(0.05);
  }

  @Test
  void missingStillRunLowSpeedsAndRestsWidenTheBandAndAreSaid() {
    FitResult whole = SampleRuns.value(FitToRuns.fit(HEALTHY, () -> false));
    RunSet fast =
        FaultyRuns.only(
            HEALTHY,
            r -> r.arm().isPresent() ? r.arm().get().speed_m_s() > 0.5 : r.kind() == RunKind.ZERO);
    RunSet poor =
        FaultyRuns.each(
            fast, r -> r.arm().map(a -> FaultyRuns.cut(r, 0, a.spinStop_s() + 20)).orElse(r));
    FitResult fit = SampleRuns.value(FitToRuns.fit(poor, () -> false));
    assertThat(Diagnosis.warnings(fit, poor).stream().map(Problem::id))
        .contains("fit.no-still-run", "fit.no-low-speed", "fit.short-rests");
    assertThat(Verdict.u95_m_s(fit, 0.1)).isGreaterThan(1.5 * Verdict.u95_m_s(whole, 0.1));
    assertThat(Verdict.u95_m_s(fit, 1)).isGreaterThan(1.1 * Verdict.u95_m_s(whole, 1));
  }

  /**
   * The arm's record is handed on to the next calibration, so an assumption must not look sharp.
   */
  @Test
  void shortRestsLeaveTheCarriedAirAsUnsureAsItIs() {
    RunSet brief =
        FaultyRuns.each(
            HEALTHY, r -> r.arm().map(a -> FaultyRuns.cut(r, 0, a.spinStop_s() + 20)).orElse(r));
    FitResult fit = SampleRuns.value(FitToRuns.fit(brief, () -> false));
    assertThat(Diagnosis.warnings(fit, brief).stream().map(Problem::id))
        .contains("fit.short-rests");
    double u = fit.carriedShare().u().orElseThrow();
    assertThat(u).isBetween(0.005, 0.02);
    assertThat(fit.carriedShare().value()).isCloseTo(0.03604, within(2.5 * u));
    assertThat(Verdict.u95_m_s(fit, 1)).isGreaterThan(0.02);
  }

  /** Of 60 K an amplifier near its end gives 7 % less at 30 K and 1 % less at 10 K. */
  @Test
  void anAmplifierThatBendsTheSignalIsNamed() {
    RunSet bent =
        FaultyRuns.each(
            HEALTHY, r -> FaultyRuns.signal(r, (t, signal) -> 60 * Math.tanh(signal / 60)));
    FitResult fit = SampleRuns.value(FitToRuns.fit(bent, () -> false));
    assertThat(Diagnosis.unlikeABall(fit).map(Problem::id)).contains("fit.no-ball.warmth");
    assertThat(Diagnosis.unlikeABall(SampleRuns.value(FitToRuns.fit(HEALTHY, () -> false))))
        .isEmpty();
  }

  @Test
  void statedCarriedAirWinsOverTheRecordings() {
    RunSet stated =
        FaultyRuns.each(
            HEALTHY, r -> r.kind() == RunKind.SPIN ? FaultyRuns.swirl(r, 0.036, 0.0005) : r);
    FitResult fit = SampleRuns.value(FitToRuns.fit(stated, () -> false));
    int share = fit.setup().layout().carriedShare();
    assertThat(fit.values()[share]).isBetween(0.034, 0.038);
  }

  private static Series thinned(Series series, Random random) {
    double[] times = new double[series.size()];
    double[] values = new double[series.size()];
    int n = 0;
    for (int i = 0; i < series.size(); i++) {
      if (random.nextDouble() > 0.05) {
        times[n] = series.time_s(i);
        values[n++] = series.value(i);
      }
    }
    return Series.of(java.util.Arrays.copyOf(times, n), java.util.Arrays.copyOf(values, n));
  }

  private static List<String> refusals(RunSet set) {
    Checked<Choice> checked = ModelChoice.choose(set, () -> false);
    assertThat(checked.isOk()).isFalse();
    return checked.problems().stream().map(Problem::id).distinct().toList();
  }

  private static Found found(UnaryOperator<Run> change) {
    RunSet faulty = FaultyRuns.each(HEALTHY, change);
    FitResult fit = SampleRuns.value(FitToRuns.fit(faulty, () -> false));
    return new Found(Diagnosis.warnings(fit, faulty));
  }

  private record Found(List<Problem> problems) {
    List<String> idsOf(String run) {
      return problems.stream()
          .filter(p -> p.where().run().filter(run::equals).isPresent())
          .map(Problem::id)
          .toList();
    }

    List<String> accusedRuns() {
      return problems.stream().flatMap(p -> p.where().run().stream()).distinct().toList();
    }
  }
}
