package faintwind.calibration.fit.health;

import faintwind.calibration.fit.health.HeatBlock.Phase;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.track.Turn;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Heat that the ball takes along a recording, block by block, over what a formula expects: the
 * change of the difference plus the integral of loss · θ, over the integral of p. It integrates
 * nothing but the recording itself, so that a faulty run cannot bend it, and a fault that begins
 * midway shows where it begins.
 */
public final class HeatCourse {
  private final Setting setting;
  private final Formula formula;
  private final Wander wander;
  private final AirPoint air;

  /**
   * Heat courses by a formula.
   *
   * @param setting of the runs, for noise and scale
   * @param formula what is expected
   * @param wander how strongly the loss wanders in healthy runs
   */
  public HeatCourse(Setting setting, Formula formula, Wander wander) {
    this.setting = setting;
    this.formula = formula;
    this.wander = wander;
    this.air = AirPoint.of(setting.referenceAir());
  }

  /**
   * The blocks of one run of a track, in order of time; not those of a ball that is still cold.
   *
   * @param speed_m_s air speed past the ball at the track's rows, as the formula's fit believes it
   *     of speeds as they were written: at rest too, where draught and carried air move it
   */
  public List<HeatBlock> of(Track track, String run, double[] speed_m_s) {
    List<HeatBlock> blocks = new ArrayList<>();
    List<Integer> now = new ArrayList<>();
    Phase phase = Phase.BEFORE;
    for (int i = firstWarm(track); i <= track.rows.size(); i++) {
      Optional<Phase> next =
          i < track.rows.size() && track.runs.get(track.rows.run[i]).equals(run)
              ? phase(track, i)
              : Optional.empty();
      boolean ends =
          next.isEmpty()
              || next.get() != phase
              || (!now.isEmpty()
                  && track.rows.time_s[i] - track.rows.time_s[now.get(0)] > OwnChoices.BLOCK_S);
      if (ends) {
        block(track, now, phase, speed_m_s).ifPresent(blocks::add);
        now.clear();
      }
      if (next.isPresent()) {
        phase = next.get();
        now.add(i);
      }
    }
    return blocks;
  }

  /** Where a recording begins cold, the row at which the ball has begun to warm. */
  private int firstWarm(Track track) {
    double warm = OwnChoices.WARM * setting.largest() / Math.abs(setting.signal().perKelvin());
    int row = 0;
    while (row < track.rows.size() && delta_K(track, row) < warm) {
      row++;
    }
    return row == track.rows.size() ? 0 : row;
  }

  /** Nothing near a change of the arm. */
  private static Optional<Phase> phase(Track track, int row) {
    double t = track.rows.time_s[row];
    Phase phase = Phase.BEFORE;
    for (Turn turn : track.turns) {
      if (settling(t, turn.start_s()) || settling(t, turn.stop_s())) {
        return Optional.empty();
      }
      if (t >= turn.start_s() && t <= turn.stop_s()) {
        return Optional.of(Phase.TURNING);
      }
      if (t > turn.stop_s()) {
        phase = Phase.AFTER;
      }
    }
    return Optional.of(phase);
  }

  private static boolean settling(double t_s, double change_s) {
    return t_s > change_s - OwnChoices.BEFORE_CHANGE_S && t_s < change_s + OwnChoices.SETTLE_S;
  }

  private Optional<HeatBlock> block(
      Track track, List<Integer> rows, Phase phase, double[] speed_m_s) {
    if (rows.size() < OwnChoices.LEAST_BLOCK_ROWS) {
      return Optional.empty();
    }
    double from = track.rows.time_s[rows.get(0)];
    double to = track.rows.time_s[rows.get(rows.size() - 1)];
    if (to - from < OwnChoices.LEAST_BLOCK_S) {
      return Optional.empty();
    }
    Heat heat = heat(track, rows, speed_m_s);
    double sd = track.rows.sd[rows.get(rows.size() / 2)];
    boolean turning = phase == Phase.TURNING;
    return Optional.of(
        new HeatBlock(
            phase,
            from,
            to,
            heat.taken(),
            u(heat, sd / Math.abs(setting.signal().perKelvin()), turning),
            turning ? Math.abs(heat.bySpeed()) * OwnChoices.SPEED_OFF : 0,
            heat.delta_K()));
  }

  /**
   * The heat of one block, over what was given in it.
   *
   * @param weights of its rows
   * @param given_K_s mean of what was given
   * @param taken what the ball took: what it gained and what it lost
   * @param lost what it lost
   * @param bySpeed by how much more would be lost at a higher speed, for its logarithm
   * @param delta_K mean difference
   */
  private record Heat(
      SlopeWeights weights,
      double given_K_s,
      double taken,
      double lost,
      double bySpeed,
      double delta_K) {}

  private Heat heat(Track track, List<Integer> rows, double[] speed_m_s) {
    int n = rows.size();
    double[] delta = new double[n];
    double[] lost = new double[n];
    double[] given = new double[n];
    double[] bySpeed = new double[n];
    for (int k = 0; k < n; k++) {
      int row = rows.get(k);
      double speed = speed_m_s[row];
      delta[k] = delta_K(track, row);
      double[] loss = formula.lossAndSlopes(speed, delta[k], air);
      lost[k] = loss[0] * delta[k];
      bySpeed[k] = loss[1] * speed * delta[k];
      given[k] = formula.path().heating_K_s() * power(track, track.rows.time_s[row]);
    }
    SlopeWeights weights =
        new SlopeWeights(rows.stream().mapToDouble(row -> track.rows.time_s[row]).toArray());
    double mean = weights.mean(given);
    double loss = weights.mean(lost);
    return new Heat(
        weights,
        mean,
        (weights.slope(delta) + loss) / mean,
        loss / mean,
        weights.mean(bySpeed) / mean,
        Arrays.stream(delta).average().orElse(0));
  }

  /** Of noise, of the wander of speed or loss within the block, and of the formula's form. */
  private double u(Heat heat, double noise_K, boolean turning) {
    double byNoise = heat.weights().ofNoise(noise_K) / heat.given_K_s();
    double wandered =
        turning
            ? heat.bySpeed() * heat.bySpeed() * wander.turning_s()
            : heat.lost() * heat.lost() * wander.rest_s();
    return Math.sqrt(
        byNoise * byNoise
            + wandered * heat.weights().density_1_s()
            + OwnChoices.FORM * OwnChoices.FORM);
  }

  private double delta_K(Track track, int row) {
    return formula.delta_K(track.rows.signal[row], air.air_K());
  }

  private static double power(Track track, double t_s) {
    int last = track.grid.time_s.length - 1;
    int at = Arrays.binarySearch(track.grid.time_s, t_s);
    int cell = Math.max(0, Math.min(last - 1, at >= 0 ? at : -at - 2));
    return track.grid.power[cell];
  }
}
