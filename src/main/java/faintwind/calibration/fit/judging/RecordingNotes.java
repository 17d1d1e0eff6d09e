package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.track.FileRows;
import faintwind.calibration.fit.track.Spikes;
import faintwind.calibration.fit.track.ZeroReading;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/** What single recordings show: gaps, spikes, supply, warm-up, a leak from heater to signal. */
final class RecordingNotes {
  private static final double LEAST_GAP_S = 30;
  private static final double GAP_STEPS = 10;
  private static final double MOST_SPIKES = 0.002;
  private static final double SUPPLY_DRIFT = 0.01;
  private static final double WARM = 0.93;
  private static final double LEAK = 0.02;

  private RecordingNotes() {}

  static List<Problem> of(FitResult fit, RunSet set) {
    List<Problem> found = new ArrayList<>();
    for (Run run : set.runs()) {
      gap(run, found);
      spikes(run, fit, found);
      supply(run, fit, found);
      leak(run, fit, found);
    }
    if (fit.signal().supply_V().isEmpty()) {
      RestPower.odd(fit)
          .forEach(
              (run, off) ->
                  found.add(
                      Problem.warning(
                          off < 0 ? "fit.supply-sagged" : "fit.supply-rose",
                          Where.run(run),
                          SignalCheck.text(Math.abs(100 * off)),
                          SignalCheck.text(Math.abs(50 * off)))));
    }
    warmUp(fit, found);
    return found;
  }

  private static void gap(Run run, List<Problem> found) {
    Series signal = run.recording().signal();
    double step = FileRows.medianStep(signal);
    for (int i = 1; i < signal.size(); i++) {
      double gap = signal.time_s(i) - signal.time_s(i - 1);
      if (gap > Math.max(LEAST_GAP_S, GAP_STEPS * step)) {
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
    if (run.kind() != RunKind.ZERO && spikes >= 3 && spikes > MOST_SPIKES * signal.size()) {
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
    if (Math.abs(off) > SUPPLY_DRIFT) {
      found.add(
          Problem.warning(
              "fit.supply",
              Where.run(run.name()),
              SignalCheck.text(100 * off),
              SignalCheck.text(median)));
    }
  }

  /** Heater current that gets into the signal: it jumps the moment the heater comes on. */
  private static void leak(Run run, FitResult fit, List<Problem> found) {
    Series signal = run.recording().signal();
    double zero =
        fit.problem().zeros().stream()
            .mapToDouble(ZeroReading::signal)
            .average()
            .orElse(Double.MAX_VALUE);
    if (run.kind() == RunKind.ZERO || zero == Double.MAX_VALUE || signal.size() < 12) {
      return;
    }
    double first = Math.abs(signal.value(2) - zero);
    double later = Math.abs(signal.at(signal.time_s(2) + 10) - zero);
    double largest = fit.setting().largest();
    boolean cold = first < 0.3 * largest && signal.last_s() - signal.first_s() > 600;
    if (cold && first > LEAK * largest && later - first < 0.5 * first) {
      found.add(
          Problem.warning(
              "fit.leak", Where.run(run.name()), SignalCheck.text(100 * first / largest)));
    }
  }

  /** The largest difference at rest must come near what the formula expects of still air. */
  private static void warmUp(FitResult fit, List<Problem> found) {
    double still =
        fit.formula()
            .steadyDelta_K(0, fit.signal().supply_V(), AirPoint.of(fit.setting().referenceAir()));
    double largest_K = fit.setting().largest() / Math.abs(fit.signal().perKelvin());
    if (largest_K < WARM * still) {
      found.add(
          Problem.warning(
              "fit.not-warmed-up", Where.NOWHERE, SignalCheck.text(100 * largest_K / still)));
    }
  }
}
