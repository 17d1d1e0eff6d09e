package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Checked;
import faintwind.message.Where;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConditionTest {
  private static final Map<String, Double> VALUES =
      Map.of("value", 5.0, "heater_ohm", 100.0, "still_delta_K", 30.0);

  private static Condition parsed(String text) {
    Checked<Condition> checked = Condition.parse(text, Where.NOWHERE);
    assertThat(checked.isOk()).as(checked.problems().toString()).isTrue();
    return ((Checked.Ok<Condition>) checked).value();
  }

  @ParameterizedTest
  @CsvSource({
    "value >= 5, true",
    "value > 5, false",
    "value >= 0.04 * heater_ohm && value <= 0.06 * heater_ohm, true",
    "value < 1 || still_delta_K / 3 == 10, REFUSED",
    "value < 1 || still_delta_K / 3 >= 10, true",
    "!(value < 1), true",
    "-value <= -5, true",
    "(value + 1) * 2 - 2 >= 10, true"
  })
  void comparisonAndArithmeticGiveYesOrNo(String text, String expected) {
    if (expected.equals("REFUSED")) {
      assertThat(Condition.parse(text, Where.NOWHERE).isOk()).isFalse();
    } else {
      assertThat(parsed(text).holds(VALUES)).contains(Boolean.valueOf(expected));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "value = 5",
        "value := 5",
        "SQRT(value) > 2",
        "MAX(value, 1) > 2",
        "RANDOM() < 2",
        "IF(value > 1, 1, 2)",
        "DT_NOW() > 1",
        "value[0] > 1",
        "value.length > 1",
        "\"text\" == value",
        "'text' == value",
        "2 value > 1",
        "value ^ 2 > 1",
        "value % 2 > 1",
        "value >",
        "",
        "(value > 1"
      })
  void everythingElseIsRefused(String text) {
    Checked<Condition> checked = Condition.parse(text, Where.file("x.json"));
    assertThat(checked.isOk()).as(text).isFalse();
    assertThat(checked.problems().get(0).id()).isEqualTo("condition.not-understood");
  }

  @Test
  void namesKeepTheirSpelling() {
    assertThat(parsed("value < still_delta_K + reading_loop").names())
        .containsExactlyInAnyOrder("value", "still_delta_K", "reading_loop");
  }

  @ParameterizedTest
  @ValueSource(strings = {"pi > 3", "e > 2", "true", "null > 1", "unknown > 1"})
  void aNameWithoutAValueGivesNoAnswer(String text) {
    Checked<Condition> checked = Condition.parse(text, Where.NOWHERE);
    if (checked instanceof Checked.Ok<Condition> ok) {
      assertThat(ok.value().holds(VALUES)).isEmpty();
    }
  }

  @Test
  void divisionByZeroGivesNoAnswer() {
    assertThat(parsed("value / 0 > 1").holds(VALUES)).isEmpty();
    assertThat(parsed("value / 0").number(VALUES)).isEmpty();
  }

  @Test
  void aNumberIsNoAnswerToAYesOrNo() {
    assertThat(parsed("value + 1").holds(VALUES)).isEmpty();
    assertThat(parsed("value + 1").number(VALUES)).hasValue(6);
    assertThat(parsed("value > 1").number(VALUES)).isEmpty();
  }
}
