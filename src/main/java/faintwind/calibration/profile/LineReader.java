package faintwind.calibration.profile;

import faintwind.message.Problem;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Reads the lines of one log, one after the other, by a profile. What does not fit is told with the
 * field of the profile that it does not fit; nothing is guessed. For one log and one thread.
 */
public final class LineReader {
  private static final String START = "# start:";

  private final ImportProfile profile;
  private final Begin begin;
  private final ReadSoFar soFar;
  private int unread;
  private boolean anyRow;

  /** How the lines begin. */
  public enum Begin {
    /** With the header lines of the profile. */
    FILE,
    /** Anywhere: the logger may have begun long ago, and the first line may be torn. */
    STREAM
  }

  /**
   * A reader before its first line.
   *
   * @param profile what the lines mean
   * @param begin how they begin
   * @param source how messages name them
   */
  public LineReader(ImportProfile profile, Begin begin, String source) {
    this.profile = profile;
    this.begin = begin;
    this.soFar = new ReadSoFar(profile, source);
  }

  /** When the time was 0, where the lines tell it. */
  public Optional<OffsetDateTime> start() {
    return soFar.start();
  }

  /** What a clock on the wall showed when the time was 0, where the lines tell it. */
  public Optional<WallClock> clock() {
    return soFar.clock();
  }

  /** Date and time of the last reading by ISO 8601; empty where the lines tell no date. */
  public Optional<String> stamp() {
    return soFar.stamp();
  }

  /** Says how the letters of the lines were read, for a name that is not found. */
  public void readAs(String encoding) {
    soFar.readAs(encoding);
  }

  /** Readings that had the whole second of the one before and were spread over it. */
  public long spread() {
    return soFar.spread();
  }

  /** Names of the columns, where a header told them. */
  public List<String> names() {
    return soFar.names();
  }

  /** Number of lines read so far. */
  public int lines() {
    return soFar.lines();
  }

  /** The next line, without its end. */
  public LineOutcome read(String line) {
    soFar.nextLine();
    String comment = profile.lines().comment();
    boolean head = begin == Begin.FILE && soFar.lines() <= profile.lines().headerLines();
    if (!head && (line.isBlank() || (!comment.isEmpty() && line.startsWith(comment)))) {
      begun(line);
      return new LineOutcome.Skipped();
    }
    if (line.indexOf('\0') >= 0 && !head) {
      return unreadable(List.of(soFar.problem("import.binary", "delimiter", "")));
    }
    List<String> cells = LineCells.split(unmarked(line), profile.lines().delimiter());
    return head ? header(cells) : row(line, cells);
  }

  /** A line whose beginning may be missing: only a header in it counts. */
  public void readTorn(String line) {
    soFar.nextLine();
    begun(line);
    List<String> cells = LineCells.split(unmarked(line), profile.lines().delimiter());
    if (profile.needsNames() && missingNames(cells).isEmpty()) {
      soFar.name(cells);
    }
  }

  /** A comment of a run file may say when its time was 0. */
  private void begun(String line) {
    if (profile.lines().comment().equals("#") && line.startsWith(START)) {
      try {
        soFar.start(OffsetDateTime.parse(line.substring(START.length()).strip()));
      } catch (DateTimeException e) {
        return; // a comment in somebody's own words
      }
    }
  }

  // a byte-order mark
  private String unmarked(String line) {
    return soFar.lines() == 1 && line.startsWith("\ufeff") ? line.substring(1) : line;
  }

  private LineOutcome header(List<String> cells) {
    boolean here = soFar.lines() == profile.lines().names();
    if (!here || !profile.needsNames()) {
      return new LineOutcome.Skipped();
    }
    List<Problem> missing = missingNames(cells);
    if (missing.isEmpty()) {
      soFar.name(cells);
      return new LineOutcome.Skipped();
    }
    return new LineOutcome.Unreadable(missing);
  }

  private LineOutcome row(String line, List<String> cells) {
    if (profile.needsNames()) {
      List<Problem> missing = missingNames(cells);
      if (missing.isEmpty()) {
        // the header, at the beginning or again after a restart
        soFar.name(cells);
        return new LineOutcome.Skipped();
      }
      if (soFar.names().isEmpty()) {
        return unreadable(missing);
      }
    }
    LineOutcome outcome = new RowReading(soFar, line, cells).outcome();
    if (outcome instanceof LineOutcome.Unreadable bad) {
      return unreadable(bad.problems());
    }
    anyRow = true;
    return outcome;
  }

  /** Before the first reading of a stream come its header and perhaps the end of a torn line. */
  private LineOutcome unreadable(List<Problem> problems) {
    unread++;
    boolean passed =
        begin == Begin.STREAM && !anyRow && unread <= profile.lines().headerLines() + 1;
    return passed ? new LineOutcome.Skipped() : new LineOutcome.Unreadable(problems);
  }

  private List<Problem> missingNames(List<String> cells) {
    TreeSet<String> wanted = new TreeSet<>();
    profile.time().column().filter(ColumnRef::isNamed).ifPresent(c -> wanted.add(c.name()));
    profile.time().date().filter(ColumnRef::isNamed).ifPresent(c -> wanted.add(c.name()));
    profile.columns().stream()
        .map(ValueColumn::column)
        .filter(ColumnRef::isNamed)
        .forEach(c -> wanted.add(c.name()));
    wanted.removeAll(cells);
    String found = ReadSoFar.excerpt(String.join(" | ", cells));
    return wanted.stream().map(name -> missing(name, cells, found)).toList();
  }

  /** A name that is there but for its letters is missing because of the encoding. */
  private Problem missing(String name, List<String> cells, String found) {
    boolean letters =
        !plain(name).equals(name) && cells.stream().anyMatch(c -> plain(c).equals(plain(name)));
    return letters
        ? soFar.problem("import.name-letters", name, found, name, soFar.encoding())
        : soFar.problem("import.name", name, found, name);
  }

  private static String plain(String name) {
    return name.replaceAll("[^ -~]+", "?");
  }
}
