package faintwind.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DecimalsTest {
  @Test
  void firstDecimalNumberShowsTheMarkAndTheOtherIsMixed() {
    Decimals decimals = new Decimals();
    assertThat(decimals.number("12")).hasValue(12);
    assertThat(decimals.number("-0,5")).hasValue(-0.5);
    assertThat(decimals.number("1,5e-3")).hasValue(0.0015);
    assertThat(decimals.number("0.5")).isEmpty();
    assertThat(decimals.complaint("0.5")).isEqualTo("cell.mixed-point");
    assertThat(decimals.plain("7,25")).isEqualTo("7.25");
    assertThat(decimals.plain("28.11.2026")).isEqualTo("28.11.2026");
  }

  @Test
  void thousandsMarksMakeNoNumber() {
    Decimals decimals = new Decimals();
    assertThat(decimals.number("1.234,5")).isEmpty();
    assertThat(decimals.complaint("1.234,5")).isEqualTo("cell.not-a-number");
  }
}
