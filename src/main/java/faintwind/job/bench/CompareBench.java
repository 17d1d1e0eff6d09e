package faintwind.job.bench;

import faintwind.calibration.Calibration;
import faintwind.job.bench.BenchRow.Kind;
import faintwind.message.FirstSentences;
import faintwind.message.Messages;
import faintwind.physics.sheet.DesignSheet;
import faintwind.report.figure.CalibrationPlots;
import faintwind.report.figure.CurvePlots;
import faintwind.report.figure.CurvePlots.Curve;
import faintwind.report.page.Chapter;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import faintwind.report.paint.PlotFigure;
import faintwind.report.plot.PlotPoints;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Several instruments side by side: what their designs differ in, the calibrations in force as
 * curves with bands on one axis, the last converted logs with bands on one axis of time.
 *
 * @param ones the instruments
 */
public record CompareBench(List<One> ones) {
  private static final int MOST_LETTERS = 160;

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

  private List<String> names(List<One> of) {
    return of.stream().map(this::name).toList();
  }

  /** Its name, with its folder where another one has the same. */
  private String name(One one) {
    return one.row().nameAmong(ones.stream().map(One::row).toList());
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
            .map(one -> new Curve(name(one), one.log().orElseThrow()))
            .toList();
    return curves.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new CurvePlots(words)
                .against(words.text("bench-compare.hours"), words.text("plot.speed"), curves));
  }

  /** What cannot be compared, and of whom: a line each. */
  public List<String> missing(Messages words) {
    List<String> lines = new ArrayList<>();
    List<One> read = new ArrayList<>();
    for (One one : ones) {
      if (one.row().need().kind() == Kind.BROKEN) {
        String why = FirstSentences.of(one.row().need().reason(), MOST_LETTERS);
        lines.add(words.text("bench-compare.broken", name(one), why));
      } else {
        read.add(one);
      }
    }
    without("design", read, one -> one.sheet().isPresent(), words).ifPresent(lines::add);
    without("calibration", read, one -> one.calibration().isPresent(), words).ifPresent(lines::add);
    without("log", read, one -> one.log().isPresent(), words).ifPresent(lines::add);
    return lines;
  }

  private Optional<String> without(String what, List<One> of, Predicate<One> has, Messages words) {
    List<String> names = names(of.stream().filter(has.negate()).toList());
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(words.text("bench-compare.without." + what, String.join("; ", names)));
  }

  /** What the designs differ in. */
  public ComparedDesigns designs(Messages words) {
    List<One> designed = ones.stream().filter(one -> one.sheet().isPresent()).toList();
    return ComparedDesigns.of(
        names(designed), designed.stream().map(one -> one.sheet().orElseThrow()).toList(), words);
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
              html.list(missing(messages));
              Chapter to = new Chapter(html, words, 2);
              curves(messages).ifPresent(to::plot);
              logs(messages).ifPresent(to::plot);
              to.head("bench-compare.designs");
              ComparedDesigns designs = designs(messages);
              if (designs.rows().isEmpty()) {
                html.element("p", words.text("bench-compare.same"));
              } else {
                html.table("wide", designs.heads(), designs.rows());
              }
            });
  }
}
