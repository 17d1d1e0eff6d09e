package faintwind.ui.design;

import faintwind.job.design.DesignWork;
import faintwind.message.Messages;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import faintwind.physics.design.Detection;
import faintwind.physics.design.SunLoad;
import faintwind.physics.sheet.Quantity;
import faintwind.physics.sheet.QuantityId;
import java.util.Optional;

/** The equation of an outcome with this design's own numbers in it. */
final class DesignNumbers {
  private final DesignWork.Worked worked;
  private final Design design;
  private final Messages words;

  DesignNumbers(DesignWork.Worked worked, Messages words) {
    this.worked = worked;
    this.words = words;
    design = worked.design();
  }

  /** The line; empty where the equation's words say it all. */
  Optional<String> line(QuantityId id) {
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
      case TIME_CONSTANT_STILL -> Optional.of(time(id, QuantityId.STILL_DELTA));
      case TIME_CONSTANT_AT_1 -> Optional.of(time(id, QuantityId.DELTA_AT_1));
      case TIME_CONSTANT_AT_3 -> Optional.of(time(id, QuantityId.DELTA_AT_3));
      case SUN_ABSORBED, SUN_SHARE -> Optional.of(sun(id));
      case SIGNAL_STILL, RANGE_SHARE, SMALLEST_SPEED -> Optional.of(signal(id));
      case BORE_CLEARANCE ->
          Optional.of(
              words.text(
                  "design.why.clearance",
                  said(QuantityId.BORE),
                  said(QuantityId.BORE_NEEDED),
                  said(id)));
      default -> Optional.empty();
    };
  }

  private String heater(QuantityId id) {
    String result = said(id);
    String hot = said(QuantityId.HEATER_HOT);
    return switch (id) {
      case HEATER_POWER ->
          words.text("design.why.power", said(QuantityId.HEATER_VOLTAGE), hot, result);
      case HEATER_CURRENT ->
          words.text("design.why.current", said(QuantityId.HEATER_VOLTAGE), hot, result);
      case HEATER_HOT ->
          words.text(
              "design.why.hot",
              said(QuantityId.HEATER_RESISTANCE),
              figures(1e6 * design.heater().style().tempco_1_K().nominal()),
              figures(of(QuantityId.RESISTOR_TEMPERATURE, Interval::high)),
              result);
      case RESISTOR_TEMPERATURE ->
          words.text(
              "design.why.body",
              said(QuantityId.HEATED_BALL_TEMPERATURE),
              figures(of(id) - of(QuantityId.HEATED_BALL_TEMPERATURE)),
              result);
      case CABLE_DROP ->
          words.text(
              "design.why.drop",
              said(QuantityId.HEATER_CURRENT),
              said(QuantityId.CABLE_RESISTANCE),
              result);
      default ->
          words.text(
              "design.why.battery",
              figures(of(id) * of(QuantityId.BATTERY_CURRENT)),
              said(QuantityId.BATTERY_CURRENT),
              result);
    };
  }

  private String heat(QuantityId id) {
    return switch (id) {
      case HEATED_BALL_TEMPERATURE ->
          words.text("design.why.ball", figures(air_C()), said(QuantityId.STILL_DELTA), said(id));
      case LEAD_LOSS_SHARE ->
          words.text(
              "design.why.leads",
              said(QuantityId.LEAD_LOSS),
              said(QuantityId.STILL_DELTA),
              said(QuantityId.HEATER_POWER),
              said(id));
      case BIOT -> {
        double k = design.ball().metal().conductivity_W_mK().low();
        double d = design.ball().diameter_m().nominal();
        yield words.text(
            "design.why.biot", figures(6 * k * of(id) / d), figures(1e3 * d), figures(k), said(id));
      }
      default ->
          words.text(
              "design.why.delta",
              said(QuantityId.HEATER_POWER),
              figures(1e3 * of(QuantityId.HEATER_POWER) / of(id)),
              said(id));
    };
  }

  private String warmUp(QuantityId id) {
    return id == QuantityId.WARM_UP_TIME
        ? words.text("design.why.five", said(QuantityId.TIME_CONSTANT_STILL), said(id))
        : words.text(
            "design.why.rate",
            said(QuantityId.HEATER_POWER),
            said(QuantityId.BALL_HEAT_CAPACITY),
            said(id));
  }

  private String time(QuantityId id, QuantityId delta) {
    return words.text(
        "design.why.time",
        said(QuantityId.BALL_HEAT_CAPACITY),
        figures(1e3 * of(QuantityId.HEATER_POWER) / of(delta)),
        said(id));
  }

  private String sun(QuantityId id) {
    if (id == QuantityId.SUN_SHARE) {
      return words.text(
          "design.why.sun-share",
          said(QuantityId.SUN_ABSORBED),
          said(QuantityId.HEATER_POWER),
          said(id));
    }
    return words.text(
        "design.why.sun",
        figures(design.ball().coat().solarAbsorptance().nominal()),
        figures(SunLoad.FULL_SUN_W_M2),
        said(QuantityId.BALL_DIAMETER),
        said(id));
  }

  private String signal(QuantityId id) {
    return switch (id) {
      case SIGNAL_STILL ->
          words.text(
              "design.why.signal",
              figures(design.sense().gain()),
              said(QuantityId.HEATED_BALL_TEMPERATURE),
              figures(air_C()),
              said(id));
      case RANGE_SHARE ->
          words.text(
              "design.why.range",
              said(QuantityId.SIGNAL_STILL),
              figures(1e3 * design.sense().logger().high_V()),
              said(id));
      default -> {
        double still = of(QuantityId.STILL_DELTA);
        double logger = Math.sqrt(2) * of(QuantityId.RESOLUTION_DELTA);
        double room = Detection.roomPart_K(still);
        yield words.text(
            "design.why.smallest",
            figures(logger),
            figures(room),
            figures(Math.hypot(logger, room)),
            figures(still),
            said(id));
      }
    };
  }

  private double air_C() {
    return design.air().temperature_K() - Constants.ZERO_C_K;
  }

  private double of(QuantityId id) {
    return of(id, Interval::nominal);
  }

  private double of(QuantityId id, java.util.function.ToDoubleFunction<Interval> edge) {
    return worked.sheet().quantity(id).map(Quantity::value).map(edge::applyAsDouble).orElse(0.0);
  }

  private String said(QuantityId id) {
    return figures(of(id));
  }

  private static String figures(double value) {
    return DesignWords.figures(value);
  }
}
