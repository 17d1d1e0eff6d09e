package faintwind.files.run;

import faintwind.calibration.live.LiveSample;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineOutcome;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.profile.TimeForm;
import faintwind.calibration.profile.WallClock;
import faintwind.files.ProblemList;
import faintwind.files.TextLines;
import faintwind.files.table.TableSource;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lines of a foreign log after its header, as rows of a run file: one line each, so that the
 * numbers of lines stay those of the file. In bounded memory. {@link #head} comes first.
 */
final class ForeignRows extends InputStream {
  private static final int LOOKED_AT_LINES = 1000;

  private static final String STAMP = "time_iso";

  private final InputStream in;
  private final TextLines lines;
  private final LineReader reader;
  private final ImportProfile profile;
  private final RunRowText cells;
  private final String name;
  private final Unreadable unreadable;
  private final ProblemList problems = new ProblemList();
  private final StringBuilder text = new StringBuilder();
  private byte[] ready = new byte[0];
  private int given;
  private boolean dated;

  /** What stands for a line that does not fit the profile. */
  enum Unreadable {
    /** A blank line; a problem names the line. */
    BLANK,
    /** A row without values. */
    EMPTY_ROW
  }

  /** Looks at what the bytes are; refused where they are no table at all. */
  static Checked<ForeignRows> open(
      InputStream in, ImportProfile profile, String name, Unreadable unreadable)
      throws IOException {
    return TableSource.open(in, name)
        .map(source -> new ForeignRows(source, profile, name, unreadable));
  }

  private ForeignRows(TableSource source, ImportProfile asked, String name, Unreadable unreadable) {
    this.in = source.in();
    this.lines = new TextLines(in);
    ImportProfile profile = source.form() == TableSource.Form.SHEET ? asked.ofSheet() : asked;
    this.reader = new LineReader(profile, LineReader.Begin.FILE, name);
    this.profile = profile;
    this.cells = new RunRowText(profile.unit(), profile.liveColumns());
    this.name = name;
    this.unreadable = unreadable;
    reader.readAs(source.form().word());
  }

  /** Reads up to the first row; refused where the header or none of the first lines fits. */
  Checked<LogColumns> head() throws IOException {
    if (profile.time().form() == TimeForm.RECEIVED) {
      return Checked.refused(Problem.error("import.no-time", Where.file(name), ""));
    }
    ProblemList unfit = new ProblemList();
    boolean found = false;
    boolean fits = true;
    while (!found && fits && reader.lines() < LOOKED_AT_LINES && lines.next()) {
      LineOutcome outcome = readLine();
      if (outcome instanceof LineOutcome.Unreadable bad) {
        unfit.addAll(bad.problems());
        // a header without the names needs no second look
        fits = reader.lines() > profile.lines().headerLines();
      }
      found = outcome instanceof LineOutcome.Row;
      dated |= reader.stamp().isPresent();
      take(outcome);
    }
    if (found) {
      refill();
      return Checked.ok(
          new LogColumns(names(), profile.unit(), reader.start(), ','), problems.list());
    }
    return Checked.refused(unfit(unfit));
  }

  /** What a clock on the wall showed when the time was 0. */
  Optional<WallClock> clock() {
    return reader.clock();
  }

  private LineOutcome readLine() {
    if (reader.lines() < LOOKED_AT_LINES && !lines.isUtf8()) {
      reader.readAs(TableSource.Form.WINDOWS_1252.word());
    }
    return reader.read(lines.text());
  }

  /** The columns of the rows; the date passes through where the lines have one. */
  private List<String> names() {
    List<String> names = new ArrayList<>(cells.names());
    if (dated) {
      names.add(STAMP);
    }
    return names;
  }

  private List<Problem> unfit(ProblemList unfit) {
    Where where = Where.file(name);
    if (!unfit.hasErrors()) {
      String id = reader.lines() == 0 ? "file.empty" : "file.no-rows";
      return List.of(Problem.error(id, where, ""));
    }
    List<Problem> all = new ArrayList<>();
    if (reader.lines() > profile.lines().headerLines()) {
      all.add(Problem.error("import.nothing-fits", where, String.valueOf(reader.lines())));
    }
    all.addAll(unfit.list());
    return all;
  }

  /** How many of the rows read so far had the whole second of the row before, if any. */
  List<Problem> spread() {
    String count = String.valueOf(reader.spread());
    return reader.spread() == 0
        ? List.of()
        : List.of(Problem.warning("live.spread", Where.file(name), count));
  }

  /** Adds what did not fit to what was read of the rows. */
  <T> Checked<T> with(Checked<T> read) {
    problems.addAll(spread());
    if (!problems.hasErrors()) {
      List<Problem> more = new ArrayList<>(problems.list());
      more.removeAll(read.problems()); // the head tells its own
      return Checked.ok(true, more).then(nothing -> read);
    }
    ProblemList all = new ProblemList();
    all.addAll(problems.list());
    read.problems().stream().filter(Problem::isError).forEach(all::add);
    return Checked.refused(all.list());
  }

  private void take(LineOutcome outcome) {
    if (outcome instanceof LineOutcome.Row row) {
      LiveSample sample = row.sample();
      cells.append(text, sample);
      text.append(dated ? "," + reader.stamp().orElse("") : "").append('\n');
      problems.addAll(row.notes());
    } else if (outcome instanceof LineOutcome.Unreadable bad) {
      problems.addAll(bad.problems());
      String empty = ",".repeat(names().size() - 1);
      text.append(unreadable == Unreadable.EMPTY_ROW ? empty : "").append('\n');
    } else if (unreadable == Unreadable.BLANK && reader.lines() > profile.lines().headerLines()) {
      text.append('\n');
    }
  }

  private void refill() {
    ready = text.toString().getBytes(StandardCharsets.UTF_8);
    text.setLength(0);
    given = 0;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] target, int from, int length) throws IOException {
    while (given == ready.length) {
      if (!lines.next()) {
        return -1;
      }
      take(readLine());
      refill();
    }
    int count = Math.min(length, ready.length - given);
    System.arraycopy(ready, given, target, from, count);
    given += count;
    return count;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
