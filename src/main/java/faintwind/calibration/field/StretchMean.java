package faintwind.calibration.field;

import faintwind.calibration.CoverageFactor;
import faintwind.message.Field;
import java.util.Arrays;
import java.util.Optional;

/**
 * Mean speed over a stretch of a log.
 *
 * @param speed_m_s mean over the time that is used
 * @param shared_m_s part of the expanded uncertainty that every speed of the instrument shares
 * @param own_m_s the other part: noise, and of a place the scatter of the means of blocks
 * @param used_s time that is used
 * @param faintShare share of it too faint to tell from still air
 * @param parted whether the two parts could be told from each other
 */
public record StretchMean(
    double speed_m_s,
    double shared_m_s,
    double own_m_s,
    double used_s,
    double faintShare,
    boolean parted) {
  /** A speed, or its uncertainty, as a person may write it down. */
  public static final Field SPEED = Field.number("air.speed_m_s", 0, 100);

  /** Fewer blocks than this say nothing of their scatter. */
  static final int FEWEST_BLOCKS = 5;

  /**
   * How the scatter is found.
   *
   * @param block_s length of a block: at least twice the averaging time of the rows, so that blocks
   *     are as good as independent
   * @param parts which part of an uncertainty is shared
   * @param of what the mean is meant for
   */
  public record How(double block_s, SharedPart parts, Of of) {}

  /** What a mean is meant for. */
  public enum Of {
    /** The air in just this time: how much it changed is no uncertainty. */
    THIS_TIME,
    /** A place, of which the time is a sample: the scatter of its blocks counts. */
    THE_PLACE
  }

  /** A speed with its expanded uncertainty as somebody wrote it down: its parts are not known. */
  public static StretchMean typed(double speed_m_s, double u95_m_s) {
    return new StretchMean(speed_m_s, u95_m_s, 0, 0, speed_m_s <= u95_m_s ? 1 : 0, false);
  }

  /** Expanded uncertainty of the mean, 95 % coverage. */
  public double u95_m_s() {
    return Math.hypot(shared_m_s, own_m_s);
  }

  /**
   * Expanded uncertainty of the difference to another mean of the same instrument: the shared parts
   * go the same way, where they are known.
   */
  public double apart_m_s(StretchMean other) {
    return parted && other.parted
        ? Math.hypot(Math.hypot(own_m_s, other.own_m_s), shared_m_s - other.shared_m_s)
        : Math.hypot(u95_m_s(), other.u95_m_s());
  }

  /** Whether it differs from another by more than the uncertainty allows. */
  public boolean differs(StretchMean other) {
    return Math.abs(speed_m_s - other.speed_m_s) > apart_m_s(other);
  }

  /** Over the rows from one time up to another; empty where none of them is used. */
  public static Optional<StretchMean> of(SpeedSeries rows, double from_s, double to_s, How how) {
    return new Sums(rows, how).mean(rows.from(from_s), rows.from(to_s), from_s);
  }

  /** Over a whole log. */
  public static Optional<StretchMean> of(SpeedSeries rows, How how) {
    return rows.size() == 0
        ? Optional.empty()
        : new Sums(rows, how).mean(0, rows.size(), rows.time_s(0));
  }

  /** Sums over rows and over their blocks. */
  private static final class Sums {
    private final SpeedSeries rows;
    private final How how;
    private double time_s;
    private double speed;
    private double shared;
    private double own2;
    private double faint_s;
    private double[] blocks = new double[16];
    private int blockCount;
    private double blockTime_s;
    private double blockSpeed;

    Sums(SpeedSeries rows, How how) {
      this.rows = rows;
      this.how = how;
    }

    Optional<StretchMean> mean(int first, int end, double from_s) {
      double block = 0;
      for (int i = first; i < end; i++) {
        double its = Math.floor((rows.time_s(i) - from_s) / how.block_s());
        if (its != block) {
          closeBlock();
          block = its;
        }
        if (rows.isUsed(i)) {
          add(i);
        }
      }
      closeBlock();
      if (!(time_s > 0)) {
        return Optional.empty();
      }
      return Optional.of(
          new StretchMean(
              speed / time_s,
              shared / time_s,
              own(),
              time_s,
              faint_s / time_s,
              how.parts().isKnown()));
    }

    private void add(int row) {
      double w = rows.lasts_s(row);
      double v = rows.speed_m_s(row);
      double own = how.parts().own_m_s(v, rows.u95_m_s(row));
      time_s += w;
      speed += w * v;
      shared += w * how.parts().shared_m_s(v, rows.u95_m_s(row));
      own2 += w * own * own;
      faint_s += rows.isFaint(row) ? w : 0;
      blockTime_s += w;
      blockSpeed += w * v;
    }

    /** A block that is half empty says less than the others and stays out of the scatter. */
    private void closeBlock() {
      if (blockTime_s > how.block_s() / 2) {
        if (blockCount == blocks.length) {
          blocks = Arrays.copyOf(blocks, 2 * blockCount);
        }
        blocks[blockCount++] = blockSpeed / blockTime_s;
      }
      blockTime_s = 0;
      blockSpeed = 0;
    }

    /** At least what the rows' own parts say, as one value a block. */
    private double own() {
      double rowsOwn_m_s = Math.sqrt(own2 / time_s);
      if (how.of() == Of.THIS_TIME) {
        return rowsOwn_m_s / Math.sqrt(Math.max(1, blockCount));
      }
      if (blockCount < FEWEST_BLOCKS) {
        return Math.max(rowsOwn_m_s, halfRange());
      }
      double mean = Arrays.stream(blocks, 0, blockCount).average().orElse(0);
      double squares = 0;
      for (int i = 0; i < blockCount; i++) {
        squares += (blocks[i] - mean) * (blocks[i] - mean);
      }
      double scatter = Math.sqrt(squares / (blockCount - 1));
      double factor = CoverageFactor.of(blockCount - 1);
      return Math.max(factor * scatter, rowsOwn_m_s) / Math.sqrt(blockCount);
    }

    private double halfRange() {
      double low = Arrays.stream(blocks, 0, blockCount).min().orElse(0);
      double high = Arrays.stream(blocks, 0, blockCount).max().orElse(0);
      return (high - low) / 2;
    }
  }
}
