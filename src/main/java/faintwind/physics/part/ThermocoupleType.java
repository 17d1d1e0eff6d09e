package faintwind.physics.part;

import faintwind.physics.Interval;
import faintwind.physics.Thermocouple;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A thermocouple type as something to buy: its function and what its wire is like.
 *
 * @param label id, name, source
 * @param function emf against temperature
 * @param alloys what its two conductors are made of
 * @param joining how its ends are joined, in words
 * @param tolerances tolerance classes; they do not apply to a small difference between two
 *     junctions of one reel, whose slope is good to about 0.4–0.75 % (common practice, no source)
 * @param colours conductor colours by standard
 * @param gauges wires it can be bought as
 */
public record ThermocoupleType(
    Label label,
    Thermocouple function,
    Alloys alloys,
    String joining,
    List<Tolerance> tolerances,
    List<Colours> colours,
    List<Gauge> gauges) {

  public ThermocoupleType {
    tolerances = List.copyOf(tolerances);
    colours = List.copyOf(colours);
    gauges = List.copyOf(gauges);
  }

  /**
   * The wire of a gauge number: from the table, or with the resistance of the nearest gauge there
   * scaled by the cross-section (±5 % more). Empty where the type has no table.
   */
  public Optional<Gauge> gauge(int awg) {
    Optional<Gauge> nearest =
        gauges.stream().min(Comparator.comparingInt(g -> Math.abs(g.awg() - awg)));
    return nearest.map(g -> g.awg() == awg ? g : g.scaled(awg));
  }

  /** One conductor's alloy and its thermal conductivity, W/(m K). */
  public record Alloy(String name, double conductivity_W_mK) {}

  /**
   * Both conductors.
   *
   * @param positive the positive one
   * @param negative the negative one
   * @param positiveShare share of the positive one in the resistance of a pair, 0 to 1
   */
  public record Alloys(Alloy positive, Alloy negative, Interval positiveShare) {}

  /** A tolerance near room temperature, K. */
  public record Tolerance(String standard, String grade, double limit_K) {}

  /** Conductor colours of a standard; status says whether they were seen or are from memory. */
  public record Colours(String standard, String positive, String negative, String status) {}

  /** A gauge: diameter of one conductor and resistance of both together for each metre of run. */
  public record Gauge(int awg, double diameter_m, Interval pair_ohm_m) {
    private Gauge scaled(int other) {
      double d = Wire.gauge_m(other);
      double ratio = diameter_m / d;
      return new Gauge(other, d, pair_ohm_m.times(Interval.share(ratio * ratio, 0.05)));
    }
  }
}
