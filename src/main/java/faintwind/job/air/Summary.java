package faintwind.job.air;

import faintwind.calibration.field.FieldSummary;
import faintwind.calibration.field.FieldSummary.AboveLimit;
import faintwind.calibration.field.FieldSummary.Gust;
import faintwind.calibration.field.FieldSummary.Hour;
import faintwind.calibration.field.FieldSummary.Percentile;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.field.Summarise;
import faintwind.files.JsonForm;
import faintwind.files.air.SpeedsFile;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The figures of a converted log, as lines of text or for another program.
 *
 * @param found the figures
 * @param start when the log's time 0 was
 * @param average_s averaging time of its rows
 */
public record Summary(FieldSummary found, Optional<OffsetDateTime> start, double average_s) {
  /** Gusts that are listed. */
  static final int LISTED = 10;

  private static final int MM_S = 3;

  /** Works them out; refused where no row of the log has a speed that means anything. */
  public static Checked<Summary> of(
      AirSource source, String name, List<Double> limits_m_s, double calm_m_s) {
    SpeedsFile log = source.speeds().orElseThrow();
    double midnight_s = log.start().map(Summary::midnight_s).orElse(0.0);
    FieldSummary.Wanted wanted =
        new FieldSummary.Wanted(
            limits_m_s, calm_m_s, midnight_s, source.how(StretchMean.Of.THIS_TIME));
    return Summarise.of(log.rows(), wanted)
        .map(found -> Checked.ok(new Summary(found, log.start(), source.average_s())))
        .orElseGet(() -> Checked.refused(Problem.error("air.nothing-used", Where.file(name), "")));
  }

  private static double midnight_s(OffsetDateTime start) {
    return -start.toLocalTime().toNanoOfDay() / 1e9;
  }

  /** A time of the log for a table: ISO 8601, or hours since its beginning. */
  String at(double time_s) {
    return moment(time_s)
        .map(at -> at.truncatedTo(ChronoUnit.SECONDS).toString())
        .orElseGet(() -> Numerals.clock(time_s));
  }

  private Optional<OffsetDateTime> moment(double time_s) {
    return start.map(s -> s.plusNanos(Math.round(time_s * 1e9)));
  }

  /** The same for people. */
  private String when(double time_s, Messages words) {
    return moment(time_s)
        .map(at -> DateText.second(words, at))
        .orElseGet(() -> Numerals.clock(time_s));
  }

  /** The figures in words, a line each. */
  public List<String> lines(Messages words) {
    List<String> lines = overall(words);
    found.hours().forEach(hour -> lines.add(hour(words, hour)));
    return lines;
  }

  /** The same without the hours. */
  public List<String> overall(Messages words) {
    List<String> lines = new ArrayList<>();
    FieldSummary.Cover cover = found.cover();
    lines.add(
        words.text(
            "summary.cover",
            when(cover.from_s(), words),
            when(cover.to_s(), words),
            hours(cover.used_s())));
    lines.add(words.text("summary.mean", speed(found.mean().speed_m_s()), u95(found.mean())));
    lines.add(
        words.text(
            found.mean().parted() ? "summary.parts" : "summary.parts-unknown",
            Numerals.digits(found.mean().shared_m_s(), 2),
            Numerals.digits(found.mean().own_m_s(), 2)));
    lines.add(words.text("summary.faint", percent(cover.faintShare())));
    if (cover.beyondShare() > 0) {
      lines.add(words.text("summary.beyond", percent(cover.beyondShare())));
    }
    if (cover.leftOut_s() > 0) {
      lines.add(words.text("summary.left-out", hours(cover.leftOut_s())));
    }
    lines.addAll(figures(words));
    lines.addAll(gusts(words));
    return lines;
  }

  private List<String> figures(Messages words) {
    List<String> lines = new ArrayList<>();
    lines.add(
        words.text(
            "summary.run",
            Numerals.beside(found.u95Run_m(), 2, found.run_m()),
            Numerals.digits(found.u95Run_m(), 2)));
    AboveLimit calm = found.calm();
    lines.add(
        words.text(
            "summary.calm",
            speed(calm.limit_m_s()),
            percent(calm.below()),
            percent(1 - calm.most()),
            percent(1 - calm.least())));
    for (Percentile p : found.percentiles()) {
      lines.add(
          words.text(
              "summary.percentile", whole(p.percent()), speed(p.speed_m_s()), speed(p.u95_m_s())));
    }
    for (AboveLimit limit : found.limits()) {
      lines.add(
          words.text(
              "summary.limit",
              speed(limit.limit_m_s()),
              percent(limit.above()),
              percent(limit.least()),
              percent(limit.most()),
              percent(limit.below())));
    }
    return lines;
  }

  private List<String> gusts(Messages words) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text("summary.gusts", String.valueOf(found.gusts().size()), whole(average_s)));
    for (Gust gust : found.gusts().stream().limit(LISTED).toList()) {
      lines.add(
          words.text(
              "summary.gust",
              when(gust.peak_s(), words),
              speed(gust.peak_m_s()),
              speed(gust.u95_m_s()),
              whole(gust.to_s() - gust.from_s())));
    }
    return lines;
  }

  private String hour(Messages words, Hour hour) {
    return hour.mean()
        .map(
            mean ->
                words.text(
                    "summary.hour",
                    when(hour.from_s(), words),
                    speed(mean.speed_m_s()),
                    u95(mean),
                    speed(hour.highest_m_s()),
                    percent(mean.faintShare())))
        .orElseGet(() -> words.text("summary.hour-none", when(hour.from_s(), words)));
  }

  /** The hours as cells of a table: beginning, mean, U95, highest, share too faint in per cent. */
  public List<List<String>> hours(Messages words) {
    return found.hours().stream()
        .map(
            hour ->
                hour.mean()
                    .map(
                        mean ->
                            List.of(
                                when(hour.from_s(), words),
                                speed(mean.speed_m_s()),
                                u95(mean),
                                speed(hour.highest_m_s()),
                                percent(mean.faintShare())))
                    .orElseGet(() -> List.of(when(hour.from_s(), words), "", "", "", "")))
        .toList();
  }

  /** The figures as JSON. */
  public String json() {
    return JsonForm.text(
        new Told("faintwind-summary/1", start.map(String::valueOf), average_s, told()));
  }

  private Figures told() {
    return new Figures(
        found.cover(),
        found.mean(),
        found.mean().u95_m_s(),
        found.percentiles(),
        limits(),
        found.hours().stream().map(Summary::told).toList(),
        found.gusts());
  }

  private static ToldHour told(Hour hour) {
    return new ToldHour(
        hour.from_s(), hour.mean(), hour.mean().map(StretchMean::u95_m_s), hour.highest_m_s());
  }

  /** The limits with that of calm air first. */
  private List<AboveLimit> limits() {
    List<AboveLimit> all = new ArrayList<>(List.of(found.calm()));
    all.addAll(found.limits());
    return all;
  }

  private record Told(String format, Optional<String> start, double average_s, Figures figures) {}

  private record Figures(
      FieldSummary.Cover cover,
      StretchMean mean,
      double meanU95_m_s,
      List<Percentile> percentiles,
      List<AboveLimit> limits,
      List<ToldHour> hours,
      List<Gust> gusts) {}

  private record ToldHour(
      double from_s, Optional<StretchMean> mean, Optional<Double> u95_m_s, double highest_m_s) {}

  private static String u95(StretchMean mean) {
    return speed(mean.u95_m_s());
  }

  private static String speed(double speed_m_s) {
    return Numerals.places(speed_m_s, MM_S);
  }

  private static String hours(double time_s) {
    return Numerals.places(time_s / Hour.LENGTH_S, 2);
  }

  private static String percent(double share) {
    return Numerals.places(100 * share, 1);
  }

  private static String whole(double number) {
    return Numerals.shortest(number, 0);
  }
}
