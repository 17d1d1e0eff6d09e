package faintwind.report.calibration;

import faintwind.calibration.Calibration;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.response.EstimateRise;
import faintwind.message.Numerals;
import faintwind.report.figure.BandPlots;
import faintwind.report.page.Chapter;
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
      budget(c, shown);
      worked(shown.get(shown.size() / 2));
    }
    to.plot(new BandPlots(to.words().messages()).u95(c));
    table(c);
  }

  private static Optional<AtSpeed> at(Calibration c, double speed_m_s) {
    return c.performance().speeds().stream()
        .filter(s -> Math.abs(s.speed_m_s() - speed_m_s) < NEAR * speed_m_s)
        .min(Comparator.comparingDouble(s -> Math.abs(s.speed_m_s() - speed_m_s)));
  }

  /** One row a source, one column a speed; the last rows join them. */
  private void budget(Calibration c, List<AtSpeed> speeds) {
    List<String> heads = new ArrayList<>(List.of(to.words().text("calibration-page.source")));
    Set<String> sources = new LinkedHashSet<>();
    for (AtSpeed at : speeds) {
      String speed = Numerals.compact(at.speed_m_s(), 2);
      heads.add(to.words().text("calibration-page.source.at", speed) + beyond(c, at));
      at.budget().forEach(share -> sources.add(share.source()));
    }
    List<List<String>> rows = new ArrayList<>();
    for (String source : sources) {
      List<String> row = new ArrayList<>(List.of(to.words().text(source)));
      speeds.forEach(at -> row.add(share(at, source)));
      rows.add(row);
    }
    List<String> joined = new ArrayList<>(List.of(to.words().text("calibration-page.joined")));
    List<String> band = new ArrayList<>(List.of(to.words().text("calibration-page.u95")));
    for (AtSpeed at : speeds) {
      joined.add(Numerals.compact(joined(at), 2));
      band.add(Numerals.compact(at.u95_m_s(), 2));
    }
    rows.add(joined);
    rows.add(band);
    to.html().table("wide", heads, rows);
  }

  private static String beyond(Calibration c, AtSpeed at) {
    return c.coverage().isBeyond(at.speed_m_s()) ? " *" : "";
  }

  private static String share(AtSpeed at, String source) {
    return at.budget().stream()
        .filter(share -> share.source().equals(source))
        .findFirst()
        .map(share -> Numerals.compact(share.u_m_s(), 2))
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
            .map(u -> Numerals.compact(u, 2) + "\u00b2")
            .toList();
    double u = joined(at);
    to.say(
        "calibration-page.worked",
        Numerals.compact(at.speed_m_s(), 2),
        String.join(" + ", squares),
        Numerals.compact(u, 2),
        Numerals.compact(at.u95_m_s() / u, 3),
        Numerals.compact(at.u95_m_s(), 2));
  }

  private void table(Calibration c) {
    List<List<String>> rows = new ArrayList<>();
    for (AtSpeed at : c.performance().speeds()) {
      rows.add(
          List.of(
              Numerals.compact(at.speed_m_s(), 3) + beyond(c, at),
              Numerals.compact(at.u95_m_s(), 2),
              Numerals.compact(100 * at.u95_m_s() / at.speed_m_s(), 2),
              Numerals.compact(at.rise_s(), 2),
              Numerals.compact(EstimateRise.s(c, at.speed_m_s()), 2)));
    }
    to.table(
        List.of(
            "calibration-page.speed",
            "calibration-page.u95",
            "calibration-page.u95-pct",
            "calibration-page.rise",
            "calibration-page.rise.estimate"),
        rows);
    to.say("calibration-page.beyond");
    to.say("calibration-page.rise.note");
    c.coverage()
        .arm()
        .ifPresent(arm -> to.say("calibration-page.arm-shown", arm.carriedAir().toArray()));
  }

  void covariance(Calibration c) {
    List<Parameter> parameters = c.formula().parameters();
    to.say("calibration-page.covariance");
    List<String> heads = new ArrayList<>(List.of(""));
    parameters.forEach(p -> heads.add(p.name().replace('_', ' ')));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < parameters.size(); i++) {
      List<String> row = new ArrayList<>(List.of(heads.get(i + 1)));
      for (int j = 0; j < parameters.size(); j++) {
        row.add(Numerals.compact(c.formula().covariance().at(i, j), 2));
      }
      rows.add(row);
    }
    to.html().table("matrix", heads, rows);
  }
}
