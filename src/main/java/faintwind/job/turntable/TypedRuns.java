package faintwind.job.turntable;

import faintwind.calibration.run.Direction;
import faintwind.files.AtomicFile;
import faintwind.job.FreeName;
import faintwind.message.Numerals;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Writes the runs table of one staircase recording from what a person noted at the turntable:
 * before the first spin the arm is still (warm-up), after each spin it rests until the next one.
 */
public final class TypedRuns {
  private static final String HEAD =
      "run,file,from_s,to_s,kind,radius_mm,u_radius_mm,turns,turns_time_s,spin_start_s,"
          + "spin_stop_s,direction\n";

  private TypedRuns() {}

  /**
   * One spin as it was noted.
   *
   * @param radius_mm arm radius to the ball's centre
   * @param turns whole turns from the first counted click to the last
   * @param turnsTime_s time between those clicks
   * @param start_s start on the recording's clock
   * @param stop_s end on the recording's clock
   * @param direction seen from above, where noted
   */
  public record Spin(
      double radius_mm,
      double turns,
      double turnsTime_s,
      double start_s,
      double stop_s,
      Optional<Direction> direction) {}

  /**
   * Writes {@code runs.csv} beside the recording, whole or not at all.
   *
   * @param recording the run file; stands in the folder that the table goes to
   * @param spins at least one, in any order
   * @param uRadius_mm standard uncertainty of the radius, where known
   * @return the table
   * @throws IOException where the disk fails, or a table of that name is there already
   */
  public static Path write(Path recording, List<Spin> spins, OptionalDouble uRadius_mm)
      throws IOException {
    if (spins.isEmpty()) {
      throw new IllegalArgumentException("no spins");
    }
    Path table = freeName(recording);
    AtomicFile.write(
        table,
        text(String.valueOf(recording.getFileName()), spins, uRadius_mm)
            .getBytes(StandardCharsets.UTF_8));
    return table;
  }

  /** runs.csv, or runs-2.csv and so on: an earlier table is never overwritten. */
  private static Path freeName(Path recording) {
    return FreeName.beside(recording, "runs.csv");
  }

  static String text(String file, List<Spin> spins, OptionalDouble uRadius_mm) {
    List<Spin> ordered = spins.stream().sorted(Comparator.comparingDouble(Spin::start_s)).toList();
    StringBuilder text = new StringBuilder(HEAD);
    text.append("still,").append(quoted(file)).append(",,");
    text.append(number(ordered.get(0).start_s())).append(",still,,,,,,,\n");
    for (int i = 0; i < ordered.size(); i++) {
      Spin spin = ordered.get(i);
      text.append("spin").append(i + 1).append(',').append(quoted(file)).append(',');
      text.append(number(spin.start_s())).append(',');
      text.append(i + 1 < ordered.size() ? number(ordered.get(i + 1).start_s()) : "");
      text.append(",spin,").append(number(spin.radius_mm())).append(',');
      text.append(uRadius_mm.isPresent() ? number(uRadius_mm.getAsDouble()) : "").append(',');
      text.append(number(spin.turns())).append(',').append(number(spin.turnsTime_s()));
      text.append(',').append(number(spin.start_s())).append(',').append(number(spin.stop_s()));
      text.append(',').append(spin.direction().map(Direction::word).orElse("")).append('\n');
    }
    return text.toString();
  }

  private static String number(double value) {
    return Numerals.digits(value, 12);
  }

  private static String quoted(String file) {
    return file.matches("[\\w. -]+") ? file : '"' + file.replace("\"", "\"\"") + '"';
  }
}
