package faintwind.job.formula;

import faintwind.calibration.run.NotCounted;
import faintwind.files.AtomicFile;
import faintwind.files.run.LeftOutTable;
import faintwind.files.run.RunsTable;
import faintwind.job.EnteredFile;
import faintwind.job.FreeName;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Leaves a run, or a stretch of one, out of the fit, and takes it back. The runs table is written
 * anew beside the one before, which stays; both the reason and the new table are entered, so that
 * striking the table's entry brings the one before back.
 */
public final class LeaveOut {
  private static final double MINUTE_S = 60;

  private LeaveOut() {}

  /**
   * What is to be left out.
   *
   * @param run name of the run
   * @param notCounted everything that is left out of it from now on; nothing takes it back
   * @param reason why, in the person's words
   */
  public record Choice(String run, NotCounted notCounted, String reason) {}

  /**
   * Writes the table of a choice.
   *
   * @param folder the instrument's folder
   * @param table the runs table that counts now, in the folder
   * @return what to enter, the new table last; refused without a reason, or where too little would
   *     be left for a fit
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<List<Event>> events(Path folder, Path table, Choice choice, Messages words)
      throws IOException {
    if (choice.reason().isBlank()) {
      return Checked.refused(Problem.error("leave-out.reason-empty", Where.NOWHERE, ""));
    }
    Checked<String> text =
        LeftOutTable.of(table, choice.run(), choice.notCounted(), choice.reason());
    if (!(text instanceof Checked.Ok<String> ok)) {
      return Checked.refused(text.problems());
    }
    Path fresh = FreeName.beside(table, stem(table) + ".csv");
    AtomicFile.write(fresh, ok.value().getBytes(StandardCharsets.UTF_8));
    Checked<RunsTable> read = RunsTable.read(fresh);
    if (!read.isOk()) {
      Files.delete(fresh);
      return Checked.refused(read.problems());
    }
    Event said = new Event.NoteWritten(said(choice, words));
    return Checked.ok(List.of(said, EnteredFile.added(folder, Event.FileRole.RUNS_TABLE, fresh)));
  }

  /** The name of the first table: runs of runs-2.csv. */
  private static String stem(Path table) {
    return String.valueOf(table.getFileName()).replaceFirst("(-\\d+)?\\.\\w+$", "");
  }

  private static String said(Choice choice, Messages words) {
    return choice.notCounted().isNothing()
        ? words.text("leave-out.back", choice.run(), choice.reason())
        : words.text(
            "leave-out.note", choice.run(), what(choice.notCounted(), words), choice.reason());
  }

  /** What is left out of a run, in words. */
  public static String what(NotCounted notCounted, Messages words) {
    return notCounted.isAll()
        ? words.text("leave-out.all")
        : notCounted.stretches().stream()
            .map(
                s ->
                    words.text(
                        "leave-out.stretch",
                        Numerals.compact(s.from_s() / MINUTE_S, 4),
                        Numerals.compact(s.to_s() / MINUTE_S, 4)))
            .collect(Collectors.joining(", "));
  }
}
