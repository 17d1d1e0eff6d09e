package faintwind.ui.air;

import faintwind.job.EnteredFile;
import faintwind.job.air.AirInputs;
import faintwind.job.air.KeepAir;
import faintwind.job.air.OpeningGuide;
import faintwind.job.air.Reading;
import faintwind.job.record.Enter;
import faintwind.message.Checked;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.LogConverted;
import faintwind.record.JournalEntry;
import faintwind.record.Standing;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.CautionWords;
import faintwind.ui.instrument.OpenInstrument;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** The air at places, measured with the instrument that is open. */
public final class InstrumentAir implements AirWays {
  private final Desk desk;
  private final OpenInstrument instrument;
  private final Set<String> readNow = new HashSet<>();

  public InstrumentAir(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    this.instrument = instrument;
  }

  private Path file(String name) {
    return instrument.folder().resolve(name);
  }

  private static <T> Optional<T> last(List<T> all) {
    return all.stream().reduce((first, second) -> second);
  }

  @Override
  public Optional<Path> calibration() {
    return instrument
        .state()
        .last(CalibrationPutInForce.class)
        .map(line -> file(line.event().file()));
  }

  private List<LogConverted> converted() {
    return instrument.state().standing(LogConverted.class).stream().map(Standing::event).toList();
  }

  @Override
  public Optional<ConvertedLog> lastLog() {
    return last(converted()).map(this::log);
  }

  private ConvertedLog log(LogConverted made) {
    return new ConvertedLog(file(made.speeds()), Optional.of(file(made.calibration())));
  }

  @Override
  public ConvertedLog log(Path speeds) {
    String name = EnteredFile.name(instrument.folder(), speeds);
    return last(converted().stream().filter(made -> made.speeds().equals(name)).toList())
        .map(this::log)
        .orElseGet(() -> new ConvertedLog(speeds, calibration()));
  }

  @Override
  public Optional<String> cautionReadBy(String caution) {
    return readNow.contains(caution)
        ? Optional.of(desk.text("turntable.caution.just-read"))
        : CautionWords.readBy(desk, instrument, caution);
  }

  @Override
  public void cautionRead(String caution) {
    readNow.add(caution);
    instrument.enter(enter -> enter.acknowledgeOnScreen(caution));
  }

  @Override
  public void keepFlow(
      OpeningGuide guide,
      List<Reading> readings,
      AirInputs inputs,
      Consumer<Checked<JournalEntry>> answer) {
    instrument.enter(enter -> keeping(enter, inputs).flow(guide, readings), answer);
  }

  @Override
  public void keepSurvey(
      List<Reading> readings, AirInputs inputs, Consumer<Checked<JournalEntry>> answer) {
    instrument.enter(enter -> keeping(enter, inputs).survey(readings), answer);
  }

  private KeepAir keeping(Enter enter, AirInputs inputs) {
    LocalDate day = OffsetDateTime.now(desk.clock()).toLocalDate();
    return new KeepAir(instrument.folder(), enter, inputs, day);
  }
}
