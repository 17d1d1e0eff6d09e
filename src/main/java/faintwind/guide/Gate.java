package faintwind.guide;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.record.Event.DesignChosen;
import java.util.List;

/**
 * Whether one may go on, and if not, everything that is missing. Nothing else in the program opens
 * a gate. A reading, a photo or a clock can be waived by name and with a reason; a caution or an
 * answer that stops cannot.
 */
public final class Gate {
  /** Power on the heater. */
  public static final String HEATER_POWER = "heater-power";

  /** Turning the arm. */
  public static final String FIRST_SPIN = "first-spin";

  /** Taking the instrument out. */
  public static final String FIRST_FIELD_LOG = "first-field-log";

  /** Plating by the builder. */
  public static final String HOME_PLATING = "home-plating";

  private Gate() {}

  /**
   * Open, or the reasons why not.
   *
   * @param reasons empty where the gate is open
   */
  public record Answer(List<Problem> reasons) {
    public Answer {
      reasons = List.copyOf(reasons);
    }

    public boolean open() {
      return reasons.isEmpty();
    }
  }

  /**
   * A named gate: open when every step that helps to open it is finished and stands, with all that
   * those steps need. A gate that no step opens stays shut.
   */
  public static Answer check(Checklist checklist, String gate, Situation situation) {
    return new Answer(new Requirements(checklist, situation).gate(gate));
  }

  /**
   * What of the design on record keeps power off the heater, whatever else was done; empty where
   * nothing does, or where no design was chosen yet.
   */
  public static List<Problem> designStops(Situation situation) {
    return situation.state().last(DesignChosen.class).isEmpty()
        ? List.of()
        : PowerEvidence.design(situation);
  }

  /** Whether a step may be begun: what it needs is finished, the gates before it are open. */
  public static Answer toBegin(Checklist checklist, Step step, Situation situation) {
    return new Answer(new Requirements(checklist, situation).toBegin(step));
  }

  /** Whether a step may be called finished: all it asks for is there and good, or waived. */
  public static Answer toFinish(Checklist checklist, Step step, Situation situation) {
    return new Answer(new Requirements(checklist, situation).toFinish(step));
  }

  /** The cautions of a step that nobody has acknowledged yet; its instruction stays covered. */
  public static List<Caution> unread(Step step, Situation situation) {
    return Requirements.unread(step, situation);
  }
}
