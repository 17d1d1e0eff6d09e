package faintwind.ui.air;

import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event.FileAdded;
import faintwind.record.JournalEntry;
import faintwind.ui.frame.DataModel;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.part.Act;
import faintwind.ui.work.Background;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Places that are gone to one after another with the instrument, and what is kept of them.
 *
 * @param <V> what there is to show
 */
public abstract class PlacesModel<V> extends DataModel<V> {
  private final Readings readings;
  private final LiveAir live;
  private AirWays ways;
  private String kept = "";

  /** A model without places. */
  PlacesModel(Messages words, Background background, AirWays ways, V nothing) {
    super(words, nothing);
    this.ways = ways;
    readings = new Readings(words, background, this::work);
    live = new LiveAir(words, mean -> readings.next().ifPresent(row -> row.take(mean)), this::say);
  }

  public final Readings readings() {
    return readings;
  }

  public final LiveAir live() {
    return live;
  }

  final AirWays ways() {
    return ways;
  }

  /** Goes on with another instrument, or the same as it is open now. */
  final void goOn(AirWays instrument) {
    ways = instrument;
  }

  /** Takes times of a converted log from now on. */
  public final void use(Path speeds) {
    readings.use(
        ways.log(speeds),
        problems -> tell(lines(problems), problems.stream().anyMatch(Problem::isError)),
        broke -> tell(List.of(failed(speeds, broke)), true));
  }

  /** Where the result is kept, in words; empty where it is not, or something changed since. */
  final String kept() {
    return kept;
  }

  /** Something is said that was not kept. */
  final void changed() {
    kept = "";
  }

  /** The result was entered, or refused. */
  final void kept(Checked<JournalEntry> entry) {
    kept = entry.fold((value, notes) -> text("air.kept", file(value)), problems -> "");
    if (entry.isOk()) {
      readings.markKept();
    }
    tell(entry.isOk() ? List.of() : lines(entry.problems()), !entry.isOk());
  }

  /** The file of a result, relative to the instrument's folder. */
  private static String file(JournalEntry entry) {
    return entry.event() instanceof FileAdded added ? added.file() : "";
  }

  /**
   * What is typed and not kept.
   *
   * @param sentence that says so
   * @param keep keeps it; empty where nothing came of it yet
   */
  final Optional<Unsaved> unsaved(String sentence, Optional<Act> keep) {
    return readings.isUnsaved()
        ? Optional.of(new Unsaved(sentence, keep, text("window.unsaved.drop")))
        : Optional.empty();
  }

  /** Shows problems beside what is there. */
  abstract void tell(List<String> problems, boolean refused);

  /** Works out what can be worked out of what is filled in. */
  abstract void work();

  /** Says what to do now. */
  abstract void say();
}
