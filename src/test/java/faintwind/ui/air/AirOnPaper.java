package faintwind.ui.air;

import faintwind.job.air.AirInputs;
import faintwind.job.air.OpeningGuide;
import faintwind.job.air.Reading;
import faintwind.message.Checked;
import faintwind.record.JournalEntry;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** An instrument without a folder: what was read of its cautions is written down, no more. */
final class AirOnPaper implements AirWays {
  private final List<String> read = new ArrayList<>();
  private final Optional<ConvertedLog> log;

  AirOnPaper(Optional<ConvertedLog> log) {
    this.log = log;
  }

  @Override
  public Optional<Path> calibration() {
    return Optional.empty();
  }

  @Override
  public Optional<ConvertedLog> lastLog() {
    return log;
  }

  @Override
  public ConvertedLog log(Path speeds) {
    return new ConvertedLog(speeds, calibration());
  }

  @Override
  public Optional<String> cautionReadBy(String caution) {
    return read.contains(caution) ? Optional.of("Read by Ida.") : Optional.empty();
  }

  @Override
  public void cautionRead(String caution) {
    read.add(caution);
  }

  @Override
  public void keepFlow(
      OpeningGuide guide,
      List<Reading> readings,
      AirInputs inputs,
      Consumer<Checked<JournalEntry>> answer) {}

  @Override
  public void keepSurvey(
      List<Reading> readings, AirInputs inputs, Consumer<Checked<JournalEntry>> answer) {}
}
