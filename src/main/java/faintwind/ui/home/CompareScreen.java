package faintwind.ui.home;

import faintwind.job.PaperFile;
import faintwind.job.bench.CompareBench;
import faintwind.job.bench.ComparedDesigns;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.fold.FoldingTable;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Place;
import faintwind.ui.part.Act;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.part.Words;
import faintwind.ui.work.DiskWords;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Several instruments side by side: designs, calibrations, logs. */
final class CompareScreen {
  private static final double PLOT_EM = 20;

  private CompareScreen() {}

  static DataScreen of(Desk desk, CompareBench compared) {
    VBox sheet = Boxes.column("sheet");
    sheet.getStyleClass().add("data-sheet");
    sheet.setId("compare-sheet");
    sheet.getChildren().add(Words.label(desk.text("bench-compare.head"), "title"));
    compared.missing(desk.words()).forEach(m -> sheet.getChildren().add(Words.label(m, "soft")));
    compared
        .curves(desk.words())
        .ifPresent(f -> sheet.getChildren().add(FigureCard.of("compare-curves", f, PLOT_EM, desk)));
    compared
        .logs(desk.words())
        .ifPresent(f -> sheet.getChildren().add(FigureCard.of("compare-logs", f, PLOT_EM, desk)));
    ComparedDesigns designs = compared.designs(desk.words());
    sheet.getChildren().add(Words.label(desk.text("bench-compare.designs"), "tell", "semibold"));
    sheet
        .getChildren()
        .add(
            designs.rows().isEmpty()
                ? Words.label(desk.text("bench-compare.same"))
                : table(designs));
    Label remark = Words.label("", "soft");
    sheet.getChildren().add(remark);
    Next next =
        Next.say(
                Mark.DONE,
                desk.text("bench-compare.next"),
                new Act(
                    "compare-print",
                    desk.text("bench-compare.print"),
                    () -> print(desk, compared, remark)))
            .withOther(
                new Act(
                    "compare-back",
                    desk.text("window.home.back"),
                    () -> desk.go().accept(Place.HOME)));
    return DataScreen.of(desk, sheet, new SimpleObjectProperty<>(next));
  }

  private static FoldingTable table(ComparedDesigns designs) {
    FoldingTable table = new FoldingTable("compare-designs", "class-matrix");
    table.row(designs.heads().stream().map(h -> Words.label(h, "column-head")).toList());
    for (List<String> row : designs.rows()) {
      List<Label> cells = row.stream().map(c -> Words.label(c)).toList();
      cells.get(0).setMaxWidth(Double.MAX_VALUE); // the name has what room the numbers leave
      table.row(cells);
    }
    return table;
  }

  private static void print(Desk desk, CompareBench compared, Label remark) {
    String name = desk.text("bench-compare.file");
    Optional<Path> target = desk.files().save(name, name + ".pdf");
    target.ifPresent(
        file ->
            desk.background()
                .runQuietly(
                    watch -> {
                      PaperFile.write(file, compared.page(desk.words()));
                      return file;
                    },
                    desk.files()::show,
                    broke -> remark.setText(DiskWords.say(broke, desk.words()))));
  }
}
