package faintwind.report.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The shape of a converted log for a picture the size of a word: the highest speed in each of some
 * equal stretches of its time. A stretch without a speed is a gap and is not drawn over.
 *
 * @param highest_m_s one a stretch, not a number in a gap
 * @param top_m_s the highest of all
 */
public record LogShape(List<Double> highest_m_s, double top_m_s) {
  private static final int STRETCHES = 96;
  private static final int WIDTH = 132;
  private static final int HEIGHT = 26;

  public LogShape {
    highest_m_s = List.copyOf(highest_m_s);
  }

  /**
   * From rows.
   *
   * @param time_s ascending
   * @param speed_m_s as many
   * @param rows how many of them count
   */
  public static LogShape of(double[] time_s, double[] speed_m_s, int rows) {
    double[] highest = new double[STRETCHES];
    Arrays.fill(highest, Double.NaN);
    double top = 0;
    double span = rows < 2 ? 1 : Math.max(1e-9, time_s[rows - 1] - time_s[0]);
    for (int i = 0; i < rows; i++) {
      int at = (int) Math.min(STRETCHES - 1, STRETCHES * (time_s[i] - time_s[0]) / span);
      highest[at] = Double.isNaN(highest[at]) ? speed_m_s[i] : Math.max(highest[at], speed_m_s[i]);
      top = Math.max(top, speed_m_s[i]);
    }
    List<Double> all = new ArrayList<>();
    for (double one : highest) {
      all.add(one);
    }
    return new LogShape(all, top);
  }

  /**
   * Unbroken lines in a box of 0 to 1 each way, y downwards.
   *
   * @return x and y in turn
   */
  public List<List<Double>> lines() {
    List<List<Double>> lines = new ArrayList<>();
    List<Double> line = new ArrayList<>();
    for (int i = 0; i < highest_m_s.size(); i++) {
      double speed = highest_m_s.get(i);
      if (Double.isNaN(speed)) {
        add(lines, line);
        line = new ArrayList<>();
      } else {
        line.add((i + 0.5) / highest_m_s.size());
        line.add(1 - speed / Math.max(1e-9, top_m_s));
      }
    }
    add(lines, line);
    return lines;
  }

  private static void add(List<List<Double>> lines, List<Double> line) {
    if (!line.isEmpty()) {
      lines.add(line);
    }
  }

  /** As a drawing for a page, with a text that stands for it. */
  public String svg(String said) {
    StringBuilder path = new StringBuilder();
    for (List<Double> line : lines()) {
      for (int k = 0; k + 1 < line.size(); k += 2) {
        path.append(k == 0 ? 'M' : 'L');
        path.append(
            String.format(
                Locale.ROOT, "%.1f,%.1f", WIDTH * line.get(k), 1 + (HEIGHT - 2) * line.get(k + 1)));
      }
      path.append(line.size() == 2 ? "h1" : "");
    }
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"shape\" role=\"img\" viewBox=\"0 0 "
        + (WIDTH + " " + HEIGHT + "\" width=\"" + WIDTH + "\" height=\"" + HEIGHT)
        + ("\"><title>" + said + "</title><path d=\"" + path)
        + "\" fill=\"none\" stroke=\"#036480\" stroke-width=\"1.2\"/></svg>";
  }
}
