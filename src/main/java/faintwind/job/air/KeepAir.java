package faintwind.job.air;

import faintwind.files.air.PlacesTable;
import faintwind.files.air.PointsTable;
import faintwind.job.EnteredFile;
import faintwind.job.FreeName;
import faintwind.job.record.Enter;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Keeps what was read at places with an instrument, as {@code flow} and {@code survey} do: the
 * filled table and its result in {@code logs/}, each with an entry and its hash. The result is
 * worked out from the table as it was written.
 */
public final class KeepAir {
  private final Path folder;
  private final Enter enter;
  private final AirInputs inputs;
  private final LocalDate day;

  /**
   * Prepares.
   *
   * @param folder the instrument's
   * @param day stands in the names of the files
   */
  public KeepAir(Path folder, Enter enter, AirInputs inputs, LocalDate day) {
    this.folder = folder;
    this.enter = enter;
    this.inputs = inputs;
    this.day = day;
  }

  /** The work on a table that lies on the disk: its result by the hashes of its inputs. */
  private interface Work {
    Checked<String> json(Path table, AirSource source, Map<String, String> hashes)
        throws IOException;
  }

  /**
   * A flow.
   *
   * @throws IOException where the disk or a permission fails; then nothing is entered
   */
  public Checked<JournalEntry> flow(OpeningGuide guide, List<Reading> readings) throws IOException {
    return keep(
        FileRole.FLOW,
        "points",
        PointsTable.text(guide.setup(), Reading.rows(readings)),
        (table, source, hashes) ->
            MeasureFlow.of(table, source, inputs.settle_s())
                .map(done -> FlowText.json(done, hashes)));
  }

  /**
   * A survey.
   *
   * @throws IOException where the disk or a permission fails; then nothing is entered
   */
  public Checked<JournalEntry> survey(List<Reading> readings) throws IOException {
    return keep(
        FileRole.SURVEY,
        "places",
        PlacesTable.text(Reading.rows(readings)),
        (table, source, hashes) ->
            SurveyPlaces.of(table, source, inputs.settle_s())
                .map(done -> SurveyText.json(done, hashes)));
  }

  private Checked<String> worked(Path table, Work work) throws IOException {
    Checked<AirSource> source = inputs.open();
    return source instanceof Checked.Ok<AirSource> ok
        ? work.json(table, ok.value(), ResultFile.hashes(inputs.with(table)))
        : Checked.refused(source.problems());
  }

  private Checked<JournalEntry> keep(FileRole role, String rows, String text, Work work)
      throws IOException {
    Path logs = Files.createDirectories(folder.resolve("logs"));
    Path result = FreeName.in(logs, Field.word(role) + "-" + day + ".json");
    String stem = String.valueOf(result.getFileName()).replaceFirst("\\.json$", "");
    Path table = FreeName.in(logs, stem + "-" + rows + ".csv");
    boolean entered = false;
    try {
      ResultFile.write(table, text);
      Checked<String> json = worked(table, work);
      if (!(json instanceof Checked.Ok<String> ok)) {
        return Checked.refused(json.problems());
      }
      ResultFile.write(result, ok.value());
      FileAdded made = EnteredFile.added(folder, role, result);
      Checked<JournalEntry> entry =
          enter.plain(Optional.empty(), List.of(EnteredFile.added(folder, role, table), made));
      entered = entry.isOk();
      return entry;
    } finally {
      if (!entered) {
        Files.deleteIfExists(result);
        Files.deleteIfExists(table);
      }
    }
  }
}
