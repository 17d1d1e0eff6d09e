package faintwind.calibration.speed;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Gathers the rows of a log to whole minutes of its clock. A minute's speed is the mean of what the
 * estimator found without averaging, so that nothing of one minute leaks into the next. Rows in
 * which the speed means nothing stay out; where they are more than half of a minute, the minute
 * carries their flag. One row after a break, or a tenth of them beyond the calibrated speeds, is
 * enough. For one log and one thread.
 */
final class MinuteMeans {
  private static final Set<SpeedFlag> OF_THE_MEAN = EnumSet.of(SpeedFlag.FLOOR, SpeedFlag.ABOVE);

  /** Share of its rows beyond which a minute carries their flag. */
  private static final double HALF = 0.5;

  private static final Map<SpeedFlag, Double> SHARE =
      Map.of(SpeedFlag.GAP, 0.0, SpeedFlag.ABOVE, 0.1);

  private final SpeedTeller teller;
  private final Consumer<MinuteSpeed> ready;
  private final WeightedSums sums;
  private final List<EstimatedRow> meant = new ArrayList<>();
  private final Map<SpeedFlag, Integer> flagged = new EnumMap<>(SpeedFlag.class);
  private Optional<EstimatedRow> notMeant = Optional.empty();
  private int rows;
  private double minute;

  MinuteMeans(SpeedTeller teller, Consumer<MinuteSpeed> ready) {
    this.teller = teller;
    sums = teller.sums();
    this.ready = ready;
  }

  /** Takes the next row, empty for one that could not be read: it counts where the last one was. */
  void accept(Optional<EstimatedRow> next) {
    if (next.isEmpty()) {
      rows++;
      flagged.merge(SpeedFlag.BAD, 1, Integer::sum);
      return;
    }
    EstimatedRow row = next.get();
    double its = Math.floor(row.row().time_s() / MinuteSpeed.LENGTH_S);
    if (its != minute) {
      finish();
      minute = its;
    }
    rows++;
    if (row.flags() != 0) {
      SpeedFlag.of(row.flags()).forEach(flag -> flagged.merge(flag, 1, Integer::sum));
    }
    if (row.averages()) {
      if (teller.isAbove(row.speed_m_s())) {
        flagged.merge(SpeedFlag.ABOVE, 1, Integer::sum);
      }
      sums.add(row);
      meant.add(row);
    } else {
      notMeant = next;
    }
  }

  /** Hands on the minute that is open. */
  void finish() {
    if (!meant.isEmpty() || notMeant.isPresent()) {
      ready.accept(new MinuteSpeed(minute * MinuteSpeed.LENGTH_S, rows, speed()));
      rows = 0;
      flagged.clear();
      sums.clear();
      meant.clear();
      notMeant = Optional.empty();
    }
  }

  private SpeedRow speed() {
    SpeedRow told;
    if (meant.isEmpty()) {
      EstimatedRow row = notMeant.orElseThrow();
      told = teller.told(row, WeightedSums.Mean.of(row));
    } else {
      EstimatedRow middle = meant.get(meant.size() / 2);
      told = teller.told(middle, sums.mean(meant.get(0), meant.get(meant.size() - 1)));
    }
    EnumSet<SpeedFlag> flags = EnumSet.noneOf(SpeedFlag.class);
    OF_THE_MEAN.stream().filter(told.flags()::contains).forEach(flags::add);
    flagged.forEach(
        (flag, count) -> {
          if (count > SHARE.getOrDefault(flag, HALF) * rows) {
            flags.add(flag);
          }
        });
    return new SpeedRow(told.speed_m_s(), told.u95_m_s(), flags);
  }
}
