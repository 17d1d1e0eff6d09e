package faintwind.ui.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.field.FieldSummary;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.job.field.FieldFindings;
import faintwind.job.field.FieldRows;
import faintwind.job.field.LookedAtLog;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.ui.part.TimeText;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says what a converted log shows: its day in a sentence, its gusts, its flags. */
final class FieldWords {
  /** A day and a minute: a log of a whole day names each time once. */
  private static final double DAY_S = 86_460;

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

  LookedAtLog look() {
    return look;
  }

  FieldFindings findings() {
    return findings;
  }

  double floor_m_s() {
    return floor_m_s;
  }

  double length_s() {
    return findings.length_s();
  }

  /** The axis of this log alone. */
  LogTime time() {
    return LogTime.of(words, look, findings.length_s());
  }

  /** The day in a sentence. */
  String title() {
    String when =
        look.start()
            .map(s -> DateText.day(words, s))
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

  /** The main figures over the minutes of the log, a strong and a plain line each. */
  List<Standout> figures() {
    return look.figures().map(this::figures).orElse(List.of());
  }

  private List<Standout> figures(FieldSummary found) {
    String used = TimeText.of(words, found.cover().used_s());
    FieldSummary.AboveLimit calm = found.calm();
    return List.of(
        new Standout(
            words.text(
                "field.figure.mean",
                Numerals.places(found.mean().speed_m_s(), 3),
                Numerals.places(found.mean().u95_m_s(), 3)),
            words.text("field.figure.mean.text", used)),
        new Standout(
            words.text(
                "field.figure.run",
                Numerals.digits(found.run_m(), 2),
                Numerals.digits(found.u95Run_m(), 1)),
            words.text("field.figure.run.text")),
        new Standout(
            words.text("field.figure.calm", Math.round(100 * calm.below())),
            words.text(
                "field.figure.calm.text",
                speed(calm.limit_m_s()),
                words.text("field.page.summary"))));
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
        .map(s -> clock(at(s, time_s)))
        .orElseGet(() -> words.text("field.time.minute", Math.round(time_s / 60)));
  }

  /** The time of day, with the day where the log has more than one of the same. */
  private String clock(OffsetDateTime at) {
    return findings.length_s() > DAY_S ? DateText.minute(words, at) : DateText.clock(at);
  }

  private static OffsetDateTime at(OffsetDateTime start, double time_s) {
    return start.plusNanos(Math.round(time_s * 1e9));
  }

  /** The words at a gust of the plot. */
  List<String> peak(FieldFindings.Gust gust) {
    return List.of(marked(gust.speed_m_s()), time(gust.time_s()));
  }

  /** The words at the only stretch of a lane. */
  String lane(SpeedFlag flag, List<FieldRows.Stretch> stretches) {
    return words.text("field.lane." + flag.word(), length(stretches));
  }

  /** The flags of the row at a time, in words; empty where there is none. */
  String flagsAt(double time_s) {
    List<String> flags = new ArrayList<>();
    for (SpeedFlag flag : SpeedFlag.values()) {
      boolean there =
          look.rows().stretches(flag).stream()
              .anyMatch(s -> time_s >= s.from_s() && (time_s < s.to_s() || s.to_s() == s.from_s()));
      if (there) {
        flags.add(flag.word());
      }
    }
    return String.join(" ", flags);
  }
}
