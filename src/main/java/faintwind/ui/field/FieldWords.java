package faintwind.ui.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.job.field.FieldFindings;
import faintwind.job.field.FieldRows;
import faintwind.job.field.LookedAtLog;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.report.figure.FieldPlots;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotLane;
import faintwind.report.plot.PlotNote;
import faintwind.report.plot.PlotPoints;
import faintwind.ui.part.TimeText;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says and draws what a converted log shows: its day in a sentence, its gusts, its flags. */
final class FieldWords {
  private static final double DAY_S = 86_400;
  private static final double GAP_STEPS = 5;

  private final Messages words;
  private final LookedAtLog look;
  private final FieldFindings findings;
  private final double floor_m_s;
  private final double highest_m_s;

  FieldWords(Messages words, LookedAtLog look, FieldFindings findings, Calibration calibration) {
    this.words = words;
    this.look = look;
    this.findings = findings;
    this.floor_m_s = calibration.performance().floor_m_s();
    this.highest_m_s = calibration.coverage().highest_m_s();
  }

  /** The day in a sentence. */
  String title() {
    String when =
        look.start()
            .map(s -> DateTimeFormatter.ofPattern("EEEE d MMMM", words.locale()).format(s))
            .orElse(words.text("field.title.length", TimeText.of(words, findings.length_s())));
    return words.text("field.title", when, course());
  }

  private String course() {
    double faint = share(FieldFindings.Kind.TOO_FAINT);
    Optional<FieldFindings.Gust> strongest = findings.gusts().stream().findFirst();
    String gusts =
        strongest.isEmpty()
            ? words.text("field.course.no-gust")
            : words.text(
                "field.course.gusts",
                findings.gusts().size(),
                marked(strongest.get().speed_m_s()),
                time(strongest.get().time_s()));
    String key =
        faint > 0.5
            ? "field.course.quiet"
            : faint > 0.1 ? "field.course.mixed" : "field.course.air";
    return gusts + ", " + words.text(key);
  }

  private double share(FieldFindings.Kind kind) {
    return findings.shares().stream()
        .filter(s -> s.kind() == kind)
        .mapToDouble(FieldFindings.Share::share)
        .sum();
  }

  /** A class of speed and its share of the time. */
  record ShareLine(String name, double share, boolean usable) {}

  List<ShareLine> shares() {
    return findings.shares().stream()
        .map(s -> new ShareLine(shareName(s), s.share(), s.kind() != FieldFindings.Kind.NOT_USABLE))
        .toList();
  }

  private String shareName(FieldFindings.Share share) {
    return switch (share.kind()) {
      case TOO_FAINT -> words.text("field.share.faint");
      case BETWEEN ->
          words.text("field.share.between", speed(share.from_m_s()), speed(share.to_m_s()));
      case ABOVE -> words.text("field.share.above", speed(share.from_m_s()));
      case NOT_USABLE -> words.text("field.share.not-usable");
    };
  }

  /** What stands out, a strong and a plain line each. */
  record Standout(String name, String text) {}

  List<Standout> standouts() {
    List<Standout> found = new ArrayList<>();
    for (FieldFindings.Gust gust : findings.gusts()) {
      found.add(
          new Standout(
              words.text("field.gust", marked(gust.speed_m_s())),
              words.text(
                  isBeyond(gust.speed_m_s()) ? "field.gust.beyond" : "field.gust.text",
                  time(gust.time_s()))));
    }
    for (SpeedFlag flag : SpeedFlag.values()) {
      List<FieldRows.Stretch> stretches = look.rows().stretches(flag);
      if (flag != SpeedFlag.FLOOR && !stretches.isEmpty()) {
        found.add(
            new Standout(
                words.text("convert.flag." + flag.word()),
                words.text("field.flag.text", stretches.size(), length(stretches))));
      }
    }
    if (share(FieldFindings.Kind.TOO_FAINT) > 0.1) {
      found.add(
          new Standout(
              words.text("field.quiet"), words.text("field.quiet.text", speed(floor_m_s))));
    }
    return found;
  }

  private String length(List<FieldRows.Stretch> stretches) {
    double sum_s = stretches.stream().mapToDouble(s -> s.to_s() - s.from_s()).sum();
    return TimeText.of(words, sum_s);
  }

  private boolean isBeyond(double speed_m_s) {
    return speed_m_s > highest_m_s;
  }

  /** A speed, with a mark where it lies beyond the calibrated ones. */
  private String marked(double speed_m_s) {
    return speed(speed_m_s) + (isBeyond(speed_m_s) ? "*" : "");
  }

  private static String speed(double speed_m_s) {
    return Numerals.places(speed_m_s, 2);
  }

  private String time(double time_s) {
    return look.start()
        .map(s -> DateTimeFormatter.ofPattern("HH:mm").format(at(s, time_s)))
        .orElseGet(() -> words.text("field.time.minute", Math.round(time_s / 60)));
  }

  private static OffsetDateTime at(OffsetDateTime start, double time_s) {
    return start.plusNanos(Math.round(time_s * 1e9));
  }

  /** The plot: time of day where the start is known and the log is no longer than two days. */
  FieldPlots.Log plot() {
    boolean clock = look.start().isPresent() && findings.length_s() <= 2 * DAY_S;
    double shift = clock ? look.start().orElseThrow().toLocalTime().toSecondOfDay() : 0;
    return new FieldPlots.Log(
        clock,
        speedPieces(shift),
        rawPieces(shift),
        look.signal(),
        floor_m_s,
        lanes(shift),
        notes(shift));
  }

  /** Which stretch of the plot is drawn. */
  String stretch(boolean clock, double from, double to) {
    return words.text("field.stretch.shown", onAxis(clock, from), onAxis(clock, to));
  }

  private String onAxis(boolean clock, double at) {
    return clock
        ? Numerals.clock(at % DAY_S)
        : words.text("field.time.minute", Math.round(at / 60));
  }

  private List<PlotNote> notes(double shift) {
    return findings.gusts().stream()
        .map(
            g ->
                new PlotNote(
                    g.time_s() + shift + 0.01 * findings.length_s(),
                    g.speed_m_s(),
                    List.of(marked(g.speed_m_s()), time(g.time_s())),
                    PlotToken.INK))
        .toList();
  }

  private List<PlotLane> lanes(double shift) {
    List<PlotLane> lanes = new ArrayList<>();
    for (SpeedFlag flag : SpeedFlag.values()) {
      List<FieldRows.Stretch> stretches = look.rows().stretches(flag);
      boolean always = flag == SpeedFlag.FLOOR || flag == SpeedFlag.WARMUP || flag == SpeedFlag.GAP;
      if (always || !stretches.isEmpty()) {
        lanes.add(
            new PlotLane(
                flag.word(),
                texture(flag),
                stretches.stream()
                    .map(s -> new PlotLane.Stretch(s.from_s() + shift, s.to_s() + shift))
                    .toList(),
                flag == SpeedFlag.FLOOR || stretches.size() != 1
                    ? ""
                    : words.text("field.lane." + flag.word(), length(stretches))));
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

  private List<PlotPoints> speedPieces(double shift) {
    return pieces(
        (from, to) -> {
          FieldRows rows = look.rows();
          double[][] columns = new double[4][to - from];
          for (int i = from; i < to; i++) {
            double speed = rows.speed_m_s(i);
            columns[0][i - from] = rows.time_s(i) + shift;
            columns[1][i - from] = speed;
            columns[2][i - from] = Math.max(0, speed - rows.u95_m_s(i));
            columns[3][i - from] = speed + rows.u95_m_s(i);
          }
          return PlotPoints.withBand(columns[0], columns[1], columns[2], columns[3]);
        },
        true);
  }

  private List<PlotPoints> rawPieces(double shift) {
    return pieces(
        (from, to) -> {
          double[][] columns = new double[2][to - from];
          for (int i = from; i < to; i++) {
            columns[0][i - from] = look.rows().time_s(i) + shift;
            columns[1][i - from] = look.rows().signal(i);
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
    FieldRows rows = look.rows();
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
