package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.RowJudge.Heater;
import faintwind.calibration.speed.state.BlockTrace;
import faintwind.calibration.speed.state.ErrorMemory;
import faintwind.calibration.speed.state.FieldFormula;
import faintwind.calibration.speed.state.ForwardFilter;
import faintwind.calibration.speed.state.HeatState;
import faintwind.calibration.speed.state.NoiseLevel;
import faintwind.calibration.speed.state.PreparedRow;
import faintwind.calibration.speed.state.WalkStrength;
import faintwind.calibration.speed.state.WalkStrength.Block;
import faintwind.calibration.speed.state.WindJumps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * The estimator for a file. Rows are gathered to a block and a stretch beyond it; over both the
 * filter runs forwards and the smoother back, and the block's rows are handed on; the next block
 * starts from the filter's state at its first row. Memory is bounded by the block. What follows the
 * smoothing of a block bears on no other: it may be left to a second thread.
 */
public final class SmoothedSpeed implements SpeedEstimator {
  private static final int JUMP_ROUNDS = 4;

  private final Calibration calibration;
  private final SmoothingBlock block;
  private final FieldFormula formula;
  private final LogPreparation preparation;
  private final double noise;
  private final double stillSignal;
  private final ForwardFilter filter;
  private final ForwardFilter scratch;
  private final WalkStrength strength;
  private final OptionalDouble fixedWalk2_1_s;
  private final BlockTrace trace = new BlockTrace();
  private final RowJudge judge;
  private final SpeedMeans means;
  private final List<Optional<PreparedRow>> rows = new ArrayList<>();
  private Consumer<Runnable> later = Runnable::run;
  private boolean supplyRecorded;

  SmoothedSpeed(Calibration calibration, SpeedSettings settings, Consumer<MinuteSpeed> minutes) {
    this(calibration, settings, minutes, SmoothingBlock.USUAL, OptionalDouble.empty());
  }

  SmoothedSpeed(
      Calibration calibration,
      SpeedSettings settings,
      Consumer<MinuteSpeed> minutes,
      SmoothingBlock block,
      OptionalDouble fixedWalk2_1_s) {
    this.calibration = calibration;
    this.block = block;
    this.fixedWalk2_1_s = fixedWalk2_1_s;
    formula = FieldFormula.forLog(calibration);
    preparation = new LogPreparation(calibration, formula, settings);
    noise = calibration.performance().noise();
    stillSignal = calibration.performance().stillSignal();
    filter = new ForwardFilter(calibration, formula);
    scratch = new ForwardFilter(calibration, formula);
    strength = new WalkStrength(new ForwardFilter(calibration, formula));
    FieldFormula own = FieldFormula.forLog(calibration);
    judge = new RowJudge(own, filter.limits(), ErrorMemory.SMOOTHED);
    means =
        new SpeedMeans(
            calibration, own, settings.average_s(), SpeedAverage.Window.CENTRED, minutes);
  }

  /** Leaves what follows the smoothing of a block to somebody else. */
  SmoothedSpeed leaving(Consumer<Runnable> tasks) {
    later = tasks;
    return this;
  }

  @Override
  public void accept(LogSample sample, Consumer<SpeedRow> ready) {
    Optional<PreparedRow> row = preparation.next(sample, formula);
    rows.add(row);
    row.ifPresent(r -> supplyRecorded |= r.supply() != PreparedRow.Supply.NOT_RECORDED);
    int core = block.core(rows, supplyRecorded);
    if (core > 0) {
      handOn(core, ready);
    }
  }

  @Override
  public void finish(Consumer<SpeedRow> ready) {
    if (!rows.isEmpty()) {
      handOn(rows.size(), ready);
    }
    later.accept(() -> means.finish(ready));
  }

  private void handOn(int core, Consumer<SpeedRow> ready) {
    List<Optional<PreparedRow>> coreRows = List.copyOf(rows.subList(0, core));
    NoiseLevel level = NoiseLevel.of(coreRows, noise, stillSignal);
    List<PreparedRow> readable = new ArrayList<>(rows.size());
    rows.forEach(row -> row.ifPresent(readable::add));
    int coreReadable = (int) coreRows.stream().filter(Optional::isPresent).count();
    Block readableBlock = new Block(readable, coreReadable, level.variance());
    WindJumps jumps = new WindJumps();
    ForwardFilter start = new ForwardFilter(calibration, formula);
    start.copyFrom(filter);
    double walk2_1_s =
        fixedWalk2_1_s.isPresent()
            ? fixedWalk2_1_s.getAsDouble()
            : strength.choose(readableBlock, start);
    HeaterTrace heater = smooth(readableBlock, start, walk2_1_s, jumps);
    for (int round = 0; round < JUMP_ROUNDS && fixedWalk2_1_s.isEmpty(); round++) {
      if (!jumps.lookFor(trace, readable, heater::isSurelyOn)) {
        break;
      }
      if (round < 3) {
        walk2_1_s = strength.chooseAgain(readableBlock, start, jumps);
      }
      heater = smooth(readableBlock, start, walk2_1_s, jumps);
    }
    heater.lookBack(trace, formula);
    Smoothed smoothed = new Smoothed(level, trace.states(), heater, jumps, walk2_1_s);
    later.accept(() -> hand(coreRows, smoothed, ready));
    rows.subList(0, core).clear();
  }

  private record Smoothed(
      NoiseLevel level,
      BlockTrace.States states,
      HeaterTrace heater,
      WindJumps jumps,
      double walk2_1_s) {}

  private void hand(
      List<Optional<PreparedRow>> coreRows, Smoothed smoothed, Consumer<SpeedRow> ready) {
    judge.reads(smoothed.level());
    int at = 0;
    double[] mean = new double[HeatState.SIZE];
    for (Optional<PreparedRow> row : coreRows) {
      if (row.isEmpty()) {
        means.accept(Optional.empty(), ready);
        continue;
      }
      double variance = smoothed.states().at(at, mean);
      judge.place(smoothed.jumps(), at);
      Heater belief = smoothed.heater().at(at);
      means.accept(
          Optional.of(judge.judge(row.get(), mean, variance, smoothed.walk2_1_s(), belief)), ready);
      at++;
    }
  }

  /** Runs over block and stretch, forwards and back; leaves the filter where the block ends. */
  private HeaterTrace smooth(
      Block readable, ForwardFilter start, double walk2_1_s, WindJumps jumps) {
    HeaterTrace heater = new HeaterTrace();
    trace.clear();
    scratch.copyFrom(start);
    for (int i = 0; i < readable.rows().size(); i++) {
      PreparedRow row = readable.rows().get(i);
      scratch.step(row, walk2_1_s, readable.noise2(), jumps.variance(i));
      trace.add(scratch);
      heater.add(row, scratch);
      if (i == readable.core() - 1) {
        filter.copyFrom(scratch);
      }
    }
    trace.smooth();
    return heater;
  }
}
