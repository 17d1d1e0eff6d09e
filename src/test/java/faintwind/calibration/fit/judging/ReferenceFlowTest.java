package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.solving.LeftOutRuns;
import faintwind.calibration.fit.solving.RunOutcomes;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualInstrument;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.calibration.virtual.VirtualStage.Heater;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Calibrations from steady flows whose speed another instrument gave, and a logger that stopped.
 */
@DisplayName("Reference flows of a made-up build (seed 31), noise and draught included")
class ReferenceFlowTest {
  private static final long SEED = 31;
  private static final VirtualBuild BUILD = VirtualDraw.build(SEED);
  private static final double STILL_S = 2700;
  private static final double FLOW_S = 700;
  private static final double[] FLOWS_M_S = {0.15, 0.4, 0.8, 1.5, 3};
  private static final RunConditions AIR =
      new RunConditions(
          OptionalDouble.empty(),
          OptionalDouble.of(BUILD.room().air().pressure_Pa()),
          OptionalDouble.of(BUILD.room().air().relativeHumidity()),
          Optional.empty(),
          Optional.of(BUILD.chain().wire().name()),
          "made up");
  private static final Recording WHOLE =
      VirtualRehearsal.coldFieldLog(
              BUILD, STILL_S + FLOW_S * FLOWS_M_S.length, ReferenceFlowTest::speed, SEED)
          .recording();

  private static double speed(double t_s) {
    int flow = (int) Math.floor((t_s - STILL_S) / FLOW_S);
    return t_s < STILL_S ? 0 : FLOWS_M_S[Math.min(flow, FLOWS_M_S.length - 1)];
  }

  /** Still air, then the flows, with the other instrument's own errors. */
  private static RunSet runs(Recording whole, double relativeU) {
    Random random = new Random(SEED);
    List<Run> runs = new ArrayList<>();
    runs.add(run("still", RunKind.STILL, whole.window(0, STILL_S), Optional.empty()));
    for (int i = 0; i < FLOWS_M_S.length; i++) {
      double from_s = STILL_S + i * FLOW_S;
      double stated = FLOWS_M_S[i] * (1 + relativeU * random.nextGaussian());
      runs.add(
          run(
              "flow" + i,
              RunKind.REFERENCE,
              whole.window(from_s + 0.1, from_s + FLOW_S),
              Optional.of(Uncertain.of(stated, relativeU * stated))));
    }
    return new RunSet(runs, SignalChain.AS_IS, Optional.empty());
  }

  private static Run run(
      String name, RunKind kind, Recording recording, Optional<Uncertain> reference) {
    return new Run(name, kind, "flows.csv", recording, AIR, Optional.empty(), reference);
  }

  private static FitResult fit(RunSet set) {
    return SampleRuns.value(FitToRuns.fit(set, () -> false));
  }

  /** Relative error at a settled speed of the same build without noise. */
  private static double error(FitResult fit, double speed_m_s) {
    VirtualInstrument quiet = new VirtualInstrument(BUILD.noiseless(), SEED);
    quiet.blow(speed_m_s, Heater.ON);
    quiet.settle();
    double read =
        fit.formula()
            .steadySpeed_m_s(
                quiet.sampleAt(0).signal(),
                OptionalDouble.of(BUILD.heater().supply_V()),
                AirPoint.of(BUILD.room().air()));
    return read / speed_m_s - 1;
  }

  @Test
  void truthLiesWithinTheBandAndTheBandKnowsTheOtherInstrumentsUncertainty() {
    FitResult good = fit(runs(WHOLE, 0.01));
    FitResult poor = fit(runs(WHOLE, 0.04));
    for (double speed_m_s : new double[] {0.2, 0.6, 1, 2}) {
      double u95 = Verdict.u95_m_s(good, speed_m_s) / speed_m_s;
      assertThat(Math.abs(error(good, speed_m_s))).as(speed_m_s + " m/s").isLessThan(u95);
      assertThat(u95).isLessThan(0.06);
      assertThat(Verdict.u95_m_s(poor, speed_m_s) / speed_m_s).isGreaterThan(1.3 * u95);
    }
    assertThat(LeftOutRuns.contradicting(good)).isEmpty();
  }

  @Test
  void noAirIsCarriedRoundInAFlow() {
    FitResult fit = fit(runs(WHOLE, 0.01));
    Run flow = fit.setting().heated().get(1);
    assertThat(RunOutcomes.airSpeed_m_s(fit, flow))
        .isEqualTo(flow.reference_m_s().orElseThrow().value());
  }

  @Test
  void aLoggerThatStoppedForTwoMinutesInAFlowIsSaidAndDoesNoHarm() {
    double from_s = STILL_S + 2 * FLOW_S + 200;
    Recording broken = without(WHOLE, from_s, from_s + 120);
    RunSet set = runs(broken, 0.01);
    FitResult fit = fit(set);
    List<Problem> warnings = Diagnosis.warnings(fit, set);
    assertThat(warnings)
        .filteredOn(p -> p.id().equals("fit.gap"))
        .extracting(p -> p.where().run().orElse(""))
        .containsExactly("flow2");
    assertThat(LeftOutRuns.contradicting(fit)).isEmpty();
    assertThat(Math.abs(error(fit, 1))).isLessThan(Verdict.u95_m_s(fit, 1));
  }

  private static Recording without(Recording whole, double from_s, double to_s) {
    return new Recording(
        whole.unit(),
        cut(whole.signal(), from_s, to_s),
        whole.air_K().map(s -> cut(s, from_s, to_s)),
        whole.pressure_Pa(),
        whole.relativeHumidity(),
        whole.supply_V().map(s -> cut(s, from_s, to_s)),
        whole.start());
  }

  private static Series cut(Series series, double from_s, double to_s) {
    double[] times = new double[series.size()];
    double[] values = new double[series.size()];
    int n = 0;
    for (int i = 0; i < series.size(); i++) {
      if (series.time_s(i) < from_s || series.time_s(i) > to_s) {
        times[n] = series.time_s(i);
        values[n++] = series.value(i);
      }
    }
    return Series.of(java.util.Arrays.copyOf(times, n), java.util.Arrays.copyOf(values, n));
  }
}
