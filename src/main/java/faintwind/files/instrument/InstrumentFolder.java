package faintwind.files.instrument;

import faintwind.files.AtomicFile;
import faintwind.files.Sha256;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The folder of one instrument: {@code journal.jsonl} (the truth), {@code instrument.json} (a
 * summary that can always be made again from the journal), {@code photos/}, {@code runs/}, {@code
 * logs/}, {@code calibrations/}, {@code reports/}.
 *
 * @param path the folder
 */
public record InstrumentFolder(Path path) {
  private static final List<String> PARTS =
      List.of("photos", "runs", "logs", "calibrations", "reports");

  /** Damage after which entries can still be made: the loss itself is entered first. */
  private static final Set<String> GOES_ON =
      Set.of("journal.shorter", "journal.line-end-lost", "folder.file-missing");

  /** Whether the folder may be written to. */
  public enum Access {
    READ_WRITE,
    /** Something is broken; nothing is written until it is put right. */
    READ_ONLY
  }

  /**
   * What was found on opening.
   *
   * @param state replayed from whatever could be read
   * @param access read-only where the journal itself cannot be trusted
   * @param problems all of them
   */
  public record Opened(InstrumentState state, Access access, List<Problem> problems) {
    public Opened {
      problems = List.copyOf(problems);
    }
  }

  /** Whether a name in a folder is that of its journal, its summary or its lock. */
  public static boolean isOwn(String name) {
    return FolderCheck.OWN.contains(name);
  }

  public Journal journal() {
    return Journal.in(path);
  }

  /**
   * Begins a folder.
   *
   * @param first the entry that names the instrument
   * @throws FileAlreadyExistsException where there is a journal already
   * @throws IOException where the folder cannot be made or written
   */
  public static InstrumentFolder create(Path path, JournalEntry first) throws IOException {
    InstrumentFolder folder = new InstrumentFolder(path);
    if (Files.exists(folder.journal().file())) {
      throw new FileAlreadyExistsException(folder.journal().file().toString());
    }
    Files.createDirectories(path);
    for (String part : PARTS) {
      Files.createDirectories(path.resolve(part));
    }
    folder.append(List.of(first));
    return folder;
  }

  /**
   * Reads the journal, compares it with what the summary knows of it, and looks whether the files
   * it names are there.
   *
   * @throws IOException where a file that is there cannot be read
   */
  public Opened open() throws IOException {
    if (!Files.isRegularFile(journal().file())) {
      Problem missing = Problem.error(noJournal(), Where.file(path.toString()), path.toString());
      return new Opened(InstrumentState.EMPTY, Access.READ_ONLY, List.of(missing));
    }
    Seal seal = Seal.of(path);
    Journal.Content content = journal().content(seal);
    InstrumentState state = InstrumentState.replay(content.entries(), content.head());
    List<Problem> problems = new ArrayList<>(content.problems());
    problems.addAll(new FolderCheck(path, state).missing());
    boolean shut = problems.stream().anyMatch(p -> p.isError() && !GOES_ON.contains(p.id()));
    summaryProblem(seal, content).ifPresent(problems::add);
    for (String stray : state.strayCorrections()) {
      problems.add(Problem.warning("folder.stray-correction", Where.file("journal.jsonl"), stray));
    }
    for (Problem refused : state.refusedCorrections()) {
      Where where = Where.file("journal.jsonl");
      String why =
          refused.details().isEmpty() ? "folder.strike-of-never" : "folder.strike-of-teacher";
      problems.add(
          Problem.warning(why, where, refused.found(), refused.details().toArray(String[]::new)));
    }
    return new Opened(state, shut ? Access.READ_ONLY : Access.READ_WRITE, problems);
  }

  private String noJournal() {
    if (Files.exists(journal().file(), LinkOption.NOFOLLOW_LINKS)) {
      return "folder.journal-no-file";
    }
    return Files.isRegularFile(path.resolve(Seal.FILE))
        ? "folder.journal-gone"
        : "folder.no-journal";
  }

  /** A folder of an older program has no seal; one that was just begun has no summary yet. */
  private Optional<Problem> summaryProblem(Seal seal, Journal.Content content) throws IOException {
    boolean older = content.problems().stream().anyMatch(p -> p.id().equals("journal.unchained"));
    if (!older && content.lines() > 1 && seal.head().isEmpty() && seal.problem().isEmpty()) {
      boolean begunOlder =
          ChainedLines.of(Files.readAllBytes(journal().file())).lines().get(0).prev().isEmpty();
      Where where = Where.file(Seal.FILE);
      return Optional.of(
          begunOlder
              ? Problem.warning("summary.no-head", where, Seal.FILE)
              : Problem.error("summary.altered", where, Seal.FILE));
    }
    return older || content.lines() <= 1
        ? seal.problem().filter(p -> p.id().equals("summary.altered"))
        : seal.problem();
  }

  /**
   * The last lines of a journal that no summary vouches for yet: of a crash, or written by hand.
   */
  private static Optional<Problem> behind(Seal seal, Journal.Content content) {
    int more = content.lines() - seal.lines();
    return seal.head().isPresent() && more > 0
        ? Optional.of(
            Problem.warning("summary.behind", Where.file(Seal.FILE), String.valueOf(more)))
        : Optional.empty();
  }

  /**
   * As {@link #open}, and reads every file of the folder: finds those that are not what was
   * entered, and those that nobody entered. Reads as much as the folder holds.
   *
   * @throws IOException where a file that is there cannot be read
   */
  public Opened audit() throws IOException {
    Opened opened = open();
    List<Problem> problems = new ArrayList<>(opened.problems());
    if (Files.isRegularFile(journal().file())) {
      problems.addAll(new FolderCheck(path, opened.state()).altered());
      behind(Seal.of(path), journal().content()).ifPresent(problems::add);
      problems.addAll(JournalTimes.problems(journal().content().entries()));
    }
    return new Opened(opened.state(), opened.access(), problems);
  }

  /**
   * The hash of a line or file that is not what was entered.
   *
   * @param place a file of the folder, or {@code journal.jsonl:12}
   * @return empty where nothing is wrong there
   * @throws IOException where a file that is there cannot be read
   */
  public Optional<String> altered(String place) throws IOException {
    for (Problem problem : audit().problems()) {
      String file = problem.where().file().orElse("");
      int line = problem.where().line().orElse(0);
      if (problem.isError() && line > 0 && place.equals(file + ":" + line)) {
        ChainedLines lines = ChainedLines.of(Files.readAllBytes(journal().file()));
        return Optional.of(lines.lines().get(line - 1).sha256());
      }
      boolean ofFile =
          problem.id().equals("folder.file-changed") || problem.id().equals("folder.head-unknown");
      if (ofFile && place.equals(file)) {
        return Optional.of(Sha256.of(path.resolve(file)));
      }
    }
    return Optional.empty();
  }

  /**
   * Writes entries to the journal, then makes the summary again. The entries are kept once the
   * journal has them, whatever becomes of the summary. Lines that the summary knew and the journal
   * has lost are entered as lost first.
   *
   * @return that the summary could not be written, to be told: the entries are kept all the same
   * @throws IOException where the journal cannot be written; then nothing is kept
   */
  public Optional<Problem> append(List<JournalEntry> entries) throws IOException {
    List<JournalEntry> all = new ArrayList<>();
    if (!entries.isEmpty() && Files.exists(journal().file())) {
      lost(entries.get(0)).ifPresent(all::add);
    }
    all.addAll(entries);
    journal().append(all);
    try {
      writeSummary();
      return Optional.empty();
    } catch (IOException behind) {
      String why = String.valueOf(behind.getMessage());
      return Optional.of(Problem.warning("summary.not-written", Where.file(Seal.FILE), why));
    }
  }

  private Optional<JournalEntry> lost(JournalEntry like) throws IOException {
    Seal seal = Seal.of(path);
    if (journal().endedLines() >= seal.lines()) {
      return Optional.empty(); // as good as always; spares reading every line
    }
    Journal.Content content = journal().content(seal);
    return content.problems().stream()
        .filter(p -> p.id().equals("journal.shorter"))
        .findFirst()
        .map(
            p ->
                new JournalEntry(
                    like.id() + "-lost",
                    like.at(),
                    Journal.PROGRAM,
                    Optional.empty(),
                    new Event.LinesLost(seal.head().orElseThrow(), seal.lines(), content.lines())));
  }

  /** Makes {@code instrument.json} again from the journal. */
  public void writeSummary() throws IOException {
    Journal.Content content = journal().content();
    InstrumentState state = InstrumentState.replay(content.entries(), content.head());
    String summary = InstrumentSummary.of(state, content);
    AtomicFile.write(path.resolve(Seal.FILE), summary.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Makes {@code instrument.json} again where it is behind the journal: a program was stopped
   * between the two writes. One that is missing or was altered stays as a sign of that.
   *
   * @return that it was made again, to be told; empty where nothing was to be done
   * @throws IOException where a file cannot be read, or the summary not written
   */
  public Optional<Problem> mendSummary() throws IOException {
    if (!Files.isRegularFile(journal().file())) {
      return Optional.empty();
    }
    Seal seal = Seal.of(path);
    Journal.Content content = journal().content(seal);
    if (behind(seal, content).isEmpty() || content.problems().stream().anyMatch(Problem::isError)) {
      return Optional.empty();
    }
    writeSummary();
    String more = String.valueOf(content.lines() - seal.lines());
    return Optional.of(Problem.warning("summary.rebuilt", Where.file(Seal.FILE), more));
  }

  /**
   * Copies a photo into {@code photos/}; its name begins with its hash, so the same photo is kept
   * once. Refused: neither JPEG nor PNG, cut short, more than 50 MB or 100 million pixels.
   *
   * @return the event to be entered
   * @throws IOException where it cannot be read or kept
   */
  public Checked<PhotoAdded> keepPhoto(Path photo, String caption) throws IOException {
    String name = String.valueOf(photo.getFileName());
    Where where = Where.file(name);
    if (!Files.isRegularFile(photo)) {
      return Checked.refused(Problem.error("photo.not-a-file", where, name));
    }
    long size = Files.size(photo);
    if (size > PhotoFile.LARGEST_BYTES) {
      String megabytes = String.valueOf(size >> 20);
      return Checked.refused(Problem.error("photo.too-large", where, megabytes));
    }
    return keepPhoto(Files.readAllBytes(photo), name, caption);
  }

  /**
   * Keeps a photo that is no file yet, such as one that was pasted; refused as the other.
   *
   * @param bytes of a JPEG or PNG
   * @param name for the words of a refusal
   * @throws IOException where it cannot be kept
   */
  public Checked<PhotoAdded> keepPhoto(byte[] bytes, String name, String caption)
      throws IOException {
    if (bytes.length > PhotoFile.LARGEST_BYTES) {
      String megabytes = String.valueOf(bytes.length >> 20);
      return Checked.refused(Problem.error("photo.too-large", Where.file(name), megabytes));
    }
    Checked<PhotoFile.Kind> kind = PhotoFile.check(bytes, name);
    if (!(kind instanceof Checked.Ok<PhotoFile.Kind> ok)) {
      return Checked.refused(kind.problems());
    }
    String hash = Sha256.of(bytes);
    String file = "photos/" + hash.substring(0, 12) + ok.value().ending();
    Files.createDirectories(path.resolve("photos"));
    AtomicFile.write(path.resolve(file), bytes);
    return Checked.ok(new PhotoAdded(file, hash, caption));
  }

  /**
   * Copies a file of a kind into its part of the folder under its own name; one that lies in the
   * folder already stays where it is.
   *
   * @return the event to be entered
   * @throws FileAlreadyExistsException where another file of that name is there already
   * @throws IOException where it cannot be read or kept
   */
  public FileAdded keepFile(Event.FileRole kind, Path source) throws IOException {
    String part =
        switch (kind) {
          case RUN, RUNS_TABLE, CHECK_TABLE, CHAIN -> "runs";
          case FIELD_LOG, SPEEDS, MINUTES, FLOW, SURVEY, SUMMARY -> "logs";
          case REPORT -> "reports";
          case PLAN -> "plans";
          case TORN_LINE, OTHER -> "others";
        };
    Path root = path.toAbsolutePath().normalize();
    Path whole = source.toAbsolutePath().normalize();
    if (whole.startsWith(root)) {
      String name = root.relativize(whole).toString().replace('\\', '/');
      return new FileAdded(kind, name, Sha256.of(whole));
    }
    String name = part + "/" + source.getFileName();
    Path target = path.resolve(name);
    if (Files.exists(target)) {
      throw new FileAlreadyExistsException(target.toString());
    }
    Files.createDirectories(path.resolve(part));
    try (AtomicFile file = AtomicFile.begin(target)) {
      Files.copy(source, file.stream());
      file.commit();
    }
    return new FileAdded(kind, name, Sha256.of(target));
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "instrument folder %s", path);
  }
}
