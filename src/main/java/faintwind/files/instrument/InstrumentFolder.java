package faintwind.files.instrument;

import faintwind.files.AtomicFile;
import faintwind.files.Sha256;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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
   * @param access read-only where a problem is an error
   * @param problems all of them
   */
  public record Opened(InstrumentState state, Access access, List<Problem> problems) {
    public Opened {
      problems = List.copyOf(problems);
    }
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
   * Reads the journal and looks whether the files it names are there and unchanged.
   *
   * @throws IOException where a file that is there cannot be read
   */
  public Opened open() throws IOException {
    if (!Files.isRegularFile(journal().file())) {
      Problem missing =
          Problem.error("folder.no-journal", Where.file(path.toString()), path.toString());
      return new Opened(InstrumentState.EMPTY, Access.READ_ONLY, List.of(missing));
    }
    Journal.Content content = journal().content();
    InstrumentState state = InstrumentState.replay(content.entries());
    List<Problem> problems = new ArrayList<>(content.problems());
    for (String stray : state.strayCorrections()) {
      problems.add(Problem.warning("folder.stray-correction", Where.file("journal.jsonl"), stray));
    }
    for (Standing<? extends Event> line : state.lines()) {
      if (line.stands()) {
        problems.addAll(fileProblems(line.event()));
      }
    }
    boolean broken = problems.stream().anyMatch(Problem::isError);
    return new Opened(state, broken ? Access.READ_ONLY : Access.READ_WRITE, problems);
  }

  private List<Problem> fileProblems(Event event) throws IOException {
    if (event instanceof PhotoAdded photo) {
      return fileProblems(photo.file(), photo.sha256());
    } else if (event instanceof FileAdded added) {
      return fileProblems(added.file(), added.sha256());
    } else if (event instanceof CalibrationMade made) {
      return fileProblems(made.file(), made.sha256());
    }
    return List.of();
  }

  private List<Problem> fileProblems(String name, String sha256) throws IOException {
    Path file = path.resolve(name).normalize();
    if (!file.startsWith(path.normalize())) {
      return List.of(Problem.error("folder.file-outside", Where.file("journal.jsonl"), name));
    }
    if (!Files.isRegularFile(file)) {
      return List.of(Problem.warning("folder.file-missing", Where.file(name), name));
    }
    return Sha256.of(file).equals(sha256)
        ? List.of()
        : List.of(Problem.warning("folder.file-changed", Where.file(name), name));
  }

  /**
   * Writes entries to the journal, then makes the summary again. The entries are kept once the
   * journal has them, whatever becomes of the summary.
   *
   * @throws IOException where the journal cannot be written (then nothing is kept), or the summary
   *     cannot (then the entries are kept)
   */
  public void append(List<JournalEntry> entries) throws IOException {
    journal().append(entries);
    writeSummary();
  }

  /** Makes {@code instrument.json} again from the journal. */
  public void writeSummary() throws IOException {
    List<JournalEntry> all = journal().content().entries();
    String summary = InstrumentSummary.of(InstrumentState.replay(all), all);
    AtomicFile.write(path.resolve("instrument.json"), summary.getBytes(StandardCharsets.UTF_8));
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

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "instrument folder %s", path);
  }
}
