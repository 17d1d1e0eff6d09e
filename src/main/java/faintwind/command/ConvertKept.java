package faintwind.command;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.command.record.InstrumentOptions;
import faintwind.job.JobWatch;
import faintwind.job.field.CalibrationForLog;
import faintwind.job.formula.Profiles;
import faintwind.job.record.AtInstrument;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.KeepConversion;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Converts logs by the calibration in force of an instrument and keeps them in its folder. */
final class ConvertKept {
  private final Terminal terminal;
  private final Path folder;
  private final Function<Calibration, SpeedSettings> settings;
  private final Optional<String> profile;
  private final Function<String, Optional<Path>> minutes;

  /**
   * Prepares.
   *
   * @param folder of the instrument
   * @param settings averaging and air, by the calibration
   * @param profile id or file of the profile of foreign logs
   * @param minutes where the means of whole minutes of a log go, where they are wanted
   */
  ConvertKept(
      Terminal terminal,
      Path folder,
      Function<Calibration, SpeedSettings> settings,
      Optional<String> profile,
      Function<String, Optional<Path>> minutes) {
    this.terminal = terminal;
    this.folder = folder;
    this.settings = settings;
    this.profile = profile;
    this.minutes = minutes;
  }

  /** Converts each log; a bad one is refused by name, the others are kept. */
  int run(List<String> logs, String who) throws IOException {
    Optional<ImportProfile> foreign = Optional.empty();
    if (profile.isPresent()) {
      Checked<ImportProfile> found = Profiles.find(profile.get());
      if (!(found instanceof Checked.Ok<ImportProfile> ok)) {
        return terminal.refuse(found.problems());
      }
      foreign = Optional.of(ok.value());
    }
    AtInstrument instrument = new AtInstrument(folder, InstrumentOptions.clock(), who);
    List<Problem> refusals = new ArrayList<>();
    int refused = 0;
    for (String log : logs) {
      Optional<ImportProfile> lines = foreign;
      Checked<KeepConversion.Kept> done =
          instrument.work((view, enter) -> keep(view, enter, log, lines));
      terminal.report(done.problems());
      if (done instanceof Checked.Ok<KeepConversion.Kept> ok) {
        ok.value().summary().lines(terminal.messages()).forEach(terminal.err()::println);
        terminal.say("convert.kept", ok.value().speeds());
      } else {
        refusals.addAll(done.problems());
        refused++;
      }
    }
    if (refused == logs.size()) {
      return ExitCode.of(refusals).number();
    }
    return (refused > 0 ? ExitCode.LIMIT : ExitCode.DONE).number();
  }

  private Checked<KeepConversion.Kept> keep(
      InstrumentView view, Enter enter, String name, Optional<ImportProfile> lines)
      throws IOException {
    Path log = Path.of(name);
    CalibrationForLog chosen =
        CalibrationForLog.of(
            view.state(), log, lines, OffsetDateTime.now(InstrumentOptions.clock()));
    if (chosen.file().isEmpty()) {
      String at = folder.toString();
      return Checked.refused(Problem.error("convert.none-in-force", Where.file(at), at));
    }
    terminal.report(chosen.notes());
    Path calibration = view.path().resolve(chosen.file().get());
    KeepConversion.How how =
        new KeepConversion.How(calibration, settings, lines, minutes.apply(name));
    return new KeepConversion(view, enter, how).keep(log, JobWatch.NOBODY);
  }
}
