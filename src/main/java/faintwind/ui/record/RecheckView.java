package faintwind.ui.record;

import faintwind.calibration.compare.Recheck;
import faintwind.job.formula.RecheckRuns;
import faintwind.job.formula.RecheckRuns.Check;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.record.Event.NoteWritten;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import faintwind.ui.work.DiskWords;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/**
 * A check of the calibration in force at one or two speeds, in ten minutes: what it reads at the
 * arm against what the arm says. The outcome is kept as a note.
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
    Button choose = Words.button("recheck-choose", desk.text("recheck.choose"), this::choose);
    choose.getStyleClass().add("quiet");
    getChildren()
        .setAll(
            Words.label(desk.text("recheck.title"), "semibold"),
            Words.label(desk.text("recheck.how"), "fine", "soft"),
            Boxes.row("ways", choose),
            answer);
  }

  private void choose() {
    desk.files()
        .open(desk.text("recheck.choose"), desk.text("turntable.kind"), "*.csv")
        .ifPresent(this::check);
  }

  private void check(Path table) {
    Path by = instrument.folder().resolve(calibration);
    desk.background()
        .run(
            watch -> RecheckRuns.check(by, table),
            found -> show(found, table),
            broke -> say(List.of(DiskWords.say(broke, desk.words()))));
  }

  private void say(List<String> lines) {
    answer.getChildren().setAll(Rows.problems(lines, true, desk.words()));
  }

  private void show(Checked<Check> found, Path table) {
    if (!(found instanceof Checked.Ok<Check> ok)) {
      say(found.problems().stream().map(desk.words()::line).toList());
      return;
    }
    Check check = ok.value();
    String verdict = desk.text(check.agrees() ? "recheck.stands" : "recheck.due");
    answer.getChildren().setAll(row(check.agrees(), verdict, calibration));
    check
        .runs()
        .forEach(run -> answer.getChildren().add(row(run.en().isSatisfactory(), said(run), "")));
    keep(verdict, check, table);
  }

  private Node row(boolean good, String text, String detail) {
    return Rows.check(good ? Mark.DONE : Mark.ATTENTION, text, detail, desk.words());
  }

  private String said(Recheck.AtRun run) {
    return desk.text(
        run.en().isSatisfactory() ? "recheck.agrees" : "recheck.differs",
        run.run(),
        Numerals.compact(run.speed_m_s(), 3),
        Numerals.compact(run.u95_m_s(), 2),
        Numerals.compact(run.read_m_s(), 3),
        Numerals.compact(run.u95_read_m_s(), 2),
        Numerals.signed(run.en().value(), 2));
  }

  private void keep(String verdict, Check check, Path table) {
    String all = check.runs().stream().map(this::said).collect(Collectors.joining(" "));
    String name = String.valueOf(table.getFileName());
    String note = desk.text("recheck.note", calibration, verdict, all, name, check.sha256());
    instrument.enter(enter -> enter.plain(Optional.empty(), new NoteWritten(note)));
  }
}
