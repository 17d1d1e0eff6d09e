package faintwind.ui;

import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ChecklistChosen;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.StepOpened;
import faintwind.record.Event.Waived;
import java.time.Duration;

/** One line of words for each kind of journal event. */
final class EventWords {
  private final Messages words;

  EventWords(Messages words) {
    this.words = words;
  }

  /** What the event says, without its time and its author. */
  String say(Event event) {
    if (event instanceof ReadingEntered e) {
      return words.text("window.record.reading", e.reading(), e.typed());
    } else if (event instanceof QuestionAnswered e) {
      return words.text("window.record.answer", e.question(), e.choice());
    } else if (event instanceof CautionAcknowledged e) {
      return words.text("window.record.caution", e.caution());
    } else if (event instanceof Waived e) {
      return words.text("window.record.waived", e.what(), e.reason());
    } else if (event instanceof ClockStarted e) {
      long seconds = Math.round(e.duration_s());
      String time = Figures.duration(words, Duration.ofSeconds(seconds));
      return words.text("window.record.clock", e.clock(), time);
    } else if (event instanceof NoteWritten e) {
      return e.text();
    } else if (event instanceof StepFinished) {
      return words.text("window.record.step-finished");
    } else if (event instanceof StepOpened) {
      return words.text("window.record.step-opened");
    }
    return sayThing(event);
  }

  private String sayThing(Event event) {
    if (event instanceof InstrumentCreated e) {
      return words.text("window.record.created", e.name());
    } else if (event instanceof DesignChosen e) {
      return e.why().isEmpty()
          ? words.text("window.record.design")
          : words.text("window.record.design-why", e.why());
    } else if (event instanceof ChecklistChosen e) {
      return words.text("window.record.checklist", e.checklist(), e.version());
    } else if (event instanceof PhotoAdded e) {
      return words.text("window.record.photo", e.caption().isEmpty() ? e.file() : e.caption());
    } else if (event instanceof PartRecorded e) {
      return words.text("window.record.part", e.part(), e.lot());
    } else if (event instanceof FileAdded e) {
      return words.text("window.record.file", e.file());
    } else if (event instanceof CalibrationMade e) {
      return words.text("window.record.calibration", e.file());
    } else if (event instanceof CalibrationPutInForce e) {
      return words.text("window.record.in-force", e.file());
    }
    throw new IllegalArgumentException("no words for event " + event.getClass().getSimpleName());
  }
}
