package faintwind.job.field;

import faintwind.report.figure.LogShape;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Reads the shape of a converted log from the speeds file that was kept. Made of what the program
 * wrote itself; a row that somebody changed beyond reading is passed over.
 */
final class SpeedsShape {
  private static final List<String> LAST = List.of("speed_m_s", "u95_m_s", "flag");

  private double[] time_s = new double[4096];
  private double[] speed_m_s = new double[4096];
  private int rows;

  private SpeedsShape() {}

  /**
   * The shape; empty where the file is gone or holds no speed.
   *
   * @throws IOException where it is there and cannot be read
   */
  static Optional<LogShape> of(Path speeds) throws IOException {
    if (!Files.isRegularFile(speeds)) {
      return Optional.empty();
    }
    SpeedsShape shape = new SpeedsShape();
    try (BufferedReader in = Files.newBufferedReader(speeds, StandardCharsets.UTF_8)) {
      shape.read(in);
    }
    return shape.rows == 0
        ? Optional.empty()
        : Optional.of(LogShape.of(shape.time_s, shape.speed_m_s, shape.rows));
  }

  private void read(BufferedReader in) throws IOException {
    int time = -1;
    int columns = 0;
    for (String line = in.readLine(); line != null; line = in.readLine()) {
      if (line.startsWith("#")) {
        continue;
      }
      List<String> cells = Arrays.asList(line.split(",", -1));
      if (columns == 0) {
        columns = cells.size();
        time = cells.indexOf("time_s");
        if (time < 0 || !cells.subList(Math.max(0, columns - LAST.size()), columns).equals(LAST)) {
          return;
        }
      } else if (cells.size() == columns) {
        add(cells.get(time), cells.get(columns - LAST.size()));
      }
    }
  }

  private void add(String time, String speed) {
    try {
      double t = Double.parseDouble(time);
      double v = Double.parseDouble(speed);
      if (rows > 0 && t <= time_s[rows - 1]) {
        return;
      }
      if (rows == time_s.length) {
        time_s = Arrays.copyOf(time_s, 2 * rows);
        speed_m_s = Arrays.copyOf(speed_m_s, 2 * rows);
      }
      time_s[rows] = t;
      speed_m_s[rows] = v;
      rows++;
    } catch (NumberFormatException noNumber) {
      return;
    }
  }
}
