package faintwind.ui.design;

import faintwind.job.design.DesignWork;
import faintwind.job.design.Sized;
import faintwind.message.Amount;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.physics.advice.Substitution;
import faintwind.physics.choice.DesignField;
import faintwind.physics.design.Design;
import faintwind.physics.part.Wire;
import faintwind.ui.part.NumberModel;
import faintwind.ui.work.Background;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Parts that a person has instead of those of the design, and what each would change. */
public final class DesignOthersModel {
  private final Background background;
  private final NumberModel ball;
  private final NumberModel resistor;
  private final StringProperty thermocouple = new SimpleStringProperty("");
  private final StringProperty leads = new SimpleStringProperty("");
  private final ReadOnlyObjectWrapper<List<Tried>> tried = new ReadOnlyObjectWrapper<>(List.of());
  private Optional<DesignWork> work = Optional.empty();
  private Optional<Sized> present = Optional.empty();
  private boolean filling;
  private long asked;

  /**
   * One other part, or all of them together.
   *
   * @param id {@code ball}, {@code resistor}, {@code thermocouple}, {@code leads} or {@code all}
   * @param by what takes the part's place, as it is called; empty for all
   * @param result the changed design; refused where the part does not go
   * @param consequences what changes by more than a hundredth
   */
  public record Tried(
      String id,
      String by,
      Optional<Sized> result,
      List<Problem> problems,
      List<Substitution.Consequence> consequences) {}

  private record Change(String id, String by, Map<DesignField, String> changes) {}

  DesignOthersModel(Messages words, Background background) {
    this.background = background;
    ball = new NumberModel("mm", words);
    resistor = new NumberModel("Ω", words);
    ball.judged().addListener((property, was, now) -> ask());
    resistor.judged().addListener((property, was, now) -> ask());
    thermocouple.addListener((property, was, now) -> ask());
    leads.addListener((property, was, now) -> ask());
  }

  public NumberModel ball() {
    return ball;
  }

  public NumberModel resistor() {
    return resistor;
  }

  /** Id of the thermocouple type. */
  public StringProperty thermocouple() {
    return thermocouple;
  }

  /** Id of the heater's lead wire. */
  public StringProperty leads() {
    return leads;
  }

  public ReadOnlyObjectProperty<List<Tried>> tried() {
    return tried.getReadOnlyProperty();
  }

  /** Begins with the usual substitutions for a design; keeps what was typed after that. */
  void begin(DesignWork by, Sized worked) {
    boolean first = present.isEmpty();
    work = Optional.of(by);
    present = Optional.of(worked);
    if (first) {
      filling = true;
      for (Substitution s : Substitution.of(worked.design(), by.parts())) {
        fill(s);
      }
      filling = false;
    }
    ask();
  }

  private void fill(Substitution s) {
    Design other = s.design();
    switch (s.id()) {
      case "ball" -> ball.set(Numerals.digits(1e3 * other.ball().diameter_m().nominal()));
      case "resistor" -> resistor.set(Numerals.digits(other.heater().resistance_ohm().nominal()));
      case "thermocouple" -> thermocouple.set(other.sense().type().label().id());
      case "leads" -> leads.set(other.heater().leads().label().id());
      default -> throw new IllegalArgumentException("substitution " + s.id());
    }
  }

  private void ask() {
    if (filling || work.isEmpty() || present.isEmpty()) {
      return;
    }
    long turn = ++asked;
    DesignWork by = work.get();
    Sized from = present.get();
    List<Change> changes = changes(by, from.design());
    background.entry(
        watch -> tryAll(by, from, changes),
        found -> {
          if (turn == asked) {
            tried.set(found);
          }
        },
        world -> {}); // nothing is read or written
  }

  private List<Change> changes(DesignWork by, Design now) {
    List<Change> all = new ArrayList<>();
    exact(ball)
        .filter(mm -> Math.abs(mm - 1e3 * now.ball().diameter_m().nominal()) > 1e-6)
        .ifPresent(
            mm ->
                all.add(
                    change("ball", Numerals.digits(mm) + " mm", DesignField.DIAMETER, plain(mm))));
    exact(resistor)
        .filter(ohm -> Math.abs(ohm - now.heater().resistance_ohm().nominal()) > 1e-6)
        .ifPresent(
            r ->
                all.add(
                    change(
                        "resistor", Numerals.digits(r) + " Ω", DesignField.RESISTANCE, plain(r))));
    by.parts()
        .thermocouple(thermocouple.get())
        .map(t -> t.function().letter())
        .filter(letter -> !letter.equals(DesignField.THERMOCOUPLE.of(now)))
        .ifPresent(t -> all.add(change("thermocouple", t, DesignField.THERMOCOUPLE, t)));
    by.parts()
        .wire(leads.get())
        .map(Wire::label)
        .filter(w -> !w.id().equals(DesignField.LEAD.of(now)))
        .ifPresent(w -> all.add(change("leads", w.name(), DesignField.LEAD, w.id())));
    if (all.size() > 1) {
      Map<DesignField, String> together = new LinkedHashMap<>();
      all.forEach(c -> together.putAll(c.changes()));
      all.add(new Change("all", "", together));
    }
    return all;
  }

  private static Change change(String id, String by, DesignField field, String text) {
    return new Change(id, by, Map.of(field, text));
  }

  private static String plain(double value) {
    return Field.plain(value);
  }

  private static Optional<Double> exact(NumberModel number) {
    return DesignChoices.exact(number).map(Amount::value);
  }

  private static List<Tried> tryAll(DesignWork by, Sized from, List<Change> changes) {
    List<Tried> all = new ArrayList<>();
    for (Change change : changes) {
      all.add(
          by.with(from, change.changes())
              .fold(
                  (worked, notes) ->
                      new Tried(
                          change.id(),
                          change.by(),
                          Optional.of(worked),
                          List.of(),
                          Substitution.consequences(from.sheet(), worked.sheet())),
                  problems ->
                      new Tried(change.id(), change.by(), Optional.empty(), problems, List.of())));
    }
    return all;
  }
}
