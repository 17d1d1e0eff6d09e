package faintwind.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.accuracy.ScoredLog.Hold;
import faintwind.accuracy.ScoredLog.Row;
import faintwind.calibration.Calibration;
import faintwind.calibration.field.FieldSummary;
import faintwind.calibration.field.SharedPart;
import faintwind.calibration.field.SpeedSeries;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.field.Summarise;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.calibration.speed.UsualAverage;
import faintwind.calibration.survey.Settling;
import faintwind.calibration.survey.Stay;
import faintwind.calibration.survey.Visit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Figures of whole logs and of stays at places on the sample runs, against the true speeds of their
 * independent simulation.
 */
@Tag("slow")
class AirFiguresTest {
  private static final List<String> BENCHES =
      List.of("a", "b", "c", "d", "e", "f", "g", "h", "i", "j");
  private static final double BEYOND = 3.0001;

  @TempDir Path scratch;

  private final List<String> missed = new ArrayList<>();
  private int stays;
  private int means;

  /** Of about 95 in a hundred the truth lies within the stated uncertainty. */
  @Test
  void truthLiesWithinTheStatedUncertainty() throws IOException {
    for (String letter : BENCHES) {
      SampleBench bench = SampleBench.calibrated(letter, scratch);
      SpeedSettings usual = SpeedSettings.usual(bench.calibration());
      for (String log : letter.equals("g") ? List.<String>of() : List.of("gusts", "steps")) {
        mean(letter + " " + log, bench.calibration(), bench.log(log, usual));
      }
      visits(letter, bench.calibration(), bench.log("probe", usual));
    }
    assertThat(means).isEqualTo(18);
    assertThat(stays).isGreaterThan(30);
    assertThat(missed).hasSizeLessThanOrEqualTo((means + stays) / 10);
    assertThat(missed).noneMatch(name -> name.contains("log"));
  }

  private void mean(String name, Calibration by, ScoredLog log) {
    SpeedSeries rows = series(log);
    FieldSummary.Wanted wanted =
        new FieldSummary.Wanted(List.of(), 0.05, 0, how(by, StretchMean.Of.THIS_TIME));
    FieldSummary found = Summarise.of(rows, wanted).orElseThrow();
    double truth =
        log.rows().stream()
            .filter(r -> !r.flag().contains("warmup") && !r.flag().contains("power"))
            .mapToDouble(Row::truth_m_s)
            .average()
            .orElseThrow();
    means++;
    note("log " + name, truth, found.mean());
  }

  private void visits(String name, Calibration by, ScoredLog log) {
    Stay stay = new Stay(series(log), Settling.of(by), how(by, StretchMean.Of.THE_PLACE));
    for (Hold hold : log.holds()) {
      double from_s = hold.rows().get(0).time_s();
      double to_s = hold.rows().get(hold.rows().size() - 1).time_s();
      Visit visit = stay.at(name, from_s, to_s);
      if (hold.truth_m_s() < BEYOND && visit.speed().isPresent()) {
        stays++;
        note("stay " + name + " " + hold.truth_m_s(), hold.truth_m_s(), visit.speed().get());
      }
    }
  }

  private void note(String name, double truth_m_s, StretchMean mean) {
    if (Math.abs(mean.speed_m_s() - truth_m_s) > mean.u95_m_s()) {
      missed.add(
          String.format(
              Locale.ROOT, "%s (%.4f ± %.4f)", name, mean.speed_m_s() - truth_m_s, mean.u95_m_s()));
    }
  }

  private static StretchMean.How how(Calibration by, StretchMean.Of of) {
    return new StretchMean.How(2 * UsualAverage.of(by), SharedPart.of(by), of);
  }

  private static SpeedSeries series(ScoredLog log) {
    SpeedSeries.Builder rows = new SpeedSeries.Builder();
    for (Row row : log.rows()) {
      EnumSet<SpeedFlag> flags = EnumSet.noneOf(SpeedFlag.class);
      for (SpeedFlag flag : SpeedFlag.values()) {
        if (List.of(row.flag().split("\\+")).contains(flag.word())) {
          flags.add(flag);
        }
      }
      rows.add(
          row.time_s(),
          new SpeedRow(
              OptionalDouble.of(row.speed_m_s()), OptionalDouble.of(row.u95_m_s()), flags));
    }
    return rows.build();
  }
}
