package faintwind.job.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.field.FieldSummary;
import faintwind.calibration.field.SharedPart;
import faintwind.calibration.field.SpeedSeries;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.field.Summarise;
import faintwind.calibration.speed.MinuteSpeed;
import faintwind.calibration.speed.SpeedRow;
import faintwind.files.run.LogRow;
import java.util.List;
import java.util.Optional;

/** Takes the rows of a log that is only looked at, and its minutes for the main figures. */
final class ShownLog implements LogConversion.Target {
  private final FieldRows rows = new FieldRows();
  private final SpeedSeries.Builder minutes = new SpeedSeries.Builder();

  @Override
  public void take(LogRow row, SpeedRow speed) {
    rows.add(row.time_s(), row.signal(), speed);
  }

  @Override
  public boolean wantsMinutes() {
    return true;
  }

  @Override
  public void take(MinuteSpeed minute) {
    minutes.add(minute.from_s(), minute.speed());
  }

  FieldRows rows() {
    return rows;
  }

  /** The figures over whole minutes, which are not averaged before: two are one block. */
  Optional<FieldSummary> figures(Calibration by) {
    StretchMean.How how =
        new StretchMean.How(2 * MinuteSpeed.LENGTH_S, SharedPart.of(by), StretchMean.Of.THIS_TIME);
    FieldSummary.Wanted wanted =
        new FieldSummary.Wanted(List.of(), FieldSummary.Wanted.CALM_M_S, 0, how);
    return Summarise.of(minutes.build(), wanted);
  }
}
