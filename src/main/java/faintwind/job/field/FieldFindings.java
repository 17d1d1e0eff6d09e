package faintwind.job.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What stands out in a converted log: how long the air was how fast, and its strongest gusts. A row
 * counts for the time to the next one, at most ten usual steps, so that a gap counts for nothing.
 *
 * @param length_s time covered
 * @param shares share of the time in each class, in rising order; the last is not usable
 * @param gusts strongest first, at most three
 */
public record FieldFindings(double length_s, List<Share> shares, List<Gust> gusts) {
  private static final double GUST_OVER_MEDIAN = 1.5;
  private static final int MOST_GUSTS = 3;
  private static final double FACTOR_LOW = 3;
  private static final double FACTOR_HIGH = 6;

  public FieldFindings {
    shares = List.copyOf(shares);
    gusts = List.copyOf(gusts);
  }

  /**
   * One class of speed.
   *
   * @param from_m_s lower edge
   * @param to_m_s upper edge, infinite for the highest
   * @param share of the whole time, 0 to 1
   * @param kind what the class is
   */
  public record Share(double from_m_s, double to_m_s, double share, Kind kind) {}

  /** Which class. */
  public enum Kind {
    TOO_FAINT,
    BETWEEN,
    ABOVE,
    NOT_USABLE
  }

  /**
   * A peak of the speed.
   *
   * @param time_s when, on the log's clock
   * @param speed_m_s how strong
   */
  public record Gust(double time_s, double speed_m_s) {}

  /**
   * Findings over the rows of a log.
   *
   * @param floor_m_s smallest speed that can be told from still air
   */
  public static FieldFindings of(FieldRows rows, double floor_m_s) {
    double[] edges = {0, floor_m_s, FACTOR_LOW * floor_m_s, FACTOR_HIGH * floor_m_s};
    double[] time = new double[edges.length + 1];
    double usual = usualStep_s(rows);
    double covered = 0;
    for (int i = 0; i < rows.size(); i++) {
      double gap = i + 1 < rows.size() ? rows.time_s(i + 1) - rows.time_s(i) : usual;
      double counts = Math.min(gap, 10 * usual);
      covered += counts;
      time[rows.isMeant(i) ? classOf(rows.speed_m_s(i), edges) : edges.length] += counts;
    }
    List<Share> shares = new ArrayList<>();
    for (int k = 0; k <= edges.length; k++) {
      boolean last = k >= edges.length - 1;
      shares.add(
          new Share(
              k < edges.length ? edges[k] : 0,
              last ? Double.POSITIVE_INFINITY : edges[k + 1],
              covered > 0 ? time[k] / covered : 0,
              kind(k, edges.length)));
    }
    double length = rows.size() == 0 ? 0 : rows.time_s(rows.size() - 1) - rows.time_s(0);
    return new FieldFindings(length, shares, gusts(rows, floor_m_s));
  }

  private static Kind kind(int index, int classes) {
    if (index == classes) {
      return Kind.NOT_USABLE;
    }
    if (index == 0) {
      return Kind.TOO_FAINT;
    }
    return index == classes - 1 ? Kind.ABOVE : Kind.BETWEEN;
  }

  private static int classOf(double speed_m_s, double[] edges) {
    int found = 0;
    while (found + 1 < edges.length && speed_m_s >= edges[found + 1]) {
      found++;
    }
    return found;
  }

  private static double usualStep_s(FieldRows rows) {
    if (rows.size() < 2) {
      return 1;
    }
    double[] steps = new double[rows.size() - 1];
    for (int i = 1; i < rows.size(); i++) {
      steps[i - 1] = rows.time_s(i) - rows.time_s(i - 1);
    }
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  /**
   * Rows above one and a half times the strong half of the record, joined where they lie within a
   * fortieth of its length; the strongest of each is a gust.
   */
  private static List<Gust> gusts(FieldRows rows, double floor_m_s) {
    double[] meant =
        IntStream.range(0, rows.size())
            .filter(rows::isMeant)
            .mapToDouble(rows::speed_m_s)
            .sorted()
            .toArray();
    if (meant.length == 0) {
      return List.of();
    }
    double usual = Math.max(floor_m_s, meant[(int) (0.9 * (meant.length - 1))]);
    double apart = (rows.time_s(rows.size() - 1) - rows.time_s(0)) / 40;
    List<Gust> found = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (rows.isMeant(i) && rows.speed_m_s(i) > GUST_OVER_MEDIAN * usual) {
        join(found, new Gust(rows.time_s(i), rows.speed_m_s(i)), apart);
      }
    }
    found.sort(Comparator.comparingDouble(Gust::speed_m_s).reversed());
    return found.subList(0, Math.min(MOST_GUSTS, found.size()));
  }

  private static void join(List<Gust> found, Gust next, double apart_s) {
    if (!found.isEmpty()) {
      Gust last = found.get(found.size() - 1);
      if (next.time_s() - last.time_s() < apart_s) {
        if (next.speed_m_s() > last.speed_m_s()) {
          found.set(found.size() - 1, next);
        }
        return;
      }
    }
    found.add(next);
  }
}
