package faintwind.ui.record;

import faintwind.guide.Due;
import faintwind.job.record.CompareKept;
import faintwind.message.Checked;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.calibration.ComparisonTables;
import faintwind.report.figure.CalibrationPlots;
import faintwind.report.page.LogWords;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
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
  private int shown = -1;

  CalibrationsView(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    this.instrument = instrument;
    setId("record-calibrations");
    getStyleClass().add("plot-list");
  }

  /** Shows what the journal says now; the comparison comes when it is read. */
  void show() {
    int lines = instrument.state().lines().size();
    if (lines == shown) {
      return;
    }
    shown = lines;
    getChildren().clear();
    OffsetDateTime now = OffsetDateTime.now(desk.clock());
    Optional<Standing<CalibrationPutInForce>> last =
        instrument.state().last(CalibrationPutInForce.class);
    if (last.isEmpty()) {
      return;
    }
    OffsetDateTime from = InstrumentState.countsFrom(last.get());
    Due due = Due.of(instrument.checklist(), instrument.now().get().situation(), from);
    getChildren().add(Words.label(desk.text("record.calibrations"), "tell", "semibold"));
    getChildren()
        .add(
            Rows.check(
                due.isPast(now) ? Mark.ATTENTION : Mark.DONE,
                desk.text(
                    due.isPast(now) ? "record.due-now" : "record.due", LogWords.time(due.at())),
                desk.text(
                    "record.due-why",
                    last.get().event().file(),
                    LogWords.time(from),
                    desk.text(due.cause().key())),
                desk.words()));
    getChildren().add(compared);
    InstrumentState state = instrument.state();
    desk.background()
        .runQuietly(
            watch -> CompareKept.of(instrument.folder(), state), this::compared, broke -> {});
  }

  private void compared(Checked<Optional<CompareKept>> found) {
    found.fold(
        (kept, notes) -> {
          compared.getChildren().clear();
          kept.ifPresent(this::compared);
          return true;
        },
        problems -> {
          List<String> lines = problems.stream().map(desk.words()::line).toList();
          compared.getChildren().setAll(Rows.problems(lines, false, desk.words()));
          return false;
        });
  }

  private void compared(CompareKept kept) {
    ComparisonTables tables =
        new ComparisonTables(kept.earlier(), kept.later(), kept.comparison(), desk.words());
    compared
        .getChildren()
        .addAll(
            Rows.check(
                kept.comparison().agrees() ? Mark.DONE : Mark.ATTENTION,
                tables.verdict(),
                tables.which(),
                desk.words()),
            FigureCard.of(
                "record-drift",
                new CalibrationPlots(desk.words()).overlay(List.of(kept.earlier(), kept.later())),
                PLOT_EM,
                desk));
    compared.getChildren().addAll(Rows.problems(tables.causes(), false, desk.words()));
    compared.getChildren().add(grid(tables));
  }

  /** Every third speed: the page of the comparison has them all. */
  private GridPane grid(ComparisonTables tables) {
    GridPane grid = new GridPane();
    grid.setId("record-compared");
    grid.getStyleClass().add("fact-table");
    grid.setHgap(24);
    List<String> heads = ComparisonTables.speedHeads();
    for (int k = 0; k < heads.size(); k++) {
      Label head = Words.plain(desk.text(heads.get(k)), "column-head");
      grid.add(head, k, 0);
    }
    List<List<String>> rows = tables.speeds();
    for (int i = 0; i < rows.size(); i += EVERY) {
      for (int k = 0; k < heads.size(); k++) {
        grid.add(Words.plain(rows.get(i).get(k)), k, 1 + i / EVERY);
      }
    }
    return grid;
  }
}
