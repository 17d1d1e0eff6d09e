package faintwind.files.run;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.NotCounted;
import faintwind.calibration.run.Possible;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.Uncertain;
import faintwind.files.AtomicFile;
import faintwind.files.NumberCell;
import faintwind.files.ProblemList;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A runs table with everything it names: the run files and, where it stands beside the table, the
 * chain. Format in docs/formats/runs-table.md. All problems of the table and of its files are told
 * at once: {@link TableFile} cuts the lines into cells and counts them, {@link RunRow} reads a row,
 * {@link RunsTableRules} judges.
 *
 * @param runSet the runs, each cut to its window
 * @param files every file that was read, by the name a person knows it under: the table first
 */
public record RunsTable(RunSet runSet, Map<String, Path> files) {

  public RunsTable {
    files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
  }

  /**
   * Reads the table, its run files and {@code chain.json} beside it.
   *
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public static Checked<RunsTable> read(Path table) throws IOException {
    return new Reader(table, Optional.empty(), Purpose.FORMULA).read();
  }

  /** The same; run files may lie outside the folder of the table, where a person allowed it. */
  public static Checked<RunsTable> readAnywhere(Path table, Optional<ImportProfile> profile)
      throws IOException {
    return new Reader(table, profile, Purpose.ANYWHERE).read();
  }

  /**
   * The same for a short check of a formula that is there: one run is enough.
   *
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public static Checked<RunsTable> readForCheck(Path table) throws IOException {
    return new Reader(table, Optional.empty(), Purpose.CHECK).read();
  }

  /**
   * The same with recordings of a foreign logger.
   *
   * @param profile what the lines of every recording of the table mean
   */
  public static Checked<RunsTable> readForeign(Path table, ImportProfile profile)
      throws IOException {
    return new Reader(table, Optional.of(profile), Purpose.FORMULA).read();
  }

  /** What the runs are for. */
  private enum Purpose {
    FORMULA,
    /** The same, with files from anywhere. */
    ANYWHERE,
    CHECK
  }

  /** One reading; the parts that are used by several rows are read once. */
  private static final class Reader {
    private static final Set<String> ONCE = Set.of("file.foreign", "import.no-zone");

    private final Path table;
    private final String name;
    private final ProblemList problems = new ProblemList();
    private final Map<String, Path> files = new LinkedHashMap<>();
    private final Map<String, Optional<RunFile.Timed>> recordings = new LinkedHashMap<>();
    private final Optional<ImportProfile> profile;
    private final Purpose purpose;
    private final Set<String> told = new HashSet<>();
    private SignalChain chain = SignalChain.AS_IS;

    Reader(Path table, Optional<ImportProfile> profile, Purpose purpose) {
      this.profile = profile;
      this.purpose = purpose;
      this.table = table;
      this.name = table.toString();
    }

    Checked<RunsTable> read() throws IOException {
      readChain();
      Checked<TableFile> cells = TableFile.read(table, name, RunsTableRules.KNOWN);
      problems.addAll(cells.problems());
      List<Run> runs = new ArrayList<>();
      if (cells instanceof Checked.Ok<TableFile> ok) {
        files.put(table.getFileName().toString(), table);
        runs.addAll(runs(ok.value()));
      }
      if (problems.hasErrors()) {
        return Checked.refused(problems.list());
      }
      RunSet runSet = new RunSet(runs, chain, Optional.empty());
      return Checked.ok(new RunsTable(runSet, files), problems.list());
    }

    private void readChain() throws IOException {
      Path file = table.resolveSibling(ChainFile.NAME);
      if (Files.exists(file)) {
        Checked<SignalChain> read = ChainFile.read(file, file.toString());
        problems.addAll(read.problems());
        chain = read.fold((value, notes) -> value, refused -> SignalChain.AS_IS);
        files.put(ChainFile.NAME, file);
      }
    }

    private List<Run> runs(TableFile cells) throws IOException {
      problems.addAll(cells.problems());
      Where head = Where.file(name).atLine(1);
      RunsTableRules.columns(cells, head, problems);
      if (problems.hasErrors() && !cells.columns().containsAll(RunsTableRules.NEEDED)) {
        return List.of();
      }
      if (RunsTableRules.secondHead(cells, name, problems)) {
        return List.of();
      }
      List<Run> runs = new ArrayList<>();
      for (TableFile.Row row : cells.rows()) {
        run(new RunRow(row, cells.numbers(), name, problems)).ifPresent(runs::add);
      }
      RunsTableRules.names(cells, name, problems);
      if (!problems.hasErrors()) {
        if (purpose != Purpose.CHECK) {
          RunsTableRules.enough(runs, name, problems);
        }
        RunsTableRules.together(runs, name, problems);
      }
      return runs;
    }

    private Optional<Run> run(RunRow row) throws IOException {
      Optional<RunKind> kind = row.kind();
      Optional<RunFile.Timed> whole = row.file().isEmpty() ? noFile(row) : recording(row);
      row.clock(whole);
      Optional<Recording> part =
          whole.flatMap(w -> RunsTableRules.window(w.recording(), row, problems));
      RunConditions conditions =
          row.conditions(
              part.map(p -> RunsTableRules.notCounted(p, row)).orElse(NotCounted.NOTHING));
      if (kind.isEmpty()) {
        return Optional.empty();
      }
      boolean spins = kind.get() == RunKind.SPIN;
      boolean refers = kind.get() == RunKind.REFERENCE;
      Optional<ArmTurning> arm = spins ? row.arm() : Optional.empty();
      Optional<Uncertain> reference = refers ? row.reference() : Optional.empty();
      if (arm.isPresent() && part.isPresent()) {
        RunsTableRules.spin(arm.get(), part.get(), row, problems);
      }
      return spins == arm.isPresent() && refers == reference.isPresent()
          ? part.map(
              p -> new Run(row.name(), kind.get(), row.file(), p, conditions, arm, reference))
          : Optional.empty();
    }

    /** What is so of a logger need not be said of each of its files. */
    private boolean isNews(Problem problem) {
      return !ONCE.contains(problem.id()) || told.add(problem.id());
    }

    private Optional<RunFile.Timed> noFile(RunRow row) {
      problems.error("runs.file-empty", row.where().atColumn("file"), "");
      return Optional.empty();
    }

    private Optional<RunFile.Timed> recording(RunRow row) throws IOException {
      String file = row.file();
      Optional<RunFile.Timed> known = recordings.get(file);
      if (known != null) {
        return known;
      }
      Optional<RunFile.Timed> read = readRecording(row);
      recordings.put(file, read);
      return read;
    }

    /** Without what the chain cannot hand on. */
    private RunFile.Timed possible(RunFile.Timed timed, String file) {
      Recording read = timed.recording();
      Possible possible = Possible.of(read.unit(), chain);
      Recording kept = read.within(possible);
      int left = read.signal().size() - kept.signal().size();
      if (left > 0) {
        String most = NumberCell.shown(possible.mostSignal()) + " " + read.unit().symbol();
        Problem told =
            Problem.warning("file.beyond-chain", Where.file(file), String.valueOf(left), most);
        problems.add(kept.signal().isEmpty() ? told.as(Severity.ERROR) : told);
      }
      return kept.signal().isEmpty() ? timed : new RunFile.Timed(kept, timed.clock());
    }

    /**
     * Whether a file that is there lies neither beside the table, nor below it, nor with the table
     * of another session in a folder beside; links are followed.
     */
    private boolean isOutside(Path file) throws IOException {
      Path folder = AtomicFile.folderOf(table.toRealPath());
      Path holder = AtomicFile.folderOf(file.toRealPath());
      boolean session =
          AtomicFile.folderOf(holder).equals(AtomicFile.folderOf(folder))
              && Files.isRegularFile(holder.resolve("runs.csv"));
      return !holder.startsWith(folder) && !session;
    }

    private Optional<RunFile.Timed> readRecording(RunRow row) throws IOException {
      Path path;
      try {
        path = table.resolveSibling(row.file());
      } catch (InvalidPathException e) {
        problems.error("runs.file-missing", row.where().atColumn("file"), row.file());
        return Optional.empty();
      }
      if (!Files.exists(path)) {
        problems.error("runs.file-missing", row.where().atColumn("file"), row.file());
        return Optional.empty();
      }
      boolean outside = isOutside(path);
      if (outside && purpose != Purpose.ANYWHERE) {
        problems.error("runs.file-elsewhere", row.where().atColumn("file"), row.file());
        return Optional.empty();
      }
      String shown = path.toString();
      Checked<RunFile.Timed> read = RunFile.readTimed(path, shown, chain.input(), profile);
      if (outside && !read.isOk()) {
        problems.error("runs.file-outside-unread", row.where().atColumn("file"), row.file());
      } else if (!outside) {
        read.problems().stream().filter(this::isNews).forEach(problems::add);
      }
      files.put(row.file(), path);
      return read.fold(
          (value, notes) -> Optional.of(possible(value, shown)),
          (List<Problem> p) -> Optional.empty());
    }
  }
}
