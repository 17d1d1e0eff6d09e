package faintwind.job.record;

import faintwind.files.PhotoTurn;
import faintwind.files.checklist.ChecklistFiles;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.Progress;
import faintwind.guide.Situation;
import faintwind.guide.Situation.DatedSheet;
import faintwind.guide.Voids;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Meters;
import faintwind.job.design.KeptDesigns;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * One instrument as it stands: folder, checklist, journal and the sheets of its designs. A value;
 * to see what changed, open it again.
 *
 * @param path its folder
 * @param checklist that guides it
 * @param state replayed from the journal
 * @param designs what each design on record adds up to
 * @param writable whether entries may be made; false where a problem is an error
 * @param problems of the folder and of a teacher's files in it
 * @param meters the classes of meters that are known
 */
public record InstrumentView(
    Path path,
    Checklist checklist,
    InstrumentState state,
    List<DatedSheet> designs,
    boolean writable,
    List<Problem> problems,
    Meters meters) {

  public InstrumentView {
    designs = List.copyOf(designs);
    problems = List.copyOf(problems);
  }

  /**
   * Opens a folder with the shipped checklist, in English, and what the folder lays over it.
   *
   * @param path of the instrument's folder
   * @param sheetOf the sheet of a design file's text; empty where it cannot be worked out
   * @return refused where the checklist is broken; a broken journal opens read-only
   * @throws IOException where something that is there cannot be read
   */
  public static Checked<InstrumentView> open(
      Path path, Function<String, Optional<DesignSheet>> sheetOf) throws IOException {
    return open(path, sheetOf, new KeptGuides(Locale.ENGLISH));
  }

  /**
   * The same with guides that were read before.
   *
   * @throws IOException where something that is there cannot be read
   */
  public static Checked<InstrumentView> open(
      Path path, Function<String, Optional<DesignSheet>> sheetOf, KeptGuides guides)
      throws IOException {
    return of(path, new InstrumentFolder(path).open(), sheetOf, guides);
  }

  /**
   * As {@link #open}, with every file of the folder read and compared with its entry.
   *
   * @throws IOException where something that is there cannot be read
   */
  public static Checked<InstrumentView> audited(
      Path path, Function<String, Optional<DesignSheet>> sheetOf, KeptGuides guides)
      throws IOException {
    return of(path, new InstrumentFolder(path).audit(), sheetOf, guides);
  }

  private static Checked<InstrumentView> of(
      Path path,
      InstrumentFolder.Opened opened,
      Function<String, Optional<DesignSheet>> sheetOf,
      KeptGuides guides)
      throws IOException {
    String name = opened.state().checklist().map(c -> c.checklist()).orElse("standard");
    List<DatedSheet> designs = CalibratedSheets.of(path, opened.state(), sheetOf, guides);
    boolean writable = opened.access() == InstrumentFolder.Access.READ_WRITE;
    Checked<Meters> meters = guides.meters(path);
    Checked<Checklist> read = guides.checklist(path, name);
    if (!(read instanceof Checked.Ok<Checklist> ok)) {
      return Checked.refused(read.problems());
    }
    List<Problem> problems = new ArrayList<>(opened.problems());
    problems.addAll(ok.notes());
    problems.addAll(meters.problems());
    return Checked.ok(
        new InstrumentView(
            path,
            ok.value(),
            Voids.applied(ok.value(), opened.state()),
            designs,
            writable,
            problems,
            meters.fold((known, notes) -> known, none -> Meters.NONE)));
  }

  /**
   * Opens an instrument that was begun, by the shipped designs.
   *
   * @param language of the checklist
   * @return refused where the folder has no journal or its checklist cannot be read
   * @throws IOException where something that is there cannot be read
   */
  public static Checked<InstrumentView> begun(Path folder, Locale language) throws IOException {
    KeptGuides guides = new KeptGuides(language);
    return audited(folder, KeptDesigns.withShippedParts()::sheet, guides)
        .then(
            view -> view.state().lines().isEmpty() ? Checked.refused(why(view)) : Checked.ok(view));
  }

  private static List<Problem> why(InstrumentView view) {
    String name = view.path().toString();
    return view.problems().isEmpty()
        ? List.of(Problem.error("folder.no-entries", Where.file(name), name))
        : view.problems();
  }

  /**
   * What is wrong with the record although it may be written to, such as lines that the journal has
   * lost; and a part of the checklist that is not used. Not a file that is missing: that is told
   * where it is needed, and by a check.
   */
  public List<Problem> faults() {
    return problems.stream()
        .filter(p -> p.isError() || p.id().equals("checklist.own-file-set-aside"))
        .filter(p -> !p.id().equals("folder.file-missing"))
        .toList();
  }

  /** Quarter turns that set a photo upright, see {@link PhotoTurn}; 0 where it cannot be read. */
  public static int quartersClockwise(Path photo) {
    try {
      return PhotoTurn.quartersClockwise(photo);
    } catch (IOException gone) {
      return 0;
    }
  }

  /** Where files of a teacher's own may lie, the first winning: the instrument, its workspace. */
  public static List<Path> ownFolders(Path instrument) {
    return ChecklistFiles.ownFolders(instrument);
  }

  /** The same, for reading only. */
  public InstrumentView readOnly(Problem why) {
    List<Problem> all = new ArrayList<>(List.of(why));
    all.addAll(problems);
    return new InstrumentView(path, checklist, state, designs, false, all, meters);
  }

  /** Why nothing may be entered; empty where something may. */
  Optional<Problem> shut() {
    if (writable) {
      return Optional.empty();
    }
    boolean held = !problems.isEmpty() && problems.get(0).id().equals("folder.in-use");
    return Optional.of(
        held
            ? problems.get(0)
            : Problem.error("folder.read-only", Where.file(path.toString()), ""));
  }

  /** What verdicts and gates depend on, at a time. */
  public Situation situation(OffsetDateTime now) {
    return new Situation(state, designs, now, meters);
  }

  /** Where every step stands at a time. */
  public Progress progress(OffsetDateTime now) {
    return Progress.of(checklist, situation(now));
  }
}
