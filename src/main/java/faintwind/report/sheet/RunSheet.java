package faintwind.report.sheet;

import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.run.Direction;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A turntable plan on paper, with blanks for what happened: for a bench without a computer. What is
 * written into it is typed back in at the turntable's screen, row by row.
 */
public final class RunSheet {
  private static final String BLANK = "";
  private static final List<String> BEFORE =
      List.of("balance", "circle", "radius", "logger", "clock");
  private static final List<String> HEADS =
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
  private static final String STYLE =
      """
      table.blanks td { border: 1px solid #000000; height: 2em; padding: 3px; }
      .blank { width: 40mm; }
      table.run { width: 100%; } table.run td { border: 1px solid #000000; height: 1.9em;
        padding: 2px 4px; }
      table.run th { padding: 2px 4px; }
      .nowrap { white-space: nowrap; }
      """;
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
    String head = text("runsheet.title", title);
    return new Page(new LogWords(words), head, "", STYLE)
        .lying(270)
        .html(
            page -> {
              page.element("h1", head);
              write(new Chapter(page, new LogWords(words), 2), request, plan);
            });
  }

  private void write(Chapter to, PlanRequest request, Plan plan) {
    to.say(
        "runsheet.summary",
        plan.spins().size(),
        Numerals.clock(plan.total_s()),
        Numerals.places(100 * plan.promise().mean(), 1));
    to.html().element("p", "soft", text("runsheet.arm." + request.arm().way().kind().word()));
    blanks(to.html(), List.of("date", "who", "recording"));
    to.head("runsheet.before");
    to.html().list(BEFORE.stream().map(key -> text("runsheet.before." + key)).toList());
    room(to, "runsheet.room.before");
    for (int lesson = 1; lesson <= plan.lessons(); lesson++) {
      if (plan.lessons() > 1) {
        to.head("runsheet.lesson", lesson);
      } else {
        to.head("runsheet.steps");
      }
      steps(to, plan, lesson);
    }
    to.head("runsheet.after");
    room(to, "runsheet.room.after");
    to.say("runsheet.back");
  }

  private void blanks(Html page, List<String> names) {
    List<String> cells = new ArrayList<>();
    for (String name : names) {
      cells.add(Html.escaped(text("runsheet.blank." + name)));
      cells.add("<div class=\"blank\">&#160;</div>");
    }
    page.markupTable("blanks", List.of(), List.of(cells));
  }

  private void room(Chapter to, String key) {
    to.say(key);
    blanks(to.html(), ROOM);
  }

  private void steps(Chapter to, Plan plan, int lesson) {
    to.markupTable(
        "run",
        HEADS.stream().map(head -> "runsheet.head." + head).toList(),
        plan.steps().stream().filter(step -> step.lesson() == lesson).map(this::row).toList());
  }

  private List<String> row(PlannedStep step) {
    List<String> cells = new ArrayList<>();
    cells.add(whole(Numerals.clock(step.start_s())));
    cells.add(text("runsheet.what." + step.kind().name().toLowerCase(Locale.ROOT)));
    if (step.spin().isPresent()) {
      spin(step.spin().get(), step, cells);
    } else {
      cells.addAll(
          List.of(BLANK, BLANK, BLANK, BLANK, whole(Numerals.clock(step.duration_s())), BLANK));
    }
    cells.addAll(List.of(BLANK, BLANK));
    cells.add(step.spin().isPresent() ? BLANK : "—");
    cells.add(step.spin().isPresent() ? BLANK : "—");
    cells.add(BLANK);
    return cells;
  }

  private void spin(PlannedSpin spin, PlannedStep step, List<String> cells) {
    cells.add(whole(Numerals.places(spin.speed_m_s(), 3) + " m/s"));
    cells.add(whole(Numerals.places(1000 * spin.radius_m().value(), 0) + " mm"));
    cells.add(Html.escaped(text("runsheet.beat", spin.beat().perMinute(), spin.beat().aTurn())));
    cells.add(Html.escaped(text(spin.direction() == Direction.CW ? "plot.cw" : "plot.ccw")));
    cells.add(whole(Numerals.clock(step.duration_s())));
    cells.add(whole(text("runsheet.turns", spin.turns(), Numerals.places(spin.turnsTime_s(), 1))));
  }

  /** A cell that is not broken into lines. */
  private static String whole(String text) {
    return Html.span("nowrap", text);
  }

  private String text(String key, Object... arguments) {
    return words.text(key, arguments);
  }
}
