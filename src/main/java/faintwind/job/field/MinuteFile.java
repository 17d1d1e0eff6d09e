package faintwind.job.field;

import faintwind.calibration.speed.MinuteSpeed;
import faintwind.files.AtomicFile;
import faintwind.files.run.MinuteWriter;
import faintwind.files.run.TableForm;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** The file of the minute means of a conversion, where one is wanted. For one log. */
final class MinuteFile implements Closeable {
  private final Optional<AtomicFile> file;
  private final Optional<MinuteWriter> writer;

  private MinuteFile(Optional<AtomicFile> file, Optional<MinuteWriter> writer) {
    this.file = file;
    this.writer = writer;
  }

  static MinuteFile begin(Optional<Path> target, OpenLog log, TableForm form) throws IOException {
    if (target.isEmpty()) {
      return new MinuteFile(Optional.empty(), Optional.empty());
    }
    AtomicFile file = AtomicFile.begin(target.get());
    MinuteWriter writer =
        MinuteWriter.begin(file.stream(), log.reader().columns(), log.rehearsal(), form);
    return new MinuteFile(Optional.of(file), Optional.of(writer));
  }

  boolean isWanted() {
    return writer.isPresent();
  }

  void write(MinuteSpeed minute) throws IOException {
    if (writer.isPresent()) {
      writer.get().write(minute);
    }
  }

  /** Lets the file stand. */
  void commit() throws IOException {
    if (file.isPresent()) {
      file.get().commit();
    }
  }

  @Override
  public void close() throws IOException {
    if (file.isPresent()) {
      file.get().close();
    }
  }
}
