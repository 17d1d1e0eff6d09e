package faintwind.report.sheet;

import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.run.Direction;
import faintwind.message.Messages;
import faintwind.report.page.BuildLogStyle;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A turntable plan on paper, with blanks for what happened: for a bench without a computer. What is
 * written into it is typed back in at the turntable's screen, row by row.
 */
public final class RunSheet {
  private static final String BLANK = "";
  private static final List<String> ROOM = List.of("air", "pressure", "humidity", "supply");

  private final Messages words;
  private final String title;

  /**
   * A sheet.
   *
   * @param title stands at its head and on every page
   */
  public RunSheet(Messages words, String title) {
    this.words = words;
    this.title = title;
  }

  /** The page, XHTML so that it can also become a PDF. */
  public String html(PlanRequest request, Plan plan) {
    Html page = new Html();
    page.raw("<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><meta charset=\"utf-8\" />");
    page.element("title", text("runsheet.title", title));
    page.raw("<style>" + style() + "</style></head><body>");
    page.element("h1", text("runsheet.title", title));
    page.element("p", summary(plan));
    page.element("p", "soft", text("runsheet.arm." + request.arm().way().kind().word()));
    page.raw("<table class=\"blanks\"><tbody>");
    blanks(page, List.of("date", "who", "recording"));
    page.raw("</tbody></table>");
    page.element("h2", text("runsheet.before"));
    page.list(before());
    room(page, "runsheet.room.before");
    for (int lesson = 1; lesson <= plan.lessons(); lesson++) {
      page.element(
          "h2", plan.lessons() > 1 ? text("runsheet.lesson", lesson) : text("runsheet.steps"));
      steps(page, plan, lesson);
    }
    page.element("h2", text("runsheet.after"));
    room(page, "runsheet.room.after");
    page.element("p", text("runsheet.back"));
    return page.raw("</body></html>").toString();
  }

  private String style() {
    return BuildLogStyle.css(text("runsheet.title", title), "", new LogWords(words))
        + """
        table.blanks td { border: 1px solid #000000; height: 2em; padding: 3px; }
        table.run { width: 100%; } table.run td { border: 1px solid #000000; height: 1.9em; padding: 2px 4px; }
        table.run th { padding: 2px 4px; }
        .nowrap { white-space: nowrap; }
        @page { size: A4 landscape; margin: 16mm 14mm 16mm 14mm; }
        body { max-width: 270mm; }
        """;
  }

  private String summary(Plan plan) {
    return text(
        "runsheet.summary",
        plan.spins().size(),
        clock(plan.total_s()),
        number("%.1f", 100 * plan.foretold().mean()));
  }

  private List<String> before() {
    List<String> lines = new ArrayList<>();
    for (String key : List.of("balance", "circle", "radius", "logger", "clock")) {
      lines.add(text("runsheet.before." + key));
    }
    return lines;
  }

  private void blanks(Html page, List<String> names) {
    page.raw("<tr>");
    for (String name : names) {
      page.raw(
          "<td>"
              + Html.escaped(text("runsheet.blank." + name))
              + "</td><td style=\"width: 40mm\"></td>");
    }
    page.raw("</tr>");
  }

  private void room(Html page, String key) {
    page.element("p", text(key));
    page.raw("<table class=\"blanks\"><tbody>");
    blanks(page, ROOM);
    page.raw("</tbody></table>");
  }

  private void steps(Html page, Plan plan, int lesson) {
    List<String> heads =
        List.of(
            "at",
            "what",
            "speed",
            "radius",
            "beat",
            "direction",
            "lasts",
            "turns",
            "from",
            "until",
            "counted",
            "time",
            "note");
    page.openTable("run", heads.stream().map(h -> text("runsheet.head." + h)).toList());
    for (PlannedStep step : plan.steps()) {
      if (step.lesson() == lesson) {
        page.markupRow(row(step));
      }
    }
    page.closeTable();
  }

  private List<String> row(PlannedStep step) {
    List<String> cells = new ArrayList<>();
    cells.add(whole(clock(step.start_s())));
    cells.add(text("runsheet.what." + step.kind().name().toLowerCase(Locale.ROOT)));
    if (step.spin().isPresent()) {
      spin(step.spin().get(), step, cells);
    } else {
      cells.addAll(List.of(BLANK, BLANK, BLANK, BLANK, whole(clock(step.duration_s())), BLANK));
    }
    cells.addAll(List.of(BLANK, BLANK));
    cells.add(step.spin().isPresent() ? BLANK : "—");
    cells.add(step.spin().isPresent() ? BLANK : "—");
    cells.add(BLANK);
    return cells;
  }

  private void spin(PlannedSpin spin, PlannedStep step, List<String> cells) {
    cells.add(whole(number("%.3f m/s", spin.speed_m_s())));
    cells.add(whole(number("%.0f mm", 1000 * spin.radius_m().value())));
    cells.add(Html.escaped(text("runsheet.beat", spin.beat().perMinute(), spin.beat().aTurn())));
    cells.add(Html.escaped(text(spin.direction() == Direction.CW ? "plot.cw" : "plot.ccw")));
    cells.add(whole(clock(step.duration_s())));
    cells.add(whole(text("runsheet.turns", spin.turns(), number("%.1f", spin.turnsTime_s()))));
  }

  /** A cell that is not broken into lines. */
  private static String whole(String text) {
    return "<span class=\"nowrap\">" + Html.escaped(text) + "</span>";
  }

  /** Hours, minutes and seconds, such as 1:02:30. */
  private static String clock(double seconds) {
    long whole = Math.round(seconds);
    return String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }

  private String text(String key, Object... arguments) {
    return words.text(key, arguments);
  }
}
