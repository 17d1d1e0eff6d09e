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
    String agreement =
        row.judged()
            ? row.en().isSatisfactory()
                ? "calibration-page.build.within"
                : row.agrees() ? "calibration-page.build.edge" : "calibration-page.build.beyond"
            : "calibration-page.build.view";
    return List.of(
        Html.escaped(to.words().text("build-quantity." + row.quantity().word())),
        Html.span("fitted", Numerals.compact(row.found(), 3)),
        Html.span("fitted", Numerals.compact(row.u_found(), 2)),
        Numerals.compact(row.says(), 3),
        Numerals.compact(row.u_says(), 2),
        Html.escaped(
            row.quantity() == BuildQuantity.SIGNAL_PER_K
                ? signalUnit + "/K"
                : row.quantity().unit()),
        Numerals.signed(row.en().value(), 2),
        Html.escaped(to.words().text(agreement)));
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
