package faintwind.calibration.speed.state;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * Tells a heater that was lost from a wind that rose, in a stream whose supply is not recorded.
 *
 * <p>A ball that loses its heater falls at first as one in a wind that doubled its loss; then the
 * wind's ball comes to rest at a lower difference while the other falls on, and only a wind that
 * rises ever further could keep up with it. So every few seconds one account begins in which the
 * heater has just been lost and the air stays as it was, and beside it accounts of a wind that
 * jumps by as much as it likes and then walks slowly or fast. The heater is taken to be lost where
 * its account has been likelier than the best of the wind's by a factor of e^20 for long enough
 * (likelihood ratio of two models, Bayes factor: Kass and Raftery 1995, from memory; the factor is
 * this program's choice: winds that rise are common, lost heaters are rare). For one log and one
 * thread.
 */
public final class LostHeater {
  private static final double[] WINDS = {1e-3, 3e-3, 1e-2, 4e-2};

  private final FieldFormula formula;
  private final List<Suspicion> suspicions = new ArrayList<>();
  private double sinceBegun_s;
  private double excess = 1;

  public LostHeater(FieldFormula formula) {
    this.formula = formula;
  }

  /** Forgets every suspicion, as when the log begins anew or the heater is known to be off. */
  public void clear() {
    suspicions.clear();
    sinceBegun_s = 0;
  }

  /**
   * Takes a row in.
   *
   * @param now the state after the row, by the filter that speaks; begins new suspicions
   * @param reading how the filter had foretold the row
   * @return whether the heater must be taken to be lost
   */
  public boolean look(PreparedRow row, HeatState now, Innovation reading, double noise2) {
    weigh(reading);
    boolean lost = false;
    for (Iterator<Suspicion> each = suspicions.iterator(); each.hasNext(); ) {
      Suspicion suspicion = each.next();
      suspicion.step(row, noise2);
      lost |= suspicion.isSure(excess);
      if (suspicion.isHopeless(excess)) {
        each.remove();
      }
    }
    sinceBegun_s += row.step_s();
    if (sinceBegun_s >= OwnChoices.BETWEEN_S && !lost) {
      suspicions.add(new Suspicion(now, Math.max(OwnChoices.BETWEEN_S, row.step_s()), row));
      sinceBegun_s = 0;
    }
    return lost;
  }

  /** How much wilder the readings are than the noise says: their evidence counts less by it. */
  private void weigh(Innovation reading) {
    if (reading.sensitivity() != 0) {
      double miss2 = Math.min(25, reading.miss() * reading.miss() / reading.variance());
      excess += (miss2 - excess) / 300;
    }
  }

  /** One moment at which the heater may have been lost. */
  private final class Suspicion {
    private final Hypothesis lost;
    private final List<Hypothesis> winds = new ArrayList<>();
    private final double within_s;
    private final double jump;
    private double age_s;
    private int rows;

    Suspicion(HeatState now, double within_s, PreparedRow row) {
      this.within_s = within_s;
      jump = now.ratio() * now.ratio();
      lost = new Hypothesis(formula, now, 0, OwnChoices.AIR_AS_IT_WAS * OwnChoices.AIR_AS_IT_WAS);
      lost.state().lostWithin(within_s, row.supplied_K_s());
      for (double strength : WINDS) {
        winds.add(new Hypothesis(formula, now, 1, strength * strength));
      }
    }

    void step(PreparedRow row, double noise2) {
      double room = age_s < within_s ? jump * Math.min(1, row.step_s() / within_s) : 0;
      age_s += row.step_s();
      rows++;
      lost.step(row, noise2);
      for (Hypothesis wind : winds) {
        wind.state().leaveRoom(room);
        wind.step(row, noise2);
      }
    }

    private double evidence(double excess) {
      double best = Double.NEGATIVE_INFINITY;
      for (Hypothesis wind : winds) {
        best = Math.max(best, wind.logLikelihood());
      }
      return (lost.logLikelihood() - best) / Math.max(1, excess);
    }

    boolean isSure(double excess) {
      return age_s >= OwnChoices.LEAST_AGE_S
          && rows >= OwnChoices.LEAST_ROWS
          && evidence(excess) > OwnChoices.SURE;
    }

    boolean isHopeless(double excess) {
      return evidence(excess) < OwnChoices.HOPELESS || age_s > OwnChoices.LONGEST_S;
    }
  }
}
