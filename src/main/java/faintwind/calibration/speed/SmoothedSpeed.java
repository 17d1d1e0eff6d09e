package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.RowJudge.Heater;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * The estimator for a file. Rows are gathered to a block and a stretch beyond it; over both the
 * filter runs forwards and the smoother back, and the block's rows are handed on; the next block
 * starts from the filter's state at its first row. Memory is bounded by the block.
 */
public final class SmoothedSpeed implements SpeedEstimator {
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
  private final SpeedAverage average;
  private final List<Optional<PreparedRow>> rows = new ArrayList<>();
  private boolean supplyRecorded;

  SmoothedSpeed(Calibration calibration, SpeedSettings settings) {
    this(calibration, settings, SmoothingBlock.USUAL, OptionalDouble.empty());
  }

  SmoothedSpeed(
      Calibration calibration,
      SpeedSettings settings,
      SmoothingBlock block,
      OptionalDouble fixedWalk2_1_s) {
    this.block = block;
    this.fixedWalk2_1_s = fixedWalk2_1_s;
    formula = new FieldFormula(calibration);
    preparation = new LogPreparation(calibration, formula, settings);
    noise = calibration.performance().noise();
    stillSignal = calibration.performance().stillSignal();
    filter = new ForwardFilter(calibration, formula);
    scratch = new ForwardFilter(calibration, formula);
    strength = new WalkStrength(new ForwardFilter(calibration, formula));
    judge = new RowJudge(formula, filter.limits());
    average = new SpeedAverage(calibration, formula, settings, SpeedAverage.Window.CENTRED);
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
    average.finish(ready);
  }

  private void handOn(int core, Consumer<SpeedRow> ready) {
    List<Optional<PreparedRow>> coreRows = rows.subList(0, core);
    double noise2 = NoiseLevel.variance(coreRows, noise, stillSignal);
    double walk2_1_s =
        fixedWalk2_1_s.isPresent()
            ? fixedWalk2_1_s.getAsDouble()
            : strength.choose(rows, core, filter, noise2);
    HeaterTrace heater = forwards(core, walk2_1_s, noise2);
    trace.smooth();
    heater.lookBack(trace, formula);
    int at = 0;
    double[] mean = new double[HeatState.SIZE];
    for (int i = 0; i < core; i++) {
      Optional<PreparedRow> row = rows.get(i);
      if (row.isEmpty()) {
        average.accept(Optional.empty(), ready);
        continue;
      }
      for (int j = 0; j < mean.length; j++) {
        mean[j] = trace.mean(at, j);
      }
      Heater belief = heater.at(at);
      average.accept(
          Optional.of(
              judge.judge(row.get(), mean, trace.logLossVariance(at), 2 * walk2_1_s, belief)),
          ready);
      at++;
    }
    coreRows.clear();
  }

  /** Runs the filter over block and stretch; leaves it where the block ends. */
  private HeaterTrace forwards(int core, double walk2_1_s, double noise2) {
    HeaterTrace heater = new HeaterTrace();
    trace.clear();
    scratch.copyFrom(filter);
    for (int i = 0; i < rows.size(); i++) {
      Optional<PreparedRow> row = rows.get(i);
      if (row.isPresent()) {
        scratch.step(row.get(), walk2_1_s, noise2);
        trace.add(scratch);
        heater.add(row.get(), scratch);
      }
      if (i == core - 1) {
        filter.copyFrom(scratch);
      }
    }
    return heater;
  }
}
