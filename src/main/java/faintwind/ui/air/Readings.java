package faintwind.ui.air;

import faintwind.job.air.AirInputs;
import faintwind.job.air.AirSource;
import faintwind.job.air.Reading;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What was read at a list of places, each a speed or a stretch of one converted log. */
public final class Readings {
  private final Messages words;
  private final Background background;
  private final Runnable changed;
  private final ObservableList<PlaceRow> rows = FXCollections.observableArrayList();
  private final ObjectProperty<Way> way = new SimpleObjectProperty<>(Way.TYPED);
  private List<List<String>> kept = List.of();
  private Optional<ConvertedLog> log = Optional.empty();
  private AirSource source = AirSource.TYPED;

  /** Where the speeds come from. */
  public enum Way {
    /** A person types them, or takes them from the instrument that is listened to. */
    TYPED,
    /** From a converted log, by times. */
    LOG
  }

  Readings(Messages words, Background background, Runnable changed) {
    this.words = words;
    this.background = background;
    this.changed = changed;
    way.addListener((property, was, now) -> changed.run());
  }

  public ObservableList<PlaceRow> rows() {
    return rows;
  }

  public ObjectProperty<Way> way() {
    return way;
  }

  /** The log that times speak of. */
  public Optional<ConvertedLog> log() {
    return log;
  }

  boolean isByLog() {
    return way.get() == Way.LOG;
  }

  PlaceRow add(String name) {
    PlaceRow row = new PlaceRow(name, words);
    row.whenChanged(changed);
    rows.add(row);
    return row;
  }

  /**
   * Uses a converted log from now on; opened off the JavaFX thread.
   *
   * @param told hears why it cannot be used
   * @param broke hears what the disk refused
   */
  void use(ConvertedLog file, Consumer<List<Problem>> told, Consumer<IOException> broke) {
    background.run(
        watch -> inputs(file).open(),
        opened -> {
          if (opened instanceof Checked.Ok<AirSource> ok) {
            source = ok.value();
            log = Optional.of(file);
          }
          changed.run();
          told.accept(opened.problems());
        },
        broke);
  }

  private static AirInputs inputs(ConvertedLog file) {
    return new AirInputs(Optional.of(file.speeds()), file.calibration(), Optional.empty());
  }

  private List<List<String>> typed() {
    return rows.stream().map(PlaceRow::typed).toList();
  }

  /** What is typed now is with the instrument. */
  void markKept() {
    kept = typed();
  }

  /** The same places once more. */
  void clear() {
    rows.forEach(PlaceRow::clear);
  }

  /** Whether something is typed that is not with the instrument. */
  boolean isUnsaved() {
    List<List<String>> now = typed();
    return !now.equals(kept)
        && now.stream().anyMatch(row -> row.stream().anyMatch(t -> !t.isEmpty()));
  }

  /** The first place that is not filled in. */
  Optional<PlaceRow> next() {
    return rows.stream().filter(row -> !row.isFilled(isByLog())).findFirst();
  }

  int missing() {
    return (int) rows.stream().filter(row -> !row.isFilled(isByLog())).count();
  }

  /** What is filled in, in its order; refused with what is wrong with it. */
  Checked<List<Reading>> filled() {
    List<Reading> readings = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (PlaceRow row : rows) {
      Optional<Checked<Reading>> read = row.reading(isByLog());
      if (read.isPresent() && read.get() instanceof Checked.Ok<Reading> ok) {
        readings.add(ok.value());
      }
      read.ifPresent(r -> problems.addAll(r.problems()));
    }
    return problems.isEmpty() ? Checked.ok(readings) : Checked.refused(problems);
  }

  /** What the speeds come from. */
  AirSource source() {
    return isByLog() ? source : AirSource.TYPED;
  }

  /** The same by the names of files. */
  AirInputs inputs() {
    return isByLog() ? log.map(Readings::inputs).orElse(AirInputs.NONE) : AirInputs.NONE;
  }
}
