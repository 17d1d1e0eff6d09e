package faintwind.ui.make;

import faintwind.message.AmountText;
import faintwind.message.Messages;
import faintwind.message.NumberText;
import faintwind.physics.AirState;
import faintwind.physics.design.Design;
import faintwind.physics.plating.Deposit;
import faintwind.physics.plating.Hydrogen;
import faintwind.physics.plating.PlatingBath;
import faintwind.physics.plating.PlatingPlan;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Note;
import faintwind.ui.part.NumberModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** The plating calculator: what is typed, and what follows from it at once. Nothing is kept. */
public final class PlatingModel {
  private static final int DIGITS = 3;
  private static final double THINNEST_NICKEL_M = 1.3e-6; // under gold: ISO 27874, from memory
  private static final double THINNEST_GOLD_M = 0.25e-6; // smallest class of ASTM B488-11

  private final Messages words;
  private final AirState air;
  private final PlatingPlan plan;
  private final ObjectProperty<Deposit> deposit = new SimpleObjectProperty<>(Deposit.NICKEL);
  private final Field area;
  private final Field thickness;
  private final Field density;
  private final Field efficiency;
  private final Field time;
  private final Field room;
  private final ReadOnlyObjectWrapper<List<Outcome>> outcomes =
      new ReadOnlyObjectWrapper<>(List.of());

  /**
   * A number to be typed.
   *
   * @param id stable id
   * @param number what is typed, and what was understood
   * @param low least that is of use, in the field's unit
   * @param high most
   */
  public record Field(String id, NumberModel number, double low, double high) {}

  /**
   * A result.
   *
   * @param id stable id
   * @param what its name
   * @param value with its unit
   * @param mark of the verdict; ready where there is none
   * @param said the verdict in words; may be empty
   * @param why equation with these numbers, and source
   */
  public record Outcome(String id, String what, String value, Mark mark, String said, Note why) {}

  /** A calculator that begins with one ball of a design. */
  public PlatingModel(Messages words, Design design) {
    this.words = words;
    plan = design.ball().plating().orElse(PlatingPlan.USUAL);
    air = design.air();
    double d = design.ball().diameter_m().nominal();
    area = field("area", "cm²", 0.01, 10_000, 1e4 * Math.PI * d * d);
    thickness = field("thickness", "µm", 0.01, 100, 5);
    density = field("density", "A/dm²", 0.01, 20, 1);
    efficiency = field("efficiency", "%", 1, 100, 95);
    time = field("time", "min", 0.1, 1440, 10);
    room = field("room", "m³", 0.1, 10_000, plan.room_m3());
    fields().forEach(field -> field.number().judged().addListener((property, was, now) -> work()));
    deposit.addListener((property, was, now) -> takeUsual(now));
    takeUsual(Deposit.NICKEL);
  }

  private Field field(String id, String unit, double low, double high, double start) {
    NumberModel number = new NumberModel(unit, words);
    number.set(AmountText.number(start, DIGITS, Locale.ROOT).replace("\u202f", ""));
    return new Field(id, number, low, high);
  }

  /** Metal of the layer. */
  public ObjectProperty<Deposit> deposit() {
    return deposit;
  }

  /** Everything that can be typed, in order. */
  public List<Field> fields() {
    return List.of(area, thickness, density, efficiency, time, room);
  }

  /** What follows; empty while something typed cannot be used. */
  public ReadOnlyObjectProperty<List<Outcome>> outcomes() {
    return outcomes.getReadOnlyProperty();
  }

  /** Begins with the layer of the plan that the metal belongs to. */
  private void takeUsual(Deposit metal) {
    boolean gold = metal == Deposit.GOLD || metal == Deposit.GOLD_III;
    PlatingPlan.Layer layer = gold ? plan.gold() : plan.nickel();
    if (layer.thickness_m() > 0) {
      thickness.number().set(AmountText.number(1e6 * layer.thickness_m(), DIGITS, Locale.ROOT));
      density.number().set(AmountText.number(layer.current_A_m2() / 100, DIGITS, Locale.ROOT));
    }
    work();
  }

  private OptionalDouble typed(Field field, String unit) {
    OptionalDouble value =
        field
            .number()
            .amount()
            .map(a -> OptionalDouble.of(a.value()))
            .orElse(OptionalDouble.empty());
    boolean usable =
        value.isPresent()
            && value.getAsDouble() >= field.low()
            && value.getAsDouble() <= field.high();
    String range =
        words.text(
            "window.plating.range",
            AmountText.number(field.low(), DIGITS, words.locale()),
            AmountText.quantity(field.high(), field.number().unit(), DIGITS, words.locale()));
    field.number().remark().set(value.isEmpty() || usable ? "" : range);
    return usable
        ? OptionalDouble.of(NumberText.convert(value.getAsDouble(), field.number().unit(), unit))
        : OptionalDouble.empty();
  }

  private void work() {
    OptionalDouble area_m2 = typed(area, "m²");
    OptionalDouble thickness_m = typed(thickness, "m");
    OptionalDouble density_A_m2 = typed(density, "A/m²");
    OptionalDouble efficiency_pct = typed(efficiency, "%");
    OptionalDouble time_s = typed(time, "s");
    OptionalDouble room_m3 = typed(room, "m³");
    if (area_m2.isEmpty()
        || thickness_m.isEmpty()
        || density_A_m2.isEmpty()
        || efficiency_pct.isEmpty()
        || time_s.isEmpty()
        || room_m3.isEmpty()) {
      outcomes.set(List.of());
      return;
    }
    PlatingBath bath =
        new PlatingBath(
            deposit.get(),
            area_m2.getAsDouble(),
            density_A_m2.getAsDouble(),
            efficiency_pct.getAsDouble() / 100);
    List<Outcome> all = new ArrayList<>(layer(bath, thickness_m.getAsDouble()));
    all.add(thickness(bath, time_s.getAsDouble()));
    all.add(hydrogen(bath.charge_C(thickness_m.getAsDouble()), room_m3.getAsDouble()));
    outcomes.set(List.copyOf(all));
  }

  private List<Outcome> layer(PlatingBath bath, double thickness_m) {
    double charge_C = bath.charge_C(thickness_m);
    double time_s = bath.time_s(thickness_m);
    return List.of(
        plain(
            "current",
            figure(1e3 * bath.current_A(), "mA"),
            "I = i·A = "
                + figure(bath.current_A_m2() / 100, "A/dm²")
                + " · "
                + figure(1e4 * bath.area_m2(), "cm²")),
        plain(
            "charge",
            figure(charge_C, "C"),
            "Q = t·ρ·A·n·F/(η·M), t = " + figure(1e6 * thickness_m, "µm")),
        judged(
            "time-needed",
            figure(time_s / 60, "min"),
            tooThin(thickness_m),
            "Q/I = " + figure(charge_C, "C") + " / " + figure(1e3 * bath.current_A(), "mA")),
        plain("mass", figure(1e6 * bath.mass_kg(thickness_m), "mg"), "m = η·Q·M/(n·F)"));
  }

  private Outcome thickness(PlatingBath bath, double time_s) {
    return plain(
        "thickness-reached",
        figure(1e6 * bath.thickness_m(time_s), "µm"),
        "t = η·I·time·M/(n·F·ρ·A), time = " + figure(time_s / 60, "min"));
  }

  /** At the worst all the charge makes hydrogen, and both balls are done in one go. */
  private Outcome hydrogen(double charge_C, double room_m3) {
    double volume_m3 = Hydrogen.volume_m3(2 * charge_C, 0, air.temperature_K(), air.pressure_Pa());
    double ofLimit = volume_m3 / room_m3 / Hydrogen.FLAMMABLE_SHARE;
    boolean fine = ofLimit <= Hydrogen.ALARM_OF_LIMIT;
    String said = words.text(fine ? "window.plating.room-fine" : "window.plating.room-stop");
    return new Outcome(
        "hydrogen",
        words.text("window.plating.hydrogen"),
        words.text(
            "window.plating.hydrogen-is",
            figure(1e6 * volume_m3, "mL"),
            figure(100 * ofLimit, "%"),
            figure(room_m3, "m³")),
        fine ? Mark.DONE : Mark.BLOCKED,
        said,
        note("hydrogen", "V = 2·Q/(2·F)·R·T/p, V/room/4 % = " + figure(100 * ofLimit, "%")));
  }

  private String tooThin(double thickness_m) {
    return switch (deposit.get()) {
      case NICKEL ->
          thickness_m < THINNEST_NICKEL_M ? words.text("window.plating.thin-nickel") : "";
      case GOLD, GOLD_III ->
          thickness_m < THINNEST_GOLD_M ? words.text("window.plating.thin-gold") : "";
      case COPPER -> "";
    };
  }

  private Outcome plain(String id, String value, String equation) {
    return judged(id, value, "", equation);
  }

  private Outcome judged(String id, String value, String doubt, String equation) {
    return new Outcome(
        id,
        words.text("window.plating." + id),
        value,
        doubt.isEmpty() ? Mark.READY : Mark.ATTENTION,
        doubt,
        note(id, equation));
  }

  private Note note(String id, String equation) {
    return new Note(
        words.text("window.plating." + id),
        words.text("window.plating." + id + ".why"),
        List.of(equation),
        "",
        words.text("window.plating." + id + ".source"));
  }

  private String figure(double value, String unit) {
    return AmountText.quantity(value, unit, DIGITS, words.locale());
  }
}
