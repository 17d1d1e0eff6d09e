package faintwind.job.bench;

import faintwind.calibration.Calibration;
import faintwind.calibration.field.SpeedSeries;
import faintwind.files.air.SpeedsFile;
import faintwind.files.calibration.CalibrationFile;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.record.Event.LogConverted;
import faintwind.report.figure.CalibrationPlots;
import faintwind.report.figure.CurvePlots;
import faintwind.report.figure.CurvePlots.Curve;
import faintwind.report.page.Chapter;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import faintwind.report.paint.PlotFigure;
import faintwind.report.plot.PlotPoints;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Several instruments side by side: what their designs differ in, the calibrations in force as
 * curves with bands on one axis, the last converted logs with bands on one axis of time.
 *
 * @param ones the instruments
 */
public record CompareBench(List<One> ones) {
  private static final int POINTS = 600;
  private static final double HOUR_s = 3600;

  public CompareBench {
    ones = List.copyOf(ones);
  }

  /**
   * One instrument.
   *
   * @param row what the bench says of it
   * @param sheet of its design
   * @param calibration in force
   * @param log its last converted log, hours from its beginning against m/s
   */
  public record One(
      BenchRow row,
      Optional<DesignSheet> sheet,
      Optional<Calibration> calibration,
      Optional<PlotPoints> log) {}

  /**
   * Reads them.
   *
   * @return refused where one is no instrument that can be read
   * @throws IOException where something that is there cannot be read
   */
  public static Checked<CompareBench> of(List<Path> folders, Messages words, OffsetDateTime now)
      throws IOException {
    ReadBench bench = new ReadBench(words);
    List<One> ones = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Path folder : folders) {
      Checked<ReadBench.Looked> looked = bench.look(folder, now);
      problems.addAll(looked.isOk() ? List.of() : looked.problems());
      if (looked instanceof Checked.Ok<ReadBench.Looked> ok) {
        ones.add(one(folder, ok.value(), now));
      }
    }
    return problems.isEmpty() ? Checked.ok(new CompareBench(ones)) : Checked.refused(problems);
  }

  private static One one(Path folder, ReadBench.Looked looked, OffsetDateTime now)
      throws IOException {
    Optional<String> inForce = looked.row().inForce().map(f -> f.file());
    Optional<Calibration> calibration = Optional.empty();
    if (inForce.isPresent() && Files.isRegularFile(folder.resolve(inForce.get()))) {
      calibration =
          CalibrationFile.read(folder.resolve(inForce.get()), inForce.get())
              .fold((it, notes) -> Optional.of(it), problems -> Optional.empty());
    }
    Optional<Path> speeds =
        looked
            .view()
            .state()
            .last(LogConverted.class)
            .map(line -> folder.resolve(line.event().speeds()))
            .filter(Files::isRegularFile);
    Optional<PlotPoints> log = Optional.empty();
    if (speeds.isPresent()) {
      log =
          SpeedsFile.read(speeds.get())
              .fold((file, notes) -> thinned(file.rows()), problems -> Optional.empty());
    }
    return new One(looked.row(), looked.view().situation(now).sheet(), calibration, log);
  }

  /** Means over equal stretches, speed and uncertainty alike; those without a reading left out. */
  private static Optional<PlotPoints> thinned(SpeedSeries rows) {
    double from_s = rows.time_s(0);
    double span_s = rows.time_s(rows.size() - 1) - from_s;
    double[] speed = new double[POINTS];
    double[] u95 = new double[POINTS];
    int[] count = new int[POINTS];
    for (int i = 0; i < rows.size(); i++) {
      if (rows.isUsed(i)) {
        int at =
            (int)
                Math.min(POINTS - 1, span_s > 0 ? POINTS * (rows.time_s(i) - from_s) / span_s : 0);
        speed[at] += rows.speed_m_s(i);
        u95[at] += rows.u95_m_s(i);
        count[at]++;
      }
    }
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      if (count[i] > 0) {
        double mean = speed[i] / count[i];
        double wide = u95[i] / count[i];
        double hours = (i + 0.5) / POINTS * span_s / HOUR_s;
        points.add(new double[] {hours, mean, Math.max(0, mean - wide), mean + wide});
      }
    }
    return points.isEmpty()
        ? Optional.empty()
        : Optional.of(
            PlotPoints.withBand(
                column(points, 0), column(points, 1), column(points, 2), column(points, 3)));
  }

  private static double[] column(List<double[]> points, int column) {
    return points.stream().mapToDouble(p -> p[column]).toArray();
  }

  private List<String> names(List<One> of) {
    return of.stream().map(one -> one.row().name()).toList();
  }

  /** Calibrations in force over one another; empty where none has one. */
  public Optional<PlotFigure> curves(Messages words) {
    List<One> with = ones.stream().filter(one -> one.calibration().isPresent()).toList();
    return with.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new CalibrationPlots(words)
                .overlay(
                    with.stream().map(one -> one.calibration().orElseThrow()).toList(),
                    names(with)));
  }

  /** Logs over one another; empty where none has one. */
  public Optional<PlotFigure> logs(Messages words) {
    List<Curve> curves =
        ones.stream()
            .filter(one -> one.log().isPresent())
            .map(one -> new Curve(one.row().name(), one.log().orElseThrow()))
            .toList();
    return curves.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new CurvePlots(words)
                .against(words.text("bench-compare.hours"), words.text("plot.speed"), curves));
  }

  /** The name of a quantity and an instrument each. */
  public List<String> heads(Messages words) {
    List<String> heads = new ArrayList<>();
    heads.add(words.text("build-log.quantity"));
    heads.addAll(names(ones));
    return heads;
  }

  /** The quantities in which the designs differ, a row each. */
  public List<List<String>> designs(Messages words) {
    List<List<String>> rows = new ArrayList<>();
    Optional<DesignSheet> first = ones.stream().flatMap(one -> one.sheet().stream()).findFirst();
    for (Outcome outcome : first.map(DesignSheet::quantities).orElse(List.of())) {
      List<String> cells = ones.stream().map(one -> cell(one, outcome)).toList();
      if (cells.stream().distinct().count() > 1) {
        List<String> row = new ArrayList<>();
        row.add(words.text("quantity." + outcome.id().id()));
        row.addAll(cells);
        rows.add(row);
      }
    }
    return rows;
  }

  private static String cell(One one, Outcome like) {
    return one.sheet().stream()
        .flatMap(sheet -> sheet.quantities().stream())
        .filter(outcome -> outcome.id() == like.id())
        .findFirst()
        .map(o -> (Numerals.compact(o.value().nominal(), 3) + " " + o.id().unit()).strip())
        .orElse("–");
  }

  /** A page that stands alone, XHTML so that it can also become a PDF. */
  public String page(Messages messages) {
    LogWords words = new LogWords(messages);
    String title = words.text("bench-compare.title", String.join("; ", names(ones)));
    return new Page(words, title, "", "")
        .html(
            html -> {
              html.element("h1", title);
              html.list(new BenchText(messages).lines(ones.stream().map(One::row).toList()));
              Chapter to = new Chapter(html, words, 2);
              to.head("bench-compare.designs");
              if (designs(messages).isEmpty()) {
                html.element("p", words.text("bench-compare.same"));
              } else {
                html.table("wide", heads(messages), designs(messages));
              }
              curves(messages).ifPresent(to::plot);
              logs(messages).ifPresent(to::plot);
            });
  }
}
