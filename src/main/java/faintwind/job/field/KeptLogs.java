package faintwind.job.field;

import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
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
   * @param file its place
   * @param span when it was recorded
   */
  public record Log(Path file, LogSpan span) {}

  /**
   * Every log on record that says when it was recorded, the earliest first.
   *
   * @throws IOException where one that is there cannot be read
   */
  public static List<Log> of(Path folder, InstrumentState state) throws IOException {
    List<Log> logs = new ArrayList<>();
    for (Standing<FileAdded> line : state.standing(FileAdded.class)) {
      Path file = folder.resolve(line.event().file());
      if (line.event().kind() == FileRole.FIELD_LOG
          && logs.stream().noneMatch(log -> log.file().equals(file))) {
        LogSpan.of(file, Optional.empty()).ifPresent(span -> logs.add(new Log(file, span)));
      }
    }
    logs.sort(Comparator.comparing(log -> log.span().from()));
    return logs;
  }
}
