package faintwind.physics.advice;

import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.ESeries;
import faintwind.physics.part.Wire;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A part replaced by the nearest one that is easier to get, with what it changes.
 *
 * @param id what is replaced; words under {@code substitution.}
 * @param by what replaces it, as it is called
 * @param design the design with the other part
 * @param consequences what changes by more than a hundredth
 */
public record Substitution(String id, String by, Design design, List<Consequence> consequences) {
  private static final List<OutcomeId> TOLD =
      List.of(
          OutcomeId.HEATER_POWER,
          OutcomeId.STILL_DELTA,
          OutcomeId.DELTA_AT_1,
          OutcomeId.TIME_CONSTANT_AT_3,
          OutcomeId.SENSITIVITY,
          OutcomeId.SIGNAL_STILL,
          OutcomeId.SMALLEST_SPEED,
          OutcomeId.RESOLUTION_AT_1,
          OutcomeId.LEAD_LOSS_SHARE,
          OutcomeId.HEATED_BALL_TEMPERATURE,
          OutcomeId.BORE_CLEARANCE,
          OutcomeId.HEATED_BALL_MASS);
  private static final double WORTH_TELLING = 0.01;

  public Substitution {
    consequences = List.copyOf(consequences);
  }

  /**
   * One quantity before and after.
   *
   * @param before with the part of the design
   * @param after with the other part; its verdict may be another
   */
  public record Consequence(Outcome before, Outcome after) {
    /** Change of the nominal as a share of it. */
    public double share() {
      return after.value().nominal() / before.value().nominal() - 1;
    }
  }

  /**
   * Usual substitutions for a design: the ball in the other measure, the next resistor up, another
   * thermocouple type, leads one step thicker.
   */
  public static List<Substitution> of(Design design, Catalogue catalogue) {
    DesignSheet before = DesignSheet.of(design);
    List<Substitution> all = new ArrayList<>();
    double d = design.ball().diameter_m().nominal();
    double metric = Math.floor(1e3 * d) * 1e-3;
    double other =
        Math.abs(d - metric) > 1e-6 ? metric : Math.round(d / 0.0254 * 16) / 16.0 * 0.0254;
    all.add(
        substitution(
            "ball", Numerals.digits(1e3 * other) + " mm", before, withDiameter(design, other)));
    double ohm = design.heater().resistance_ohm().nominal();
    double next = ESeries.E12.atLeast_ohm(1.02 * ohm);
    all.add(
        substitution(
            "resistor", Numerals.digits(next) + " Ω", before, withResistance(design, next)));
    String letter = design.sense().type().function().letter().equals("T") ? "K" : "T";
    withType(design, catalogue, letter)
        .ifPresent(x -> all.add(substitution("thermocouple", letter, before, x)));
    thicker(design, catalogue)
        .ifPresent(
            w ->
                all.add(
                    substitution(
                        "leads", w.label().name(), before, design.with(design.heater().with(w)))));
    return all;
  }

  /** What changes between two designs. */
  public static List<Consequence> consequences(DesignSheet before, DesignSheet after) {
    List<Consequence> all = new ArrayList<>();
    for (OutcomeId id : TOLD) {
      Optional<Outcome> a = before.quantity(id);
      Optional<Outcome> b = after.quantity(id);
      if (a.isPresent() && b.isPresent()) {
        Consequence c = new Consequence(a.get(), b.get());
        boolean judgedOtherwise = a.get().verdict() != b.get().verdict();
        if (judgedOtherwise || Math.abs(c.share()) > WORTH_TELLING) {
          all.add(c);
        }
      }
    }
    return all;
  }

  private static Substitution substitution(
      String id, String by, DesignSheet before, Design changed) {
    return new Substitution(id, by, changed, consequences(before, DesignSheet.of(changed)));
  }

  private static Design withDiameter(Design x, double d) {
    BallDesign b = x.ball();
    double half = b.diameter_m().half();
    return x.with(
        new BallDesign(
            b.metal(), b.coat(), new Interval(d - half, d, d + half), b.bore(), b.plating()));
  }

  private static Design withResistance(Design x, double ohm) {
    Interval before = x.heater().resistance_ohm();
    return x.with(x.heater().with(Interval.share(ohm, before.half() / before.nominal())));
  }

  private static Optional<Design> withType(Design x, Catalogue catalogue, String letter) {
    return catalogue.thermocouple(letter).flatMap(x.sense()::with).map(x::with);
  }

  private static Optional<Wire> thicker(Design design, Catalogue catalogue) {
    double core = design.heater().leads().core_m();
    return catalogue.wires().stream()
        .filter(w -> w.conductivity_W_mK() > 100 && w.core_m() > 1.4 * core)
        .min(Comparator.comparingDouble(Wire::core_m));
  }
}
