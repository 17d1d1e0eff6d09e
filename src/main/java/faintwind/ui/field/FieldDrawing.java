package faintwind.ui.field;

import faintwind.calibration.speed.SpeedFlag;
import faintwind.job.field.FieldFindings;
import faintwind.job.field.FieldRows;
import faintwind.job.field.LookedAtLog;
import faintwind.report.figure.FieldPlots;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotLane;
import faintwind.report.plot.PlotNote;
import faintwind.report.plot.PlotPoints;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** Draws converted logs on an axis of time that several may share. */
final class FieldDrawing {
  private static final double GAP_STEPS = 5;
  private static final double BESIDE = 0.01;

  private final LogTime time;
  private final FieldWords said;
  private final LookedAtLog look;
  private final FieldFindings findings;
  private final FieldRows rows;

  private FieldDrawing(LogTime time, FieldWords said) {
    this.time = time;
    this.said = said;
    this.look = said.look();
    this.findings = said.findings();
    this.rows = look.rows();
  }

  /** One log, alone. */
  static FieldPlots.Log of(FieldWords said) {
    FieldDrawing drawing = new FieldDrawing(said.time(), said);
    List<PlotNote> notes = said.findings().gusts().stream().map(drawing::note).toList();
    return drawing.log(notes);
  }

  /**
   * Several on one axis, which begins at the midnight before the first.
   *
   * @param all by time; at least one, each of them dated
   */
  static FieldPlots.Log together(List<FieldWords> all) {
    LogTime time = axis(all);
    List<FieldPlots.Log> each = new ArrayList<>();
    for (FieldWords said : all) {
      FieldDrawing drawing = new FieldDrawing(time, said);
      each.add(drawing.log(said.findings().gusts().stream().limit(1).map(drawing::note).toList()));
    }
    boolean alike = each.stream().map(FieldPlots.Log::signal).distinct().count() == 1;
    return new FieldPlots.Log(
        time.axis(),
        each.stream().flatMap(log -> log.speed().stream()).toList(),
        alike ? each.stream().flatMap(log -> log.raw().stream()).toList() : List.of(),
        each.get(0).signal(),
        each.stream().mapToDouble(FieldPlots.Log::floor_m_s).max().orElse(0),
        lanes(each),
        each.stream().flatMap(log -> log.notes().stream()).toList());
  }

  /** The axis that several share. */
  static LogTime axis(List<FieldWords> all) {
    LogTime first = all.get(0).time();
    double end_s =
        all.stream()
            .mapToDouble(
                said -> first.seconds(said.look(), said.look().rows().time_s(0)) + said.length_s())
            .max()
            .orElse(0);
    return new LogTime(
        first.words(), first.origin().map(o -> o.truncatedTo(ChronoUnit.DAYS)), end_s);
  }

  /** The lanes of all, each once. */
  private static List<PlotLane> lanes(List<FieldPlots.Log> each) {
    List<PlotLane> lanes = new ArrayList<>();
    for (SpeedFlag flag : SpeedFlag.values()) {
      List<PlotLane.Stretch> stretches =
          each.stream()
              .flatMap(log -> log.lanes().stream())
              .filter(lane -> lane.name().equals(flag.word()))
              .flatMap(lane -> lane.stretches().stream())
              .toList();
      if (!stretches.isEmpty()) {
        lanes.add(new PlotLane(flag.word(), texture(flag), stretches, ""));
      }
    }
    return lanes;
  }

  private FieldPlots.Log log(List<PlotNote> notes) {
    return new FieldPlots.Log(
        time.axis(), speedPieces(), rawPieces(), look.signal(), said.floor_m_s(), lanes(), notes);
  }

  private PlotNote note(FieldFindings.Gust gust) {
    double beside = BESIDE * time.length_s() / time.unit_s();
    return new PlotNote(
        at(gust.time_s()) + beside, gust.speed_m_s(), said.peak(gust), PlotToken.INK);
  }

  private double at(double time_s) {
    return time.at(look, time_s);
  }

  private List<PlotLane> lanes() {
    List<PlotLane> lanes = new ArrayList<>();
    for (SpeedFlag flag : SpeedFlag.values()) {
      List<FieldRows.Stretch> stretches = rows.stretches(flag);
      boolean always = flag == SpeedFlag.FLOOR || flag == SpeedFlag.WARMUP || flag == SpeedFlag.GAP;
      if (always || !stretches.isEmpty()) {
        lanes.add(
            new PlotLane(
                flag.word(),
                texture(flag),
                stretches.stream()
                    .map(s -> new PlotLane.Stretch(at(s.from_s()), at(s.to_s())))
                    .toList(),
                flag == SpeedFlag.FLOOR || stretches.size() != 1
                    ? ""
                    : said.lane(flag, stretches)));
      }
    }
    return lanes;
  }

  private static PlotLane.Texture texture(SpeedFlag flag) {
    return switch (flag) {
      case FLOOR -> PlotLane.Texture.SOLID;
      case ABOVE -> PlotLane.Texture.HOLLOW;
      case WARMUP -> PlotLane.Texture.WAVE;
      case GAP -> PlotLane.Texture.POSTS;
      case POWER -> PlotLane.Texture.KINK;
      case BAD -> PlotLane.Texture.SLANTS;
    };
  }

  private List<PlotPoints> speedPieces() {
    return pieces(
        (from, to) -> {
          double[][] columns = new double[4][to - from];
          for (int i = from; i < to; i++) {
            double speed = rows.speed_m_s(i);
            columns[0][i - from] = at(rows.time_s(i));
            columns[1][i - from] = speed;
            columns[2][i - from] = Math.max(0, speed - rows.u95_m_s(i));
            columns[3][i - from] = speed + rows.u95_m_s(i);
          }
          return PlotPoints.withBand(columns[0], columns[1], columns[2], columns[3]);
        },
        true);
  }

  private List<PlotPoints> rawPieces() {
    return pieces(
        (from, to) -> {
          double[][] columns = new double[2][to - from];
          for (int i = from; i < to; i++) {
            columns[0][i - from] = at(rows.time_s(i));
            columns[1][i - from] = rows.signal(i);
          }
          return PlotPoints.of(columns[0], columns[1]);
        },
        false);
  }

  /** Makes one piece of the rows from one index up to another. */
  private interface PieceOf {
    PlotPoints rows(int from, int to);
  }

  /** Unbroken pieces; a speed piece also ends where the speed means nothing. */
  private List<PlotPoints> pieces(PieceOf make, boolean meantOnly) {
    double limit = GAP_STEPS * Math.max(1e-9, findings.length_s() / Math.max(1, rows.size()));
    List<PlotPoints> pieces = new ArrayList<>();
    int from = 0;
    for (int i = 0; i <= rows.size(); i++) {
      boolean end = i == rows.size();
      boolean skip = !end && meantOnly && !rows.isMeant(i);
      boolean gap = !end && i > 0 && rows.time_s(i) - rows.time_s(i - 1) > limit;
      if (end || skip || gap) {
        if (i > from) {
          pieces.add(make.rows(from, i));
        }
        from = skip ? i + 1 : i;
      }
    }
    return pieces;
  }
}
