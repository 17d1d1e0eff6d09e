package faintwind.report.figure;

import faintwind.calibration.fit.judging.FittedRecording;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.NotCounted;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotDash;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotSpan;
import faintwind.report.plot.PlotSummary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Plots of recordings, measured and fitted, each with a strip of what is left over. */
public final class RecordingPlots {
  private static final double GAP_STEPS = 5;
  private static final double SPIKE = 4;

  private final Messages messages;

  public RecordingPlots(Messages messages) {
    this.messages = messages;
  }

  /**
   * The recordings of a runs table as measured, one a run file: rows that name the same file (a
   * staircase) are joined.
   */
  public static List<RecordingTrace> traces(List<Run> runs) {
    Map<String, List<Run>> byFile = new LinkedHashMap<>();
    for (Run run : runs) {
      byFile.computeIfAbsent(run.file(), file -> new ArrayList<>()).add(run);
    }
    return byFile.entrySet().stream().map(e -> trace(e.getKey(), e.getValue())).toList();
  }

  private static RecordingTrace trace(String file, List<Run> runs) {
    List<RecordingTrace.Spin> spins = new ArrayList<>();
    for (Run run : runs) {
      run.arm().ifPresent(arm -> spins.add(spin(arm)));
    }
    String name = runs.size() == 1 ? runs.get(0).name() : file;
    String unit = runs.get(0).recording().unit().symbol();
    List<RecordingTrace.Spin> aside = runs.stream().flatMap(RecordingPlots::aside).toList();
    return new RecordingTrace(name, unit, joined(runs), Optional.empty(), spins, aside);
  }

  /** What a person left out of the fit of a run: all of it, or stretches. */
  private static Stream<RecordingTrace.Spin> aside(Run run) {
    String reason = NotCounted.reasonIn(run.conditions().note());
    Series signal = run.recording().signal();
    return run.isLeftOut()
        ? Stream.of(new RecordingTrace.Spin(signal.first_s(), signal.last_s(), reason))
        : run.conditions().notCounted().stretches().stream()
            .map(s -> new RecordingTrace.Spin(s.from_s(), s.to_s(), reason));
  }

  private static RecordingTrace.Spin spin(ArmTurning arm) {
    return new RecordingTrace.Spin(
        arm.spinStart_s(), arm.spinStop_s(), Numerals.places(arm.speed_m_s(), 2));
  }

  /** Windows of one file in order of time; a row that two windows share is taken once. */
  private static Series joined(List<Run> runs) {
    Map<Double, Double> rows = new TreeMap<>();
    for (Run run : runs) {
      Series signal = run.recording().signal();
      for (int i = 0; i < signal.size(); i++) {
        rows.put(signal.time_s(i), signal.value(i));
      }
    }
    return Series.of(
        rows.keySet().stream().mapToDouble(t -> t).toArray(),
        rows.values().stream().mapToDouble(v -> v).toArray());
  }

  /**
   * Measured traces with the fitted signal of the same file laid over them; a file that was not
   * fitted, such as one with the heater off, stays as it is.
   */
  public static List<RecordingTrace> fitted(
      List<RecordingTrace> measured, List<FittedRecording> fitted, List<Run> runs) {
    Map<String, String> fileOf = new LinkedHashMap<>();
    runs.forEach(run -> fileOf.putIfAbsent(run.name(), run.file()));
    return measured.stream()
        .map(
            trace ->
                new RecordingTrace(
                    trace.name(),
                    trace.unit(),
                    trace.measured(),
                    fitted.stream()
                        .filter(
                            f -> f.file().equals(fileOf.getOrDefault(trace.name(), trace.name())))
                        .findFirst()
                        .map(FittedRecording::fitted),
                    trace.spins(),
                    trace.aside()))
        .toList();
  }

  /**
   * One recording: measured as a broad line, fitted as a thin one over it, spins as areas; under
   * it, where there is a fit, measured less fitted.
   */
  public PlotFigure recording(RecordingTrace trace) {
    List<PlotPanel> panels = new ArrayList<>();
    boolean strip = trace.fitted().filter(s -> !s.isEmpty()).isPresent();
    panels.add(course(trace, strip));
    if (strip) {
      panels.add(leftOver(trace));
    }
    return new PlotFigure(trace.name(), PlotSummary.of(panels, messages), panels);
  }

  private PlotPanel course(RecordingTrace trace, boolean strip) {
    List<PlotLine> lines = new ArrayList<>();
    PlotLook measured =
        strip
            ? new PlotLook(PlotToken.EDGE, PlotDash.SOLID, PlotMarker.NONE, 6)
            : new PlotLook(PlotToken.SERIES_1, PlotDash.SOLID, PlotMarker.NONE, 1.8);
    lines.add(
        new PlotLine(
            strip ? messages.text("plot.measured") : "", pieces(trace.measured()), measured));
    trace
        .fitted()
        .filter(s -> !s.isEmpty())
        .ifPresent(
            fitted ->
                lines.add(
                    new PlotLine(
                        messages.text("plot.fitted"),
                        pieces(fitted),
                        new PlotLook(PlotToken.SERIES_1, PlotDash.SOLID, PlotMarker.NONE, 1.8))));
    PlotContent content = PlotContent.lines(lines);
    for (RecordingTrace.Spin spin : trace.spins()) {
      content =
          content.with(new PlotSpan(spin.from_s(), spin.to_s(), spin.label(), PlotToken.MARGIN));
    }
    for (RecordingTrace.Spin out : trace.aside()) {
      String label = messages.text("plot.left-out");
      content = content.with(new PlotSpan(out.from_s(), out.to_s(), label, PlotToken.RULE));
    }
    Spikes spikes = Spikes.of(pieces(trace.measured()));
    List<String> captions = new ArrayList<>();
    if (!trace.spins().isEmpty()) {
      captions.add(messages.text("plot.recording.caption"));
    }
    trace.aside().stream()
        .map(RecordingTrace.Spin::label)
        .filter(reason -> !reason.isEmpty())
        .distinct()
        .forEach(reason -> captions.add(messages.text("plot.left-out.reason", reason)));
    if (spikes.any()) {
      captions.add(messages.text("plot.spikes", spikes.count()));
    }
    return new PlotPanel(
        messages.text("plot.recording.title", trace.name(), trace.unit()),
        String.join("; ", captions),
        timeAxis(strip ? "" : messages.text("plot.minutes"), trace),
        spikes.without(PlotAxis.linear(messages.text("plot.signal", trace.unit()))),
        content,
        3);
  }

  private PlotPanel leftOver(RecordingTrace trace) {
    Series fitted = trace.fitted().orElseThrow();
    Series measured = trace.measured();
    double[] t = measured.window(fitted.first_s(), fitted.last_s()).times_s();
    double[] rest = new double[t.length];
    for (int i = 0; i < t.length; i++) {
      rest[i] = measured.at(t[i]) - fitted.at(t[i]);
    }
    PlotLine line =
        new PlotLine(
            "",
            pieces(Series.of(t, rest)),
            new PlotLook(PlotToken.SERIES_2, PlotDash.SOLID, PlotMarker.NONE, 1.2));
    return new PlotPanel(
        messages.text("plot.residual.title", trace.unit()),
        "",
        timeAxis(messages.text("plot.minutes"), trace),
        residualAxis(messages.text("plot.residual.title", trace.unit()), rest),
        PlotContent.lines(List.of(line)),
        1);
  }

  /** All residuals but rare spikes, which would flatten the rest; those leave the strip. */
  private static PlotAxis residualAxis(String name, double[] rest) {
    double[] sizes = Arrays.stream(rest).map(Math::abs).sorted().toArray();
    double usual = sizes.length == 0 ? 0 : sizes[(int) (0.99 * (sizes.length - 1))];
    double most = sizes.length == 0 ? 0 : sizes[sizes.length - 1];
    PlotAxis axis = PlotAxis.of(name, PlotAxis.Scale.SIGNED);
    return usual > 0 && most > SPIKE * usual ? axis.between(-1.5 * usual, 1.5 * usual) : axis;
  }

  /** Over the recording, with what was left out of it. */
  private static PlotAxis timeAxis(String name, RecordingTrace trace) {
    double first_s = trace.measured().first_s();
    double last_s = trace.measured().last_s();
    for (RecordingTrace.Spin out : trace.aside()) {
      first_s = Math.min(first_s, out.from_s());
      last_s = Math.max(last_s, out.to_s());
    }
    return PlotAxis.of(name, PlotAxis.Scale.MINUTES).between(first_s, last_s);
  }

  /** Unbroken pieces of a series: a step of more than five usual steps is a gap. */
  static List<PlotPoints> pieces(Series series) {
    List<PlotPoints> pieces = new ArrayList<>();
    if (series.isEmpty()) {
      return pieces;
    }
    double limit_s = GAP_STEPS * usualStep_s(series);
    int from = 0;
    double[] t = series.times_s();
    double[] v = series.values();
    for (int i = 1; i <= t.length; i++) {
      if (i == t.length || t[i] - t[i - 1] > limit_s) {
        pieces.add(PlotPoints.of(Arrays.copyOfRange(t, from, i), Arrays.copyOfRange(v, from, i)));
        from = i;
      }
    }
    return pieces;
  }

  private static double usualStep_s(Series series) {
    double[] steps = new double[Math.max(1, series.size() - 1)];
    steps[0] = Double.MAX_VALUE / 10;
    for (int i = 1; i < series.size(); i++) {
      steps[i - 1] = series.time_s(i) - series.time_s(i - 1);
    }
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }
}
