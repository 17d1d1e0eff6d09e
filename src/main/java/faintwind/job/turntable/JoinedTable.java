package faintwind.job.turntable;

import faintwind.files.AtomicFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The runs of several lessons as one table: those of the sessions before, with copies of their
 * recordings, in front of the runs of this session.
 */
public final class JoinedTable {
  private JoinedTable() {}

  /**
   * Copies the recordings before, which stay where they are, and writes the runs of both tables
   * into the later one, whole or not at all.
   *
   * @param earlier table of the session before, which may be joined itself
   * @param later table of this session, in a folder beside
   * @param lesson names the runs of this session, from 2
   */
  public static void join(Path earlier, Path later, int lesson) throws IOException {
    List<String> before = Files.readAllLines(earlier, StandardCharsets.UTF_8);
    List<String> now = Files.readAllLines(later, StandardCharsets.UTF_8);
    Path whole = earlier.toAbsolutePath();
    String session = whole.getName(whole.getNameCount() - 2).toString();
    List<String> rows = new ArrayList<>(now.subList(0, 1));
    for (String row : before.subList(1, before.size())) {
      // names and files of a session have no commas
      String[] cells = row.split(",", 3);
      String copy = copy(cells[1], session);
      Path target = later.resolveSibling(copy);
      if (!Files.exists(target)) {
        Files.copy(earlier.resolveSibling(cells[1]), target);
      }
      rows.add(cells[0] + "," + copy + "," + cells[2]);
    }
    now.stream().skip(1).map(row -> "lesson" + lesson + "-" + row).forEach(rows::add);
    String text = String.join("\n", rows) + "\n";
    AtomicFile.write(later, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Such as live-1-session.csv; one that was copied before keeps its name. */
  private static String copy(String file, String session) {
    return file.matches(".*-\\d+-.*") ? file : session + "-" + file;
  }
}
