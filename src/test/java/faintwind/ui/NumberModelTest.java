package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.ui.part.NumberModel;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a field understands, without a window. */
class NumberModelTest {
  private final Messages words = Messages.of(Locale.ENGLISH);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1/2 | mm | 12.7 | 12.70",
        "0,25 | W | 0.25 | 0.25",
        "4k7 | Ω | 4700 | 4\u202f700",
        "100,3 | Ω | 100.3 | 100.3",
      })
  void peoplesNumbersAreUnderstoodAndShown(
      String typed, String unit, double value, String understood) {
    NumberModel model = new NumberModel(unit, words);
    model.set(typed);
    assertThat(model.amount().orElseThrow().value()).isEqualTo(value);
    assertThat(model.judged().get().understood()).contains(understood);
    assertThat(model.typed().get()).as("what was typed stays").isEqualTo(typed);
  }

  @Test
  void nothingIsJudgedBeforeTheFieldIsLeft() {
    NumberModel model = new NumberModel("Ω", words);
    model.typed().set("4o2");
    assertThat(model.judged().get().isRefused()).isFalse();
    model.judge();
    assertThat(model.judged().get().isRefused()).isTrue();
    assertThat(model.judged().get().understood()).contains("is not a number").contains("402");
  }

  @Test
  void whatCouldBeTwoNumbersOffersBoth() {
    NumberModel model = new NumberModel("Ω", words);
    model.set("1,200");
    assertThat(model.amount()).isEmpty();
    assertThat(model.judged().get().choices()).hasSize(2);
    model.set(model.judged().get().choices().get(0));
    assertThat(model.amount()).isPresent();
  }

  /** A short circuit of 27 ohms is no good insulation. */
  @Test
  void aBareNumberWhereMegohmsAreAskedForIsNotGuessed() {
    NumberModel model = new NumberModel("MΩ", words).askingForTheUnit();
    model.set("27");
    assertThat(model.amount()).isEmpty();
    assertThat(model.judged().get().understood()).startsWith("27 MΩ or 27 Ω?");
    assertThat(model.judged().get().choices()).containsExactly("27 MΩ", "27 Ω");
    model.set("27 Ω");
    assertThat(model.amount().orElseThrow().value()).isEqualTo(27e-6);
    assertThat(model.judged().get().understood()).isEqualTo("27\u00a0Ω");
    for (String sure : List.of("27M", "> 20 M", "OL", "OL 20M", "0", "27 MΩ")) {
      model.set(sure);
      assertThat(model.amount()).as(sure).isPresent();
    }
    NumberModel ohms = new NumberModel("Ω", words).askingForTheUnit();
    ohms.set("27");
    assertThat(ohms.amount()).isPresent();
  }

  @Test
  void wrongDimensionIsRefusedWithAHint() {
    NumberModel model = new NumberModel("Ω", words);
    model.set("5 V");
    assertThat(model.amount()).isEmpty();
    assertThat(model.judged().get().understood()).contains("Expected");
  }
}
