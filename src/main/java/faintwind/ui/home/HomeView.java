package faintwind.ui.home;

import faintwind.job.bench.BenchRow;
import faintwind.ui.part.Mark;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The instruments of a folder at one moment, in words.
 *
 * @param title the one sentence
 * @param lines in the order of who needs you
 * @param clocks that run now
 * @param broken folders that cannot be opened, with what is wrong
 */
public record HomeView(String title, List<Line> lines, List<Clock> clocks, List<String> broken) {
  static final HomeView EMPTY = new HomeView("", List.of(), List.of(), List.of());

  public HomeView {
    lines = List.copyOf(lines);
    clocks = List.copyOf(clocks);
    broken = List.copyOf(broken);
  }

  /**
   * One instrument.
   *
   * @param folder where it is
   * @param name as given
   * @param what metal, size, coat; or that there is no design yet
   * @param lengths one a stage
   * @param state mark and words under the lengths
   * @param next what is next, and a small second line
   * @param board what the board says of its calibration
   */
  public record Line(
      Path folder,
      String name,
      String what,
      List<Length> lengths,
      State state,
      Said next,
      Board board) {
    public Line {
      lengths = List.copyOf(lengths);
    }

    /** Everything the row says, for a screen reader and for whoever looks for a word. */
    String said() {
      List<String> all = new ArrayList<>(List.of(name, what, board.calibration()));
      all.addAll(List.of(state.word(), state.note(), next.sentence()));
      all.addAll(board.notes());
      return String.join(", ", all);
    }
  }

  /**
   * What counts on the bench.
   *
   * @param calibration its speeds and uncertainty in words; empty where none counts
   * @param range the same for a band; empty where none counts
   * @param notes the last jar check, and how many waivers are open
   * @param archived whether it was taken off the bench
   * @param clockRuns whether a clock of it runs, whatever else can be done meanwhile
   */
  public record Board(
      String calibration,
      Optional<BenchRow.Range> range,
      List<String> notes,
      boolean archived,
      boolean clockRuns) {
    static final Board NOTHING = new Board("", Optional.empty(), List.of(), false, false);

    public Board {
      notes = List.copyOf(notes);
    }
  }

  /** A stage's mark with its name. */
  public record Length(Mark mark, String stage) {}

  /** The state of an instrument: mark, word, note. */
  public record State(Mark mark, String word, String note) {}

  /** A sentence and a small line under it. */
  public record Said(String sentence, String detail) {}

  /** A running clock: whose and which, the time left, the share that has gone. */
  public record Clock(String name, String left, double share) {}
}
