package faintwind.ui.field;

import faintwind.job.field.LookedAtLog;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.report.plot.PlotAxis;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The axis of time of one log or several: the time of day up to two days, days beyond, minutes of
 * the record where nobody knows when it began.
 *
 * @param words for people
 * @param origin when the axis is zero: midnight of the first day
 * @param length_s of all that is drawn
 */
record LogTime(Messages words, Optional<OffsetDateTime> origin, double length_s) {
  private static final double DAY_S = 86_400;
  private static final double MILLI = 1e-3;

  /** The axis of one log. */
  static LogTime of(Messages words, LookedAtLog look, double length_s) {
    return new LogTime(words, look.start().map(s -> s.truncatedTo(ChronoUnit.DAYS)), length_s);
  }

  private boolean inDays() {
    return origin.isPresent() && length_s > 2 * DAY_S;
  }

  PlotAxis axis() {
    if (origin.isEmpty()) {
      return PlotAxis.of(words.text("plot.minutes"), PlotAxis.Scale.MINUTES);
    }
    return inDays()
        ? PlotAxis.linear(words.text("plot.days", DateText.day(words, origin.get())))
        : PlotAxis.of(words.text("plot.time"), PlotAxis.Scale.CLOCK);
  }

  /** Where on the axis a time of a log lies. */
  double at(LookedAtLog look, double time_s) {
    return seconds(look, time_s) / unit_s();
  }

  /** How long after the axis's zero a time of a log is. */
  double seconds(LookedAtLog look, double time_s) {
    double shift_s =
        origin
            .flatMap(o -> look.start().map(s -> MILLI * Duration.between(o, s).toMillis()))
            .orElse(0.0);
    return time_s + shift_s;
  }

  /** Length of one unit of the axis. */
  double unit_s() {
    return inDays() ? DAY_S : 1;
  }

  /** A place on the axis in words. */
  String said(double at) {
    return origin
        .map(
            o ->
                DateText.second(
                    words, o.plus(Duration.ofMillis(Math.round(at * unit_s() / MILLI)))))
        .orElseGet(() -> words.text("field.time.minute", Math.round(at / 60)));
  }

  /** The zone of the axis, such as UTC+02; empty where nobody knows the day. */
  String zone() {
    return origin.map(DateText::zone).orElse("");
  }

  /** The time of a row of a log, to the second; with its zone where that is not the axis's. */
  String row(LookedAtLog look, double time_s) {
    return look.start()
        .map(s -> s.plus(Duration.ofMillis(Math.round(time_s / MILLI))))
        .map(
            at ->
                DateText.second(words, at)
                    + (DateText.zone(at).equals(zone()) ? "" : " " + DateText.zone(at)))
        .orElseGet(() -> words.text("field.time.second", Math.round(time_s)));
  }
}
