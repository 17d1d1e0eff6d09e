package faintwind.job.field;

import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.LogConverted;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.figure.LogShape;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The field logs of an instrument's folder, with when they were recorded. */
public final class KeptLogs {
  private KeptLogs() {}

  /**
   * One log.
   *
   * @param file its place; of a foreign log that of its speeds, which any window can read
   * @param name of the log, relative to the folder
   * @param span when it was recorded
   * @param converted what was made of it last; empty where it was never kept as speeds
   * @param shape of its speeds
   */
  public record Log(
      Path file,
      String name,
      LogSpan span,
      Optional<LogConverted> converted,
      Optional<LogShape> shape) {}

  /**
   * Every log on record that says when it was recorded, the earliest first.
   *
   * @throws IOException where one that is there cannot be read
   */
  public static List<Log> of(Path folder, InstrumentState state) throws IOException {
    List<Log> logs = new ArrayList<>();
    List<String> names =
        state.standing(FileAdded.class).stream()
            .map(Standing::event)
            .filter(added -> added.kind() == FileRole.FIELD_LOG)
            .map(FileAdded::file)
            .distinct()
            .toList();
    for (String name : names) {
      log(folder, state, name).ifPresent(logs::add);
    }
    logs.sort(Comparator.comparing(log -> log.span().from()));
    return logs;
  }

  private static Optional<Log> log(Path folder, InstrumentState state, String name)
      throws IOException {
    Optional<LogConverted> converted = conversion(state, name);
    Optional<Path> speeds = converted.map(made -> folder.resolve(made.speeds()));
    Path file = folder.resolve(name);
    Optional<LogSpan> span = LogSpan.of(file, Optional.empty());
    if (span.isEmpty() && speeds.isPresent()) {
      file = speeds.get();
      span = LogSpan.of(file, Optional.empty());
    }
    if (span.isEmpty()) {
      return Optional.empty();
    }
    Optional<LogShape> shape = speeds.isPresent() ? SpeedsShape.of(speeds.get()) : Optional.empty();
    return Optional.of(new Log(file, name, span.get(), converted, shape));
  }

  /** What was made of a log last. */
  public static Optional<LogConverted> conversion(InstrumentState state, String name) {
    return state.standing(LogConverted.class).stream()
        .map(Standing::event)
        .filter(made -> made.log().equals(name))
        .reduce((first, second) -> second);
  }
}
