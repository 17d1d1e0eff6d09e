package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ProblemMarksTest {
  private static final Messages COMMAS =
      Messages.in(
          new Translation(
              Locale.GERMANY,
              Translation.Direction.LTR,
              Map.of("suggest.misses-slow-end", "Erreicht {0} m/s statt {1} m/s."),
              Map.of()));

  private static Problem misses(Where where) {
    return Problem.warning("suggest.misses-slow-end", where, "0.05", "0.03");
  }

  @Test
  void theNumbersOfAProblemTakeTheDecimalMarkOfTheLanguage() {
    assertThat(COMMAS.sentence(misses(Where.NOWHERE))).contains("0,05 m/s", "0,03 m/s");
    assertThat(Messages.of(Locale.GERMANY).sentence(misses(Where.NOWHERE))).contains("0.05 m/s");
  }

  @Test
  void whatStandsInALineOfAFileIsQuotedAsItStandsThere() {
    assertThat(COMMAS.sentence(misses(Where.file("runs.csv").atLine(3))))
        .contains("0.05 m/s", "0,03 m/s");
  }
}
