package faintwind.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import picocli.CommandLine.TypeConversionException;

class DecimalValueTest {
  @Test
  void decimalCommaCountsAsAPoint() {
    assertThat(new DecimalValue().convert("20,5")).isEqualTo(20.5);
    assertThat(new DecimalValue().convert("20.5")).isEqualTo(20.5);
    assertThat(new DecimalValue().convert("-,5")).isEqualTo(-0.5);
  }

  @Test
  void numberWithBothMarksIsNone() {
    assertThatThrownBy(() -> new DecimalValue().convert("1.020,5"))
        .isInstanceOf(TypeConversionException.class);
  }
}
