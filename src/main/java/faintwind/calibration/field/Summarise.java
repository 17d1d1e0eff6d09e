package faintwind.calibration.field;

import faintwind.calibration.field.FieldSummary.AboveLimit;
import faintwind.calibration.field.FieldSummary.Cover;
import faintwind.calibration.field.FieldSummary.Hour;
import faintwind.calibration.field.FieldSummary.Percentile;
import faintwind.calibration.field.FieldSummary.Wanted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Works out the figures of a log; a row counts by the time it stands for. */
public final class Summarise {
  /** The percentiles that are told. */
  public static final List<Double> PERCENTS = List.of(5.0, 25.0, 50.0, 75.0, 95.0, 99.0);

  private final SpeedSeries rows;
  private final Wanted wanted;
  private final double used_s;

  private Summarise(SpeedSeries rows, Wanted wanted) {
    this.rows = rows;
    this.wanted = wanted;
    used_s = rows.used_s();
  }

  /** The figures; empty where no row has a speed that means anything. */
  public static Optional<FieldSummary> of(SpeedSeries rows, Wanted wanted) {
    Optional<StretchMean> mean = StretchMean.of(rows, wanted.how());
    return mean.map(m -> new Summarise(rows, wanted).with(m));
  }

  private FieldSummary with(StretchMean mean) {
    return new FieldSummary(
        cover(),
        mean,
        percentiles(),
        wanted.limits_m_s().stream().map(this::above).toList(),
        above(wanted.calm_m_s()),
        hours(),
        Gusts.of(rows));
  }

  private Cover cover() {
    int last = rows.size() - 1;
    double all_s = IntStream.rangeClosed(0, last).mapToDouble(rows::lasts_s).sum();
    return new Cover(
        rows.time_s(0),
        rows.time_s(last) + rows.lasts_s(last),
        used_s,
        all_s - used_s,
        share(rows::isFaint),
        share(rows::isBeyond));
  }

  private double share(IntPredicate which) {
    double sum_s = 0;
    for (int i = 0; i < rows.size(); i++) {
      sum_s += rows.isUsed(i) && which.test(i) ? rows.lasts_s(i) : 0;
    }
    return sum_s / used_s;
  }

  private AboveLimit above(double limit_m_s) {
    return new AboveLimit(
        limit_m_s,
        share(i -> rows.speed_m_s(i) > limit_m_s),
        share(i -> rows.speed_m_s(i) - rows.u95_m_s(i) > limit_m_s),
        share(i -> rows.speed_m_s(i) + rows.u95_m_s(i) > limit_m_s));
  }

  private List<Percentile> percentiles() {
    int[] rising =
        IntStream.range(0, rows.size())
            .filter(rows::isUsed)
            .boxed()
            .sorted(Comparator.comparingDouble(rows::speed_m_s))
            .mapToInt(Integer::intValue)
            .toArray();
    List<Percentile> found = new ArrayList<>();
    double passed_s = 0;
    int at = 0;
    for (double percent : PERCENTS) {
      double until_s = percent / 100 * used_s;
      while (at < rising.length - 1 && passed_s + rows.lasts_s(rising[at]) < until_s) {
        passed_s += rows.lasts_s(rising[at++]);
      }
      found.add(new Percentile(percent, rows.speed_m_s(rising[at]), rows.u95_m_s(rising[at])));
    }
    return found;
  }

  /** Only hours that have rows: a log may have long breaks. */
  private List<Hour> hours() {
    List<Hour> hours = new ArrayList<>();
    double zero_s = wanted.midnight_s();
    int row = 0;
    while (row < rows.size()) {
      double hour = Math.floor((rows.time_s(row) - zero_s) / Hour.LENGTH_S);
      double from_s = zero_s + hour * Hour.LENGTH_S;
      double to_s = from_s + Hour.LENGTH_S;
      int end = Math.max(row + 1, rows.from(to_s));
      double highest_m_s =
          IntStream.range(row, end)
              .filter(rows::isUsed)
              .mapToDouble(rows::speed_m_s)
              .max()
              .orElse(0);
      hours.add(new Hour(from_s, StretchMean.of(rows, from_s, to_s, wanted.how()), highest_m_s));
      row = end;
    }
    return hours;
  }
}
