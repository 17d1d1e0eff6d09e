package faintwind.job.turntable;

import faintwind.files.AtomicFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The runs of several lessons as one table: those of the sessions before, each in a folder of its
 * own beside this one's, in front of the runs of this session.
 */
public final class JoinedTable {
  private JoinedTable() {}

  /**
   * Writes the runs of both tables into the later one, whole or not at all.
   *
   * @param earlier table of the session before, which may be joined itself
   * @param later table of this session, in a folder beside
   * @param lesson names the runs of this session, from 2
   */
  public static void join(Path earlier, Path later, int lesson) throws IOException {
    List<String> before = Files.readAllLines(earlier, StandardCharsets.UTF_8);
    List<String> now = Files.readAllLines(later, StandardCharsets.UTF_8);
    List<String> rows = new ArrayList<>(now.subList(0, 1));
    Path whole = earlier.toAbsolutePath();
    String folder = "../" + whole.getName(whole.getNameCount() - 2) + "/";
    before.stream().skip(1).map(row -> elsewhere(row, folder)).forEach(rows::add);
    now.stream().skip(1).map(row -> "lesson" + lesson + "-" + row).forEach(rows::add);
    String text = String.join("\n", rows) + "\n";
    AtomicFile.write(later, text.getBytes(StandardCharsets.UTF_8));
  }

  /** A row whose recording lies in another folder; names and files of a session have no commas. */
  private static String elsewhere(String row, String folder) {
    int name = row.indexOf(',') + 1;
    return row.startsWith("../", name)
        ? row
        : row.substring(0, name) + folder + row.substring(name);
  }
}
