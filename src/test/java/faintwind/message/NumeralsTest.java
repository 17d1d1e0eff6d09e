package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Numbers as people read them. */
class NumeralsTest {
  @Test
  void aValueEndsWhereItsUncertaintyDoes() {
    assertThat(Numerals.beside(12.3, 2, 68.6)).isEqualTo("69");
    assertThat(Numerals.beside(735.4, 2, 8515.2)).isEqualTo("8520");
    assertThat(Numerals.beside(0.0123, 2, 0.24449)).isEqualTo("0.244");
    assertThat(Numerals.beside(0.1, 2, 3)).isEqualTo("3.00");
    assertThat(Numerals.beside(0.1, 2, -0.0004)).isEqualTo("0");
    assertThat(Numerals.beside(0, 2, 68.61)).isEqualTo("68.6");
    assertThat(Numerals.beside(Double.NaN, 2, 68.61)).isEqualTo("68.6");
  }

  /** A comma between thousands is a decimal mark to half of the readers. */
  @Test
  void thousandsInASentenceStandApartByANarrowSpace() {
    Messages words = Messages.of(Locale.ENGLISH);
    assertThat(words.text("design.remark.pressure", 1013L, 50L))
        .isEqualTo("1\u202f013 hPa, 50 % humidity");
    assertThat(words.text("design.remark.pressure", 987L, 50L)).isEqualTo("987 hPa, 50 % humidity");
  }

  @Test
  void thousandsWithinAPluralStandApartToo() {
    Messages words = Messages.of(Locale.ENGLISH);
    assertThat(words.text("plot.summary.lane", "gap", 1234))
        .isEqualTo("gap: 1\u202f234 stretches.");
    assertThat(words.text("summary.rebuilt", 2000))
        .contains("by 2\u202f000 lines")
        .doesNotContain(",");
    assertThat(words.text("summary.rebuilt", 1)).contains("by 1 line ");
  }

  /** What a problem found comes as words: they, too, choose the plural. */
  @Test
  void aPluralGoesByTheNumberThatAProblemFound() {
    Messages words = Messages.of(Locale.ENGLISH);
    for (String many : List.of("2", "2000")) {
      assertThat(words.sentence(Problem.warning("summary.rebuilt", Where.NOWHERE, many)))
          .contains("lines and was made again");
    }
    assertThat(words.sentence(Problem.warning("summary.rebuilt", Where.NOWHERE, "1")))
        .contains("by 1 line and was made again");
  }
}
