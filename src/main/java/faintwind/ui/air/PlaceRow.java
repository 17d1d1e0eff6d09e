package faintwind.ui.air;

import faintwind.calibration.field.StretchMean;
import faintwind.job.air.Reading;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.ui.part.NumberModel;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One place as a person fills it in: what was read there, or when the instrument was there. */
public final class PlaceRow {
  private static final int MM_S = 4;

  private final StringProperty name;
  private final NumberModel speed;
  private final NumberModel u95;
  private final NumberModel from;
  private final NumberModel to;

  PlaceRow(String name, Messages words) {
    this.name = new SimpleStringProperty(name);
    speed = new NumberModel("m/s", words);
    u95 = new NumberModel("m/s", words);
    from = new NumberModel("s", words);
    to = new NumberModel("s", words);
  }

  public StringProperty name() {
    return name;
  }

  public NumberModel speed() {
    return speed;
  }

  public NumberModel u95() {
    return u95;
  }

  public NumberModel from() {
    return from;
  }

  public NumberModel to() {
    return to;
  }

  /** The boxes that count. */
  List<NumberModel> numbers(boolean byLog) {
    return byLog ? List.of(from, to) : List.of(speed, u95);
  }

  /** Does this whenever what was understood changes. */
  void whenChanged(Runnable then) {
    name.addListener((property, was, now) -> then.run());
    for (NumberModel number : List.of(speed, u95, from, to)) {
      number.judged().addListener((property, was, now) -> then.run());
    }
  }

  /** Puts a speed that was found into the boxes. */
  void take(StretchMean mean) {
    speed.set(Numerals.places(mean.speed_m_s(), MM_S));
    u95.set(Numerals.places(mean.u95_m_s(), MM_S));
  }

  /** All that is in the boxes. */
  List<String> typed() {
    return Stream.of(speed, u95, from, to).map(number -> number.typed().get().strip()).toList();
  }

  /** Empties the boxes; the name stays. */
  void clear() {
    List.of(speed, u95, from, to).forEach(number -> number.set(""));
  }

  /** Whether both numbers are there. */
  boolean isFilled(boolean byLog) {
    return numbers(byLog).stream().allMatch(number -> number(number).isPresent());
  }

  /** What was read; empty while a number is missing, or not understood. */
  Optional<Checked<Reading>> reading(boolean byLog) {
    if (!isFilled(byLog)) {
      return Optional.empty();
    }
    String place = name.get().strip();
    if (place.isEmpty()) {
      return Optional.of(Checked.refused(Problem.error("air.no-name", Where.NOWHERE, "")));
    }
    List<Double> two = numbers(byLog).stream().flatMap(n -> number(n).stream()).toList();
    return Optional.of(
        byLog
            ? Reading.stayed(place, two.get(0), two.get(1), "")
            : Reading.typed(place, two.get(0), two.get(1), ""));
  }

  private static Optional<Double> number(NumberModel model) {
    return model.amount().filter(a -> a.bound() == Amount.Bound.EXACT).map(Amount::value);
  }
}
