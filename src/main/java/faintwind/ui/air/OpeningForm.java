package faintwind.ui.air;

import faintwind.job.air.OpeningGuide;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.ui.part.NumberModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What an opening is, as a person says it: a box for each key of the points' table. */
public final class OpeningForm {
  private final Map<Field, NumberModel> numbers = new LinkedHashMap<>();
  private final Map<Field, StringProperty> choices = new LinkedHashMap<>();

  OpeningForm(Messages words) {
    for (Field field : OpeningGuide.FIELDS) {
      if (field.words().isEmpty()) {
        NumberModel number = new NumberModel(field.unit(), words);
        number.set(field.usual());
        numbers.put(field, number);
      } else {
        String usual = field.usual().isEmpty() ? field.words().get(0) : field.usual();
        choices.put(field, new SimpleStringProperty(usual));
      }
    }
  }

  /** All that is asked, in its order. */
  List<Field> fields() {
    return OpeningGuide.FIELDS;
  }

  /** The box of a number. */
  public NumberModel number(String key) {
    return Objects.requireNonNull(numbers.get(field(key)), key);
  }

  /** The choice of a word. */
  public StringProperty choice(String key) {
    return Objects.requireNonNull(choices.get(field(key)), key);
  }

  private Field field(String key) {
    return fields().stream().filter(f -> f.key().equals(key)).findFirst().orElseThrow();
  }

  /** Says how thick the balls are, where nothing was said yet. */
  void ball_mm(double diameter_mm) {
    NumberModel ball = number("ball_mm");
    if (ball.typed().get().isBlank()) {
      ball.set(Field.plain(diameter_mm));
    }
  }

  /** Whether it is round, and has no height. */
  boolean isRound() {
    return choice("shape").get().equals("round");
  }

  /** The points of it, or all that is wrong. */
  Checked<OpeningGuide> guide() {
    Map<String, String> said = new LinkedHashMap<>();
    List<Problem> unread = new ArrayList<>();
    choices.forEach((field, word) -> said.put(field.key(), word.get()));
    numbers.forEach(
        (field, box) -> {
          box.judge();
          String text = box.typed().get().strip();
          Optional<Amount> amount = box.amount().filter(a -> a.bound() == Amount.Bound.EXACT);
          if (!text.isEmpty() && amount.isEmpty()) {
            field.trouble(text, Where.NOWHERE).ifPresent(unread::add);
          }
          amount.ifPresent(a -> said.put(field.key(), Field.plain(a.value())));
        });
    if (isRound()) {
      said.remove("height_mm");
    }
    return unread.isEmpty() ? OpeningGuide.of(said) : Checked.refused(unread);
  }
}
