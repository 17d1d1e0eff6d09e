package faintwind.job.live;

import faintwind.calibration.live.LiveGap;
import faintwind.calibration.profile.LineOutcome;
import faintwind.calibration.profile.LineReader;
import faintwind.device.SourceEvent;
import faintwind.files.run.RunFileWriter;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns a source's lines into readings and keeps what did not fit. For one recording. */
final class LiveLines {
  /** Lines without a single reading after which the profile is taken not to fit. */
  private static final int PATIENCE = 50;

  /** Of each kind that did not fit, the first in each field is kept for the refusal. */
  private static final int KEPT = 12;

  private final LineReader reader;
  private final List<String> others;
  private final List<Problem> unfit = new ArrayList<>();
  private List<Problem> latest = List.of();
  private long unreadable;
  private boolean anyRow;

  LiveLines(LineReader reader, List<String> others) {
    this.reader = reader;
    this.others = others;
  }

  /** The reading of a line; empty where it is none, see {@link #latest}. */
  Optional<LineOutcome.Row> read(SourceEvent.Line line) {
    latest = List.of();
    if (line.whole() == SourceEvent.Wholeness.PERHAPS_TORN) {
      reader.readTorn(line.text());
      return Optional.empty();
    }
    LineOutcome outcome = reader.read(line.text());
    if (outcome instanceof LineOutcome.Unreadable bad) {
      unreadable++;
      latest = bad.problems();
      latest.forEach(this::keep);
      return Optional.empty();
    }
    if (outcome instanceof LineOutcome.Row row) {
      anyRow = true;
      return Optional.of(row);
    }
    return Optional.empty();
  }

  /** Why the last line could not be read; empty where it could, or was no reading. */
  List<Problem> latest() {
    return latest;
  }

  /** What a reading says in the columns that mean nothing here. */
  List<String> others(LineOutcome.Row row) {
    return others.stream().map(name -> cell(row, name)).toList();
  }

  /** Why the source says that its own record has a break before a reading. */
  Optional<LiveGap> gap(LineOutcome.Row row) {
    return LiveGap.of(cell(row, RunFileWriter.GAP));
  }

  private String cell(LineOutcome.Row row, String name) {
    int at = reader.names().indexOf(name);
    return at >= 0 && at < row.cells().size() ? row.cells().get(at) : "";
  }

  long unreadable() {
    return unreadable;
  }

  /** Whether nothing has fitted for so long that nothing will. */
  boolean fitsNothing() {
    return !anyRow && unreadable >= PATIENCE;
  }

  /** What did not fit, one of a kind. */
  List<Problem> unfit() {
    return List.copyOf(unfit);
  }

  private void keep(Problem problem) {
    boolean known =
        unfit.stream()
            .anyMatch(
                p ->
                    p.id().equals(problem.id())
                        && p.where().column().equals(problem.where().column()));
    if (!known && unfit.size() < KEPT) {
      unfit.add(problem);
    }
  }
}
