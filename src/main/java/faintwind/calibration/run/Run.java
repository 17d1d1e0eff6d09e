package faintwind.calibration.run;

import java.util.Optional;

/**
 * One row of the runs table with its recording, cut to its window.
 *
 * @param name unique name
 * @param kind what happened
 * @param file run file as named in the table; rows with the same file share a clock and a state (a
 *     staircase)
 * @param recording the window's recording, times on the file's clock
 * @param conditions the room
 * @param arm present exactly for {@link RunKind#SPIN}
 * @param reference_m_s the other instrument's speed, present exactly for {@link RunKind#REFERENCE}
 */
public record Run(
    String name,
    RunKind kind,
    String file,
    Recording recording,
    RunConditions conditions,
    Optional<ArmTurning> arm,
    Optional<Uncertain> reference_m_s) {

  public Run {
    if (arm.isPresent() != (kind == RunKind.SPIN)) {
      throw new IllegalArgumentException("run " + name + ": arm and kind " + kind + " disagree");
    }
    if (reference_m_s.isPresent() != (kind == RunKind.REFERENCE)) {
      throw new IllegalArgumentException(
          "run " + name + ": reference speed and kind " + kind + " disagree");
    }
  }

  /** Whether a person left the whole run out. */
  public boolean isLeftOut() {
    return conditions.notCounted().isAll();
  }

  /** The same run, of whose arm something else is said. */
  public Run turned(ArmTurning other) {
    return new Run(name, kind, file, recording, conditions, Optional.of(other), reference_m_s);
  }

  /** The same run with the readings that count; as it is where it is left out as a whole. */
  Run counted() {
    return conditions.notCounted().isNothing() || isLeftOut()
        ? this
        : new Run(
            name,
            kind,
            file,
            recording.with(conditions.notCounted().of(recording.signal()).orElseThrow()),
            conditions,
            arm,
            reference_m_s);
  }
}
