package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.RowJudge.Heater;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The estimator for a live stream: past rows only. Several filters run side by side, each with its
 * own strength of the walk; the one that has foretold the last quarter of an hour best speaks.
 */
public final class FilteredSpeed implements SpeedEstimator {
  private static final double[] STRENGTH = {1e-3, 3e-3, 8e-3, 2e-2, 5e-2};
  private static final int FIRST_CHOICE = 2;

  private final FieldFormula formula;
  private final LogPreparation preparation;
  private final List<Candidate> candidates = new ArrayList<>();
  private final RowJudge judge;
  private final SpeedAverage average;
  private final double noise2;
  private int chosen = FIRST_CHOICE;
  private boolean wasOff;

  FilteredSpeed(Calibration calibration, SpeedSettings settings) {
    formula = new FieldFormula(calibration);
    preparation = new LogPreparation(calibration, formula, settings);
    for (double strength : STRENGTH) {
      candidates.add(new Candidate(new ForwardFilter(calibration, formula), strength * strength));
    }
    judge = new RowJudge(formula, candidates.get(0).filter.limits());
    average = new SpeedAverage(calibration, formula, settings, SpeedAverage.Window.PAST);
    double noise = calibration.performance().noise();
    double least = 2e-6 * Math.abs(calibration.performance().stillSignal());
    noise2 = Math.max(least * least, noise * noise);
  }

  @Override
  public void accept(LogSample sample, Consumer<SpeedRow> ready) {
    Optional<PreparedRow> prepared = preparation.next(sample, formula);
    average.accept(prepared.map(this::estimated), ready);
  }

  @Override
  public void finish(Consumer<SpeedRow> ready) {
    average.finish(ready);
  }

  private EstimatedRow estimated(PreparedRow row) {
    for (Candidate candidate : candidates) {
      candidate.step(row, noise2);
    }
    for (int i = 0; i < candidates.size(); i++) {
      chosen = candidates.get(i).score > candidates.get(chosen).score + 1 ? i : chosen;
    }
    Candidate best = candidates.get(chosen);
    boolean off = best.filter.heaterIsOff();
    Heater heater = off ? Heater.OFF : wasOff ? Heater.CHANGED : Heater.ON;
    wasOff = off;
    HeatState state = best.filter.state();
    return judge.judge(row, state.mean(), state.logVariance(), best.walk2_1_s, heater);
  }

  /** One filter and how well it has foretold lately. */
  private static final class Candidate {
    private static final double MEMORY_S = 900;
    private static final double CLIP2 = 50;
    private static final int SETTLING_ROWS = 20;
    private final ForwardFilter filter;
    private final double walk2_1_s;
    private double score;

    Candidate(ForwardFilter filter, double walk2_1_s) {
      this.filter = filter;
      this.walk2_1_s = walk2_1_s;
    }

    void step(PreparedRow row, double noise2) {
      filter.step(row, walk2_1_s, noise2);
      score *= Math.exp(-row.step_s() / MEMORY_S);
      if (filter.rowsSinceBegin() > SETTLING_ROWS && !filter.heaterIsOff()) {
        Innovation innovation = filter.innovation();
        double miss2 = innovation.miss() * innovation.miss() / innovation.variance();
        score -= 0.5 * (Math.log(innovation.variance()) + Math.min(CLIP2, miss2));
      }
    }
  }
}
