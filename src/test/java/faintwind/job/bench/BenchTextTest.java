package faintwind.job.bench;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Due;
import faintwind.job.bench.BenchRow.InForce;
import faintwind.job.bench.BenchRow.JarLevel;
import faintwind.job.bench.BenchRow.Kind;
import faintwind.job.bench.BenchRow.Need;
import faintwind.job.bench.BenchRow.Range;
import faintwind.message.Messages;
import faintwind.record.ReadingVerdict;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the list says of one instrument. */
class BenchTextTest {
  private static final OffsetDateTime DAY = OffsetDateTime.parse("2026-11-29T10:00Z");
  private final BenchText text = new BenchText(Messages.of(Locale.UK));

  private static BenchRow row(double u95Share) {
    InForce inForce =
        new InForce(
            "calibrations/1.json",
            Optional.of(new Range(0.1, 1, u95Share)),
            new Due(DAY.plusYears(1), Due.Cause.TIME),
            false);
    JarLevel jar =
        new JarLevel("31.2 K", DAY, Optional.of(ReadingVerdict.GOOD), Optional.of(-0.0125));
    Need need = new Need(Kind.IN_USE, "", "", "");
    return new BenchRow(
        Path.of("bench/shelf"),
        "Shelf",
        need,
        Optional.of(inForce),
        Optional.of(jar),
        List.of(),
        2);
  }

  @Test
  void calibrationDriftAndWaiversAreSaidAndTheSpeedsStandInABand() {
    assertThat(text.lines(List.of(row(0.03))))
        .containsExactly(
            "Shelf: In use",
            "  Calibrated from 0.1 to 1 m/s, good: ± 3 % (95 %). To be calibrated again by 29"
                + " November 2027.",
            "  Last jar check: 31.2 K on 29 November 2026, -1.3 % since the first one after the"
                + " calibration, both brought to its air.",
            "  Two waivers are open.",
            "  0.01 m/s ..........##########.......... 10 m/s");
  }

  @ParameterizedTest
  @CsvSource({"0.04, good", "0.041, fair", "0.1, fair", "0.2, rough"})
  void uncertaintyIsSaidInAWordInEveryForm(double u95Share, String word) {
    List<BenchRow> rows = List.of(row(u95Share));
    assertThat(text.lines(rows).get(1)).contains(" m/s, " + word + ": ± ");
    assertThat(text.csv(rows)).contains("u95_pct,u95_word,").contains("," + word + ",2027-11-29,");
    assertThat(text.json(Path.of("bench"), rows)).contains("\"u95_word\" : \"" + word + "\"");
    assertThat(BenchPage.of("bench", rows, Messages.of(Locale.UK))).contains(word + ": ±", "<svg");
  }
}
