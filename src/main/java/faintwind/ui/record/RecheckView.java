package faintwind.ui.record;

import faintwind.job.record.KeepRuns;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.record.Event.Rechecked;
import faintwind.record.JournalEntry;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/**
 * A check of the calibration in force at one or two speeds, in ten minutes: what it reads at the
 * arm against what the arm says. What was recorded is kept, and what came of the last check is
 * shown.
 */
final class RecheckView extends VBox {
  private final Desk desk;
  private final OpenInstrument instrument;
  private final String calibration;
  private final VBox answer = new VBox();

  RecheckView(Desk desk, OpenInstrument instrument, String calibration) {
    this.desk = desk;
    this.instrument = instrument;
    this.calibration = calibration;
    answer.setId("recheck-answer");
    getStyleClass().add("entries");
    Button choose = Words.button("recheck-choose", desk.text("recheck.choose"), this::choose);
    choose.getStyleClass().add("quiet");
    getChildren()
        .setAll(
            Words.label(desk.text("recheck.title"), "semibold"),
            Words.label(desk.text("recheck.how"), "fine", "soft"),
            Boxes.row("ways", choose),
            answer);
    instrument
        .state()
        .last(Rechecked.class, line -> line.event().calibration().equals(calibration))
        .ifPresent(line -> show(line.event(), DateText.zoned(desk.words(), line.at())));
  }

  private void choose() {
    desk.files()
        .open(desk.text("recheck.choose"), desk.text("turntable.kind"), "*.csv")
        .ifPresent(this::check);
  }

  private void check(Path table) {
    instrument.enter(
        enter -> KeepRuns.recheck(instrument.folder(), calibration, table, enter, desk.words()),
        this::came);
  }

  private void came(Checked<JournalEntry> came) {
    if (came instanceof Checked.Ok<JournalEntry> ok
        && ok.value().event() instanceof Rechecked done) {
      show(done, DateText.zoned(desk.words(), ok.value().at()));
    } else {
      List<String> lines = came.problems().stream().map(desk.words()::line).toList();
      answer.getChildren().setAll(Rows.problems(lines, true, desk.words()));
    }
  }

  private void show(Rechecked done, String when) {
    String verdict = desk.text(done.agrees() ? "recheck.stands" : "recheck.due");
    Mark mark = done.agrees() ? Mark.DONE : Mark.ATTENTION;
    answer
        .getChildren()
        .setAll(
            Rows.check(mark, verdict, when + ", " + done.runs(), desk.words()),
            Words.label(done.text(), "fine"));
  }
}
