package faintwind.calibration.profile;

import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the lines read so far mean for the next: its number, the names of the columns, the time's
 * origin, the turns of the counters. Mutable; for one log and one thread.
 */
final class ReadSoFar {
  private static final int SHOWN = 80;

  private final ImportProfile profile;
  private final String source;
  private final LineTime time;
  private final Map<ValueColumn, Unwrap> turns = new HashMap<>();
  private final LineWidth width = new LineWidth();
  private final SharedSecond second = new SharedSecond();
  private Optional<OffsetDateTime> toldStart = Optional.empty();
  private List<String> names = List.of();
  private String encoding = "UTF-8";
  private double tells_s = 1;
  private int lines;

  ReadSoFar(ImportProfile profile, String source) {
    this.profile = profile;
    this.source = source;
    this.time = new LineTime(profile.time(), profile.lines().decimalMark());
    profile.columns().forEach(c -> c.wrapsAt().ifPresent(turn -> turns.put(c, new Unwrap(turn))));
  }

  ImportProfile profile() {
    return profile;
  }

  void nextLine() {
    lines++;
  }

  int lines() {
    return lines;
  }

  void name(List<String> columns) {
    names = columns;
    int last = columns.size();
    while (last > 1 && columns.get(last - 1).isEmpty()) {
      last--;
    }
    width.named(last);
  }

  LineWidth width() {
    return width;
  }

  List<String> names() {
    return names;
  }

  Optional<OffsetDateTime> start() {
    return toldStart.or(time::start);
  }

  void start(OffsetDateTime told) {
    toldStart = Optional.of(told);
  }

  Optional<WallClock> clock() {
    return time.clock();
  }

  Optional<String> stamp() {
    return time.stamp();
  }

  void readAs(String letters) {
    encoding = letters;
  }

  String encoding() {
    return encoding;
  }

  /** Message id for what should be known of the time just read. */
  Optional<String> timeNote() {
    return time.note();
  }

  /** Time of a reading, as its stamp says it. */
  OptionalDouble time_s(String text) {
    tells_s = time.tells_s(text);
    return time.read(text);
  }

  /** The time of a whole reading, apart from that of the one before. */
  OptionalDouble apart(OptionalDouble time_s) {
    return time_s.isPresent()
        ? OptionalDouble.of(second.place(time_s.getAsDouble(), tells_s))
        : time_s;
  }

  long spread() {
    return second.spread();
  }

  /** The counter of a column, followed over its wrap. */
  double counted(ValueColumn column, double counter) {
    Unwrap wrap = turns.get(column);
    return wrap == null ? counter : wrap.next(counter);
  }

  Where where(String field) {
    return Where.file(source).atLine(lines).atColumn(field);
  }

  Problem problem(String id, String field, String found, String... details) {
    return Problem.error(id, where(field), found, details);
  }

  static String excerpt(String text) {
    String plain = text.replaceAll("\\p{Cntrl}", " ");
    return plain.length() <= SHOWN ? plain : plain.substring(0, SHOWN).strip() + "…";
  }
}
