package faintwind.job.lesson;

import faintwind.guide.StepState;
import faintwind.guide.checklist.Stage;
import faintwind.message.Messages;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import java.util.ArrayList;
import java.util.List;

/** A class on a page that stands alone: matrix of stages and pairs, turntable, clocks, spread. */
public final class ClassPage {
  private static final int WIDE_mm = 268;

  /** What stays in one line, though there is a slash in it. */
  static final String WHOLE = "whole";

  /** Labels beside one another on an upright page. */
  private static final int IN_A_ROW = 2;

  private final LogWords words;
  private final ClassText text;

  public ClassPage(Messages messages) {
    words = new LogWords(messages);
    text = new ClassText(messages);
  }

  /** The page, XHTML so that it can also become a PDF. */
  public String of(ClassLook look) {
    return new Page(words, text.title(look), "", "")
        .lying(WIDE_mm)
        .html(
            html -> {
              html.element("h1", text.title(look));
              html.element("p", text.lesson(look));
              matrix(html, look);
              part(html, "class.part.queue", text.queue(look));
              part(html, "class.part.clocks", text.clocks(look));
              part(html, "class.part.spread", text.spread(look));
            });
  }

  void part(Html html, String head, List<String> lines) {
    if (!lines.isEmpty()) {
      html.element("h2", words.text(head));
      html.list(lines);
    }
  }

  /** A row a pair, a column a stage, and what each is stuck on. */
  void matrix(Html html, ClassLook look) {
    List<Stage> stages = ClassText.stages(look);
    List<String> heads = new ArrayList<>();
    heads.add(words.text("class.column.pair"));
    stages.forEach(stage -> heads.add(stage.title()));
    heads.add(words.text("class.column.now"));
    List<List<String>> rows = new ArrayList<>();
    for (PairLook pair : look.pairs()) {
      List<String> cells = new ArrayList<>();
      cells.add(Html.escaped(pair.label()));
      for (Stage stage : stages) {
        cells.add(pair.known().map(known -> cell(known, stage)).orElse(""));
      }
      cells.add(Html.escaped(text.state(pair)));
      rows.add(cells);
    }
    html.markupTable("wide", heads, rows);
  }

  private static String cell(PairLook.Known known, Stage stage) {
    StepState state = known.stage(stage);
    return state == StepState.NOT_NEEDED
        ? ""
        : LogWords.mark(state) + "<br/>" + Html.span(WHOLE, known.share(stage));
  }

  /** Labels to cut out, two beside one another: one for the box of each pair. */
  public String labels(ClassLook look) {
    String title = words.text("class.labels", look.it().name());
    String style =
        ".labels { page-break-inside: avoid; margin: 0 0 5mm 0; }"
            + " .label { border: 1px dashed #17211e; padding: 5mm; margin: 0 3mm 0 0; width: 70mm;"
            + " display: inline-block; } .big { font-size: 20pt; margin: 0; }\n";
    List<PairLook> pairs = look.pairs().stream().filter(p -> p.pair().number() > 0).toList();
    return new Page(words, title, "", style)
        .html(
            html -> {
              html.element("h1", title);
              for (int i = 0; i < pairs.size(); i += IN_A_ROW) {
                List<PairLook> row = pairs.subList(i, Math.min(i + IN_A_ROW, pairs.size()));
                html.block("labels", () -> row.forEach(pair -> label(html, look, pair)));
              }
            });
  }

  private void label(Html html, ClassLook look, PairLook pair) {
    html.block(
        "label",
        () -> {
          html.element("p", "big", pair.label());
          html.element("p", look.it().name());
          html.element("p", "mono", pair.pair().folder());
          html.element("p", "soft", words.text("class.label-caution"));
        });
  }
}
