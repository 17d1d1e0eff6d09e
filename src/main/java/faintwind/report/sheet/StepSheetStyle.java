package faintwind.report.sheet;

import faintwind.report.page.BuildLogStyle;
import faintwind.report.page.LogWords;
import faintwind.report.sheet.StepSheetContent.Part;
import java.util.List;

/** How a printed sheet of steps looks: black on white, boxes and blanks drawn, no colour. */
final class StepSheetStyle {
  private StepSheetStyle() {}

  /**
   * The style sheet. Each part has pages of its own kind, so that its banner stands at the head of
   * every one of them.
   *
   * @param title stands at the head of each page
   * @param label stands beside it; empty where the data are real
   * @param words for the page's number
   */
  static String css(String title, String label, LogWords words, List<Part> parts) {
    StringBuilder pages = new StringBuilder(BuildLogStyle.css(title, label, words));
    for (int i = 0; i < parts.size(); i++) {
      String banner = parts.get(i).stage().banner().orElse("");
      String name = "part" + i;
      pages.append(
          """
          @page %s { @top-center { content: "%s"; font-size: 9pt; font-weight: bold;
            font-family: "DejaVu Sans"; } }
          .%s { page: %s; }
          """
              .formatted(name, BuildLogStyle.quoted(banner), name, name));
      if (i > 0) {
        pages.append('.').append(name).append(" { page-break-before: always; }\n");
      }
    }
    return pages
        .append(
            """
            .sheet-step { border-top: 1px solid #000000; padding-top: 4px; margin: 1.6em 0 0; }
            .tick { display: inline-block; width: 3mm; height: 3mm; border: 1px solid #000000;
              margin: 0 2mm 0 0; }
            .blank { display: inline-block; width: 34mm; border-bottom: 1px solid #000000; }
            .short { display: inline-block; width: 22mm; border-bottom: 1px solid #000000; }
            .caution { border: 1px solid #000000; padding: 4px 8px; margin: 4px 0;
              page-break-inside: avoid; }
            .todo { margin: 3px 0 3px 7mm; text-indent: -5mm; page-break-inside: avoid; }
            .ends { margin-left: 7mm; font-style: normal; }
            table.drawings td { border: none; }
            .drawings svg { width: 72mm; height: 55mm; }
            .drawings svg.tall { width: 72mm; height: 104mm; }
            """)
        .toString();
  }
}
