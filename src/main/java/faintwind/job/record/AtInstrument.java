package faintwind.job.record;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import faintwind.files.instrument.WriterLock;
import faintwind.job.EnteredFile;
import faintwind.job.design.KeptDesigns;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.FileRole;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Work on one instrument without a window: opens it, holds the right to write while the work lasts,
 * and enters through the same job as the window.
 */
public final class AtInstrument {
  private final Path folder;
  private final Clock clock;
  private final Enter.Person person;
  private final KeptGuides guides;
  private Optional<KeptDesigns> designs = Optional.empty();

  /**
   * Prepares work.
   *
   * @param folder of the instrument
   * @param clock of this computer, with the zone of the place
   * @param who the name that stands with each entry
   */
  public AtInstrument(Path folder, Clock clock, String who) {
    this(folder, clock, Enter.Person.named(who), Locale.ENGLISH);
  }

  /** The same, for work that shows what the checklist says. */
  public AtInstrument(Path folder, Clock clock, String who, Locale language) {
    this(folder, clock, Enter.Person.named(who), language);
  }

  /** The same by a person of a class. */
  public AtInstrument(Path folder, Clock clock, Enter.Person person) {
    this(folder, clock, person, Locale.ENGLISH);
  }

  private AtInstrument(Path folder, Clock clock, Enter.Person person, Locale language) {
    this.guides = new KeptGuides(language);
    this.folder = folder;
    this.clock = clock;
    this.person = person;
  }

  /** What is done at the instrument. */
  @FunctionalInterface
  public interface Work<T> {
    Checked<T> at(InstrumentView view, Enter enter) throws IOException;
  }

  /** Whether a path is the folder of an instrument. */
  public static boolean is(Path path) {
    return Files.isRegularFile(Journal.in(path).file());
  }

  /**
   * Does the work; refused where there is no instrument, or somebody else writes to it.
   *
   * @throws IOException where the disk or a permission fails
   */
  public <T> Checked<T> work(Work<T> work) throws IOException {
    Where where = Where.file(folder.toString());
    if (!Files.isDirectory(folder)) {
      return Checked.refused(Problem.error("world.missing", where, folder.toString()));
    }
    if (!is(folder)) {
      return Checked.refused(Problem.error("folder.no-journal", where, folder.toString()));
    }
    Optional<WriterLock> taken = WriterLock.take(folder, holder(person.name()));
    if (taken.isEmpty()) {
      return Checked.refused(inUse(folder));
    }
    WriterLock lock = taken.get();
    try (lock) {
      Optional<Problem> mended = new InstrumentFolder(folder).mendSummary();
      Checked<InstrumentView> view = InstrumentView.open(folder, designs()::sheet, guides);
      if (!(view instanceof Checked.Ok<InstrumentView> ok)) {
        return Checked.refused(view.problems());
      }
      Checked<T> done = work.at(ok.value(), new Enter(ok.value(), clock, person));
      List<Problem> told = new ArrayList<>(mended.stream().toList());
      if (ok.value().writable()) {
        ok.value().faults().forEach(fault -> told.add(fault.as(Severity.WARNING)));
      }
      return Checked.ok(true, told).then(is -> done);
    }
  }

  /** The shipped parts are read once, however often there is work; the lock keeps it to one. */
  private synchronized KeptDesigns designs() throws IOException {
    if (designs.isEmpty()) {
      designs = Optional.of(KeptDesigns.withShippedParts());
    }
    return designs.get();
  }

  /** Why nothing can be entered now; empty where something can. */
  public List<Problem> trouble() throws IOException {
    return work(
            (view, enter) ->
                enter.shut().map(Checked::<Path>refused).orElseGet(() -> Checked.ok(folder)))
        .problems()
        .stream()
        .filter(Problem::isError)
        .toList();
  }

  /**
   * Enters files that were written into the folder.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<JournalEntry> enter(Map<Path, FileRole> files) throws IOException {
    List<Event> events = new ArrayList<>();
    for (Map.Entry<Path, FileRole> file : files.entrySet()) {
      events.add(EnteredFile.added(folder, file.getValue(), file.getKey()));
    }
    return work((view, enter) -> enter.plain(Optional.empty(), events));
  }

  /** That somebody else writes to a folder. */
  public static Problem inUse(Path folder) throws IOException {
    String holder = WriterLock.holder(folder);
    return Problem.error("folder.in-use", Where.file(folder.toString()), holder);
  }

  /** How whoever writes to a folder is named to whoever comes second. */
  public static String holder(String who) {
    String machine = System.getenv().getOrDefault("HOSTNAME", "");
    String at = machine.isEmpty() ? System.getenv().getOrDefault("COMPUTERNAME", "") : machine;
    return at.isEmpty() ? who : who + ", " + at;
  }

  /**
   * Accepts that a line or file is not what was entered. This alone is entered where the folder is
   * open for reading only.
   *
   * @param place a file of the folder, or {@code journal.jsonl:12}
   * @throws IOException where the disk or a permission fails
   */
  public Checked<String> accept(String place, String reason) throws IOException {
    return work(
        (view, enter) -> {
          Optional<String> sha256 = new InstrumentFolder(folder).altered(place);
          return sha256.isEmpty()
              ? Checked.refused(
                  Problem.error("accept.nothing", Where.file(folder.toString()), place))
              : enter.accept(place, sha256.get(), reason).map(entry -> place);
        });
  }
}
