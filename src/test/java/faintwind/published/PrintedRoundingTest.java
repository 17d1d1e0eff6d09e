package faintwind.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintedRoundingTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"air.csv", "convection.csv", "en-scores.csv", "parts.csv", "thermocouples.csv"})
  void aPublishedValueIsHeldToTheRoundingItWasPrintedWith(String file) {
    assertThat(PublishedRow.widened(file)).isEmpty();
  }
}
