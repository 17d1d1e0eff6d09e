package faintwind.job.turntable;

import faintwind.calibration.run.Direction;
import faintwind.files.AtomicFile;
import faintwind.job.FreeName;
import faintwind.message.Numerals;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes the runs table of one staircase recording from what a person noted at the turntable:
 * before the first run the arm is still (warm-up), after each spin it rests until the next run.
 */
public final class TypedRuns {
  private static final String HEAD =
      "run,file,from_s,to_s,kind,radius_mm,u_radius_mm,turns,turns_time_s,spin_start_s,"
          + "spin_stop_s,direction,swirl_pct,u_swirl_pct,speed_m_s,u_speed_m_s\n";

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
   * A steady flow whose speed another instrument gave.
   *
   * @param speed_m_s its speed
   * @param u_m_s standard uncertainty, where known
   * @param from_s when it was steady, on the recording's clock
   * @param to_s until when
   */
  public record Flow(double speed_m_s, OptionalDouble u_m_s, double from_s, double to_s) {}

  /**
   * What holds for all spins.
   *
   * @param uRadius_mm standard uncertainty of the radius, where known
   * @param swirl_pct share of the arm's speed at which the air is carried round, where measured
   * @param uSwirl_pct its standard uncertainty
   */
  public record Arm(
      OptionalDouble uRadius_mm, OptionalDouble swirl_pct, OptionalDouble uSwirl_pct) {
    /** Nothing is known beside the spins. */
    public static final Arm UNKNOWN =
        new Arm(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  /**
   * Everything noted of one recording.
   *
   * @param recording the run file; stands in the folder that the table goes to
   * @param spins in any order
   * @param flows in any order; spins and flows are at least one together
   * @param arm what holds for all spins
   */
  public record Noted(Path recording, List<Spin> spins, List<Flow> flows, Arm arm) {
    public Noted {
      spins = List.copyOf(spins);
      flows = List.copyOf(flows);
      if (spins.isEmpty() && flows.isEmpty()) {
        throw new IllegalArgumentException("no runs");
      }
    }
  }

  /**
   * Writes {@code runs.csv} beside the recording, whole or not at all.
   *
   * @return the table
   * @throws IOException where the disk fails
   */
  public static Path write(Noted noted) throws IOException {
    Path table = freeName(noted.recording());
    AtomicFile.write(table, text(noted).getBytes(StandardCharsets.UTF_8));
    return table;
  }

  /** runs.csv, or runs-2.csv and so on: an earlier table is never overwritten. */
  private static Path freeName(Path recording) {
    return FreeName.beside(recording, "runs.csv");
  }

  /** A row that waits for its place in time. */
  private record Line(double start_s, String text) {}

  static String text(Noted noted) {
    String file = quoted(String.valueOf(noted.recording().getFileName()));
    List<Double> starts =
        Stream.concat(
                noted.spins().stream().map(Spin::start_s), noted.flows().stream().map(Flow::from_s))
            .sorted()
            .toList();
    List<Spin> spins =
        noted.spins().stream().sorted(Comparator.comparingDouble(Spin::start_s)).toList();
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < spins.size(); i++) {
      Spin spin = spins.get(i);
      String to =
          starts.stream()
              .filter(start -> start > spin.start_s())
              .findFirst()
              .map(TypedRuns::number)
              .orElse("");
      lines.add(new Line(spin.start_s(), spin("spin" + (i + 1), file, spin, to, noted.arm())));
    }
    for (int i = 0; i < noted.flows().size(); i++) {
      Flow flow = noted.flows().get(i);
      lines.add(new Line(flow.from_s(), flow("flow" + (i + 1), file, flow)));
    }
    lines.sort(Comparator.comparingDouble(Line::start_s));
    return HEAD
        + cells("still", file, "", number(starts.get(0)), "still", ",,,,,,,,,,")
        + lines.stream().map(Line::text).collect(Collectors.joining());
  }

  private static String spin(String name, String file, Spin spin, String to, Arm arm) {
    String turned =
        String.join(
            ",",
            number(spin.radius_mm()),
            number(arm.uRadius_mm()),
            number(spin.turns()),
            number(spin.turnsTime_s()),
            number(spin.start_s()),
            number(spin.stop_s()),
            spin.direction().map(Direction::word).orElse(""),
            number(arm.swirl_pct()),
            number(arm.uSwirl_pct()));
    return cells(name, file, number(spin.start_s()), to, "spin", turned + ",,");
  }

  private static String flow(String name, String file, Flow flow) {
    String speed = number(flow.speed_m_s()) + "," + number(flow.u_m_s());
    return cells(
        name, file, number(flow.from_s()), number(flow.to_s()), "reference", ",,,,,,,,," + speed);
  }

  private static String cells(String... cells) {
    return String.join(",", cells) + "\n";
  }

  private static String number(OptionalDouble value) {
    return value.isPresent() ? number(value.getAsDouble()) : "";
  }

  private static String number(double value) {
    return Numerals.digits(value, 12);
  }

  private static String quoted(String file) {
    return file.matches("[\\w. -]+") ? file : '"' + file.replace("\"", "\"\"") + '"';
  }
}
