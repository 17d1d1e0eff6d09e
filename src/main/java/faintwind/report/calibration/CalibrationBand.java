package faintwind.report.calibration;

import faintwind.calibration.Calibration;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.Performance.BudgetShare;
import faintwind.report.figure.CalibrationPlots;
import faintwind.report.page.Chapter;
import faintwind.report.page.LogWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** From the fit to the band: what the uncertainty of a speed is made of. */
final class CalibrationBand {
  private static final List<Double> SPEEDS = List.of(0.1, 0.3, 1.0, 3.0);
  private static final double NEAR = 0.05;

  private final Chapter to;

  CalibrationBand(Chapter to) {
    this.to = to;
  }

  void write(Calibration c) {
    to.say("calibration-page.band.text");
    List<AtSpeed> shown = SPEEDS.stream().flatMap(speed -> at(c, speed).stream()).toList();
    if (!shown.isEmpty()) {
      budget(shown);
      worked(shown.get(shown.size() / 2));
    }
    to.plot(new CalibrationPlots(to.words().messages()).u95(c));
    table(c);
  }

  private static Optional<AtSpeed> at(Calibration c, double speed_m_s) {
    return c.performance().speeds().stream()
        .filter(s -> Math.abs(s.speed_m_s() - speed_m_s) < NEAR * speed_m_s)
        .min(Comparator.comparingDouble(s -> Math.abs(s.speed_m_s() - speed_m_s)));
  }

  /** One row a source, one column a speed; the last rows join them. */
  private void budget(List<AtSpeed> speeds) {
    List<String> heads = new ArrayList<>(List.of(to.words().text("calibration-page.source")));
    Set<String> sources = new LinkedHashSet<>();
    for (AtSpeed at : speeds) {
      heads.add(to.words().text("calibration-page.source.at", LogWords.figures(at.speed_m_s(), 2)));
      at.budget().forEach(share -> sources.add(share.source()));
    }
    to.html().openTable("wide", heads);
    for (String source : sources) {
      List<String> row = new ArrayList<>(List.of(to.words().text(source)));
      speeds.forEach(at -> row.add(share(at, source)));
      to.html().row(row);
    }
    List<String> joined = new ArrayList<>(List.of(to.words().text("calibration-page.joined")));
    List<String> band = new ArrayList<>(List.of(to.words().text("calibration-page.u95")));
    for (AtSpeed at : speeds) {
      joined.add(LogWords.figures(joined(at), 2));
      band.add(LogWords.figures(at.u95_m_s(), 2));
    }
    to.html().row(joined).row(band).closeTable();
  }

  private static String share(AtSpeed at, String source) {
    return at.budget().stream()
        .filter(share -> share.source().equals(source))
        .findFirst()
        .map(share -> LogWords.figures(share.u_m_s(), 2))
        .orElse("\u2013");
  }

  /** Root of the sum of squares. */
  private static double joined(AtSpeed at) {
    return Math.sqrt(at.budget().stream().mapToDouble(s -> s.u_m_s() * s.u_m_s()).sum());
  }

  private void worked(AtSpeed at) {
    List<String> squares =
        at.budget().stream()
            .map(BudgetShare::u_m_s)
            .map(u -> LogWords.figures(u, 2) + "\u00b2")
            .toList();
    double u = joined(at);
    to.say(
        "calibration-page.worked",
        LogWords.figures(at.speed_m_s(), 2),
        String.join(" + ", squares),
        LogWords.figures(u, 2),
        LogWords.figures(at.u95_m_s() / u, 3),
        LogWords.figures(at.u95_m_s(), 2));
  }

  private void table(Calibration c) {
    List<List<String>> rows = new ArrayList<>();
    for (AtSpeed at : c.performance().speeds()) {
      rows.add(
          List.of(
              LogWords.figures(at.speed_m_s(), 3),
              LogWords.figures(at.u95_m_s(), 2),
              LogWords.figures(100 * at.u95_m_s() / at.speed_m_s(), 2),
              LogWords.figures(at.rise_s(), 2)));
    }
    to.table(
        List.of(
            "calibration-page.speed",
            "calibration-page.u95",
            "calibration-page.u95-pct",
            "calibration-page.rise"),
        rows);
  }

  void covariance(Calibration c) {
    List<Parameter> parameters = c.formula().parameters();
    to.say("calibration-page.covariance");
    List<String> heads = new ArrayList<>(List.of(""));
    parameters.forEach(p -> heads.add(p.name().replace('_', ' ')));
    to.html().openTable("matrix", heads);
    for (int i = 0; i < parameters.size(); i++) {
      List<String> row = new ArrayList<>(List.of(heads.get(i + 1)));
      for (int j = 0; j < parameters.size(); j++) {
        row.add(LogWords.figures(c.formula().covariance().at(i, j), 2));
      }
      to.html().row(row);
    }
    to.html().closeTable();
  }
}
