package faintwind.report;

import faintwind.calibration.Calibration;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.Run;
import faintwind.calibration.RunOutcome;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.report.plot.CalibrationPlots;
import faintwind.report.plot.PictureSize;
import faintwind.report.plot.PictureStyle;
import faintwind.report.plot.PictureSvg;
import faintwind.report.plot.PlotFigure;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** One calibration as a page that stands alone: no file beside it is needed to read or print it. */
public final class CalibrationPage {
  private static final PictureSize SIZE = new PictureSize(720, 360);
  private static final String STYLE =
      """
      body { font: 15px/1.5 "DejaVu Sans", sans-serif; max-width: 45em; margin: 2em auto; color: #000; }
      table { border-collapse: collapse; margin: 1em 0; }
      th, td { border-bottom: 1px solid #999; padding: 0.2em 0.8em 0.2em 0; text-align: left; vertical-align: top; }
      td { font-variant-numeric: tabular-nums; }
      table.matrix { font-size: 8px; }
      svg { max-width: 100%; height: auto; }
      .mono { font-family: "DejaVu Sans Mono", monospace; font-size: 11px; overflow-wrap: anywhere; }
      @media print { body { margin: 0; } section { break-inside: avoid; } }
      """;

  private final Messages messages;
  private final PageMarkup page = new PageMarkup();

  private CalibrationPage(Messages messages) {
    this.messages = messages;
  }

  /**
   * The page, XHTML so that it can also become a PDF.
   *
   * @param runs the runs it was made from, for the plot of the loss
   */
  public static String of(Calibration calibration, List<Run> runs, Messages messages) {
    return new CalibrationPage(messages).page(calibration, runs);
  }

  private String page(Calibration calibration, List<Run> runs) {
    String title = messages.text("calibration-page.title", calibration.origin().instrumentId());
    page.raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"")
        .raw(messages.locale().getLanguage())
        .raw("\">\n<head><meta charset=\"UTF-8\"/>")
        .element("title", title)
        .raw("<style>\n" + STYLE + "</style></head>\n<body>\n")
        .element("h1", title);
    said(
        "calibration-page.made",
        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(calibration.origin().created()),
        calibration.origin().softwareVersion());
    verdict(calibration);
    warnings(calibration.warnings());
    formula(calibration);
    runs(calibration);
    plots(calibration, runs);
    Html more = new Html();
    BuildLogCalibration parts = new BuildLogCalibration(new LogWords(messages));
    parts.uncertainty(more, calibration);
    parts.proof(more, calibration);
    page.raw(more.toString());
    inputs(calibration);
    return page.raw("</body>\n</html>\n").toString();
  }

  private void said(String key, Object... arguments) {
    page.element("p", messages.text(key, arguments));
  }

  private void head(String key) {
    page.element("h2", messages.text(key));
  }

  private void columns(String... keys) {
    page.raw("<table>\n").row("th", List.of(keys).stream().map(k -> messages.text(k)).toList());
  }

  private void verdict(Calibration calibration) {
    head("calibration-page.verdict");
    said(
        "calibrate.range",
        number(calibration.coverage().lowest_m_s()),
        number(calibration.coverage().highest_m_s()),
        number(calibration.performance().floor_m_s()));
    columns(
        "calibration-page.speed",
        "calibration-page.u95",
        "calibration-page.u95-pct",
        "calibration-page.rise");
    for (Performance.AtSpeed at : calibration.performance().speeds()) {
      page.row(
          "td",
          List.of(
              number(at.speed_m_s()),
              number(at.u95_m_s()),
              number(100 * at.u95_m_s() / at.speed_m_s()),
              number(at.rise_s())));
    }
    page.raw("</table>\n");
  }

  private void warnings(List<Problem> warnings) {
    head("calibration-page.warnings");
    if (warnings.isEmpty()) {
      said("calibration-page.no-warnings");
      return;
    }
    page.raw("<ul>\n");
    for (Problem warning : warnings) {
      String run = warning.where().run().map(name -> name + ": ").orElse("");
      page.element("li", run + messages.note(warning));
    }
    page.raw("</ul>\n");
  }

  private void formula(Calibration calibration) {
    head("calibration-page.formula");
    page.element("p", messages.text(calibration.formula().equation()));
    columns(
        "calibration-page.parameter",
        "calibration-page.value",
        "calibration-page.u",
        "calibration-page.unit");
    for (Parameter p : calibration.formula().parameters()) {
      page.row("td", List.of(p.name(), number(p.value()), number(p.u()), p.unit()));
    }
    page.raw("</table>\n");
  }

  private void runs(Calibration calibration) {
    head("calibration-page.runs");
    columns(
        "calibration-page.run",
        "calibration-page.speed",
        "calibration-page.u",
        "calibration-page.residual",
        "calibration-page.used");
    for (RunOutcome run : calibration.evidence().runs()) {
      String residual =
          run.speed_m_s().isPresent()
              ? number(100 * run.residual()) + " %"
              : number(run.residual()) + " " + calibration.signal().unit().symbol();
      String used = messages.text(run.used() ? "calibration-page.yes" : "calibration-page.no");
      String why = run.why().isEmpty() ? "" : " " + messages.text(run.why());
      page.row(
          "td",
          List.of(
              run.run(), number(run.speed_m_s()), number(run.u_speed_m_s()), residual, used + why));
    }
    page.raw("</table>\n");
  }

  private void plots(Calibration calibration, List<Run> runs) {
    CalibrationPlots plots = new CalibrationPlots(messages);
    List<PlotFigure> figures = new ArrayList<>();
    figures.add(plots.loss(calibration, runs));
    figures.add(plots.errors(calibration, List.of()));
    figures.add(plots.u95(calibration));
    figures.add(plots.response(calibration));
    PictureStyle paper = PictureStyle.paper(messages.locale());
    for (PlotFigure figure : figures) {
      page.raw("<section>\n").element("h2", figure.title());
      page.raw(PictureSvg.of(figure, SIZE, paper)).raw("\n");
      page.element("p", figure.description()).raw("</section>\n");
    }
  }

  private void inputs(Calibration calibration) {
    head("calibration-page.inputs");
    page.raw("<table class=\"mono\">\n");
    calibration.origin().inputSha256().forEach((file, hash) -> page.row("td", List.of(file, hash)));
    page.raw("</table>\n");
  }

  private static String number(OptionalDouble value) {
    return value.isPresent() ? number(value.getAsDouble()) : "";
  }

  private static String number(double value) {
    double size = Math.abs(value);
    if (value == 0) {
      return "0";
    }
    return size >= 1e-3 && size < 1e5
        ? new java.math.BigDecimal(value)
            .round(new java.math.MathContext(4))
            .stripTrailingZeros()
            .toPlainString()
        : String.format(Locale.ROOT, "%.3e", value);
  }
}
