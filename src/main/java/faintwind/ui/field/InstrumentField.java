package faintwind.ui.field;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.job.EnteredFile;
import faintwind.job.JobWatch;
import faintwind.job.field.CalibrationForLog;
import faintwind.job.field.KeptLogs;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.KeepConversion;
import faintwind.job.record.KeepConversion.Kept;
import faintwind.message.Checked;
import faintwind.record.Event.LogConverted;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** The field logs of the instrument that is open. */
public final class InstrumentField implements FieldWays {
  private final Desk desk;
  private final OpenInstrument instrument;

  public InstrumentField(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    this.instrument = instrument;
  }

  @Override
  public FieldWays.Chosen calibrationOf(Path log, Optional<ImportProfile> profile)
      throws IOException {
    CalibrationForLog chosen =
        CalibrationForLog.of(instrument.state(), log, profile, OffsetDateTime.now(desk.clock()));
    return new FieldWays.Chosen(chosen.file().map(instrument.folder()::resolve), chosen.notes());
  }

  @Override
  public void keep(
      Path log, Path calibration, Optional<ImportProfile> profile, Consumer<Checked<Kept>> answer) {
    // relative: the instrument may have moved to another place by the time it is written
    String by = EnteredFile.name(instrument.folder(), calibration);
    AtomicReference<Kept> done = new AtomicReference<>();
    instrument.enter(
        enter -> {
          InstrumentView view = instrument.now().get().view();
          KeepConversion.How how =
              new KeepConversion.How(view.path().resolve(by), SpeedSettings::usual, profile);
          Checked<Kept> kept = new KeepConversion(view, enter, how).keep(log, JobWatch.NOBODY);
          return kept.map(
              made -> {
                done.set(made);
                return made.entry();
              });
        },
        entered -> answer.accept(entered.map(entry -> done.get())));
  }

  @Override
  public Optional<String> keptAs(Path log, Path calibration) {
    String name = EnteredFile.name(instrument.folder(), log);
    String by = EnteredFile.name(instrument.folder(), calibration);
    return instrument.state().standing(LogConverted.class).stream()
        .map(Standing::event)
        .filter(made -> made.log().equals(name) || made.speeds().equals(name))
        .filter(made -> made.calibration().equals(by))
        .map(LogConverted::speeds)
        .reduce((first, second) -> second);
  }

  /** Finds the logs on record, off the JavaFX thread. */
  public void kept(Consumer<List<KeptLogs.Log>> found) {
    InstrumentState state = instrument.state();
    Path folder = instrument.folder();
    desk.background().runQuietly(watch -> KeptLogs.of(folder, state), found, broke -> {});
  }
}
