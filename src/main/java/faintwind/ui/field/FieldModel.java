package faintwind.ui.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.job.field.Convert;
import faintwind.job.field.FieldFindings;
import faintwind.job.field.FieldRows;
import faintwind.job.field.LookedAtLog;
import faintwind.job.formula.OpenCalibration;
import faintwind.job.live.Listen;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.ui.frame.DataModel;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
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
  private Optional<FieldWays> ways = Optional.empty();
  private Optional<Act> another = Optional.empty();
  private Optional<Act> calibrate = Optional.empty();
  private Optional<Path> waiting = Optional.empty();
  private Optional<Path> foreign = Optional.empty();
  private Runnable whenKept = () -> {};

  /**
   * What there is to show.
   *
   * @param calibration what logs are converted by; empty where none is in force
   * @param look the converted log; empty where none was brought in
   * @param findings what stands out in it
   * @param together several logs in place of one, by time
   * @param problems sentences with their place
   */
  public record View(
      Optional<Calibration> calibration,
      Optional<LookedAtLog> look,
      Optional<FieldFindings> findings,
      List<FieldLook.Found> together,
      List<String> problems) {
    static final View NOTHING = nothing(Optional.empty(), List.of());

    public View {
      together = List.copyOf(together);
      problems = List.copyOf(problems);
    }

    static View nothing(Optional<Calibration> calibration, List<String> problems) {
      return new View(calibration, Optional.empty(), Optional.empty(), List.of(), problems);
    }

    private View saying(String problem) {
      return new View(calibration, look, findings, together, List.of(problem));
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
            (value, notes) -> View.nothing(Optional.of(value), lines(notes)),
            problems -> View.nothing(Optional.empty(), lines(problems))));
    say();
    if (read.isOk()) {
      waiting.ifPresent(this::open);
    }
    waiting = Optional.empty();
  }

  /** Reads each log by the calibration in force when it was recorded, and keeps it there. */
  public void at(FieldWays instrument) {
    ways = Optional.of(instrument);
  }

  /** Tells when a log was kept. */
  public void whenKept(Runnable then) {
    whenKept = then;
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
    FieldLook job = job(calibration.get());
    Optional<ImportProfile> lines = profile;
    background.run(
        watch -> job.look(log, lines, watch),
        found -> {
          foreign = lines.isEmpty() && isForeign(found) ? Optional.of(log) : Optional.empty();
          found(job.usual().by(), found);
        },
        broke -> problem(log, broke));
  }

  private static boolean isForeign(Checked<?> found) {
    return found.problems().stream().anyMatch(problem -> problem.id().equals("file.foreign"));
  }

  /** The log that was brought in, where its columns are those of a foreign logger. */
  public Optional<Path> foreign() {
    return foreign;
  }

  private FieldLook job(Calibration calibration) {
    return new FieldLook(ways, new FieldLook.Way(calibrationFile, calibration, List.of()));
  }

  private void found(Calibration usual, Checked<FieldLook.Found> found) {
    put(
        found.fold(
            (value, notes) -> {
              calibrationFile = value.way().file();
              return new View(
                  Optional.of(value.way().by()),
                  Optional.of(value.looked()),
                  Optional.of(value.findings()),
                  List.of(),
                  lines(notes));
            },
            problems -> View.nothing(Optional.of(usual), lines(problems))));
    say();
  }

  /** Shows several logs on one axis, each by the calibration of its own time. */
  public void openTogether(List<Path> logs) {
    Optional<Calibration> calibration = view().get().calibration();
    if (calibration.isEmpty() || logs.isEmpty()) {
      return;
    }
    saved = "";
    profile = Optional.empty();
    FieldLook job = job(calibration.get());
    background.run(
        watch -> job.together(logs, watch),
        found -> {
          put(
              found.fold(
                  (all, notes) ->
                      new View(calibration, Optional.empty(), Optional.empty(), all, lines(notes)),
                  problems -> View.nothing(calibration, lines(problems))));
          say();
        },
        broke -> problem(logs.get(0), broke));
  }

  /** Keeps log and speeds with the instrument. */
  public void keep() {
    Optional<Path> log = view().get().look().map(LookedAtLog::log);
    if (ways.isEmpty() || log.isEmpty() || calibrationFile.isEmpty()) {
      return;
    }
    ways.get()
        .keep(
            log.get(),
            calibrationFile.get(),
            profile,
            kept -> {
              saved =
                  kept.fold(
                      (done, notes) -> text("field.kept", done.speeds(), done.log()),
                      problems -> "");
              if (kept.isOk()) {
                whenKept.run();
              } else {
                problem(String.join(" ", lines(kept.problems())));
              }
              say();
            });
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
    Convert job =
        new FieldLook.Way(calibrationFile, by, List.of()).job(profile).withMinutes(minutes);
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
    put(view().get().saying(sentence));
    say();
  }

  private void say() {
    View now = view().get();
    if (now.calibration().isEmpty()) {
      say(
          leading(calibrate, Mark.BLOCKED, text("field.next.calibration"))
              .withDetail(text("field.next.calibration-detail")));
    } else if (!now.together().isEmpty()) {
      say(
          leading(another, Mark.DONE, text("field.next.together", now.together().size()))
              .withDetail(text("field.next.together-detail")));
    } else if (now.look().isEmpty()) {
      say(
          now.problems().isEmpty()
              ? Next.say(Mark.READY, text("field.next.log"))
              : Next.say(Mark.BLOCKED, text("field.next.refused"))
                  .withDetail(text("field.next.refused-detail")));
    } else if (!saved.isEmpty()) {
      say(leading(another, Mark.DONE, text("field.next.saved", saved)));
    } else {
      say(sayLook(now.look().get()));
    }
  }

  /** What comes after a log that is done, and where a calibration is made. */
  void leadsTo(Act log, Optional<Act> calibration) {
    another = Optional.of(log);
    calibrate = calibration;
    say();
  }

  private static Next leading(Optional<Act> act, Mark mark, String sentence) {
    return act.map(to -> Next.say(mark, sentence, to)).orElseGet(() -> Next.say(mark, sentence));
  }

  private Next sayLook(LookedAtLog look) {
    Act elsewhere = new Act("field-save", text("field.next.save.act"), this::save);
    Optional<String> there =
        calibrationFile.flatMap(by -> ways.flatMap(at -> at.keptAs(look.log(), by)));
    if (there.isPresent()) {
      return leading(another, Mark.DONE, text("field.next.kept", there.get()))
          .withDetail(text("field.next.kept-detail"))
          .withOther(elsewhere);
    }
    FieldRows rows = look.rows();
    // switching the heater on at the start of a log is no fault
    boolean power =
        rows.stretches(SpeedFlag.POWER).stream().anyMatch(s -> s.from_s() > rows.time_s(0));
    boolean care = power || !rows.stretches(SpeedFlag.GAP).isEmpty();
    String key = ways.isPresent() ? "field.next.keep" : "field.next.save";
    long count = look.summary().rows();
    String detail = text("field.next.rows", Numerals.grouped(count), Numerals.grouped(count));
    String sentence = text(care ? key + "-care" : key);
    Mark mark = care ? Mark.ATTENTION : Mark.DONE;
    if (ways.isEmpty()) {
      return Next.say(mark, sentence, elsewhere).withDetail(detail);
    }
    Act keep = new Act("field-keep", text("field.next.keep.act"), this::keep);
    return Next.say(mark, sentence, keep).withDetail(detail).withOther(elsewhere);
  }
}
