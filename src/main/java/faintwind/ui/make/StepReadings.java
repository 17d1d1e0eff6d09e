package faintwind.ui.make;

import faintwind.message.Messages;
import faintwind.ui.part.NumberModel;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** The boxes of a step: what is typed goes to the journal once it is a number. */
final class StepReadings {
  private final StepModel model;
  private final Messages words;
  private final Map<String, NumberModel> numbers = new HashMap<>();
  private final Set<String> correcting = new HashSet<>();

  StepReadings(StepModel model, Messages words) {
    this.model = model;
    this.words = words;
  }

  /** Forgets the boxes of the step before. */
  void begin() {
    numbers.clear();
    correcting.clear();
  }

  /** A box for a reading, with the entry that counts in it. */
  NumberModel add(StepView.ReadingLine line) {
    NumberModel number = new NumberModel(line.unit(), words);
    if (model.isOpenAbove(line.id())) {
      number.askingForTheUnit();
    }
    number.setKept(line.answer().typed());
    numbers.put(line.id(), number);
    number.judged().addListener((property, was, now) -> judged(line.id(), now));
    return number;
  }

  /** The next entry of that reading strikes the one that counts. */
  void beginCorrection(String reading) {
    correcting.add(reading);
    Objects.requireNonNull(numbers.get(reading)).remark().set(words.text("window.step.correcting"));
  }

  /** Follows the journal where the box holds what was kept before. */
  void show(StepView.ReadingLine line) {
    NumberModel number = Objects.requireNonNull(numbers.get(line.id()));
    if (number.typed().get().isEmpty() && line.answer().isGiven()) {
      number.setKept(line.answer().typed());
    }
  }

  /** When the entry was kept; empty while the box holds something else. */
  String keptWords(StepView.ReadingLine line) {
    NumberModel number = Objects.requireNonNull(numbers.get(line.id()));
    boolean same = line.answer().typed().equals(number.judged().get().typed());
    return same ? line.answer().kept() : "";
  }

  private void judged(String reading, NumberModel.Judged now) {
    boolean corrects = correcting.contains(reading);
    if (corrects && (now.amount().isPresent() || now.typed().isEmpty())) {
      correcting.remove(reading);
      Objects.requireNonNull(numbers.get(reading)).remark().set("");
      String why = words.text("window.step.typed-wrongly");
      model.correctReading(reading, now.typed(), why);
    } else if (now.amount().isPresent()) {
      model.enterReading(reading, now.typed());
    }
  }
}
