package faintwind.calibration.speed.state;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.state.WalkStrength.Block;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Smooths the blocks of a log, one after the other: over a block and the stretch beyond it the
 * filter runs forwards and the smoother back; the next block starts from the filter's state at its
 * first row. For one log and one thread.
 */
public final class BlockSmoother {
  private static final int JUMP_ROUNDS = 4;

  private final FieldFormula formula;
  private final double noise;
  private final double stillSignal;
  private final ForwardFilter filter;
  private final ForwardFilter start;
  private final ForwardFilter scratch;
  private final WalkStrength strength;
  private final OptionalDouble fixedWalk2_1_s;
  private final BlockTrace trace = new BlockTrace();

  /** Smoothing by a calibration, with a strength of the walk where one is given. */
  public BlockSmoother(Calibration calibration, OptionalDouble fixedWalk2_1_s) {
    this.fixedWalk2_1_s = fixedWalk2_1_s;
    formula = FieldFormula.forLog(calibration);
    noise = calibration.performance().noise();
    stillSignal = calibration.performance().stillSignal();
    filter = new ForwardFilter(calibration, formula);
    start = new ForwardFilter(calibration, formula);
    scratch = new ForwardFilter(calibration, formula);
    strength = new WalkStrength(() -> new ForwardFilter(calibration, formula));
  }

  /**
   * What was found for the rows of a block.
   *
   * @param level how well they are read
   * @param states their smoothed states
   * @param heater what is believed of the heater
   * @param jumps sudden changes of the wind
   * @param walk2_1_s variance of the walk of ln(loss), per second
   */
  public record Smoothed(
      NoiseLevel level,
      BlockTrace.States states,
      HeaterTrace heater,
      WindJumps jumps,
      double walk2_1_s) {}

  /** What the heat balance can show at all. */
  public HeaterLimits limits() {
    return filter.limits();
  }

  /**
   * Smooths the next block.
   *
   * @param rows those of the block and of the stretch beyond it that could be read
   * @param core how many of them are the block's
   */
  public Smoothed smoothed(List<PreparedRow> rows, int core) {
    NoiseLevel level = NoiseLevel.of(rows.subList(0, core), noise, stillSignal);
    Block block = new Block(rows, core, level.variance());
    WindJumps jumps = new WindJumps();
    start.copyFrom(filter);
    boolean fixed = fixedWalk2_1_s.isPresent();
    double walk2_1_s = fixed ? fixedWalk2_1_s.getAsDouble() : strength.choose(block, start);
    HeaterTrace heater = smooth(block, walk2_1_s, jumps);
    for (int round = 0; round < JUMP_ROUNDS && !fixed; round++) {
      if (!jumps.lookFor(trace, rows, heater::isSurelyOn)) {
        break;
      }
      if (round < 3) {
        walk2_1_s = strength.chooseAgain(block, start, jumps);
      }
      heater = smooth(block, walk2_1_s, jumps);
    }
    heater.lookBack(trace, formula);
    return new Smoothed(level, trace.states(core), heater, jumps, walk2_1_s);
  }

  /** Runs over block and stretch, forwards and back; leaves the filter where the block ends. */
  private HeaterTrace smooth(Block block, double walk2_1_s, WindJumps jumps) {
    HeaterTrace heater = new HeaterTrace(block.rows());
    trace.clear();
    scratch.copyFrom(start);
    for (int i = 0; i < block.rows().size(); i++) {
      scratch.step(block.rows().get(i), walk2_1_s, block.noise2(), jumps.variance(i));
      trace.add(scratch);
      heater.add(scratch);
      if (i == block.core() - 1) {
        filter.copyFrom(scratch);
      }
    }
    trace.smooth();
    return heater;
  }
}
