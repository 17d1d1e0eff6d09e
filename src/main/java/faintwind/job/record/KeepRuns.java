package faintwind.job.record;

import faintwind.files.AtomicFile;
import faintwind.files.instrument.UnpackFolder;
import faintwind.files.run.ChainFile;
import faintwind.files.run.RunsTable;
import faintwind.job.EnteredFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.FileRole;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Keeps a runs table with every recording it names in the instrument's folder, and notes it in the
 * journal. A table that lies in the folder already is only noted.
 */
public final class KeepRuns {
  private KeepRuns() {}

  /**
   * Copies and notes.
   *
   * @param folder the instrument's folder
   * @param table the runs table
   * @param enter writes the entry
   * @return the entry; refused where the table is, or where a recording lies outside the table's
   *     folder, so that its name would not hold in the copy
   * @throws IOException where the disk or a permission fails; then nothing is noted
   */
  public static Checked<JournalEntry> keep(Path folder, Path table, Enter enter)
      throws IOException {
    Checked<RunsTable> read = RunsTable.read(table);
    if (!(read instanceof Checked.Ok<RunsTable> ok)) {
      return Checked.refused(read.problems());
    }
    Path root = folder.toAbsolutePath().normalize();
    Path source = table.toAbsolutePath().normalize();
    Map<String, Path> files = ok.value().files();
    if (source.startsWith(root)) {
      return enter.plain(Optional.empty(), events(root, source, files));
    }
    List<Problem> outside = outside(files, table);
    enter.shut().ifPresent(outside::add);
    if (!outside.isEmpty()) {
      return Checked.refused(outside);
    }
    Path target = copy(root, source, files);
    Map<String, Path> copies = new LinkedHashMap<>();
    files.keySet().forEach(name -> copies.put(name, target.resolveSibling(name)));
    return enter.plain(Optional.empty(), events(root, target, copies));
  }

  /** One entry a file, the table last: it is what the others belong to. */
  private static List<Event> events(Path root, Path table, Map<String, Path> files)
      throws IOException {
    List<Event> events = new ArrayList<>();
    for (Path file : new TreeSet<>(files.values())) {
      Path whole = file.toAbsolutePath().normalize();
      String name = String.valueOf(file.getFileName());
      if (whole.startsWith(root) && !whole.equals(table)) {
        FileRole role = name.equals(ChainFile.NAME) ? FileRole.CHAIN : FileRole.RUN;
        events.add(EnteredFile.added(root, role, whole));
      }
    }
    events.add(EnteredFile.added(root, FileRole.RUNS_TABLE, table));
    return events;
  }

  private static List<Problem> outside(Map<String, Path> files, Path table) {
    List<Problem> problems = new ArrayList<>();
    for (String name : files.keySet()) {
      if (Path.of(name).isAbsolute() || Path.of(name).normalize().startsWith("..")) {
        problems.add(Problem.error("runs.file-outside", Where.file(table.toString()), name));
      }
    }
    return problems;
  }

  /** Copies all or none. */
  private static Path copy(Path root, Path table, Map<String, Path> files) throws IOException {
    Path target = freeFolder(root.resolve("runs"));
    try {
      copy(files, target);
    } catch (IOException e) {
      if (Files.exists(target)) {
        UnpackFolder.delete(target);
      }
      throw e;
    }
    return target.resolve(table.getFileName().toString());
  }

  private static void copy(Map<String, Path> files, Path target) throws IOException {
    for (Map.Entry<String, Path> file : files.entrySet()) {
      Path copy = target.resolve(file.getKey());
      Path parent = copy.getParent();
      if (parent != null) {
        Files.createDirectories(parent);
      }
      AtomicFile.write(copy, Files.readAllBytes(file.getValue()));
    }
  }

  private static Path freeFolder(Path runs) {
    int number = 1;
    while (Files.exists(runs.resolve("set-" + number))) {
      number++;
    }
    return runs.resolve("set-" + number);
  }
}
