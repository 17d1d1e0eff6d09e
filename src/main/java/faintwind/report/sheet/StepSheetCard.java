package faintwind.report.sheet;

import faintwind.report.card.StepCard;
import faintwind.report.figure.WiringDrawing;
import faintwind.report.page.Html;
import faintwind.report.picture.Picture;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.picture.PictureSvg;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A card on paper: drawings, rows, remarks. */
final class StepSheetCard {
  private static final PictureSize BALL = new PictureSize(300, 230);

  private StepSheetCard() {}

  static void write(Html html, StepCard card, Locale locale) {
    html.element("h4", card.title());
    if (!card.drawings().isEmpty()) {
      List<String> cells = new ArrayList<>();
      for (Picture picture : card.drawings()) {
        boolean tall = picture instanceof WiringDrawing;
        String svg =
            PictureSvg.of(picture, tall ? WiringDrawing.SIZE : BALL, PictureStyle.paper(locale));
        cells.add(tall ? svg.replaceFirst("<svg", "<svg class=\"tall\"") : svg);
      }
      html.markupTable("drawings", List.of(), List.of(cells));
    }
    List<List<String>> rows =
        card.rows().stream().map(row -> List.of(row.what(), row.value(), row.why())).toList();
    html.table("wide", List.of(), rows).list(card.remarks());
  }
}
