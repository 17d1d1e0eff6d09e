package faintwind.ui.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.job.JobWatch;
import faintwind.job.field.Convert;
import faintwind.job.field.FieldFindings;
import faintwind.job.field.FieldRows;
import faintwind.job.field.LookedAtLog;
import faintwind.job.formula.OpenCalibration;
import faintwind.job.live.Listen;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.ui.frame.DataModel;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A field log turned into air speed by the calibration in force, to be looked at and saved. */
public final class FieldModel extends DataModel<FieldModel.View> {
  private final Background background;
  private final Function<String, Optional<Path>> askTarget;
  private Optional<Path> calibrationFile = Optional.empty();
  private String saved = "";
  private Optional<ImportProfile> profile = Optional.empty();
  private Optional<ByDate> byDate = Optional.empty();
  private Optional<Path> waiting = Optional.empty();

  /** The calibration that was in force when a log was recorded. */
  @FunctionalInterface
  public interface ByDate {
    /** Off the JavaFX thread; the file's name is its path. */
    Chosen of(Path log, Optional<ImportProfile> profile) throws IOException;
  }

  /**
   * A calibration for a log.
   *
   * @param file empty where none was ever in force
   * @param notes what a person should know of the choice
   */
  public record Chosen(Optional<Path> file, List<Problem> notes) {}

  /**
   * What there is to show.
   *
   * @param calibration what logs are converted by; empty where none is in force
   * @param look the converted log; empty where none was brought in
   * @param findings what stands out in it
   * @param problems sentences with their place
   */
  public record View(
      Optional<Calibration> calibration,
      Optional<LookedAtLog> look,
      Optional<FieldFindings> findings,
      List<String> problems) {
    static final View NOTHING =
        new View(Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    public View {
      problems = List.copyOf(problems);
    }
  }

  /**
   * A model without calibration or log.
   *
   * @param askTarget asks where the speeds go, given a name
   */
  public FieldModel(
      Messages words, Background background, Function<String, Optional<Path>> askTarget) {
    super(words, View.NOTHING);
    this.background = background;
    this.askTarget = askTarget;
    say();
  }

  /** Converts by this calibration from now on. */
  public void useCalibration(Path file) {
    background.run(
        watch -> OpenCalibration.read(file),
        read -> calibrationRead(file, read),
        broke -> problem(file, broke));
  }

  private void calibrationRead(Path file, Checked<Calibration> read) {
    calibrationFile = read.isOk() ? Optional.of(file) : Optional.empty();
    put(
        read.fold(
            (value, notes) ->
                new View(Optional.of(value), Optional.empty(), Optional.empty(), lines(notes)),
            problems ->
                new View(Optional.empty(), Optional.empty(), Optional.empty(), lines(problems))));
    say();
    if (read.isOk()) {
      waiting.ifPresent(this::open);
    }
    waiting = Optional.empty();
  }

  /** Reads each log by the calibration in force when it was recorded. */
  public void choosing(ByDate way) {
    byDate = Optional.of(way);
  }

  /** How a live recording finds its air speed, where a calibration is at hand. */
  public Optional<Listen.BySpeed> bySpeed() {
    return view().get().calibration().map(by -> new Listen.BySpeed(by, SpeedSettings.usual(by)));
  }

  /** Opens a log as soon as a calibration is read, where nothing is shown by then. */
  public void openFirst(Path log) {
    if (view().get().calibration().isPresent()) {
      open(log);
    } else {
      waiting = Optional.of(log);
    }
  }

  /** A log of a foreign logger, whose lines mean what the profile says. */
  public void open(Path log, ImportProfile foreign) {
    profile = Optional.of(foreign);
    look(log);
  }

  /** Converts a log off the JavaFX thread and shows it; nothing is written. */
  public void open(Path log) {
    profile = Optional.empty();
    look(log);
  }

  private void look(Path log) {
    Optional<Calibration> calibration = view().get().calibration();
    if (calibration.isEmpty()) {
      problem(text("field.no-calibration"));
      return;
    }
    saved = "";
    Way usual = new Way(calibrationFile, calibration.get(), List.of());
    Optional<ImportProfile> lines = profile;
    background.run(
        watch -> look(log, lines, usual, watch),
        found -> found(usual, found),
        broke -> problem(log, broke));
  }

  private record Way(Optional<Path> file, Calibration by, List<Problem> notes) {}

  private Checked<Found> look(Path log, Optional<ImportProfile> lines, Way usual, JobWatch watch)
      throws IOException {
    Checked<Way> way = way(log, lines, usual);
    if (!(way instanceof Checked.Ok<Way> ok)) {
      return Checked.refused(way.problems());
    }
    Calibration by = ok.value().by();
    Checked<LookedAtLog> looked = job(ok.value(), lines).look(log, watch);
    if (!(looked instanceof Checked.Ok<LookedAtLog> seen)) {
      return Checked.refused(looked.problems());
    }
    List<Problem> notes = new ArrayList<>(ok.value().notes());
    notes.addAll(seen.notes());
    FieldFindings findings = FieldFindings.of(seen.value().rows(), by.performance().floor_m_s());
    return Checked.ok(new Found(ok.value(), seen.value(), findings), notes);
  }

  /** The calibration of the log's own time where there is a record to ask, else the usual one. */
  private Checked<Way> way(Path log, Optional<ImportProfile> lines, Way usual) throws IOException {
    if (byDate.isEmpty()) {
      return Checked.ok(usual);
    }
    Chosen chosen = byDate.get().of(log, lines);
    if (chosen.file().isEmpty() || chosen.file().equals(usual.file())) {
      return Checked.ok(new Way(usual.file(), usual.by(), chosen.notes()));
    }
    return OpenCalibration.read(chosen.file().get())
        .map(by -> new Way(chosen.file(), by, chosen.notes()));
  }

  private static Convert job(Way way, Optional<ImportProfile> lines) {
    Convert plain =
        new Convert(
            way.by(), way.file().map(Path::toString).orElse(""), SpeedSettings.usual(way.by()));
    return lines.map(plain::reading).orElse(plain);
  }

  private record Found(Way way, LookedAtLog looked, FieldFindings findings) {}

  private void found(Way usual, Checked<Found> found) {
    put(
        found.fold(
            (value, notes) -> {
              calibrationFile = value.way().file();
              return new View(
                  Optional.of(value.way().by()),
                  Optional.of(value.looked()),
                  Optional.of(value.findings()),
                  lines(notes));
            },
            problems ->
                new View(
                    Optional.of(usual.by()), Optional.empty(), Optional.empty(), lines(problems))));
    say();
  }

  /** Writes the converted log where the person says. */
  public void save() {
    Optional<LookedAtLog> look = view().get().look();
    Optional<Calibration> by = view().get().calibration();
    if (look.isEmpty() || by.isEmpty()) {
      return;
    }
    Path log = look.get().log();
    String name = String.valueOf(log.getFileName()).replaceFirst("(\\.csv)?$", "-speeds.csv");
    askTarget.apply(name).ifPresent(target -> save(by.get(), log, target));
  }

  private void save(Calibration by, Path log, Path target) {
    Path minutes = Convert.minutesBeside(target);
    Convert job = job(new Way(calibrationFile, by, List.of()), profile).withMinutes(minutes);
    background.run(
        watch -> job.file(log, target, watch),
        done -> {
          saved = done.isOk() ? text("field.saved", target, minutes.getFileName()) : "";
          if (!done.isOk()) {
            problem(String.join(" ", lines(done.problems())));
          }
          say();
        },
        broke -> problem(target, broke));
  }

  private void problem(Path file, IOException broke) {
    problem(failed(file, broke));
  }

  private void problem(String sentence) {
    View now = view().get();
    put(new View(now.calibration(), now.look(), now.findings(), List.of(sentence)));
    say();
  }

  private void say() {
    View now = view().get();
    if (now.calibration().isEmpty()) {
      say(
          Next.say(Mark.BLOCKED, text("field.next.calibration"))
              .withDetail(text("field.next.calibration-detail")));
    } else if (now.look().isEmpty()) {
      say(
          now.problems().isEmpty()
              ? Next.say(Mark.READY, text("field.next.log"))
              : Next.say(Mark.BLOCKED, text("field.next.refused"))
                  .withDetail(text("field.next.refused-detail")));
    } else if (!saved.isEmpty()) {
      say(Next.say(Mark.DONE, text("field.next.saved", saved)));
    } else {
      say(sayLook(now.look().get()));
    }
  }

  private Next sayLook(LookedAtLog look) {
    Act act = new Act("field-save", text("field.next.save.act"), this::save);
    FieldRows rows = look.rows();
    // switching the heater on at the start of a log is no fault
    boolean power =
        rows.stretches(SpeedFlag.POWER).stream().anyMatch(s -> s.from_s() > rows.time_s(0));
    boolean care = power || !rows.stretches(SpeedFlag.GAP).isEmpty();
    String sentence = text(care ? "field.next.care" : "field.next.save");
    long count = look.summary().rows();
    return Next.say(care ? Mark.ATTENTION : Mark.DONE, sentence, act)
        .withDetail(text("field.next.rows", Numerals.grouped(count), Numerals.grouped(count)));
  }
}
