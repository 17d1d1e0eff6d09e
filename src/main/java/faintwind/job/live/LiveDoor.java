package faintwind.job.live;

import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.LiveSample;
import faintwind.calibration.profile.LineOutcome;
import faintwind.calibration.run.Possible;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Leaves out of each reading what it cannot have measured, and counts it. For one recording. */
final class LiveDoor {
  private final LiveHead head;
  private final Possible possible;
  private List<Problem> latest = List.of();
  private long leftOut;

  LiveDoor(LiveHead head, Possible possible) {
    this.head = head;
    this.possible = possible;
  }

  /** The reading without what cannot be; its notes say what was left out of it before. */
  LiveSample let(LineOutcome.Row row) {
    LiveSample sample = row.sample();
    latest = new ArrayList<>(row.notes());
    OptionalDouble signal = sample.signal();
    OptionalDouble supply_V = sample.supply_V();
    if (signal.isPresent() && !possible.allowsSignal(signal.getAsDouble())) {
      leaveOut(signal.getAsDouble(), head.unit().symbol(), head.unit().column());
      signal = OptionalDouble.empty();
    }
    if (supply_V.isPresent() && !possible.allowsSupply(supply_V.getAsDouble())) {
      leaveOut(supply_V.getAsDouble(), "V", "supply_V");
      supply_V = OptionalDouble.empty();
    }
    leftOut += latest.size();
    return new LiveSample(sample.time_s(), signal, sample.air(), supply_V, sample.terminal_K());
  }

  private void leaveOut(double value, String unit, String column) {
    Where where = Where.file(head.source()).atColumn(column);
    latest.add(Problem.warning("import.impossible", where, String.valueOf(value), unit));
  }

  /** What was left out of the last reading. */
  List<Problem> latest() {
    return latest;
  }

  /** Values left out so far. */
  long leftOut() {
    return leftOut;
  }
}
