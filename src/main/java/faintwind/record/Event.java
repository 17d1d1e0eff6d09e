package faintwind.record;

import faintwind.message.Amount;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one journal entry says. Each event names what happened, never what follows from it: verdicts
 * and gates are worked out anew from the entries.
 */
public sealed interface Event {

  /** The file of the folder that it enters, with the hash it had then; most enter none. */
  default Optional<Attached> attached() {
    return Optional.empty();
  }

  /**
   * A file as it was entered.
   *
   * @param file relative to the folder, with slashes
   * @param sha256 of its bytes, in lower-case hexadecimal
   */
  record Attached(String file, String sha256) {}

  /**
   * The folder was begun.
   *
   * @param madeUp marks demonstration data in every output
   * @param members how many build it together, in a class; each of them reads every caution
   */
  record InstrumentCreated(String name, boolean madeUp, Optional<Integer> members)
      implements Event {
    /** One that is built alone. */
    public InstrumentCreated(String name, boolean madeUp) {
      this(name, madeUp, Optional.empty());
    }
  }

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
  record PhotoAdded(String file, String sha256, String caption) implements Event {
    @Override
    public Optional<Attached> attached() {
      return Optional.of(new Attached(file, sha256));
    }
  }

  /** A requirement was set aside, by name and with a reason. {@code what} is a reading's id. */
  record Waived(String what, String reason) implements Event {}

  /** A part was bought or made. */
  record PartRecorded(String part, String lot, OptionalDouble price, String currency)
      implements Event {}

  /** Free text. */
  record NoteWritten(String text) implements Event {}

  /** A file was brought into the folder; {@code kind} says which. */
  record FileAdded(FileRole kind, String file, String sha256) implements Event {
    @Override
    public Optional<Attached> attached() {
      return Optional.of(new Attached(file, sha256));
    }
  }

  /** A calibration was made from the folder's runs. */
  record CalibrationMade(String file, String sha256) implements Event {
    @Override
    public Optional<Attached> attached() {
      return Optional.of(new Attached(file, sha256));
    }
  }

  /**
   * A calibration counts.
   *
   * @param file relative to the folder
   * @param from since when: the end of its measurement; empty where the entry's own time counts
   */
  record CalibrationPutInForce(String file, Optional<OffsetDateTime> from) implements Event {
    /** One that counts from the entry's time on. */
    public CalibrationPutInForce(String file) {
      this(file, Optional.empty());
    }
  }

  /**
   * A field log was converted. Log and speeds are files of the folder, entered on lines of their
   * own.
   *
   * @param log the field log, relative to the folder
   * @param speeds the air speeds made from it
   * @param calibration the calibration used, relative to the folder; its name where it lies outside
   * @param sha256 of the calibration
   * @param software version of the program that converted it; empty in older journals
   */
  record LogConverted(
      String log, String speeds, String calibration, String sha256, Optional<String> software)
      implements Event {}

  /**
   * A calibration was checked at one or two speeds of the arm. Its runs are files of the folder,
   * entered on lines of their own.
   *
   * @param calibration the one that was checked, relative to the folder
   * @param sha256 of the calibration
   * @param runs the table of the runs, relative to the folder
   * @param agrees whether it reads what the arm says at each speed, within both uncertainties
   * @param text what each run showed
   * @param software version of the program that checked it
   */
  record Rechecked(
      String calibration,
      String sha256,
      String runs,
      boolean agrees,
      String text,
      Optional<String> software)
      implements Event {}

  /**
   * Something was mended or taken apart. The entry's step is the one whose work was done again;
   * readings that rest on it are to be taken again.
   */
  record Repaired(String text) implements Event {}

  /** The instrument was given to somebody else. */
  record HandedOver(String to, String text) implements Event {}

  /** The instrument is not used any more. */
  record Retired(String why) implements Event {}

  /**
   * The lines before this one carry no hashes: the journal was begun by a program that wrote none.
   *
   * @param lines how many they are
   * @param sha256 of all bytes before this line
   */
  record ChainBegun(int lines, String sha256) implements Event {}

  /**
   * The journal was found to end before the last line that the folder's summary knew.
   *
   * @param head hash of the last line that was known
   * @param lines how many lines were known
   * @param left how many of them were found
   */
  record LinesLost(String head, int lines, int left) implements Event {}

  /**
   * A person accepts that a line or file is not what was entered, and says why. It stays on every
   * report.
   *
   * @param place a file of the folder, or {@code journal.jsonl:12} for a line
   * @param sha256 of the bytes that are accepted
   */
  record AlterationAccepted(String place, String sha256, String reason) implements Event {}

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
    /** Runs table of a short check: nothing is calibrated from it. */
    CHECK_TABLE,
    /** What stands between junctions and recording: {@code chain.json} beside a runs table. */
    CHAIN,
    FIELD_LOG,
    SPEEDS,
    /** Means of whole minutes of speeds. */
    MINUTES,
    /** Flow through an opening. */
    FLOW,
    /** Places ranked by their speed. */
    SURVEY,
    /** Figures of a field log, as a table or a picture. */
    SUMMARY,
    REPORT,
    PLAN,
    /** A last line that a crash cut off, set aside. */
    TORN_LINE,
    /** Anything else that a person brought in. */
    OTHER
  }
}
