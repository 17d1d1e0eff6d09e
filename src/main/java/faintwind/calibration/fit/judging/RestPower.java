package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.track.Track;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Heat that the ball takes with the arm at rest, run by run, over what the formula expects: dθ/dt +
 * loss θ against p, by a straight line through each stretch of rest. Where no supply was recorded,
 * it shows a supply that sagged in one run.
 */
final class RestPower {
  private static final double LEAST_S = 90;
  private static final double LONGEST_S = 200;

  /** After a stop, the carried air is gone. */
  private static final double AFTER_STOP_S = 120;

  private static final double LEAST_OFF = 0.015;
  private static final double SURE = 5;
  private static final int LEAST_RUNS = 3;

  private final FitResult fit;
  private final Formula formula;

  private RestPower(FitResult fit) {
    this.fit = fit;
    this.formula = fit.formula();
  }

  /** A run's heat at rest over the expected one, and its standard uncertainty. */
  private static final class Heat {
    double sum;
    double weight;

    void add(double ratio, double u) {
      sum += ratio / (u * u);
      weight += 1 / (u * u);
    }

    double ratio() {
      return sum / weight;
    }

    double u() {
      return 1 / Math.sqrt(weight);
    }
  }

  /** Runs whose heat at rest differs from the other runs' median: relative difference by run. */
  static Map<String, Double> odd(FitResult fit) {
    Map<String, Heat> heats = new RestPower(fit).heats();
    Map<String, Double> odd = new LinkedHashMap<>();
    if (heats.size() < LEAST_RUNS) {
      return odd;
    }
    double median =
        new Median().evaluate(heats.values().stream().mapToDouble(Heat::ratio).toArray());
    heats.forEach(
        (run, heat) -> {
          double off = heat.ratio() / median - 1;
          if (Math.abs(off) > Math.max(LEAST_OFF, SURE * heat.u())) {
            odd.put(run, off);
          }
        });
    return odd;
  }

  private Map<String, Heat> heats() {
    Map<String, Heat> heats = new LinkedHashMap<>();
    for (Track track : fit.problem().tracks()) {
      for (List<Integer> stretch : stretches(track)) {
        int first = stretch.get(0);
        String run = track.runs.get(track.rows.run[first]);
        add(track, stretch, heats.computeIfAbsent(run, r -> new Heat()));
      }
    }
    return heats;
  }

  /** Rows at rest, in stretches of one run that are long enough for a slope. */
  private List<List<Integer>> stretches(Track track) {
    List<List<Integer>> found = new ArrayList<>();
    List<Integer> now = new ArrayList<>();
    for (int i = 0; i <= track.rows.size(); i++) {
      boolean ends =
          i == track.rows.size()
              || !atRest(track, i)
              || (!now.isEmpty() && track.rows.run[i] != track.rows.run[now.get(0)])
              || (!now.isEmpty() && length_s(track, now.get(0), i) > LONGEST_S);
      if (ends) {
        if (now.size() > 5 && length_s(track, now.get(0), now.get(now.size() - 1)) > LEAST_S) {
          found.add(List.copyOf(now));
        }
        now.clear();
      }
      if (i < track.rows.size() && atRest(track, i)) {
        now.add(i);
      }
    }
    return found;
  }

  private static double length_s(Track track, int from, int to) {
    return track.rows.time_s[to] - track.rows.time_s[from];
  }

  /** Warm, far from any turning, and counted. */
  private boolean atRest(Track track, int row) {
    double t = track.rows.time_s[row];
    boolean free =
        track.turns.stream()
            .allMatch(turn -> t < turn.start_s() - 5 || t > turn.stop_s() + AFTER_STOP_S);
    double warm = 0.5 * fit.setting().largest();
    double sign = Math.signum(fit.signal().perKelvin());
    return free && !track.rows.leftOut[row] && sign * track.rows.signal[row] > warm;
  }

  private void add(Track track, List<Integer> stretch, Heat heat) {
    AirPoint air = AirPoint.of(fit.setting().referenceAir());
    double time = 0;
    double delta = 0;
    for (int i : stretch) {
      time += track.rows.time_s[i] / stretch.size();
      delta += formula.delta_K(track.rows.signal[i], air.air_K()) / stretch.size();
    }
    double squares = 0;
    double product = 0;
    for (int i : stretch) {
      double away = track.rows.time_s[i] - time;
      squares += away * away;
      product += away * formula.delta_K(track.rows.signal[i], air.air_K());
    }
    double p = formula.path().heating_K_s();
    double loss = formula.loss_1_s(0, delta, air);
    double noise_K = track.rows.sd[stretch.get(0)] / Math.abs(fit.signal().perKelvin());
    double length = length_s(track, stretch.get(0), stretch.get(stretch.size() - 1));
    double draught = Math.sqrt(fit.solution().wander().rest_s() / length) * loss * delta / p;
    double u = Math.hypot(noise_K / Math.sqrt(squares) / p, draught);
    heat.add((product / squares + loss * delta) / p, Math.max(u, 1e-4));
  }
}
