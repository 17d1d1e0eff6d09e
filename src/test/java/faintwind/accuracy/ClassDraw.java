package faintwind.accuracy;

import faintwind.calibration.FormulaFit;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualClass;
import faintwind.calibration.virtual.VirtualClass.Fault;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.physics.AirState;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A made-up class of six pairs, one lesson on the arm each, with their fits alone.
 *
 * @param pairs the true builds
 */
record ClassDraw(long seed, Fault fault, List<VirtualBuild> pairs, List<FitResult> alone) {
  private static final double[] SPEEDS_M_S = {0.15, 0.2, 0.3, 0.5, 0.8, 1.3, 2, 3};
  private static final double HOLD_S = 700;
  private static final int SLOPE_ROWS = 10;
  private static final int PAIRS = 6;
  private static final int FAULTY = 3;

  /** Errors of one instrument over the speeds: root mean square, share within U95, mean U95. */
  record Score(double rms, double within, double u95) {
    static double rms(List<Score> scores) {
      return Math.sqrt(scores.stream().mapToDouble(s -> s.rms() * s.rms()).average().orElseThrow());
    }
  }

  static ClassDraw of(long seed) {
    Fault fault = Fault.inTurn(seed);
    List<VirtualBuild> pairs = VirtualClass.pairs(seed, PAIRS);
    pairs.set(FAULTY, fault.in(pairs.get(FAULTY)));
    List<FitResult> alone = new ArrayList<>();
    for (int i = 0; i < PAIRS; i++) {
      RunSet set =
          VirtualRehearsal.calibration(pairs.get(i), VirtualClass.lesson(i), seed * 10 + i)
              .runSet();
      alone.add(SampleBench.value(FitToRuns.fit(i == FAULTY ? fault.in(set) : set, () -> false)));
    }
    return new ClassDraw(seed, fault, pairs, alone);
  }

  /** All but the faulty one, where one is. */
  <T> List<T> sound(List<T> all) {
    List<T> sound = new ArrayList<>(all);
    if (fault != Fault.NONE) {
      sound.remove(FAULTY);
    }
    return sound;
  }

  /** Of the sound pairs, where the fits are those of all. */
  List<Score> scores(List<FitResult> fits) {
    return soundScores(sound(fits));
  }

  /** Of the sound pairs, where the fits are theirs alone. */
  List<Score> soundScores(List<FitResult> fits) {
    List<VirtualBuild> builds = sound(pairs);
    List<Score> scores = new ArrayList<>();
    for (int i = 0; i < fits.size(); i++) {
      scores.add(score(fits.get(i), builds.get(i), seed));
    }
    return scores;
  }

  private static Score score(FitResult fit, VirtualBuild build, long seed) {
    Recording log =
        VirtualRehearsal.warmFieldLog(
                build.noiseless(),
                HOLD_S * SPEEDS_M_S.length - 1,
                t -> SPEEDS_M_S[(int) Math.min(SPEEDS_M_S.length - 1, t / HOLD_S)],
                seed)
            .recording();
    FormulaFit fitted = fit.formulaFit();
    Formula formula = fit.formula();
    AirState room = build.room().air();
    double squares = 0;
    double within = 0;
    double u95 = 0;
    for (int hold = 0; hold < SPEEDS_M_S.length; hold++) {
      int at = log.signal().indexAtOrAfter((hold + 0.85) * HOLD_S);
      double air_K = log.air_K().orElseThrow().at(log.signal().time_s(at));
      AirPoint air = AirPoint.of(new AirState(air_K, room.pressure_Pa(), room.relativeHumidity()));
      double error = read(formula, log, at, air) / SPEEDS_M_S[hold] - 1;
      double[] gradient =
          formula.steadySpeedGradient(SPEEDS_M_S[hold], fit.signal().supply_V(), air);
      double u = 2 * Math.sqrt(fitted.covariance().variance(gradient)) / SPEEDS_M_S[hold];
      squares += error * error;
      within += Math.abs(error) <= u ? 1 : 0;
      u95 += u;
    }
    int n = SPEEDS_M_S.length;
    return new Score(Math.sqrt(squares / n), within / n, u95 / n);
  }

  private static double read(Formula formula, Recording log, int at, AirPoint air) {
    double before = formula.delta_K(log.signal().value(at - SLOPE_ROWS), air.air_K());
    double now = formula.delta_K(log.signal().value(at), air.air_K());
    double after = formula.delta_K(log.signal().value(at + SLOPE_ROWS), air.air_K());
    double rate =
        (after - before)
            / (log.signal().time_s(at + SLOPE_ROWS) - log.signal().time_s(at - SLOPE_ROWS));
    double volts = log.supply_V().orElseThrow().at(log.signal().time_s(at));
    double heating = formula.heating_K_s(OptionalDouble.of(volts));
    return formula.speed_m_s((heating - rate) / now, now, air);
  }
}
