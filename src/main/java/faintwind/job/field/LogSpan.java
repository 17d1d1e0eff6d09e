package faintwind.job.field;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.SignalChain;
import faintwind.files.run.LogReader;
import faintwind.files.run.LogRow;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * When a field log was recorded.
 *
 * @param from its first row
 * @param to its last
 */
public record LogSpan(OffsetDateTime from, OffsetDateTime to) {

  /**
   * Of a log that says when it began; empty where it does not, or is no log.
   *
   * @param profile what the lines of a foreign log mean
   * @throws IOException where it cannot be read
   */
  static Optional<LogSpan> of(Path log, Optional<ImportProfile> profile) throws IOException {
    if (!Files.isRegularFile(log)) {
      return Optional.empty();
    }
    Checked<LogReader> opened =
        LogReader.open(
            Files.newInputStream(log), log.toString(), SignalChain.Input.DIFFERENCE_K, profile);
    if (!(opened instanceof Checked.Ok<LogReader> ok)) {
      return Optional.empty();
    }
    try (LogReader reader = ok.value()) {
      Optional<OffsetDateTime> start = reader.columns().start();
      return start.isEmpty() ? Optional.empty() : of(start.get(), reader);
    }
  }

  private static Optional<LogSpan> of(OffsetDateTime start, LogReader reader) throws IOException {
    OptionalDouble from_s = OptionalDouble.empty();
    OptionalDouble to_s = OptionalDouble.empty();
    for (Optional<LogRow> row = reader.next(); row.isPresent(); row = reader.next()) {
      if (row.get().time_s().isPresent()) {
        to_s = row.get().time_s();
        from_s = from_s.isPresent() ? from_s : to_s;
      }
    }
    return from_s.isPresent() && to_s.isPresent()
        ? Optional.of(
            new LogSpan(after(start, from_s.getAsDouble()), after(start, to_s.getAsDouble())))
        : Optional.empty();
  }

  private static OffsetDateTime after(OffsetDateTime start, double time_s) {
    return start.plus(Duration.ofMillis(Math.round(1000 * time_s)));
  }
}
