package faintwind.job.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.speed.SignalMatch;
import faintwind.files.run.LogColumns;
import faintwind.files.run.LogReader;
import faintwind.files.run.SpeedWriter;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A field log that was opened and can be converted: the one door for looking at it, saving it and
 * streaming it, so that what one refuses all refuse.
 *
 * @param reader its rows
 * @param match how its signal becomes the calibration's
 * @param name how problems name it
 * @param notes of opening it
 */
record OpenLog(LogReader reader, SignalMatch match, String name, List<Problem> notes) {

  /** Why a file is no log to be opened, if so. */
  static Optional<Problem> trouble(Path log) {
    Where where = Where.file(log.toString());
    if (!Files.exists(log)) {
      return Optional.of(Problem.error("file.missing", where, log.toString()));
    }
    if (Files.isRegularFile(log)) {
      return Optional.empty();
    }
    String id = Files.isDirectory(log) ? "file.is-folder" : "file.not-plain";
    return Optional.of(Problem.error(id, where, log.toString()));
  }

  /** Opens a log; a profile says what the lines of a foreign one mean. */
  static Checked<OpenLog> of(
      InputStream in, String name, SignalPath signal, Optional<ImportProfile> profile)
      throws IOException {
    Checked<LogReader> opened = LogReader.open(in, name, signal.chain().input(), profile);
    if (!(opened instanceof Checked.Ok<LogReader> ok)) {
      return Checked.refused(opened.problems());
    }
    LogColumns columns = ok.value().columns();
    List<Problem> problems = new ArrayList<>();
    Optional<SignalMatch> match = SignalMatch.of(columns.unit(), signal);
    if (match.isEmpty()) {
      String wanted = signal.unit().column();
      problems.add(
          Problem.error("convert.unit-differs", Where.file(name), columns.unit().column(), wanted));
    }
    List<String> there = SpeedWriter.alreadyIn(columns);
    if (!there.isEmpty()) {
      problems.add(
          Problem.error("convert.columns-there", Where.file(name), String.join(", ", there)));
    }
    return match.isEmpty() || !problems.isEmpty()
        ? Checked.refused(problems)
        : Checked.ok(new OpenLog(ok.value(), match.get(), name, ok.notes()));
  }

  /** What should be known of it once its rows are read. */
  List<Problem> told() {
    List<Problem> all = new ArrayList<>(notes);
    all.addAll(reader.notes());
    return all;
  }

  /** Whether its rows come from the virtual instrument. */
  boolean rehearsal() {
    return notes.stream().anyMatch(note -> note.id().equals(Calibration.REHEARSAL));
  }

  /** Why a log that has ended gave nothing, if so. */
  Optional<Problem> nothing(ConversionCount count) {
    if (count.rows() == 0) {
      return Optional.of(Problem.error("file.no-rows", Where.file(name), ""));
    }
    return count.allBad() ? Optional.of(unreadable(count)) : Optional.empty();
  }

  /** That none of its rows can be read. */
  Problem unreadable(ConversionCount count) {
    String rows = String.valueOf(count.rows());
    return Problem.error("convert.no-row-readable", Where.file(name), rows);
  }
}
