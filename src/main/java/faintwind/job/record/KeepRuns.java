package faintwind.job.record;

import faintwind.files.AtomicFile;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.UnpackFolder;
import faintwind.files.run.ChainFile;
import faintwind.files.run.RunsTable;
import faintwind.job.EnteredFile;
import faintwind.job.SoftwareVersion;
import faintwind.job.formula.RecheckRuns;
import faintwind.job.formula.RecheckRuns.Check;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.Rechecked;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Keeps a runs table with every recording it names in the instrument's folder, and notes it in the
 * journal. A table that lies in the folder already is only noted.
 */
public final class KeepRuns {
  private final Path root;
  private final FileRole role;
  private final String prefix;

  /** Keeps tables of a kind in folders of their own, each with a number after the prefix. */
  private KeepRuns(Path folder, FileRole role, String prefix) {
    this.root = folder.toAbsolutePath().normalize();
    this.role = role;
    this.prefix = prefix;
  }

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
    return read instanceof Checked.Ok<RunsTable> ok
        ? new KeepRuns(folder, FileRole.RUNS_TABLE, "set-")
            .keep(table, ok.value().files(), enter, kept -> List.of())
        : Checked.refused(read.problems());
  }

  /**
   * Checks a calibration of the instrument with a table of one or two speeds, keeps table and
   * recordings beside those of the sessions, and enters what came of it.
   *
   * @param calibration relative to the folder
   * @param words what each run showed is entered in them
   * @return the entry that says what came of it, {@link Rechecked}; refused where the check is, or
   *     where the files cannot be kept
   * @throws IOException where the disk or a permission fails; then nothing is noted
   */
  public static Checked<JournalEntry> recheck(
      Path folder, String calibration, Path table, Enter enter, Messages words) throws IOException {
    Checked<Check> checked = RecheckRuns.check(folder.resolve(calibration), table);
    if (!(checked instanceof Checked.Ok<Check> check)) {
      return Checked.refused(checked.problems());
    }
    boolean agrees = check.value().agrees();
    String text = String.join(" ", check.value().said(words));
    String sha256 = check.value().sha256();
    Optional<String> version = Optional.of(SoftwareVersion.text());
    return new KeepRuns(folder, FileRole.CHECK_TABLE, "check-")
        .keep(
            table,
            check.value().files(),
            enter,
            kept -> List.of(new Rechecked(calibration, sha256, kept, agrees, text, version)));
  }

  /**
   * Copies what lies elsewhere, and enters it.
   *
   * @param more what is entered with it, by the name of the table in the folder
   */
  private Checked<JournalEntry> keep(
      Path table, Map<String, Path> files, Enter enter, Function<String, List<Event>> more)
      throws IOException {
    Path kept = table.toAbsolutePath().normalize();
    Map<String, Path> copies = files;
    if (!kept.startsWith(root)) {
      List<Problem> outside = outside(files, table);
      enter.shut().ifPresent(outside::add);
      if (!outside.isEmpty()) {
        return Checked.refused(outside);
      }
      Path target = copy(kept, files);
      copies = new LinkedHashMap<>();
      for (String name : files.keySet()) {
        copies.put(name, target.resolveSibling(name));
      }
      kept = target;
    }
    List<Event> events = new ArrayList<>(recordings(root, kept, copies));
    events.add(EnteredFile.added(root, role, kept));
    events.addAll(more.apply(EnteredFile.name(root, kept)));
    return enter.plain(Optional.empty(), events);
  }

  /**
   * Enters what a session at the table recorded, before anybody keeps its runs table: the
   * recordings and what stands between junctions and recording. The table itself is entered when it
   * is kept.
   *
   * @param table of a session that is over, in the instrument's folder
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<JournalEntry> recorded(Path folder, Path table, Enter enter)
      throws IOException {
    Checked<RunsTable> read = RunsTable.read(table);
    if (!(read instanceof Checked.Ok<RunsTable> ok)) {
      return Checked.refused(read.problems());
    }
    Path root = folder.toAbsolutePath().normalize();
    List<Event> events = recordings(root, table.toAbsolutePath().normalize(), ok.value().files());
    return events.isEmpty()
        ? Checked.refused(Problem.error("runs.no-recording", Where.file(table.toString()), ""))
        : enter.plain(Optional.empty(), events);
  }

  /** One entry for each file but the table, which is entered after them. */
  private static List<Event> recordings(Path root, Path table, Map<String, Path> files)
      throws IOException {
    Set<Event> known = new HashSet<>();
    new InstrumentFolder(root)
        .open()
        .state()
        .standing(Event.FileAdded.class)
        .forEach(line -> known.add(line.event()));
    List<Event> events = new ArrayList<>();
    for (Path file : new TreeSet<>(files.values())) {
      Path whole = file.toAbsolutePath().normalize();
      String name = String.valueOf(file.getFileName());
      if (whole.startsWith(root) && !whole.equals(table)) {
        FileRole role = name.equals(ChainFile.NAME) ? FileRole.CHAIN : FileRole.RUN;
        Event added = EnteredFile.added(root, role, whole);
        if (!known.contains(added)) {
          events.add(added);
        }
      }
    }
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
  private Path copy(Path table, Map<String, Path> files) throws IOException {
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

  private Path freeFolder(Path runs) {
    int number = 1;
    while (Files.exists(runs.resolve(prefix + number))) {
      number++;
    }
    return runs.resolve(prefix + number);
  }
}
