package faintwind.ui.record;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.message.AmountText;
import faintwind.message.FirstSentences;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.Event.AlterationAccepted;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ChainBegun;
import faintwind.record.Event.ChecklistChosen;
import faintwind.record.Event.ClockConfirmed;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.HandedOver;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.LinesLost;
import faintwind.record.Event.LogConverted;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.OwnFileNoted;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Rechecked;
import faintwind.record.Event.RehearsalBegun;
import faintwind.record.Event.Repaired;
import faintwind.record.Event.Retired;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.StepOpened;
import faintwind.record.Event.Waived;
import faintwind.ui.part.TimeText;
import java.time.Duration;
import java.util.Optional;

/** One line of words for each kind of journal event. */
final class EventWords {
  private static final int MOST_LETTERS = 80;

  private final Messages words;
  private final Checklist checklist;

  EventWords(Messages words, Checklist checklist) {
    this.words = words;
    this.checklist = checklist;
  }

  /** A step's title; its id where the checklist has it no longer. */
  String step(String id) {
    return checklist.step(id).map(Step::title).orElse(id);
  }

  /** What a caution says that stands before the turntable or an opening. */
  private String ofNoStep(String caution) {
    return switch (caution) {
      case "spinning-arm" -> words.text("turntable.caution.text");
      case "opening" -> words.text("flow.caution");
      case "opening-hive" -> words.text("flow.caution-hive");
      default -> caution;
    };
  }

  /** What the event says, without its time and its author. */
  String say(Optional<String> step, Event event) {
    Optional<Step> at = step.flatMap(checklist::step);
    if (event instanceof ReadingEntered e) {
      return words.text(
          "window.record.reading",
          reading(at, e.reading()),
          e.typed(),
          AmountText.understood(e.amount(), words));
    } else if (event instanceof QuestionAnswered e) {
      Optional<Question> question = question(at, e.question());
      return words.text(
          "window.record.answer",
          question.map(Question::text).orElse(e.question()),
          question.flatMap(q -> q.choice(e.choice())).map(c -> c.text()).orElse(e.choice()));
    } else if (event instanceof CautionAcknowledged e) {
      String text =
          at.flatMap(s -> s.caution(e.caution()))
              .map(Caution::text)
              .orElseGet(() -> ofNoStep(e.caution()));
      return words.text("window.record.caution", FirstSentences.of(text, MOST_LETTERS));
    } else if (event instanceof Waived e) {
      return words.text("window.record.waived", reading(at, e.what()), e.reason());
    } else if (event instanceof ClockStarted e) {
      long seconds = Math.round(e.duration_s());
      String time = TimeText.of(words, Duration.ofSeconds(seconds));
      return words.text("window.record.clock", clock(at, e.clock()), time);
    } else if (event instanceof ClockConfirmed e) {
      return words.text("window.record.clock-confirmed", clock(at, e.clock()));
    } else if (event instanceof NoteWritten e) {
      return e.text();
    } else if (event instanceof StepFinished) {
      return words.text("window.record.step-finished");
    } else if (event instanceof StepOpened) {
      return words.text("window.record.step-opened");
    }
    return sayThing(event);
  }

  private static String reading(Optional<Step> step, String id) {
    return step.flatMap(s -> s.reading(id)).map(Reading::label).orElse(id);
  }

  private static Optional<Question> question(Optional<Step> step, String id) {
    return step.flatMap(
        s -> s.asks().questions().stream().filter(q -> q.id().equals(id)).findFirst());
  }

  private static String clock(Optional<Step> step, String id) {
    return step.flatMap(s -> s.asks().clock()).map(Step.ClockSpec::label).orElse(id);
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
    } else if (event instanceof RehearsalBegun) {
      return words.text("window.record.rehearsal");
    } else if (event instanceof MeterChosen e) {
      return words.text("window.record.meter", e.meter());
    } else if (event instanceof OwnFileNoted e) {
      return words.text("window.record.own-file." + e.kind(), e.file(), e.sha256(), e.refused());
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
    return sayFate(event);
  }

  /** What befell the instrument and its journal. */
  private String sayFate(Event event) {
    if (event instanceof LogConverted e) {
      return words.text("window.record.converted", e.log(), e.speeds(), e.calibration());
    } else if (event instanceof Rechecked e) {
      String key = e.agrees() ? "window.record.recheck-stands" : "window.record.recheck-due";
      return words.text(key, e.calibration(), e.text(), e.runs());
    } else if (event instanceof Repaired e) {
      return words.text("window.record.repair", e.text());
    } else if (event instanceof HandedOver e) {
      return words.text("window.record.hand-over", e.to(), e.text());
    } else if (event instanceof Retired e) {
      return words.text("window.record.retired", e.why());
    } else if (event instanceof ChainBegun e) {
      return words.text("window.record.chain", e.lines());
    } else if (event instanceof LinesLost e) {
      return words.text("window.record.lines-lost", e.lines() - e.left(), e.lines());
    } else if (event instanceof AlterationAccepted e) {
      return words.text("window.record.accepted", e.place(), e.reason());
    }
    throw new IllegalArgumentException("no words for event " + event.getClass().getSimpleName());
  }
}
