package faintwind.ui.instrument;

import faintwind.calibration.plan.PlannedSession;
import faintwind.job.World;
import faintwind.job.bench.BenchFolder;
import faintwind.job.bench.BenchRow;
import faintwind.job.bench.ReadBench;
import faintwind.job.demo.CopyDemo;
import faintwind.job.demo.Demo;
import faintwind.job.design.KeptDesigns;
import faintwind.job.design.Sized;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.KeptGuides;
import faintwind.job.record.Workplace;
import faintwind.job.turntable.PlanTurntable;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.RehearsalBegun;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The folder of instruments that the window shows. Reads and writes; never on the JavaFX thread.
 */
public final class Workspace {
  /** Fewer are read before anybody could read their names. */
  private static final int MANY = 25;

  private final Path folder;
  private final Clock clock;
  private final boolean demo;
  private final KeptGuides guides;
  private Optional<KeptDesigns> designs = Optional.empty();

  /**
   * What was found in the folder.
   *
   * @param instruments those that could be opened
   * @param broken folders whose checklist is broken, with what is wrong
   */
  public record Found(List<Listed> instruments, List<Broken> broken) {
    public Found {
      instruments = List.copyOf(instruments);
      broken = List.copyOf(broken);
    }

    public boolean isEmpty() {
      return instruments.isEmpty() && broken.isEmpty();
    }
  }

  /** A folder that was looked at. */
  public sealed interface Looked permits Listed, Broken {}

  /** An instrument, its design in a few words, and the speeds of the calibration that counts. */
  public record Listed(Standpoint standpoint, Optional<String> what, Optional<BenchRow.Range> range)
      implements Looked {}

  /** A folder that cannot be opened at all. */
  public record Broken(Path folder, List<Problem> problems) implements Looked {
    public Broken {
      problems = List.copyOf(problems);
    }
  }

  /**
   * A folder.
   *
   * @param language of the checklists
   */
  public Workspace(Path folder, Clock clock, Locale language) {
    this(folder, clock, new KeptGuides(language), false);
  }

  private Workspace(Path folder, Clock clock, KeptGuides guides, boolean demo) {
    this.guides = guides;
    this.folder = folder;
    this.clock = clock;
    this.demo = demo;
  }

  /**
   * The made-up demonstration, in a folder of its own within this one.
   *
   * @param name of that folder, in the person's language
   */
  public Workspace demo(String name) {
    return new Workspace(folder.resolve(name), clock, guides, true);
  }

  /** Whether it holds the made-up demonstration. */
  public boolean isDemo() {
    return demo;
  }

  /** Copies the demonstration's instruments where they are missing; the finished one. */
  public Standpoint demonstration() throws IOException {
    CopyDemo.into(folder);
    return standpoint(folder.resolve(Demo.FINISHED));
  }

  /** Opens one instrument of the folder. */
  public Standpoint standpoint(Path path) throws IOException {
    return Standpoint.of(open(path), OffsetDateTime.now(clock));
  }

  /** Name of the folder. */
  public String name() {
    Path last = folder.getFileName();
    return last == null ? folder.toString() : last.toString();
  }

  public Path folder() {
    return folder;
  }

  /** How an instrument of this folder is opened again. */
  public OpenInstrument.Opening opening() {
    return this::open;
  }

  /**
   * Reads every instrument.
   *
   * @param many told at once, on the thread that reads, which folders there are, where they are so
   *     many that reading them takes a while
   */
  public Found read(Consumer<List<Path>> many) throws IOException {
    List<Path> folders = BenchFolder.instruments(folder);
    if (folders.size() >= MANY) {
      many.accept(folders);
    }
    List<Looked> all = folders.parallelStream().map(this::looked).toList();
    return new Found(
        all.stream().filter(Listed.class::isInstance).map(Listed.class::cast).toList(),
        all.stream().filter(Broken.class::isInstance).map(Broken.class::cast).toList());
  }

  /** One that cannot be read does not keep the others from being shown. */
  private Looked looked(Path path) {
    try {
      return look(path);
    } catch (IOException e) {
      return new Broken(path, List.of(World.problem(e)));
    }
  }

  private Looked look(Path path) throws IOException {
    try {
      Standpoint standpoint = standpoint(path);
      Optional<BenchRow.Range> range =
          ReadBench.inForce(standpoint.view(), standpoint.situation()).flatMap(f -> f.range());
      return new Listed(standpoint, describe(standpoint), range);
    } catch (BrokenFolderException e) {
      return new Broken(path, e.problems());
    }
  }

  /** Begins an instrument in a folder of its own, named after it. */
  public Standpoint begin(String name, String who) throws IOException {
    Path path = Workplace.freeFolder(folder, name);
    Enter.begin(path, new InstrumentCreated(name, false), clock, Enter.Person.named(who));
    return standpoint(path);
  }

  /**
   * The folder for rehearsals: the one that is there, or a new one.
   *
   * @param name how it is called, in the person's language
   */
  public Standpoint rehearsal(String name) throws IOException {
    for (Path path : BenchFolder.instruments(folder)) {
      if (looked(path) instanceof Listed listed) {
        InstrumentView view = listed.standpoint().view();
        if (view.state().rehearsal() && view.writable()) {
          return listed.standpoint();
        }
      }
    }
    Path path = Workplace.freeFolder(folder, name);
    Enter.Person person = Enter.Person.named(name);
    Enter.begin(path, new InstrumentCreated(name, true), clock, person);
    new Enter(open(path), clock, person).plain(Optional.empty(), new RehearsalBegun());
    return standpoint(path);
  }

  /** The same with a plan that is to be rehearsed there. */
  public Standpoint rehearsal(String name, Optional<PlannedSession> plan) throws IOException {
    Standpoint there = rehearsal(name);
    if (plan.isEmpty()) {
      return there;
    }
    Path path = there.view().path();
    Enter enter = new Enter(open(path), clock, Enter.Person.named(name));
    PlanTurntable.keep(path, plan.get(), enter);
    return standpoint(path);
  }

  private synchronized Optional<String> describe(Standpoint standpoint) throws IOException {
    Optional<String> json = standpoint.view().state().designJson();
    return json.isEmpty()
        ? Optional.empty()
        : designs().sized(json.get()).map(sized -> KeptDesigns.describe(sized.design()));
  }

  /** Read at the first need, which is never on the JavaFX thread. */
  private synchronized KeptDesigns designs() throws IOException {
    if (designs.isEmpty()) {
      designs = Optional.of(KeptDesigns.withShippedParts());
    }
    return designs.get();
  }

  private synchronized Optional<DesignSheet> sheetOf(String json) {
    try {
      return designs().sized(json).map(Sized::sheet);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private InstrumentView open(Path path) throws IOException {
    Checked<InstrumentView> opened;
    try {
      opened = InstrumentView.open(path, this::sheetOf, guides);
    } catch (UncheckedIOException e) {
      throw new IOException(e);
    }
    if (opened instanceof Checked.Ok<InstrumentView> ok) {
      return ok.value();
    }
    throw new BrokenFolderException(path, opened.problems());
  }

  /** A folder whose checklist is broken: the world, as far as a screen is concerned. */
  static final class BrokenFolderException extends IOException {
    private static final long serialVersionUID = 1L;
    private final transient List<Problem> problems;

    BrokenFolderException(Path path, List<Problem> problems) {
      super(path.toString());
      this.problems = List.copyOf(problems);
    }

    List<Problem> problems() {
      return problems;
    }
  }
}
