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
  }

  /** How a live recording finds its air speed, where a calibration is at hand. */
  public Optional<Listen.BySpeed> bySpeed() {
    return view().get().calibration().map(by -> new Listen.BySpeed(by, SpeedSettings.usual(by)));
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
    Calibration by = calibration.get();
    Convert job = job(by);
    background.run(
        watch ->
            job.look(log, watch)
                .map(
                    looked ->
                        new Found(
                            looked, FieldFindings.of(looked.rows(), by.performance().floor_m_s()))),
        this::found,
        broke -> problem(log, broke));
  }

  private Convert job(Calibration by) {
    Convert plain =
        new Convert(by, calibrationFile.map(Path::toString).orElse(""), SpeedSettings.usual(by));
    return profile.map(plain::reading).orElse(plain);
  }

  private record Found(LookedAtLog looked, FieldFindings findings) {}

  private void found(Checked<Found> found) {
    Optional<Calibration> by = view().get().calibration();
    put(
        found.fold(
            (value, notes) ->
                new View(
                    by, Optional.of(value.looked()), Optional.of(value.findings()), lines(notes)),
            problems -> new View(by, Optional.empty(), Optional.empty(), lines(problems))));
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
    Convert job = job(by).withMinutes(minutes);
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
