package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.health.Leak;
import faintwind.calibration.fit.health.SignalCheck;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.track.FileRows;
import faintwind.calibration.fit.track.Spikes;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/** What single recordings show: gaps, spikes, supply, warm-up, a leak from heater to signal. */
final class RecordingNotes {
  private RecordingNotes() {}

  static List<Problem> of(FitResult fit, RunSet set) {
    List<Problem> found = new ArrayList<>();
    for (Run run : set.runs()) {
      gap(run, found);
      spikes(run, fit, found);
      supply(run, fit, found);
      coldStart(run, fit, found);
    }
    warmUp(fit, found);
    return found;
  }

  private static void gap(Run run, List<Problem> found) {
    Series signal = run.recording().signal();
    double step = FileRows.medianStep(signal);
    for (int i = 1; i < signal.size(); i++) {
      double gap = signal.time_s(i) - signal.time_s(i - 1);
      if (gap > Math.max(OwnChoices.LEAST_GAP_S, OwnChoices.GAP_STEPS * step)) {
        found.add(
            Problem.warning(
                "fit.gap",
                Where.run(run.name()),
                SignalCheck.text(gap),
                SignalCheck.text(signal.time_s(i - 1))));
        return;
      }
    }
  }

  private static void spikes(Run run, FitResult fit, List<Problem> found) {
    Series signal = run.recording().signal();
    int spikes = Spikes.in(signal, fit.setting().noise()).size();
    if (run.kind() != RunKind.ZERO
        && spikes >= 3
        && spikes > OwnChoices.MOST_SPIKES * signal.size()) {
      found.add(
          Problem.warning(
              "fit.spikes",
              Where.run(run.name()),
              String.valueOf(spikes),
              String.valueOf(signal.size())));
    }
  }

  private static void supply(Run run, FitResult fit, List<Problem> found) {
    if (run.kind() == RunKind.ZERO
        || run.recording().supply_V().isEmpty()
        || fit.signal().supply_V().isEmpty()) {
      return;
    }
    double median = new Median().evaluate(run.recording().supply_V().get().values());
    double off = median / fit.signal().supply_V().getAsDouble() - 1;
    if (Math.abs(off) > OwnChoices.SUPPLY_DRIFT) {
      found.add(
          Problem.warning(
              "fit.supply",
              Where.run(run.name()),
              SignalCheck.text(100 * off),
              SignalCheck.text(median)));
    }
  }

  /** A spin that begins long before the ball has come to rest warm. */
  private static void coldStart(Run run, FitResult fit, List<Problem> found) {
    if (run.kind() != RunKind.SPIN) {
      return;
    }
    Formula formula = fit.formula();
    AirPoint air = AirPoint.of(fit.setting().referenceAir());
    double start_K = formula.delta_K(run.recording().signal().value(0), air.air_K());
    double still_K = formula.steadyDelta_K(0, fit.signal().supply_V(), air);
    if (start_K < OwnChoices.COLD * still_K) {
      found.add(
          Problem.warning(
              "fit.cold-start",
              Where.run(run.name()),
              SignalCheck.text(Math.max(0, start_K)),
              SignalCheck.text(still_K)));
    }
  }

  /** Heater current that gets into the signal, told once. */
  static List<Problem> leaks(RunSet set) {
    for (Run run : set.runs()) {
      OptionalDouble leak = Leak.in(run, set);
      if (leak.isPresent()) {
        return List.of(
            Problem.warning(
                "fit.leak", Where.run(run.name()), SignalCheck.text(100 * leak.getAsDouble())));
      }
    }
    return List.of();
  }

  /** The largest difference must come near what the formula expects at rest in this room's air. */
  private static void warmUp(FitResult fit, List<Problem> found) {
    AirPoint air = AirPoint.of(fit.setting().referenceAir());
    double still = fit.formula().steadyDelta_K(fit.draught_m_s(), fit.signal().supply_V(), air);
    double largest_K = fit.setting().largest() / Math.abs(fit.signal().perKelvin());
    if (largest_K < OwnChoices.WARM * still) {
      found.add(
          Problem.warning(
              "fit.not-warmed-up", Where.NOWHERE, SignalCheck.text(100 * largest_K / still)));
    }
  }
}
