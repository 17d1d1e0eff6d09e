package faintwind.record;

import faintwind.message.Amount;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one journal entry says. Each event names what happened, never what follows from it: verdicts
 * and gates are worked out anew from the entries.
 */
public sealed interface Event {

  /** The folder was begun; {@code madeUp} marks demonstration data in every output. */
  record InstrumentCreated(String name, boolean madeUp) implements Event {}

  /** The folder is for rehearsals with the virtual instrument: nothing in it was measured. */
  record RehearsalBegun() implements Event {}

  /** A design was chosen or changed. {@code json} is the design file as text. */
  record DesignChosen(String json, String why) implements Event {}

  /** Which checklist guides the build, by id, version and hash of all its files. */
  record ChecklistChosen(String checklist, String version, String sha256) implements Event {}

  /** A step was opened. */
  record StepOpened() implements Event {}

  /** The builder says that the step's work is finished. */
  record StepFinished() implements Event {}

  /**
   * A reading was typed.
   *
   * @param reading id of the reading in its step
   * @param typed the text as typed
   * @param amount what was understood
   * @param verdict what it was judged to be at that moment
   */
  record ReadingEntered(
      String reading, String typed, Amount amount, Optional<ReadingVerdict> verdict)
      implements Event {}

  /** A question of a step was answered with one of its choices. */
  record QuestionAnswered(String question, String choice) implements Event {}

  /** A caution was read; name and time are the entry's. */
  record CautionAcknowledged(String caution) implements Event {}

  /** The class of meter that is used from here on, by its id. */
  record MeterChosen(String meter) implements Event {}

  /** A clock was started: pot life, cure, warm-up. */
  record ClockStarted(String clock, double duration_s) implements Event {}

  /** The person says that the computer's time is right, so that the clock has ended. */
  record ClockConfirmed(String clock) implements Event {}

  /**
   * A checklist file of the teacher's own was used in place of the shipped one, or was refused.
   *
   * @param file name in the checklist, such as {@code 04-assemble/coat-parts.json}
   * @param sha256 hash of the file; empty where it is not used any more
   * @param refused why it was not used; empty where it was
   */
  record OwnFileNoted(String file, String sha256, String refused) implements Event {
    /** The word for what happened: used, refused or gone. */
    public String kind() {
      if (sha256.isEmpty()) {
        return "gone";
      }
      return refused.isEmpty() ? "used" : "refused";
    }
  }

  /** A photo was kept. {@code file} is relative to the folder. */
  record PhotoAdded(String file, String sha256, String caption) implements Event {}

  /** A requirement was set aside, by name and with a reason. {@code what} is a reading's id. */
  record Waived(String what, String reason) implements Event {}

  /** A part was bought or made. */
  record PartRecorded(String part, String lot, OptionalDouble price, String currency)
      implements Event {}

  /** Free text. */
  record NoteWritten(String text) implements Event {}

  /** A file was brought into the folder; {@code kind} says which. */
  record FileAdded(FileRole kind, String file, String sha256) implements Event {}

  /** A calibration was made from the folder's runs. */
  record CalibrationMade(String file, String sha256) implements Event {}

  /** A calibration counts from the entry's time on. */
  record CalibrationPutInForce(String file) implements Event {}

  /**
   * An earlier entry is struck through; nothing is removed. Without a replacement this is an undo.
   *
   * @param entry id of the entry that is corrected
   * @param why the reason
   * @param replacement what stands in its place
   */
  record Corrected(String entry, String why, Optional<Event> replacement) implements Event {}

  /** What an added file is. */
  enum FileRole {
    RUN,
    RUNS_TABLE,
    FIELD_LOG,
    SPEEDS,
    REPORT,
    PLAN
  }
}
