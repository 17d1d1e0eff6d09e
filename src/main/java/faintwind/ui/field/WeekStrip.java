package faintwind.ui.field;

import faintwind.job.field.KeptLogs;
import faintwind.message.DateText;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * What was measured when: a week of seven days with a bar for each log, and below it each log by
 * its clock times. A log of several days has a piece in each.
 */
final class WeekStrip extends VBox {
  private static final int DAYS = 7;
  private static final double DAY_S = 86_400;
  private static final double LEAST_SHARE = 0.015;
  private static final double TRACK_EM = 1.2;

  private final Desk desk;
  private final List<KeptLogs.Log> logs;
  private final Consumer<Path> open;
  private final Consumer<List<Path>> together;
  private LocalDate monday;

  WeekStrip(
      Desk desk, List<KeptLogs.Log> logs, Consumer<Path> open, Consumer<List<Path>> together) {
    this.desk = desk;
    this.logs = logs;
    this.open = open;
    this.together = together;
    this.monday = monday(logs.get(logs.size() - 1).span().from());
    setId("field-week");
    getStyleClass().add("data-body");
    show();
  }

  private static LocalDate monday(OffsetDateTime at) {
    return at.toLocalDate().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  private void show() {
    GridPane week = new GridPane();
    week.setHgap(4);
    for (int i = 0; i < DAYS; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(100.0 / DAYS);
      week.getColumnConstraints().add(column);
      week.add(day(monday.plusDays(i)), i, 0);
    }
    getChildren().setAll(head(), week);
    List<KeptLogs.Log> shown = logs.stream().filter(log -> touches(log, monday, DAYS)).toList();
    for (int i = 0; i < shown.size(); i++) {
      getChildren().add(line(shown.get(i), i));
    }
    if (shown.size() > 1) {
      List<Path> files = shown.stream().map(KeptLogs.Log::file).toList();
      getChildren()
          .add(
              Words.link(
                  "field-week-together",
                  desk.text("field.week.together", files.size()),
                  () -> together.accept(files)));
    }
  }

  private HBox head() {
    HBox head =
        Boxes.row(
            "ways",
            Words.label(
                desk.text(
                    "field.week",
                    DateText.day(desk.words(), monday),
                    DateText.day(desk.words(), monday.plusDays(DAYS - 1))),
                "semibold"));
    if (logs.stream().anyMatch(log -> log.span().from().toLocalDate().isBefore(monday))) {
      head.getChildren()
          .add(Words.link("field-week-before", desk.text("field.week.before"), () -> go(-1)));
    }
    if (logs.stream()
        .anyMatch(log -> !log.span().to().toLocalDate().isBefore(monday.plusDays(DAYS)))) {
      head.getChildren()
          .add(Words.link("field-week-after", desk.text("field.week.after"), () -> go(1)));
    }
    return head;
  }

  private void go(int weeks) {
    monday = monday.plusWeeks(weeks);
    show();
  }

  private static boolean touches(KeptLogs.Log log, LocalDate first, int days) {
    return log.span().from().toLocalDate().isBefore(first.plusDays(days))
        && !log.span().to().toLocalDate().isBefore(first);
  }

  private VBox day(LocalDate date) {
    Pane track = new Pane();
    track.getStyleClass().add("week-track");
    track.setStyle("-fx-min-height: " + TRACK_EM + "em; -fx-pref-height: " + TRACK_EM + "em;");
    for (KeptLogs.Log log : logs) {
      if (touches(log, date, 1)) {
        track.getChildren().add(bar(log, date, track));
      }
    }
    String name = DateText.weekday(desk.words(), date);
    return new VBox(Words.label(name, "fine", "soft"), track);
  }

  private Region bar(KeptLogs.Log log, LocalDate date, Pane track) {
    double from = share(log.span().from(), date);
    double width = Math.max(LEAST_SHARE, share(log.span().to(), date) - from);
    Region bar = new Region();
    bar.getStyleClass().add("week-bar");
    bar.layoutXProperty().bind(track.widthProperty().multiply(from));
    bar.prefWidthProperty().bind(track.widthProperty().multiply(width));
    bar.prefHeightProperty().bind(track.heightProperty());
    bar.setOnMouseClicked(event -> open.accept(log.file()));
    return bar;
  }

  /** Share of a day that is past at a time, 0 to 1. */
  private static double share(OffsetDateTime at, LocalDate date) {
    double seconds =
        Duration.between(date.atStartOfDay(at.getOffset()), at.toZonedDateTime()).toSeconds();
    return Math.max(0, Math.min(1, seconds / DAY_S));
  }

  private Node line(KeptLogs.Log log, int place) {
    String text =
        desk.text(
            "field.week.log",
            DateText.minute(desk.words(), log.span().from()),
            DateText.minute(desk.words(), log.span().to()),
            String.valueOf(Path.of(log.name()).getFileName()));
    Hyperlink link =
        Words.link("field-week-log-" + (place + 1), text, () -> open.accept(log.file()));
    String by =
        log.converted()
            .map(made -> desk.text("field.week.by", made.calibration()))
            .orElseGet(() -> desk.text("field.week.not-kept"));
    Pane thumb = log.shape().map(ShapeView::new).<Pane>map(view -> view).orElseGet(Pane::new);
    thumb.getStyleClass().add("shape-view");
    return Boxes.row("ways", thumb, new VBox(link, Words.label(by, "fine", "soft")));
  }
}
