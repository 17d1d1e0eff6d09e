package faintwind.job.live;

import faintwind.calibration.Provenance;
import faintwind.calibration.live.LiveColumn;
import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.run.SignalUnit;
import faintwind.device.Timekeeper;
import faintwind.device.TypedReadings;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.EnumSet;

/**
 * Readings that a person takes from a plain meter at even times and types. Safe from any thread.
 */
public final class TypedSession {
  private final TypedReadings readings;
  private final SignalUnit unit;
  private final LiveInput input;

  /** Asks a person to read the meter now: with a beep, and in words. */
  @FunctionalInterface
  public interface Asker {
    /**
     * Asks; called on the recording's own thread.
     *
     * @param number how many times it was asked by now, from 1
     * @param time_s time in the recording, s
     */
    void ask(long number, double time_s);
  }

  /**
   * A session that begins with its recording.
   *
   * @param address how often, in what unit
   * @param text how the file names it
   * @param asker asks for each reading
   */
  public TypedSession(SourceAddress.Typed address, String text, Asker asker) {
    this(address, text, asker, Timekeeper.system());
  }

  TypedSession(SourceAddress.Typed address, String text, Asker asker, Timekeeper time) {
    readings = new TypedReadings(address.every_s(), asker::ask, time);
    unit = address.unit();
    LiveHead head = new LiveHead(unit, EnumSet.noneOf(LiveColumn.class), Provenance.MEASURED, text);
    input = LiveInput.ofReadings(readings, head);
  }

  /** The source for a {@link LiveRecording}. */
  public LiveInput input() {
    return input;
  }

  /**
   * A reading as it was typed, with decimal point or comma, with or without its unit. It belongs to
   * the last time it was asked for.
   *
   * @return the value in the session's unit; refused where it is no number or could mean two
   */
  public Checked<Double> enter(String typed) {
    String symbol = unit == SignalUnit.SIGNAL_COUNTS ? "" : unit.symbol();
    Checked<Double> value = NumberText.read(typed, symbol).then(TypedSession::exact);
    value.map(
        v -> {
          readings.enter(v);
          return v;
        });
    return value;
  }

  private static Checked<Double> exact(Amount amount) {
    return amount.bound() == Amount.Bound.EXACT
        ? Checked.ok(amount.value())
        : Checked.refused(Problem.error("live.typed-not-exact", Where.NOWHERE, ""));
  }

  /** No further reading comes; the recording ends. */
  public void end() {
    readings.end();
  }
}
