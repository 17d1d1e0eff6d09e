package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {
  private static final Messages ENGLISH = Messages.of(Locale.ENGLISH);

  @ParameterizedTest(name = "{0} in {1}")
  @CsvFileSource(
      resources = "number-text.csv",
      delimiter = '|',
      quoteCharacter = '\0',
      emptyValue = "",
      nullValues = "\0")
  void typedTextIsUnderstood(
      String typed, String unit, double value, Amount.Bound bound, String tolerance, String words) {
    Amount amount =
        NumberText.read(typed, unit == null ? "" : unit)
            .fold(
                (a, notes) -> a,
                problems -> {
                  throw new AssertionError(problems.toString());
                });
    if (Double.isInfinite(value)) {
      assertThat(amount.value()).isEqualTo(value);
    } else {
      assertThat(amount.value()).isCloseTo(value, within(Math.abs(value) * 1e-11));
    }
    assertThat(amount.bound()).isEqualTo(bound);
    if (tolerance == null || tolerance.isEmpty()) {
      assertThat(amount.tolerance()).isEmpty();
    } else {
      assertThat(amount.tolerance().orElseThrow())
          .isCloseTo(Double.parseDouble(tolerance), within(1e-11));
    }
    assertThat(plainSpaces(AmountText.understood(amount, ENGLISH))).isEqualTo(words);
  }

  @ParameterizedTest(name = "{0} in {1}")
  @CsvFileSource(
      resources = "number-text-refused.csv",
      delimiter = '|',
      quoteCharacter = '\0',
      emptyValue = "",
      nullValues = "\0")
  void otherTextIsRefusedWithWhatWasExpected(
      String typed, String unit, String problem, String words) {
    Checked<Amount> read = NumberText.read(typed == null ? "" : typed, unit);
    assertThat(read.isOk()).isFalse();
    assertThat(read.problems()).hasSize(1);
    assertThat(read.problems().get(0).id()).isEqualTo(problem);
    assertThat(plainSpaces(ENGLISH.sentence(read.problems().get(0)))).isEqualTo(words);
  }

  @Test
  void unknownUnitOfTheQuestionIsABrokenPromise() {
    assertThatThrownBy(() -> NumberText.read("5", "furlong"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("furlong");
  }

  @ParameterizedTest
  @ValueSource(strings = {"mm", "µm", "kΩ", "MΩ", "mV", "mg", "hPa", "cm/s", "cm²", "mAh", "mK"})
  void convertingThereAndBackGivesTheSame(String unit) {
    String base = UnitSymbols.find(unit).orElseThrow().kind().baseSymbol();
    for (double value : new double[] {1, 0.37, 12345.6}) {
      double back = NumberText.convert(NumberText.convert(value, unit, base), base, unit);
      assertThat(back).isCloseTo(value, within(value * 1e-10));
    }
  }

  @Test
  void decimalCommaIsWrittenWhereTheLocaleHasIt() {
    assertThat(plainSpaces(AmountText.quantity(1234.5, "Ω", 6, Locale.GERMANY)))
        .isEqualTo("1 234,5 Ω");
  }

  private static String plainSpaces(String text) {
    return text.replace('\u202f', ' ').replace('\u00a0', ' ');
  }
}
