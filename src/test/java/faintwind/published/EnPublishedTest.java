package faintwind.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.EnScore;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

@DisplayName("Eₙ scores")
class EnPublishedTest {
  @TestFactory
  Stream<DynamicTest> scores() {
    return PublishedRow.tests(
        "en-scores.csv",
        row ->
            EnScore.of(
                    row.number("x"),
                    row.number("U"),
                    row.number("reference"),
                    row.number("U_reference"))
                .value());
  }

  @Test
  @DisplayName("Key comparison at 0.5 m/s: the laboratory at −1.116 fails, those within 1 pass")
  void onlyScoresWithinOneAreSatisfactory() {
    assertThat(EnScore.ofDifference(-0.0311, 0.0492).isSatisfactory()).isTrue();
    assertThat(EnScore.ofDifference(-0.0221, 0.0198).isSatisfactory()).isFalse();
    assertThat(EnScore.ofDifference(0.0131, 0.0178).isSatisfactory()).isTrue();
    assertThat(new EnScore(-1).isSatisfactory()).isTrue();
  }

  @Test
  void exchangingResultAndReferenceOnlyChangesTheSign() {
    assertThat(EnScore.of(1.05, 0.04, 1.02, 0.01).value())
        .isCloseTo(-EnScore.of(1.02, 0.01, 1.05, 0.04).value(), within(1e-15));
  }

  @Test
  void anUncertaintyOfZeroIsRefused() {
    assertThatThrownBy(() -> EnScore.of(1, 0, 1, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("u95 0.0, expected above 0");
  }
}
