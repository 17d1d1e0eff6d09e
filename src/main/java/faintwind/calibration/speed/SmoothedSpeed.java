package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.state.BlockSmoother;
import faintwind.calibration.speed.state.BlockSmoother.Smoothed;
import faintwind.calibration.speed.state.ErrorMemory;
import faintwind.calibration.speed.state.FieldFormula;
import faintwind.calibration.speed.state.HeatState;
import faintwind.calibration.speed.state.HeaterTrace.Heater;
import faintwind.calibration.speed.state.PreparedRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * The estimator for a file. Rows are gathered to a block and a stretch beyond it; the block is
 * smoothed, and what follows from its rows is handed on. Memory is bounded by the block. Gathering
 * a block hangs on no smoothing, and smoothing a block on nothing that follows from another: each
 * may be left to a thread of its own.
 */
public final class SmoothedSpeed implements SpeedEstimator {
  private final SmoothingBlock block;
  private final Workers workers;
  private final FieldFormula formula;
  private final LogPreparation preparation;
  private final BlockSmoother smoother;
  private final RowJudge judge;
  private final SpeedMeans means;
  private final List<Optional<PreparedRow>> rows = new ArrayList<>();
  private boolean supplyRecorded;

  SmoothedSpeed(
      Calibration calibration,
      SpeedSettings settings,
      Optional<Consumer<MinuteSpeed>> minutes,
      Workers workers) {
    this(
        calibration,
        settings,
        SmoothingBlock.USUAL,
        new BlockSmoother(calibration, OptionalDouble.empty()),
        minutes,
        workers);
  }

  SmoothedSpeed(
      Calibration calibration,
      SpeedSettings settings,
      SmoothingBlock block,
      BlockSmoother smoother,
      Optional<Consumer<MinuteSpeed>> minutes,
      Workers workers) {
    this.block = block;
    this.smoother = smoother;
    this.workers = workers;
    formula = FieldFormula.forLog(calibration);
    preparation = new LogPreparation(calibration, formula, settings);
    FieldFormula own = FieldFormula.forLog(calibration);
    judge = new RowJudge(own, smoother.limits(), ErrorMemory.SMOOTHED);
    means =
        new SpeedMeans(
            calibration, own, settings.average_s(), SpeedAverage.Window.CENTRED, minutes);
  }

  @Override
  public void accept(LogSample sample, Consumer<SpeedRow> ready) {
    Optional<PreparedRow> row = preparation.next(sample, formula);
    rows.add(row);
    if (row.isPresent() && row.get().supply() != PreparedRow.Supply.NOT_RECORDED) {
      supplyRecorded = true;
    }
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
    workers.smoothing().accept(() -> workers.telling().accept(() -> means.finish(ready)));
  }

  private void handOn(int core, Consumer<SpeedRow> ready) {
    List<Optional<PreparedRow>> coreRows = new ArrayList<>(rows.subList(0, core));
    List<PreparedRow> readable = new ArrayList<>(rows.size());
    int readableCore = 0;
    for (int i = 0; i < rows.size(); i++) {
      Optional<PreparedRow> row = rows.get(i);
      if (row.isPresent()) {
        readable.add(row.get());
        readableCore += i < core ? 1 : 0;
      }
    }
    rows.subList(0, core).clear();
    int count = readableCore;
    workers.smoothing().accept(() -> smooth(coreRows, readable, count, ready));
  }

  private void smooth(
      List<Optional<PreparedRow>> coreRows,
      List<PreparedRow> readable,
      int count,
      Consumer<SpeedRow> ready) {
    Smoothed smoothed = smoother.smoothed(readable, count);
    workers.telling().accept(() -> tell(coreRows, smoothed, ready));
  }

  private void tell(
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
}
