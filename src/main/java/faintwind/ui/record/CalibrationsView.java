package faintwind.ui.record;

import faintwind.guide.Due;
import faintwind.job.record.CompareKept;
import faintwind.job.record.CompareKept.Pair;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.calibration.ComparisonTables;
import faintwind.report.figure.CalibrationPlots;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.fold.FoldingChoice;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import faintwind.ui.work.DiskWords;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/**
 * The calibrations of an instrument: since when the one in force counts, when it is due again, and
 * the last two against each other.
 */
final class CalibrationsView extends VBox {
  private static final double PLOT_EM = 12;
  private static final int EVERY = 3;

  private final Desk desk;
  private final OpenInstrument instrument;
  private final VBox compared = new VBox();
  private Shown shown = new Shown(List.of(), Optional.empty());
  private Pair asked = new Pair("", "");

  /** What the view was made of: other entries do not change it. */
  private record Shown(List<String> files, Optional<Due> due) {}

  CalibrationsView(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    this.instrument = instrument;
    setId("record-calibrations");
    getStyleClass().add("plot-list");
    compared.getStyleClass().add("plot-list");
  }

  /** Shows what the journal says now; the comparison comes when it is read. */
  void show() {
    InstrumentState state = instrument.state();
    Optional<Due> due = Due.ofInForce(instrument.checklist(), instrument.now().get().situation());
    Shown now = new Shown(CompareKept.files(state), due);
    if (now.equals(shown)) {
      return;
    }
    shown = now;
    getChildren().clear();
    Optional<Standing<CalibrationPutInForce>> last = state.last(CalibrationPutInForce.class);
    if (last.isEmpty() || due.isEmpty()) {
      return;
    }
    getChildren().add(Words.label(desk.text("record.calibrations"), "tell", "semibold"));
    getChildren().add(due(last.get(), due.get()));
    getChildren().add(new RecheckView(desk, instrument, last.get().event().file()));
    CompareKept.lastTwo(state)
        .ifPresent(
            pair -> {
              getChildren().addAll(choices(CompareKept.files(state), pair), compared);
              compare(pair);
            });
  }

  private Node due(Standing<CalibrationPutInForce> last, Due due) {
    OffsetDateTime from = InstrumentState.countsFrom(last);
    boolean past = due.isPast(OffsetDateTime.now(desk.clock()));
    return Rows.check(
        past ? Mark.ATTENTION : Mark.DONE,
        desk.text(past ? "record.due-now" : "record.due", DateText.zoned(desk.words(), due.at())),
        desk.text(
            "record.due-why",
            last.event().file(),
            DateText.zoned(desk.words(), from),
            desk.text(due.cause().key())),
        desk.words());
  }

  /** Which two are set against each other; a sentence where there are only two. */
  private Node choices(List<String> files, Pair pair) {
    ComboBox<String> earlier = choice("record-earlier", files, pair.earlier());
    ComboBox<String> later = choice("record-later", files, pair.later());
    earlier.setOnAction(event -> compare(new Pair(earlier.getValue(), later.getValue())));
    later.setOnAction(event -> compare(new Pair(earlier.getValue(), later.getValue())));
    Label against = Words.label(desk.text("record.against"));
    FlowPane row =
        new FlowPane(Words.label(desk.text("record.compare"), "semibold"), earlier, against, later);
    row.getStyleClass().add("ways");
    row.setHgap(12);
    row.setVgap(8);
    return row;
  }

  private ComboBox<String> choice(String id, List<String> files, String chosen) {
    ComboBox<String> choice = new FoldingChoice<>();
    choice.setId(id);
    choice.getItems().setAll(files);
    choice.setValue(chosen);
    choice.setAccessibleText(desk.text("record.compare"));
    return choice;
  }

  private void compare(Pair pair) {
    asked = pair;
    desk.background()
        .runQuietly(
            watch -> CompareKept.of(instrument.folder(), pair),
            found -> {
              if (pair.equals(asked)) {
                compared(found);
              }
            },
            broke -> say(List.of(DiskWords.say(broke, desk.words()))));
  }

  private void say(List<String> lines) {
    compared.getChildren().setAll(Rows.problems(lines, false, desk.words()));
  }

  private void compared(Checked<CompareKept> found) {
    if (found instanceof Checked.Ok<CompareKept> ok) {
      compared(ok.value());
    } else {
      say(found.problems().stream().map(desk.words()::line).toList());
    }
  }

  private void compared(CompareKept kept) {
    ComparisonTables tables =
        new ComparisonTables(kept.earlier(), kept.later(), kept.comparison(), desk.words());
    compared
        .getChildren()
        .setAll(
            Rows.check(
                kept.comparison().agrees() ? Mark.DONE : Mark.ATTENTION,
                tables.verdict(),
                tables.which(),
                desk.words()));
    List<String> causes = tables.causes();
    if (!causes.isEmpty()) {
      compared.getChildren().add(Words.label(desk.text("record.causes"), "semibold"));
      compared.getChildren().addAll(Rows.problems(causes, false, desk.words()));
    }
    compared
        .getChildren()
        .addAll(
            FigureCard.of(
                "record-drift",
                new CalibrationPlots(desk.words()).overlay(List.of(kept.earlier(), kept.later())),
                PLOT_EM,
                desk),
            Words.label(desk.text("compare.speeds"), "semibold"),
            grid("record-compared", ComparisonTables.speedHeads(), every(tables.speeds())),
            Words.label(desk.text("compare.changes"), "semibold"),
            grid("record-changes", ComparisonTables.changeHeads(), tables.changes()));
  }

  /** Every third speed: the page of the comparison has them all. */
  private static List<List<String>> every(List<List<String>> rows) {
    return IntStream.range(0, rows.size()).filter(i -> i % EVERY == 0).mapToObj(rows::get).toList();
  }

  private GridPane grid(String id, List<String> heads, List<List<String>> rows) {
    GridPane grid = new GridPane();
    grid.setId(id);
    grid.getStyleClass().add("fact-table");
    grid.setHgap(24);
    for (int k = 0; k < heads.size(); k++) {
      grid.add(Words.label(desk.text(heads.get(k)), "column-head"), k, 0);
      for (int i = 0; i < rows.size(); i++) {
        grid.add(Words.whole(rows.get(i).get(k)), k, 1 + i);
      }
    }
    return grid;
  }
}
