package faintwind.report;

import faintwind.calibration.Calibration;
import faintwind.calibration.Evidence;
import faintwind.calibration.Iso7726;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.RunOutcome;
import faintwind.message.Problem;
import faintwind.report.plot.CalibrationPlots;
import faintwind.report.plot.PictureSize;
import faintwind.report.plot.PictureStyle;
import faintwind.report.plot.PictureSvg;
import faintwind.report.plot.PlotFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The calibration in the build log: verdict, formula, covariance, runs, uncertainty, plots. */
final class BuildLogCalibration {
  private static final PictureSize PLOT = new PictureSize(640, 300);

  private final LogWords words;

  BuildLogCalibration(LogWords words) {
    this.words = words;
  }

  void write(Html html, BuildLogContent.Formula formula) {
    Calibration c = formula.calibration();
    html.element("p", "verdict", verdict(c));
    html.element(
        "p",
        words.text(
            "build-log.calibration.origin",
            formula.file(),
            LogWords.time(c.origin().created()),
            c.origin().softwareVersion(),
            c.signal().unit().column()));
    html.element("p", words.text(c.formula().equation()));
    warnings(html, c);
    parameters(html, c);
    CalibrationPlots plots = new CalibrationPlots(words.messages());
    plot(html, plots.loss(c, formula.runs()));
    runs(html, c);
    plot(html, plots.errors(c, List.of()));
    uncertainty(html, c);
    plot(html, plots.u95(c));
    plot(html, plots.response(c));
    proof(html, c);
    html.element("h4", words.text("build-log.inputs"));
    html.openTable("hashes", List.of(words.text("build-log.file-name"), "SHA-256"));
    c.origin().inputSha256().forEach((name, hash) -> html.row(List.of(name, hash)));
    html.closeTable();
  }

  private String verdict(Calibration c) {
    double lowest = Math.max(c.coverage().lowest_m_s(), c.performance().floor_m_s());
    double worst =
        c.performance().speeds().stream()
            .filter(s -> s.speed_m_s() >= 0.99 * lowest)
            .filter(s -> s.speed_m_s() <= 1.01 * c.coverage().highest_m_s())
            .mapToDouble(s -> 100 * s.u95_m_s() / s.speed_m_s())
            .max()
            .orElse(0);
    return words.text(
        "build-log.calibration.verdict",
        LogWords.figures(lowest, 2),
        LogWords.figures(c.coverage().highest_m_s(), 2),
        LogWords.figures(worst, 2),
        LogWords.figures(c.performance().floor_m_s(), 2));
  }

  private void warnings(Html html, Calibration c) {
    html.element("h4", words.text("build-log.warnings"));
    if (c.warnings().isEmpty()) {
      html.element("p", words.text("build-log.warnings.none"));
    }
    List<String> lines = new ArrayList<>();
    for (Problem warning : c.warnings()) {
      lines.add(words.messages().line(warning));
    }
    html.list(lines);
  }

  private void parameters(Html html, Calibration c) {
    html.element("h4", words.text("build-log.parameters"));
    html.openTable(
        "wide",
        List.of(
            words.text("build-log.parameter"),
            words.text("build-log.value"),
            words.text("build-log.u"),
            words.text("build-log.unit")));
    for (Parameter p : c.formula().parameters()) {
      html.row(
          List.of(p.name(), LogWords.figures(p.value(), 6), LogWords.figures(p.u(), 2), p.unit()));
    }
    html.closeTable();
  }

  private void runs(Html html, Calibration c) {
    html.element("h4", words.text("build-log.runs"));
    html.openTable(
        "wide",
        List.of(
            words.text("build-log.run"),
            words.text("build-log.speed"),
            words.text("build-log.u"),
            words.text("build-log.residual"),
            words.text("build-log.used")));
    for (RunOutcome run : c.evidence().runs()) {
      boolean moved = run.speed_m_s().isPresent();
      String residual =
          moved
              ? LogWords.figures(100 * run.residual(), 2) + " %"
              : LogWords.figures(run.residual(), 2) + " " + c.signal().unit().symbol();
      String why = run.why().isEmpty() ? "" : words.text(run.why());
      String used = words.text(run.used() ? "build-log.yes" : "build-log.no");
      html.row(
          List.of(
              run.run(),
              moved ? LogWords.figures(run.speed_m_s().getAsDouble(), 4) : "",
              run.u_speed_m_s().isPresent()
                  ? LogWords.figures(run.u_speed_m_s().getAsDouble(), 2)
                  : "",
              residual,
              why.isEmpty() ? used : used + ", " + why));
    }
    html.closeTable();
  }

  void uncertainty(Html html, Calibration c) {
    html.element("h4", words.text("build-log.u95"));
    html.openTable(
        "wide",
        List.of(
            words.text("build-log.speed"),
            "U95, m/s",
            "U95, %",
            words.text("build-log.rise"),
            words.text("build-log.budget")));
    for (AtSpeed at : c.performance().speeds()) {
      List<String> shares = new ArrayList<>();
      at.budget().stream()
          .limit(3)
          .forEach(
              share ->
                  shares.add(
                      words.text(share.source()) + " " + LogWords.figures(share.u_m_s(), 2)));
      html.row(
          List.of(
              LogWords.figures(at.speed_m_s(), 3),
              LogWords.figures(at.u95_m_s(), 2),
              LogWords.figures(100 * at.u95_m_s() / at.speed_m_s(), 2),
              LogWords.figures(at.rise_s(), 2),
              String.join("; ", shares)));
    }
    html.closeTable();
  }

  /** Residuals, formulas tried, runs foretold, refits, covariance. */
  void proof(Html html, Calibration c) {
    residuals(html, c);
    comparison(html, c.performance());
    new CalibrationEvidence(words).write(html, c.evidence());
    covariance(html, c);
  }

  private void residuals(Html html, Calibration c) {
    Evidence.ResidualStatistics r = c.evidence().residuals();
    String unit = c.signal().unit().symbol();
    html.element("h4", words.text("build-log.residuals"));
    html.element(
        "p",
        words.text(
            "build-log.residuals.text",
            LogWords.figures(r.rms(), 2),
            unit,
            LogWords.figures(r.noise(), 2),
            LogWords.figures(r.slow(), 2),
            LogWords.figures(r.correlationTime_s(), 2),
            String.valueOf(r.rows())));
  }

  private void covariance(Html html, Calibration c) {
    List<Parameter> parameters = c.formula().parameters();
    html.element("h4", words.text("build-log.covariance"));
    List<String> heads = new ArrayList<>(List.of(""));
    parameters.forEach(p -> heads.add(p.name()));
    html.openTable("matrix", heads);
    for (int i = 0; i < parameters.size(); i++) {
      List<String> row = new ArrayList<>(List.of(parameters.get(i).name()));
      for (int j = 0; j < parameters.size(); j++) {
        row.add(LogWords.figures(c.formula().covariance().at(i, j), 3));
      }
      html.row(row);
    }
    html.closeTable();
  }

  private void plot(Html html, PlotFigure figure) {
    html.raw("<div class=\"plot\">");
    html.raw(PictureSvg.of(figure, PLOT, PictureStyle.paper(words.messages().locale())));
    html.element("p", "soft", figure.description());
    html.raw("</div>");
  }

  /** How the instrument compares with the classes of ISO 7726. */
  private void comparison(Html html, Performance performance) {
    html.element("h4", words.text("build-log.iso7726"));
    for (Iso7726 grade : Iso7726.values()) {
      html.element(
          "p",
          words.text(
              "build-log.iso7726." + grade.name().toLowerCase(Locale.ROOT),
              String.valueOf(grade.within(performance.speeds()).size()),
              String.valueOf(grade.inRange(performance.speeds()).size())));
    }
    double quickest_s = performance.speeds().stream().mapToDouble(AtSpeed::rise_s).min().orElse(0);
    html.element(
        "p",
        words.text(
            "build-log.iso7726.response",
            LogWords.figures(Iso7726.RESPONSE_S, 1),
            LogWords.figures(quickest_s, 2)));
  }
}
