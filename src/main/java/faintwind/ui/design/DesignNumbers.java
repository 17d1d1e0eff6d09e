package faintwind.ui.design;

import faintwind.job.design.Sized;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import faintwind.physics.design.Detection;
import faintwind.physics.design.SunLoad;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The equation of an outcome with this design's own numbers in it. */
final class DesignNumbers {
  private final Sized worked;
  private final Design design;
  private final Messages words;

  DesignNumbers(Sized worked, Messages words) {
    this.worked = worked;
    this.words = words;
    design = worked.design();
  }

  /** The line; empty where the equation's words say it all. */
  Optional<String> line(OutcomeId id) {
    return switch (id) {
      case HEATER_POWER,
          HEATER_CURRENT,
          HEATER_HOT,
          RESISTOR_TEMPERATURE,
          CABLE_DROP,
          BATTERY_TIME ->
          Optional.of(heater(id));
      case STILL_DELTA, DELTA_AT_1, DELTA_AT_3, HEATED_BALL_TEMPERATURE, LEAD_LOSS_SHARE, BIOT ->
          Optional.of(heat(id));
      case WARM_UP_RATE, WARM_UP_TIME -> Optional.of(warmUp(id));
      case TIME_CONSTANT_STILL -> Optional.of(time(id, OutcomeId.STILL_DELTA));
      case TIME_CONSTANT_AT_1 -> Optional.of(time(id, OutcomeId.DELTA_AT_1));
      case TIME_CONSTANT_AT_3 -> Optional.of(time(id, OutcomeId.DELTA_AT_3));
      case SUN_ABSORBED, SUN_SHARE -> Optional.of(sun(id));
      case SIGNAL_STILL, RANGE_SHARE, SMALLEST_SPEED -> Optional.of(signal(id));
      case BORE_CLEARANCE ->
          Optional.of(
              words.text(
                  "design.why.clearance",
                  said(OutcomeId.BORE),
                  said(OutcomeId.BORE_NEEDED),
                  said(id)));
      default -> Optional.empty();
    };
  }

  private String heater(OutcomeId id) {
    String result = said(id);
    String hot = said(OutcomeId.HEATER_HOT);
    return switch (id) {
      case HEATER_POWER ->
          words.text("design.why.power", said(OutcomeId.HEATER_VOLTAGE), hot, result);
      case HEATER_CURRENT ->
          words.text("design.why.current", said(OutcomeId.HEATER_VOLTAGE), hot, result);
      case HEATER_HOT ->
          words.text(
              "design.why.hot",
              said(OutcomeId.HEATER_RESISTANCE),
              Numerals.digits(1e6 * design.heater().style().tempco_1_K().nominal()),
              Numerals.digits(of(OutcomeId.RESISTOR_TEMPERATURE, Interval::high)),
              result);
      case RESISTOR_TEMPERATURE ->
          words.text(
              "design.why.body",
              said(OutcomeId.HEATED_BALL_TEMPERATURE),
              Numerals.digits(of(id) - of(OutcomeId.HEATED_BALL_TEMPERATURE)),
              result);
      case CABLE_DROP ->
          words.text(
              "design.why.drop",
              said(OutcomeId.HEATER_CURRENT),
              said(OutcomeId.CABLE_RESISTANCE),
              result);
      default ->
          words.text(
              "design.why.battery",
              Numerals.digits(of(id) * of(OutcomeId.BATTERY_CURRENT)),
              said(OutcomeId.BATTERY_CURRENT),
              result);
    };
  }

  private String heat(OutcomeId id) {
    return switch (id) {
      case HEATED_BALL_TEMPERATURE ->
          words.text(
              "design.why.ball", Numerals.digits(air_C()), said(OutcomeId.STILL_DELTA), said(id));
      case LEAD_LOSS_SHARE ->
          words.text(
              "design.why.leads",
              said(OutcomeId.LEAD_LOSS),
              said(OutcomeId.STILL_DELTA),
              said(OutcomeId.HEATER_POWER),
              said(id));
      case BIOT -> {
        double k = design.ball().metal().conductivity_W_mK().low();
        double d = design.ball().diameter_m().nominal();
        yield words.text(
            "design.why.biot",
            Numerals.digits(6 * k * of(id) / d),
            Numerals.digits(1e3 * d),
            Numerals.digits(k),
            said(id));
      }
      default ->
          words.text(
              "design.why.delta",
              said(OutcomeId.HEATER_POWER),
              Numerals.digits(1e3 * of(OutcomeId.HEATER_POWER) / of(id)),
              said(id));
    };
  }

  private String warmUp(OutcomeId id) {
    return id == OutcomeId.WARM_UP_TIME
        ? words.text("design.why.five", said(OutcomeId.TIME_CONSTANT_STILL), said(id))
        : words.text(
            "design.why.rate",
            said(OutcomeId.HEATER_POWER),
            said(OutcomeId.BALL_HEAT_CAPACITY),
            said(id));
  }

  private String time(OutcomeId id, OutcomeId delta) {
    return words.text(
        "design.why.time",
        said(OutcomeId.BALL_HEAT_CAPACITY),
        Numerals.digits(1e3 * of(OutcomeId.HEATER_POWER) / of(delta)),
        said(id));
  }

  private String sun(OutcomeId id) {
    if (id == OutcomeId.SUN_SHARE) {
      return words.text(
          "design.why.sun-share",
          said(OutcomeId.SUN_ABSORBED),
          said(OutcomeId.HEATER_POWER),
          said(id));
    }
    return words.text(
        "design.why.sun",
        Numerals.digits(design.ball().coat().solarAbsorptance().nominal()),
        Numerals.digits(SunLoad.FULL_SUN_W_M2),
        said(OutcomeId.BALL_DIAMETER),
        said(id));
  }

  private String signal(OutcomeId id) {
    return switch (id) {
      case SIGNAL_STILL ->
          words.text(
              "design.why.signal",
              Numerals.digits(design.sense().gain()),
              said(OutcomeId.HEATED_BALL_TEMPERATURE),
              Numerals.digits(air_C()),
              said(id));
      case RANGE_SHARE ->
          words.text(
              "design.why.range",
              said(OutcomeId.SIGNAL_STILL),
              Numerals.digits(1e3 * design.sense().logger().high_V()),
              said(id));
      default -> {
        Detection.Smallest smallest = Detection.of(design).smallest();
        yield words.text(
            "design.why.smallest",
            Numerals.digits(smallest.logger_K()),
            Numerals.digits(smallest.room_K()),
            Numerals.digits(smallest.needed_K()),
            Numerals.digits(smallest.still_K()),
            said(id));
      }
    };
  }

  private double air_C() {
    return design.air().temperature_K() - Constants.ZERO_C_K;
  }

  private double of(OutcomeId id) {
    return of(id, Interval::nominal);
  }

  private double of(OutcomeId id, ToDoubleFunction<Interval> edge) {
    return worked.sheet().quantity(id).map(Outcome::value).map(edge::applyAsDouble).orElse(0.0);
  }

  private String said(OutcomeId id) {
    return Numerals.digits(of(id));
  }
}
