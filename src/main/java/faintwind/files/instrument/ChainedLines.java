package faintwind.files.instrument;

import faintwind.files.Sha256;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The lines of a journal as bytes, and the hash that each carries of the line before it, as its
 * last key: {@code ,"prev":"…"}} closes the line. The hash is SHA-256 (FIPS 180-4) over the exact
 * bytes of a line without its line feed; the first line carries {@link #START}. Lines that an older
 * program wrote carry none; the entry that begins the chain after them holds the hash of them all.
 *
 * @param lines in their order, an unfinished last one among them
 * @param older hash of all bytes before the first line that carries a hash
 */
record ChainedLines(List<Line> lines, String older) {
  /** What the first line carries: there is no line before it. */
  static final String START = "0".repeat(64);

  private static final String KEY = ",\"prev\":\"";
  private static final String CLOSE = "\"}";

  /**
   * One line.
   *
   * @param raw without its line feed
   * @param sha256 of its bytes
   * @param prev the hash that it carries
   * @param ended whether a line feed follows
   */
  record Line(RawLine raw, String sha256, Optional<String> prev, boolean ended) {
    String text() {
      return raw.text();
    }
  }

  ChainedLines {
    lines = List.copyOf(lines);
  }

  static ChainedLines of(byte[] bytes) {
    List<Line> lines = new ArrayList<>();
    Sha256 sha256 = new Sha256();
    int start = 0;
    int chained = -1;
    while (start < bytes.length) {
      int end = start;
      while (end < bytes.length && bytes[end] != '\n') {
        end++;
      }
      RawLine raw = new RawLine(bytes, start, end);
      Optional<String> prev = prev(raw);
      chained = chained < 0 && prev.isPresent() ? start : chained;
      lines.add(new Line(raw, sha256.of(bytes, start, end - start), prev, end < bytes.length));
      start = end + 1;
    }
    byte[] older = Arrays.copyOf(bytes, chained < 0 ? bytes.length : chained);
    return new ChainedLines(lines, Sha256.of(older));
  }

  /** The same without its last line. */
  ChainedLines withoutLast() {
    return new ChainedLines(lines.subList(0, lines.size() - 1), older);
  }

  /** A line, as it is written after another. */
  static Line after(String prev, String object) {
    String text = object.substring(0, object.length() - 1) + KEY + prev + CLOSE;
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    RawLine raw = new RawLine(bytes, 0, bytes.length);
    return new Line(raw, Sha256.of(bytes), Optional.of(prev), true);
  }

  private static Optional<String> prev(RawLine raw) {
    int start = raw.length() - CLOSE.length() - START.length();
    return start >= KEY.length()
            && raw.has(start + START.length(), CLOSE)
            && raw.has(start - KEY.length(), KEY)
        ? Optional.of(raw.text(start, start + START.length()))
        : Optional.empty();
  }

  /** Hash of the last line; empty where there is none. */
  String head() {
    return lines.isEmpty() ? "" : lines.get(lines.size() - 1).sha256();
  }

  /** Whether any line carries a hash. */
  boolean chained() {
    return lines.stream().anyMatch(line -> line.prev().isPresent());
  }

  /** Whether a line of that hash is there. */
  boolean has(String sha256) {
    return lines.stream().anyMatch(line -> line.sha256().equals(sha256));
  }

  /**
   * Where the chain does not hold, each by the line that is to blame: that before a broken link, or
   * the line itself where the next link is broken as well.
   *
   * @param head the last line as the folder's summary knows it; empty where it is not known or
   *     stands further up
   */
  List<Problem> problems(Where here, Optional<String> head) {
    int first = 0;
    while (first < lines.size() && lines.get(first).prev().isEmpty()) {
      first++;
    }
    if (first == lines.size()) {
      return lines.isEmpty()
          ? List.of()
          : List.of(Problem.warning("journal.unchained", here, String.valueOf(first)));
    }
    TreeSet<Integer> blamed = new TreeSet<>();
    boolean begun = first > 0 && lines.get(first).text().contains("\"what\":\"chain\"");
    if (first > 0 && !begun) {
      blamed.add(0);
    }
    for (int i = begun ? first + 1 : first; i <= lines.size(); i++) {
      if (isBroken(i, head)) {
        blamed.add(Math.max(0, isBroken(i + 1, head) ? i : i - 1));
      }
    }
    List<Problem> problems = new ArrayList<>();
    if (begun && !lines.get(first).text().contains("\"sha256\":\"" + older + "\"")) {
      problems.add(Problem.error("journal.older-altered", here, String.valueOf(first)));
    }
    for (int i : blamed) {
      String text = JournalRules.shortened(lines.get(i).text());
      problems.add(Problem.error("journal.link-broken", here.atLine(i + 1), text));
    }
    return problems;
  }

  /**
   * Whether the link from a line to the one before it is broken; after the last stands the head.
   */
  private boolean isBroken(int i, Optional<String> head) {
    String before = i == 0 ? START : i <= lines.size() ? lines.get(i - 1).sha256() : "";
    if (i < lines.size()) {
      return !lines.get(i).prev().equals(Optional.of(before));
    }
    return i == lines.size() && head.isPresent() && !head.get().equals(before);
  }
}
