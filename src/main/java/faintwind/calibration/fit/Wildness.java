package faintwind.calibration.fit;

import java.util.Arrays;

/**
 * Parts of runs whose residuals are far wilder than the rest get less weight: a door that opened
 * during a still run, a hand on the arm. Single rows that still stand out are left out.
 */
final class Wildness {
  /** Mean square of whitened residuals above which a part counts as wild. */
  static final double LIMIT = 3;

  private static final double ROW_LIMIT = 7;

  private Wildness() {}

  static void settle(RunProblem problem, Wander wander) {
    for (int k = 0; k < problem.tracks().size(); k++) {
      Track.Rows rows = problem.tracks().get(k).rows;
      Whitening.Course course = problem.course(k);
      double[] white = Whitening.of(rows, course, wander).apply(problem.residuals(k));
      int from = 0;
      while (from < rows.size()) {
        int to = from;
        while (to < rows.size()
            && rows.run[to] == rows.run[from]
            && course.moved[to] == course.moved[from]) {
          to++;
        }
        weigh(rows, white, from, to);
        from = to;
      }
    }
  }

  private static void weigh(Track.Rows rows, double[] white, int from, int to) {
    double[] squares = new double[to - from];
    for (int i = from; i < to; i++) {
      squares[i - from] = white[i] * white[i];
    }
    if (squares.length >= 8) {
      double mean = Arrays.stream(squares).average().orElse(1) * rows.wildness[from];
      double wildness = mean > LIMIT ? mean : 1;
      Arrays.fill(rows.wildness, from, to, wildness);
    }
    for (int i = from; i < to; i++) {
      if (Math.abs(white[i]) > ROW_LIMIT && rows.wildness[i] == 1) {
        rows.leftOut[i] = true;
      }
    }
  }
}
