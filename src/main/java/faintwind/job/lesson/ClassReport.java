package faintwind.job.lesson;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.StraightLineLook;
import faintwind.calibration.response.StraightLineLook.Misreading;
import faintwind.files.calibration.CalibrationFile;
import faintwind.job.bench.BenchRow;
import faintwind.job.formula.FormulaRuns;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a class found out, pair by pair and together. Of each pair's own data it says how far a
 * straight line, fitted to the first slope of each spin, reads off the formula.
 */
public final class ClassReport {
  private static final double PER_CENT = 100;

  private final LogWords words;
  private final ClassText text;
  private final ClassPage page;

  public ClassReport(Messages messages) {
    words = new LogWords(messages);
    text = new ClassText(messages);
    page = new ClassPage(messages);
  }

  /**
   * The page. Names are not in it: a pair is its number or nickname.
   *
   * @throws IOException where a calibration or recording that is there cannot be read
   */
  public String of(ClassLook look) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    for (PairLook pair : look.pairs()) {
      if (pair.pair().number() == 0 && pair.known().isEmpty()) {
        continue; // a file, no instrument
      }
      rows.add(row(pair));
    }
    String title = words.text("class.report.title", look.it().name());
    return new Page(words, title, "", "")
        .html(
            html -> {
              html.element("h1", title);
              html.element("p", text.title(look));
              html.element("h2", words.text("class.report.calibrations"));
              html.markupTable("wide", heads(), rows);
              html.element("p", words.text("class.report.line-means"));
              page.part(html, "class.part.spread", text.spread(look));
              html.element("h2", words.text("class.report.where"));
              page.matrix(html, look);
            });
  }

  private List<String> heads() {
    return Stream.of("pair", "range", "u95", "line")
        .map(head -> words.text("class.column." + head))
        .toList();
  }

  /** Each cell as markup. */
  private List<String> row(PairLook pair) throws IOException {
    Optional<BenchRow.InForce> inForce =
        pair.known().flatMap(known -> known.looked().row().inForce());
    Optional<BenchRow.Range> range = inForce.flatMap(f -> f.range());
    return List.of(
        Html.escaped(pair.label()),
        range.map(this::range).orElseGet(() -> Html.escaped(words.text(none(pair)))),
        range.map(r -> "± " + Numerals.digits(PER_CENT * r.u95Share(), 2) + " %").orElse(""),
        inForce.isPresent() ? line(pair, inForce.get()) : "");
  }

  private String range(BenchRow.Range range) {
    String lowest = Numerals.digits(range.lowest_m_s(), 2);
    String highest = Numerals.digits(range.highest_m_s(), 2);
    return Html.span(ClassPage.WHOLE, words.text("class.report.range", lowest, highest));
  }

  private static String none(PairLook pair) {
    return pair.known().flatMap(PairLook.Known::toExplain).isPresent()
        ? "class.report.unmet"
        : "class.report.none";
  }

  /** How far the straight line is off between the slowest and fastest calibrated speed. */
  private String line(PairLook pair, BenchRow.InForce inForce) throws IOException {
    Path folder = pair.known().orElseThrow().looked().view().path();
    Optional<Calibration> calibration =
        CalibrationFile.read(folder.resolve(inForce.file()), inForce.file())
            .fold((it, notes) -> Optional.of(it), problems -> Optional.empty());
    if (calibration.isEmpty()) {
      return Html.escaped(words.text("class.report.no-runs"));
    }
    var state = pair.known().orElseThrow().looked().view().state();
    return FormulaRuns.of(calibration.get(), FormulaRuns.tables(state, folder))
        .fold(
            (runs, notes) -> said(StraightLineLook.of(calibration.get(), runs.runs())),
            problems -> Html.escaped(words.text("class.report.no-runs")));
  }

  private String said(StraightLineLook look) {
    if (!(look.slope_per_m() > 0)) {
      return Html.escaped(words.text("class.report.no-line"));
    }
    List<String> errors = new ArrayList<>();
    for (Misreading error : look.errors()) {
      String speed = Numerals.digits(error.speed_m_s(), 2);
      String share = Numerals.signed(PER_CENT * error.relative(), 0);
      errors.add(Html.span(ClassPage.WHOLE, words.text("class.report.error", speed, share)));
    }
    return String.join("; ", errors);
  }
}
