package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.fit.wander.Whitening;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Parts of runs whose residuals are far wilder than those of the other runs get less weight: a door
 * that opened during a still run, a hand on the arm. Parts at rest are compared with parts at rest,
 * parts in moving air with parts in moving air. Single rows that still stand out are left out.
 */
public final class Wildness {
  private Wildness() {}

  /**
   * A stretch of rows of one run, all at rest or all in moving air.
   *
   * @param rows rows of its track
   * @param from first row
   * @param to first row after it
   * @param moved whether air moved
   * @param square mean square of its whitened residuals, its present weight taken off
   */
  record Part(Track.Rows rows, int from, int to, boolean moved, double square) {}

  public static void settle(RunProblem problem, Wander wander) {
    List<Part> parts = parts(problem, wander);
    double rest = usual(parts, false);
    double moved = usual(parts, true);
    for (Part part : parts) {
      double times = part.square() / (part.moved() ? moved : rest);
      Arrays.fill(
          part.rows().wildness, part.from(), part.to(), times > OwnChoices.WILD_PART ? times : 1);
    }
    leaveOutRows(problem, wander);
  }

  static List<Part> parts(RunProblem problem, Wander wander) {
    List<Part> parts = new ArrayList<>();
    for (int k = 0; k < problem.tracks().size(); k++) {
      Track.Rows rows = problem.tracks().get(k).rows;
      boolean[] moved = problem.course(k).moved;
      double[] white = Whitening.of(rows, problem.course(k), wander).apply(problem.residuals(k));
      int from = 0;
      while (from < rows.size()) {
        int to = from;
        while (to < rows.size() && rows.run[to] == rows.run[from] && moved[to] == moved[from]) {
          to++;
        }
        if (to - from >= OwnChoices.LEAST_PART_ROWS && anyCounts(rows, from, to)) {
          parts.add(
              new Part(rows, from, to, moved[from], square(white, from, to) * rows.wildness[from]));
        }
        from = to;
      }
    }
    return parts;
  }

  private static boolean anyCounts(Track.Rows rows, int from, int to) {
    for (int i = from; i < to; i++) {
      if (!rows.leftOut[i]) {
        return true;
      }
    }
    return false;
  }

  private static double square(double[] white, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += Math.min(white[i] * white[i], OwnChoices.WILD_ROW * OwnChoices.WILD_ROW);
    }
    return sum / (to - from);
  }

  private static double usual(List<Part> parts, boolean moved) {
    double[] squares =
        parts.stream().filter(p -> p.moved() == moved).mapToDouble(Part::square).toArray();
    return squares.length < 3 ? Double.POSITIVE_INFINITY : new Median().evaluate(squares);
  }

  /** A row that stood out in an earlier round counts again once the fit has come nearer to it. */
  private static void leaveOutRows(RunProblem problem, Wander wander) {
    for (int k = 0; k < problem.tracks().size(); k++) {
      Track.Rows rows = problem.tracks().get(k).rows;
      double[] off = Whitening.of(rows, problem.course(k), wander).surprises(problem.residuals(k));
      for (int i = 0; i < off.length; i++) {
        rows.leftOut[i] =
            rows.aside[i] || (Math.abs(off[i]) > OwnChoices.WILD_ROW && rows.wildness[i] == 1);
      }
    }
  }
}
