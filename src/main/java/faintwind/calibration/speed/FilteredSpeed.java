package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.state.ErrorMemory;
import faintwind.calibration.speed.state.FieldFormula;
import faintwind.calibration.speed.state.ForwardFilter;
import faintwind.calibration.speed.state.HeatState;
import faintwind.calibration.speed.state.HeaterTrace.Heater;
import faintwind.calibration.speed.state.Innovation;
import faintwind.calibration.speed.state.LostHeater;
import faintwind.calibration.speed.state.NoiseLevel;
import faintwind.calibration.speed.state.PreparedRow;
import faintwind.calibration.speed.state.RecentNoise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The estimator for a live stream: past rows only. Several filters run side by side, each with its
 * own strength of the walk; the one that has foretold the last quarter of an hour best speaks. One
 * whose innovations drift off opens for a jump of the wind and is forgiven all but a little of what
 * it had not foreseen: a single step does not make the air look gusty for a quarter of an hour.
 */
public final class FilteredSpeed implements SpeedEstimator {
  static final double[] STRENGTH = {1e-3, 3e-3, 8e-3, 1.6e-2, 2.6e-2, 5e-2};

  private final FieldFormula formula;
  private final LogPreparation preparation;
  private final List<Candidate> candidates = new ArrayList<>();
  private final RowJudge judge;
  private final SpeedMeans means;
  private final LostHeater lostHeater;
  private final RecentNoise noise;
  private int chosen = OwnChoices.FIRST_WALK;
  private boolean wasOff;

  FilteredSpeed(
      Calibration calibration, SpeedSettings settings, Optional<Consumer<MinuteSpeed>> minutes) {
    formula = FieldFormula.forLog(calibration);
    preparation = new LogPreparation(calibration, formula, settings);
    for (double strength : STRENGTH) {
      candidates.add(new Candidate(new ForwardFilter(calibration, formula), strength * strength));
    }
    lostHeater = new LostHeater(formula);
    judge = new RowJudge(formula, candidates.get(0).filter.limits(), ErrorMemory.FILTERED);
    means =
        new SpeedMeans(
            calibration, formula, settings.average_s(), SpeedAverage.Window.PAST, minutes);
    noise =
        new RecentNoise(calibration.performance().noise(), calibration.performance().stillSignal());
  }

  @Override
  public void accept(LogSample sample, Consumer<SpeedRow> ready) {
    Optional<PreparedRow> prepared = preparation.next(sample, formula);
    means.accept(prepared.map(this::estimated), ready);
  }

  @Override
  public void finish(Consumer<SpeedRow> ready) {
    means.finish(ready);
  }

  private EstimatedRow estimated(PreparedRow row) {
    NoiseLevel level = noise.level(row);
    double noise2 = level.variance();
    for (Candidate candidate : candidates) {
      candidate.step(row, noise2);
    }
    for (int i = 0; i < candidates.size(); i++) {
      chosen =
          candidates.get(i).score > candidates.get(chosen).score + OwnChoices.SWITCH_MARGIN
              ? i
              : chosen;
    }
    Candidate best = candidates.get(chosen);
    lookForLoss(row, best.filter, noise2);
    boolean off = best.filter.heaterIsOff();
    Heater heater = off ? Heater.OFF : wasOff ? Heater.CHANGED : Heater.ON;
    wasOff = off;
    HeatState state = best.filter.state();
    judge.reads(level);
    return judge.judge(row, state.mean(), state.logVariance(), best.walk2_1_s, heater);
  }

  private void lookForLoss(PreparedRow row, ForwardFilter filter, double noise2) {
    boolean known = row.supply() != PreparedRow.Supply.NOT_RECORDED;
    if (known || filter.heaterIsOff() || !filter.settled() || filter.restarted()) {
      lostHeater.clear();
    } else if (lostHeater.look(row, filter.state(), filter.innovation(), noise2)) {
      lostHeater.clear();
      candidates.forEach(candidate -> candidate.filter.heaterLost(row));
    }
  }

  /** One filter and how well it has foretold lately. */
  private static final class Candidate {
    private final ForwardFilter filter;
    private final double walk2_1_s;
    private double score;
    private double scoreBefore;
    private double drift;
    private double room;
    private double usual2 = 1;

    Candidate(ForwardFilter filter, double walk2_1_s) {
      this.filter = filter;
      this.walk2_1_s = walk2_1_s;
    }

    void step(PreparedRow row, double noise2) {
      filter.step(row, walk2_1_s, noise2, room);
      room = 0;
      score *= Math.exp(-row.step_s() / OwnChoices.SCORE_MEMORY_S);
      if (filter.heaterIsOff() || filter.restarted()) {
        drift = 0;
        return;
      }
      Innovation innovation = filter.innovation();
      double miss = innovation.miss() / Math.sqrt(innovation.variance());
      if (filter.rowsSinceBegin() > OwnChoices.SCORE_AFTER_ROWS) {
        score -=
            0.5 * (Math.log(innovation.variance()) + Math.min(OwnChoices.SCORE_CLIP2, miss * miss));
        lookForJump(miss);
      }
    }

    /** White innovations keep their running sum small; one that drifts off tells of a jump. */
    private void lookForJump(double miss) {
      if (Math.abs(drift) < 1) {
        scoreBefore = score;
      }
      usual2 += (Math.min(OwnChoices.USUAL_CLIP2, miss * miss) - usual2) / OwnChoices.USUAL_ROWS;
      drift =
          OwnChoices.DRIFT_KEEP * drift
              + Math.sqrt(1 - OwnChoices.DRIFT_KEEP * OwnChoices.DRIFT_KEEP) * miss;
      if (Math.abs(drift) > OwnChoices.SURE_JUMP * Math.max(1, Math.sqrt(usual2))) {
        double ratio = Math.max(1, filter.state().ratio());
        room = OwnChoices.JUMP_SHARE * OwnChoices.JUMP_SHARE * ratio * ratio;
        score = Math.max(score, scoreBefore - OwnChoices.JUMP_COST);
        drift = 0;
      }
    }
  }
}
