package faintwind.report.calibration;

import faintwind.calibration.Calibration;
import faintwind.calibration.Evidence;
import faintwind.calibration.Parameter;
import faintwind.calibration.RunOutcome;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.calibration.response.TypedFormula;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.report.figure.CalibrationPlots;
import faintwind.report.figure.CalibrationPlots.RunError;
import faintwind.report.figure.StraightLinePlots;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import java.util.ArrayList;
import java.util.List;

/** The fit of a calibration: equation, numbers, what is left over in each run. */
final class CalibrationFit {
  private final Chapter to;

  CalibrationFit(Chapter to) {
    this.to = to;
  }

  void write(Calibration c, Checked<FitLook> look) {
    Evidence.ResidualStatistics r = c.evidence().residuals();
    to.say("calibration-page.fit.text", String.valueOf(r.rows()));
    to.html().element("p", to.words().text(c.formula().equation()));
    typed(c);
    parameters(c);
    CalibrationPlots plots = new CalibrationPlots(to.words().messages());
    to.plot(plots.loss(c, look.fold((value, notes) -> value.runs(), problems -> List.of())));
    to.say("calibration-page.residuals.text");
    runs(c);
    List<RunError> straight =
        look.fold(
            (value, notes) -> StraightLinePlots.errors(value.straightLine()),
            problems -> List.of());
    to.plot(plots.errors(c, straight));
    to.say(
        "calibration-page.residuals",
        Numerals.compact(r.rms(), 2),
        c.signal().unit().symbol(),
        Numerals.compact(r.noise(), 2),
        Numerals.compact(r.slow(), 2),
        Numerals.compact(r.correlationTime_s(), 2),
        Numerals.compact(r.effectiveReadings(), 3),
        Numerals.compact(100 * c.performance().runScatter(), 2));
  }

  private void typed(Calibration c) {
    TypedFormula typed = TypedFormula.of(c.formula(), c.signal(), c.coverage());
    to.say("calibration-page.typed");
    to.html().element("p", to.words().text(typed.key(), typed.numbers().toArray()));
    to.say("typed.valid", c.validRange().toArray());
  }

  private void parameters(Calibration c) {
    List<List<String>> rows = new ArrayList<>();
    for (Parameter p : c.formula().parameters()) {
      rows.add(
          List.of(
              Html.escaped(p.name()),
              Html.span("fitted", Numerals.compact(p.value(), 6)),
              Html.span("fitted", Numerals.compact(p.u(), 2)),
              Html.escaped(p.unit())));
    }
    to.markupTable(
        "wide",
        List.of(
            "calibration-page.parameter",
            "calibration-page.value",
            "calibration-page.u",
            "calibration-page.unit"),
        rows);
  }

  private void runs(Calibration c) {
    List<List<String>> rows = new ArrayList<>();
    for (RunOutcome run : c.evidence().runs()) {
      boolean moved = run.speed_m_s().isPresent();
      String residual =
          moved
              ? Numerals.compact(100 * run.residual(), 2) + " %"
              : Numerals.compact(run.residual(), 2) + " " + c.signal().unit().symbol();
      String why = run.why().isEmpty() ? "" : ", " + to.words().text(run.why());
      String used =
          to.words().text(run.used() ? "calibration-page.yes" : "calibration-page.no") + why;
      rows.add(
          List.of(
              Html.escaped(run.run()),
              moved ? Numerals.compact(run.speed_m_s().getAsDouble(), 4) : "",
              run.u_speed_m_s().isPresent()
                  ? Numerals.compact(run.u_speed_m_s().getAsDouble(), 2)
                  : "",
              Html.span("fitted", residual),
              Html.escaped(used)));
    }
    to.markupTable(
        "wide",
        List.of(
            "calibration-page.run",
            "calibration-page.air-speed",
            "calibration-page.u-speed",
            "calibration-page.residual",
            "calibration-page.used"),
        rows);
  }
}
