package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.Ranged;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignAtCorner;
import faintwind.physics.design.Detection;
import faintwind.physics.design.SenseDesign;
import faintwind.physics.design.Spread;
import java.util.ArrayList;
import java.util.List;

/** Thermocouple, logger, resolution, and the bands of the insulation readings. */
final class SignalSheet {
  private SignalSheet() {}

  static List<Outcome> of(Design design, Spread spread) {
    SenseDesign sense = design.sense();
    List<Outcome> all = new ArrayList<>(signals(design, spread));
    Interval loop = sense.loop_ohm();
    all.add(Outcome.plain(OutcomeId.LOOP_LENGTH, 1e3 * sense.lengths().loop_m()));
    all.add(Outcome.plain(OutcomeId.BETWEEN_LENGTH, 1e3 * sense.lengths().between_m()));
    all.add(Outcome.plain(OutcomeId.LOOP_RESISTANCE, loop));
    all.add(Outcome.plain(OutcomeId.LOOP_RESISTANCE_LOW, loop.low()));
    all.add(Outcome.plain(OutcomeId.LOOP_RESISTANCE_HIGH, loop.high()));
    // common practice, no source: 20 MΩ or over-range is good, below 1 MΩ stops
    all.add(Outcome.plain(OutcomeId.INSULATION_GOOD, 20));
    all.add(Outcome.plain(OutcomeId.INSULATION_STOP, 1));
    return all;
  }

  /** What rests on the heat balance, and so on its ranges. */
  private static List<Outcome> signals(Design design, Spread spread) {
    SenseDesign sense = design.sense();
    List<Outcome> all = new ArrayList<>();
    double gain = sense.gain();
    all.add(
        Outcome.plain(
            OutcomeId.SENSITIVITY, spread.of(m -> 1e6 * m.signal_V(m.delta_K(1)) / m.delta_K(1))));
    Interval still = spread.of(m -> 1e3 * gain * m.signal_V(m.delta_K(0)));
    all.add(Outcome.plain(OutcomeId.SIGNAL_STILL, still));
    all.add(
        Outcome.plain(
            OutcomeId.SIGNAL_AT_3, spread.of(m -> 1e3 * gain * m.signal_V(m.delta_K(3)))));
    all.add(rangeShare(sense, still));
    Detection detection = new Detection(sense, spread.nominal());
    double delta1 = spread.nominal().delta_K(1);
    all.add(Outcome.plain(OutcomeId.RESOLUTION_DELTA, detection.resolution_K(delta1)));
    all.add(Outcome.plain(OutcomeId.RESOLUTION_AT_1, detection.resolution_m_s(1)));
    all.add(smallest(design, spread));
    all.add(zero(sense, spread.nominal()));
    List<Ranged.RangeLeft> left = spread.nominal().ranged_K(1).left();
    return all.stream().map(q -> Judged.within(q, left)).toList();
  }

  private static Outcome rangeShare(SenseDesign sense, Interval still_mV) {
    double top_mV = 1e3 * sense.logger().high_V();
    Interval share = still_mV.times(100 / top_mV);
    String name = sense.logger().label().name();
    if (share.high() > 100) {
      double gain = Math.floor(0.9 * sense.gain() * 100 / share.high());
      if (gain < 1) {
        return Judged.stop(
            OutcomeId.RANGE_SHARE,
            share,
            "design.range-too-small",
            Numerals.digits(share.high()),
            name,
            Numerals.digits(1.1 * still_mV.high() / sense.gain()));
      }
      return Judged.stop(
          OutcomeId.RANGE_SHARE,
          share,
          "design.range-exceeded",
          Numerals.digits(share.high()),
          name,
          Numerals.digits(gain));
    }
    double told = 2e3 * sense.logger().u_V() / still_mV.nominal();
    if (told > OwnChoices.COARSE) {
      return Judged.improve(
          OutcomeId.RANGE_SHARE,
          share,
          "design.range-hardly-used",
          Numerals.digits(share.nominal()),
          name,
          Numerals.digits(100 * told),
          Numerals.digits(Math.floor(sense.gain() * 80 / share.high())));
    }
    return Outcome.good(OutcomeId.RANGE_SHARE, share);
  }

  private static Outcome smallest(Design design, Spread spread) {
    Interval speed = Detection.range_m_s(design);
    double wanted = design.use().slowest_m_s();
    if (speed.high() <= wanted) {
      return Outcome.good(OutcomeId.SMALLEST_SPEED, speed);
    }
    Detection d = new Detection(design.sense(), spread.nominal());
    Detection.Smallest smallest = d.smallest();
    String cause =
        smallest.logger_K() > smallest.room_K()
            ? "design.smallest-speed-logger"
            : "design.smallest-speed-room";
    return Judged.improve(
        OutcomeId.SMALLEST_SPEED,
        speed,
        cause,
        Numerals.digits(speed.high()),
        Numerals.digits(wanted),
        Numerals.digits(smallest.logger_K()),
        Numerals.digits(smallest.room_K()));
  }

  private static Outcome zero(SenseDesign sense, DesignAtCorner model) {
    double band_V =
        sense.logger().offset_V()
            + 2 * sense.logger().u_V()
            + sense.gain() * model.signal_V(Detection.BETWEEN_BALLS_K);
    return Outcome.plain(OutcomeId.ZERO_BAND, new Interval(-1e3 * band_V, 0, 1e3 * band_V));
  }
}
