package faintwind.calibration.survey;

import faintwind.calibration.field.SpeedSeries;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.speed.SpeedRow;
import java.util.Optional;

/**
 * A stay at a place while it lasts: what the instrument says now, and whether it has settled there,
 * by the rule that a stretch of a log is judged by ({@link Stay}).
 */
public final class LiveStay {
  private final Settling settling;
  private final StretchMean.How how;
  private SpeedSeries.Builder rows = new SpeedSeries.Builder();
  private double from_s;
  private double to_s;
  private SpeedRow last = SpeedRow.BAD;

  public LiveStay(Settling settling, StretchMean.How how) {
    this.settling = settling;
    this.how = how;
  }

  /**
   * A look at it.
   *
   * @param now the last row
   * @param since_s time at the place
   * @param visit its mean so far, without the time that it took to settle
   * @param settled whether the mean may be taken for the speed of the place: it is steady, and
   *     rests on more than one average
   */
  public record Look(SpeedRow now, double since_s, Visit visit, boolean settled) {}

  /** The instrument is at another place: what was read before does not count. */
  public void arrive() {
    rows = new SpeedSeries.Builder();
  }

  /** Takes the next row. */
  public void take(double time_s, SpeedRow row) {
    if (rows.size() == 0) {
      from_s = time_s;
    }
    to_s = time_s;
    last = row;
    rows.add(time_s, row);
  }

  /** How things stand; empty where no row has come since the arrival. */
  public Optional<Look> look(String place) {
    if (rows.size() == 0) {
      return Optional.empty();
    }
    // its end is left out of a stretch, and the last row is part of the stay
    double end_s = Math.nextUp(to_s);
    Visit visit = new Stay(rows.build(), settling, how).at(place, from_s, end_s);
    boolean enough = visit.speed().filter(mean -> mean.used_s() >= how.block_s()).isPresent();
    return Optional.of(new Look(last, to_s - from_s, visit, enough && visit.steady()));
  }

  /** How long one waits where the air moves. */
  public double moving_s() {
    return settling.moving_s();
  }

  /** How long one waits at most. */
  public double atMost_s() {
    return settling.atMost_s();
  }
}
