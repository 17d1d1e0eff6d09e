package faintwind.job.field;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.SignalChain;
import faintwind.files.AtomicFile;
import faintwind.files.run.LogReader;
import faintwind.files.run.LogRow;
import faintwind.files.run.RunFile;
import faintwind.files.table.FirstLines;
import faintwind.job.FreeName;
import faintwind.message.Checked;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A recording of a foreign logger: its first lines, and the run file that comes of it. */
public final class ForeignLog {
  private static final int LOOKED_AT = 60;

  private ForeignLog() {}

  /**
   * Its first lines, to be looked at while a profile is put together.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<List<String>> firstLines(Path log) throws IOException {
    return FirstLines.of(log, LOOKED_AT).map(FirstLines::lines);
  }

  /**
   * Writes the run file that comes of it beside it, under a name that is free.
   *
   * @return the run file; refused where a line does not fit, or the times do not rise
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Path> toRunFile(Path log, ImportProfile profile) throws IOException {
    SignalChain.Input plain = SignalChain.Input.VOLTAGE;
    Checked<Recording> judged = RunFile.readForeign(log, log.toString(), plain, profile);
    if (!judged.isOk()) {
      return Checked.refused(judged.problems());
    }
    Path target = freeName(log);
    Checked<LogReader> opened =
        LogReader.openForeign(Files.newInputStream(log), log.toString(), plain, profile);
    if (!(opened instanceof Checked.Ok<LogReader> ok)) {
      return Checked.refused(opened.problems());
    }
    try (LogReader rows = ok.value();
        AtomicFile file = AtomicFile.begin(target)) {
      write(rows, new OutputStreamWriter(file.stream(), StandardCharsets.UTF_8), log, profile);
      file.commit();
    }
    return Checked.ok(target, judged.problems());
  }

  private static void write(LogReader rows, Writer to, Path log, ImportProfile profile)
      throws IOException {
    to.write("# source: " + log.getFileName() + ", profile " + profile.id() + "\n");
    if (rows.columns().start().isPresent()) {
      to.write("# start: " + rows.columns().start().get() + "\n");
    }
    to.write(String.join(",", rows.columns().names()) + "\n");
    for (Optional<LogRow> row = rows.next(); row.isPresent(); row = rows.next()) {
      to.write(row.get().text() + "\n");
    }
    to.flush();
  }

  private static Path freeName(Path log) {
    String name = String.valueOf(log.getFileName()).replaceFirst("\\.[A-Za-z]{1,4}$", "");
    return FreeName.beside(log, name + "-run.csv");
  }
}
