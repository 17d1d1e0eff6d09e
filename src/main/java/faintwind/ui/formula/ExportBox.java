package faintwind.ui.formula;

import faintwind.job.formula.ExportFormula.Kind;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import faintwind.ui.work.DiskWords;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.layout.VBox;

/** The formula for use without this program: a file for each kind of place where numbers run. */
final class ExportBox extends VBox {
  private final Desk desk;
  private final FormulaWays ways;
  private final String calibration;
  private final VBox answer = new VBox();

  /**
   * A box.
   *
   * @param calibration the calibration's file, relative to the instrument's folder
   */
  ExportBox(Desk desk, FormulaWays ways, String calibration) {
    this.desk = desk;
    this.ways = ways;
    this.calibration = calibration;
    setId("formula-export");
    answer.setId("formula-export-answer");
    getChildren()
        .addAll(
            Words.label(desk.text("formula.export"), "tell", "semibold"),
            Words.label(desk.text("formula.export.why"), "fine", "soft"));
    for (Kind kind : Kind.values()) {
      getChildren()
          .add(
              Boxes.row(
                  "export-way",
                  Words.link(
                      "export-" + kind.word(),
                      desk.text("formula.export." + kind.word()),
                      () -> export(kind))));
    }
    getChildren().add(answer);
  }

  private void export(Kind kind) {
    String title = desk.text("formula.export." + kind.word());
    String name = String.valueOf(Path.of(calibration).getFileName());
    String stem = "air-speed-" + name.replaceFirst("\\.json$", "").toLowerCase(Locale.ROOT);
    desk.files()
        .save(title, stem.replace('-', '_') + "." + kind.ending())
        .ifPresent(target -> export(kind, target));
  }

  private void export(Kind kind, Path target) {
    desk.background()
        .run(
            watch -> ways.export(calibration, kind, target),
            this::say,
            broke -> refuse(List.of(DiskWords.say(broke, desk.words()))));
  }

  private void say(Checked<Path> written) {
    if (written instanceof Checked.Ok<Path> ok) {
      String said = desk.text("formula.export.written", ok.value().toString());
      answer.getChildren().setAll(Words.label(said, "fine"));
    } else {
      refuse(written.problems().stream().map(this::line).toList());
    }
  }

  private String line(Problem problem) {
    return desk.words().line(problem);
  }

  private void refuse(List<String> lines) {
    answer.getChildren().setAll(Rows.problems(lines, true, desk.words()));
  }
}
