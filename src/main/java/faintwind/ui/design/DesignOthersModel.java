package faintwind.ui.design;

import faintwind.job.design.DesignWork;
import faintwind.message.Amount;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.physics.advice.Substitution;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignChange;
import faintwind.ui.part.NumberModel;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
  private Optional<DesignWork.Worked> present = Optional.empty();
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
      Optional<DesignWork.Worked> result,
      List<Problem> problems,
      List<Substitution.Consequence> consequences) {}

  private record Change(String id, String by, List<DesignChange> changes) {}

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
  void begin(DesignWork by, DesignWork.Worked worked) {
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
      case "ball" -> ball.set(DesignWords.figures(1e3 * other.ball().diameter_m().nominal()));
      case "resistor" ->
          resistor.set(DesignWords.figures(other.heater().resistance_ohm().nominal()));
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
    DesignWork.Worked from = present.get();
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
        .ifPresent(mm -> all.add(new Change("ball", DesignWords.figures(mm) + " mm", ball(mm))));
    exact(resistor)
        .filter(ohm -> Math.abs(ohm - now.heater().resistance_ohm().nominal()) > 1e-6)
        .ifPresent(
            ohm -> all.add(new Change("resistor", DesignWords.figures(ohm) + " Ω", ohms(ohm))));
    by.parts()
        .thermocouple(thermocouple.get())
        .filter(t -> !t.label().id().equals(now.sense().type().label().id()))
        .ifPresent(
            t ->
                all.add(
                    new Change(
                        "thermocouple",
                        t.function().letter(),
                        List.of(
                            DesignChange.text("sense", "thermocouple", t.function().letter())))));
    by.parts()
        .wire(leads.get())
        .filter(w -> !w.label().id().equals(now.heater().leads().label().id()))
        .ifPresent(
            w ->
                all.add(
                    new Change(
                        "leads",
                        w.label().name(),
                        List.of(DesignChange.text("heater", "lead_wire", w.label().id())))));
    if (all.size() > 1) {
      all.add(new Change("all", "", all.stream().flatMap(c -> c.changes().stream()).toList()));
    }
    return all;
  }

  private static List<DesignChange> ball(double mm) {
    return List.of(
        DesignChange.number("ball", "diameter_mm", mm),
        DesignChange.without("ball", "diameter_in"),
        DesignChange.without("ball", "reference_bore_depth_mm"));
  }

  private static List<DesignChange> ohms(double ohm) {
    return List.of(
        DesignChange.number("heater", "resistance_ohm", ohm),
        DesignChange.without("heater", "wanted_power_W"));
  }

  private static Optional<Double> exact(NumberModel number) {
    return number.amount().filter(a -> a.bound() == Amount.Bound.EXACT).map(Amount::value);
  }

  private static List<Tried> tryAll(DesignWork by, DesignWork.Worked from, List<Change> changes)
      throws IOException {
    List<Tried> all = new ArrayList<>();
    for (Change change : changes) {
      all.add(
          by.with(from.text(), change.changes())
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
