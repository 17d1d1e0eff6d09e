package faintwind.job.live;

import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.virtual.VirtualStage;
import faintwind.calibration.virtual.VirtualStage.Heater;
import faintwind.guide.turntable.Advice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Turns the made-up arm of a rehearsal as the person says, and taps as the arm passes its marks,
 * with the scatter of a hand. For one thread at a time.
 */
public final class RehearsalHand {
  /** Scatter of a practised hand on a key (common practice, no source). */
  private static final double HAND_S = 0.03;

  /** Marks count once the arm has come to speed. */
  private static final double COMES_TO_SPEED_S = 8;

  private final Rehearsal rehearsal;
  private final Lead lead;
  private final RandomGenerator hand;
  private double pace;
  private Optional<PlannedSpin> turning = Optional.empty();
  private double begun_m;
  private double begun_s;
  private double before_s;
  private double before_m;
  private long passed;

  /** Who leads. */
  public enum Lead {
    /** A person presses the buttons. */
    PERSON,
    /** The hand does at once what the guide says: the rehearsal runs by itself. */
    GUIDE
  }

  /**
   * A hand for a rehearsal.
   *
   * @param lead who says when the heater is switched on and the arm turned
   * @param seed of its scatter
   * @param pace how many of its seconds pass in one second
   */
  public RehearsalHand(Rehearsal rehearsal, Lead lead, long seed, double pace) {
    this.rehearsal = rehearsal;
    this.lead = lead;
    this.hand = new Well19937c(seed);
    this.pace = pace;
  }

  /** How many seconds of the rehearsal pass in one. */
  public synchronized double pace() {
    return Double.isInfinite(pace) ? 1000 : pace;
  }

  /** From now on so many. */
  public synchronized void pace(double times) {
    pace = times;
    rehearsal.pace(times);
  }

  /** Whether it does by itself what the guide waits for. */
  boolean leads() {
    return lead == Lead.GUIDE;
  }

  /** The person did something: heater and arm follow what is open now. */
  synchronized void follows(Advice now) {
    Optional<PlannedSpin> spin = now.step().flatMap(PlannedStep::spin);
    switch (now.action()) {
      case KEEP_TURNING, STOP -> {
        if (turning.isEmpty()) {
          turn(spin.orElseThrow());
        }
      }
      case KEEP_OFF, SWITCH_ON -> {}
      case WARMING, SPIN_NOW, STAND_BACK, MOVE_BALLS, STILL_CHECK, DONE -> rest();
    }
  }

  private void turn(PlannedSpin spin) {
    turning = Optional.of(spin);
    rehearsal.stage(
        VirtualStage.spin(1, spin.speed_m_s(), spin.radius_m().value(), spin.direction()));
    begun_m = rehearsal.armPath_m();
    before_m = begun_m;
    begun_s = rehearsal.time_s();
    before_s = begun_s;
    passed = 0;
  }

  private void rest() {
    turning = Optional.empty();
    rehearsal.stage(VirtualStage.rest(1, Heater.ON));
  }

  /** Times at which a mark was passed since the last row. */
  synchronized List<Double> passes(double row_s) {
    List<Double> times = new ArrayList<>();
    if (turning.isEmpty()) {
      return times;
    }
    double mark_m = 2 * Math.PI * turning.get().radius_m().value() / turning.get().beat().aTurn();
    double now_m = rehearsal.armPath_m();
    double now_s = rehearsal.time_s();
    if (now_s < begun_s + COMES_TO_SPEED_S) {
      passed = (long) Math.floor((now_m - begun_m) / mark_m);
    }
    while (begun_m + (passed + 1) * mark_m <= now_m && now_m > before_m) {
      passed++;
      double share = (begun_m + passed * mark_m - before_m) / (now_m - before_m);
      times.add(before_s + share * (now_s - before_s) + HAND_S * hand.nextGaussian());
    }
    before_m = now_m;
    before_s = now_s;
    return times;
  }
}
