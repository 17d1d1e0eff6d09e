package faintwind.job.live;

import faintwind.device.PlayedLink.Piece;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * A logger that means no good: what it measured is known, what arrives is spoiled in one way. Every
 * signal is told once only, so that a recorded row can be held against what was measured.
 */
final class FaultyStream {
  static final String HEADER = "time_s,delta_K,air_C,supply_V\n";

  /** How a stream is spoiled. */
  enum Fault {
    CELLS,
    CUT_NUMBER,
    REPEATED_STAMPS,
    CLOCK_SET
  }

  /**
   * What was measured.
   *
   * @param true_s when, since the first
   * @param cells signal, air and supply as they were written
   */
  record Truth(double true_s, List<String> cells) {}

  final List<Piece> pieces = new ArrayList<>();
  final Map<String, Truth> measured = new LinkedHashMap<>();
  private final Random random;
  private final Fault fault;
  private final int rows;
  private double clock_s;
  private double lost_s;
  int set;

  FaultyStream(Fault fault, long seed, int rows, boolean header) {
    this.fault = fault;
    this.rows = rows;
    random = new Random(seed);
    clock_s = 1000 + random.nextInt(90_000);
    if (header) {
      pieces.add(new Piece(Duration.ZERO, HEADER, false));
    }
    double step_s = fault == Fault.REPEATED_STAMPS ? 1.0 / (2 + random.nextInt(3)) : 1;
    for (int i = 0; i < rows; i++) {
      row(i, step_s);
    }
  }

  private void row(int i, double step_s) {
    List<String> cells =
        List.of(
            String.format(Locale.ROOT, "%.5f", 15 + random.nextInt(500) / 100.0 + i * 1e-5),
            String.format(Locale.ROOT, "%.2f", 17 + 4 * random.nextDouble()),
            String.format(Locale.ROOT, "%.3f", 4.9 + 0.2 * random.nextDouble()));
    double true_s = i * step_s + lost_s;
    measured.put(cells.get(0), new Truth(true_s, cells));
    boolean struck = random.nextInt(fault == Fault.CLOCK_SET ? rows / 6 : 8) == 0;
    if (fault == Fault.CLOCK_SET && (i == 1 || (i > 1 && struck))) {
      // back or ahead, by seconds to months
      double by_s = 3 + Math.pow(10, 1 + 6 * random.nextDouble());
      clock_s += random.nextBoolean() ? by_s : -by_s;
      set++;
    }
    double stamp_s = clock_s + true_s;
    String stamp =
        fault == Fault.REPEATED_STAMPS
            ? String.valueOf((long) Math.floor(stamp_s + 1e-9))
            : String.format(Locale.ROOT, "%.1f", stamp_s);
    String line = stamp + "," + String.join(",", cells);
    Duration wait = Duration.ofNanos(i == 0 ? 0 : (long) (step_s * 1e9));
    boolean spoiled = struck && i > 2 && i < rows - 1;
    if (spoiled && fault == Fault.CELLS) {
      pieces.add(new Piece(wait, otherCells(line), false));
    } else if (spoiled && fault == Fault.CUT_NUMBER) {
      cut(line, wait);
    } else {
      pieces.add(new Piece(wait, line + "\n", false));
    }
  }

  private String otherCells(String line) {
    List<String> cells = new ArrayList<>(List.of(line.split(",")));
    int at = random.nextInt(cells.size());
    switch (random.nextInt(6)) {
      case 0 -> cells.remove(at);
      case 1 -> cells.add(at, cells.get(at));
      case 2 -> cells.add("");
      case 3 -> cells.add(String.valueOf(random.nextInt(1000)));
      // the end of a line was lost, or a locale wrote its commas
      case 4 -> {
        return line;
      }
      default -> cells.set(at, cells.get(at).replace('.', ','));
    }
    return String.join(",", cells) + "\n";
  }

  /** The connection breaks; when it is back, the rest of a line comes without its front. */
  private void cut(String line, Duration wait) {
    int torn = random.nextInt(line.length());
    pieces.add(new Piece(wait, line.substring(0, torn), true));
    lost_s += 7;
    int from = 1 + random.nextInt(line.length() - 1);
    pieces.add(new Piece(Duration.ofSeconds(6), line.substring(from) + "\n", false));
  }
}
