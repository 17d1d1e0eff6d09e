package faintwind.report.calibration;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildAgreement.Row;
import faintwind.calibration.BuildAgreement.Suspicion;
import faintwind.calibration.BuildQuantity;
import faintwind.calibration.BuildSuspect;
import faintwind.calibration.Calibration;
import faintwind.message.Numerals;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import java.util.List;

/** Whether the fit meets the build, as tables: numbers of both, and what may be wrong. */
public final class BuildMeetingTable {
  private final Chapter to;

  public BuildMeetingTable(Chapter to) {
    this.to = to;
  }

  /** Sentence and tables. */
  public void write(Calibration calibration) {
    calibration
        .evidence()
        .build()
        .ifPresentOrElse(
            agreement -> write(agreement, calibration.signal().unit().symbol()),
            () -> to.say("calibration-page.build.none"));
  }

  /** The numbers alone, each with what it must lie within, for a first page. */
  public void brief(Calibration calibration) {
    String unit = calibration.signal().unit().symbol();
    calibration
        .evidence()
        .build()
        .ifPresent(
            agreement ->
                to.markupTable(
                    "brief",
                    List.of(
                        "calibration-page.build.quantity",
                        "calibration-page.build.fitted",
                        "calibration-page.build.measured",
                        "calibration-page.build.agreement"),
                    agreement.rows().stream().map(row -> briefly(row, unit)).toList()));
  }

  private List<String> briefly(Row row, String signalUnit) {
    String unit = unit(row, signalUnit);
    return List.of(
        Html.escaped(to.words().text("build-quantity." + row.quantity().word())),
        Html.span("fitted whole", number(row.found(), row.u_found(), unit)),
        Html.span("whole", number(row.says(), row.u_says(), unit)),
        Html.escaped(to.words().text(agreement(row))));
  }

  /** A number with its expanded uncertainty, k = 2. */
  private String number(double value, double u, String unit) {
    String number = Numerals.compact(value, 3) + " ± " + Numerals.compact(2 * u, 2);
    String said = to.words().messages().numbers(number);
    return unit.equals("1") ? said : said + " " + unit;
  }

  private void write(BuildAgreement agreement, String signalUnit) {
    String key =
        agreement.disagrees()
            ? "calibration-page.build.disagrees"
            : "calibration-page.build.agrees";
    to.html().element("p", "verdict", to.words().text(key));
    to.say("calibration-page.build.text");
    to.markupTable(
        "wide",
        List.of(
            "calibration-page.build.quantity",
            "calibration-page.build.fit",
            "calibration-page.u",
            "calibration-page.build.says",
            "calibration-page.u",
            "calibration-page.build.unit",
            "calibration-page.build.en",
            "calibration-page.build.agreement"),
        agreement.rows().stream().map(row -> cells(row, signalUnit)).toList());
    if (!agreement.suspects().isEmpty()) {
      to.table(
          List.of(
              "calibration-page.build.suspect",
              "calibration-page.build.weight",
              "calibration-page.build.factor",
              "calibration-page.build.alone"),
          agreement.suspects().stream().map(this::cells).toList());
    }
  }

  private List<String> cells(Row row, String signalUnit) {
    return List.of(
        Html.escaped(to.words().text("build-quantity." + row.quantity().word())),
        Html.span("fitted whole", Numerals.compact(row.found(), 3)),
        Html.span("fitted whole", Numerals.compact(row.u_found(), 2)),
        Html.span("whole", Numerals.compact(row.says(), 3)),
        Html.span("whole", Numerals.compact(row.u_says(), 2)),
        Html.span("whole", unit(row, signalUnit)),
        Html.span("whole", Numerals.signed(row.en().value(), 2)),
        Html.escaped(to.words().text(agreement(row))));
  }

  private static String agreement(Row row) {
    if (!row.judged()) {
      return "calibration-page.build.view";
    }
    return row.en().isSatisfactory()
        ? "calibration-page.build.within"
        : row.agrees() ? "calibration-page.build.edge" : "calibration-page.build.beyond";
  }

  private static String unit(Row row, String signalUnit) {
    return row.quantity() == BuildQuantity.SIGNAL_PER_K ? signalUnit + "/K" : row.quantity().unit();
  }

  private List<String> cells(Suspicion s) {
    boolean amount = s.suspect() != BuildSuspect.OTHER_RUNS;
    return List.of(
        to.words().text("build-suspect." + s.suspect().word()),
        Numerals.compact(100 * s.weight(), 2),
        amount ? Numerals.signed(100 * (s.factor() - 1), 1) : "",
        to.words().text(s.explains() ? "calibration-page.yes" : "calibration-page.no"));
  }
}
