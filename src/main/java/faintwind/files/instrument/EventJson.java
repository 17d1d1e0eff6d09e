package faintwind.files.instrument;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.message.Amount;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ChecklistChosen;
import faintwind.record.Event.ClockConfirmed;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.OwnFileNoted;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.RehearsalBegun;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.StepOpened;
import faintwind.record.Event.Waived;
import faintwind.record.ReadingVerdict;
import java.util.Locale;
import java.util.Optional;

/**
 * Journal events as JSON keys. The key {@code what} names the kind; all kinds and keys are in
 * {@code assets/schemas/journal.schema.json}.
 */
final class EventJson {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String KINDS =
      "instrument, rehearsal, design, checklist, step-opened, step-finished, reading, answer,"
          + " caution, clock, clock-confirmed, meter, own-file, photo, waiver, part, note, file,"
          + " calibration, in-force, correction";

  private EventJson() {}

  static void write(Event event, ObjectNode to) {
    if (event instanceof InstrumentCreated e) {
      to.put("what", "instrument").put("name", e.name()).put("made_up", e.madeUp());
    } else if (event instanceof RehearsalBegun) {
      to.put("what", "rehearsal");
    } else if (event instanceof DesignChosen e) {
      to.put("what", "design").put("why", e.why()).set("design", parsed(e.json()));
    } else if (event instanceof ChecklistChosen e) {
      to.put("what", "checklist").put("checklist", e.checklist());
      to.put("version", e.version()).put("sha256", e.sha256());
    } else if (event instanceof Corrected e) {
      to.put("what", "correction").put("entry", e.entry()).put("why", e.why());
      e.replacement().ifPresent(r -> write(r, to.putObject("replacement")));
    } else {
      writeWork(event, to);
    }
  }

  private static void writeWork(Event event, ObjectNode to) {
    if (event instanceof StepOpened) {
      to.put("what", "step-opened");
    } else if (event instanceof StepFinished) {
      to.put("what", "step-finished");
    } else if (event instanceof ReadingEntered e) {
      to.put("what", "reading").put("reading", e.reading()).put("typed", e.typed());
      writeAmount(e.amount(), to);
      e.verdict().ifPresent(v -> to.put("verdict", v.word()));
    } else if (event instanceof QuestionAnswered e) {
      to.put("what", "answer").put("question", e.question()).put("choice", e.choice());
    } else if (event instanceof CautionAcknowledged e) {
      to.put("what", "caution").put("caution", e.caution());
    } else if (event instanceof ClockStarted e) {
      to.put("what", "clock").put("clock", e.clock()).put("duration_s", e.duration_s());
    } else if (event instanceof ClockConfirmed e) {
      to.put("what", "clock-confirmed").put("clock", e.clock());
    } else if (event instanceof MeterChosen e) {
      to.put("what", "meter").put("meter", e.meter());
    } else if (event instanceof Waived e) {
      to.put("what", "waiver").put("waived", e.what()).put("reason", e.reason());
    } else {
      writeThings(event, to);
    }
  }

  private static void writeThings(Event event, ObjectNode to) {
    if (event instanceof PhotoAdded e) {
      to.put("what", "photo").put("file", e.file()).put("sha256", e.sha256());
      to.put("caption", e.caption());
    } else if (event instanceof OwnFileNoted e) {
      to.put("what", "own-file").put("file", e.file());
      to.put("sha256", e.sha256()).put("refused", e.refused());
    } else if (event instanceof PartRecorded e) {
      to.put("what", "part").put("part", e.part()).put("lot", e.lot());
      e.price().ifPresent(price -> to.put("price", price).put("currency", e.currency()));
    } else if (event instanceof NoteWritten e) {
      to.put("what", "note").put("text", e.text());
    } else if (event instanceof FileAdded e) {
      to.put("what", "file").put("kind", word(e.kind())).put("file", e.file());
      to.put("sha256", e.sha256());
    } else if (event instanceof CalibrationMade e) {
      to.put("what", "calibration").put("file", e.file()).put("sha256", e.sha256());
    } else if (event instanceof CalibrationPutInForce e) {
      to.put("what", "in-force").put("file", e.file());
    }
  }

  private static void writeAmount(Amount amount, ObjectNode to) {
    if (amount.bound() != Amount.Bound.OVER_RANGE) {
      to.put("value", amount.value());
    }
    to.put("unit", amount.unit());
    if (amount.bound() != Amount.Bound.EXACT) {
      to.put("bound", word(amount.bound()));
    }
    amount.tolerance().ifPresent(t -> to.put("tolerance", t));
  }

  /** Empty where a problem was noted. */
  static Optional<Event> read(Keys keys) {
    String kind = keys.text("what");
    return switch (kind) {
      case "instrument" ->
          Optional.of(new InstrumentCreated(keys.text("name"), keys.flag("made_up")));
      case "rehearsal" -> Optional.of(new RehearsalBegun());
      case "design" -> Optional.of(new DesignChosen(keys.json("design"), keys.text("why")));
      case "checklist" ->
          Optional.of(
              new ChecklistChosen(
                  keys.text("checklist"), keys.text("version"), keys.text("sha256")));
      case "step-opened" -> Optional.of(new StepOpened());
      case "step-finished" -> Optional.of(new StepFinished());
      case "reading" -> readReading(keys);
      case "answer" ->
          Optional.of(new QuestionAnswered(keys.text("question"), keys.text("choice")));
      case "caution" -> Optional.of(new CautionAcknowledged(keys.text("caution")));
      case "clock" -> Optional.of(new ClockStarted(keys.text("clock"), keys.number("duration_s")));
      case "clock-confirmed" -> Optional.of(new ClockConfirmed(keys.text("clock")));
      case "meter" -> Optional.of(new MeterChosen(keys.text("meter")));
      case "waiver" -> Optional.of(new Waived(keys.text("waived"), keys.text("reason")));
      default -> readThings(kind, keys);
    };
  }

  private static Optional<Event> readThings(String kind, Keys keys) {
    return switch (kind) {
      case "photo" ->
          Optional.of(new PhotoAdded(keys.text("file"), keys.text("sha256"), keys.text("caption")));
      case "own-file" ->
          Optional.of(
              new OwnFileNoted(
                  keys.text("file"),
                  keys.optionalText("sha256").orElse(""),
                  keys.optionalText("refused").orElse("")));
      case "part" ->
          Optional.of(
              new PartRecorded(
                  keys.text("part"),
                  keys.text("lot"),
                  keys.optionalNumber("price"),
                  keys.optionalText("currency").orElse("")));
      case "note" -> Optional.of(new NoteWritten(keys.text("text")));
      case "file" ->
          fileKind(keys).map(file -> new FileAdded(file, keys.text("file"), keys.text("sha256")));
      case "calibration" ->
          Optional.of(new CalibrationMade(keys.text("file"), keys.text("sha256")));
      case "in-force" -> Optional.of(new CalibrationPutInForce(keys.text("file")));
      case "correction" -> {
        Optional<Keys> inside = keys.inside("replacement");
        Optional<Event> replacement = inside.flatMap(EventJson::read);
        yield inside.isPresent() && replacement.isEmpty()
            ? Optional.empty()
            : Optional.of(new Corrected(keys.text("entry"), keys.text("why"), replacement));
      }
      default -> {
        if (!kind.isEmpty()) {
          keys.unknownWord("what", kind, KINDS);
        }
        yield Optional.empty();
      }
    };
  }

  private static Optional<Event> readReading(Keys keys) {
    String unit = keys.text("unit");
    String boundWord = keys.optionalText("bound").orElse("exact");
    Optional<Amount.Bound> bound = bound(boundWord);
    if (bound.isEmpty()) {
      keys.unknownWord("bound", boundWord, "exact, at-least, at-most, over-range");
      return Optional.empty();
    }
    double value =
        bound.get() == Amount.Bound.OVER_RANGE ? Double.POSITIVE_INFINITY : keys.number("value");
    Amount amount = new Amount(value, unit, bound.get(), keys.optionalNumber("tolerance"));
    Optional<String> verdictWord = keys.optionalText("verdict");
    Optional<ReadingVerdict> verdict = verdictWord.flatMap(ReadingVerdict::ofWord);
    if (verdictWord.isPresent() && verdict.isEmpty()) {
      keys.unknownWord("verdict", verdictWord.get(), "good, doubtful, stop");
      return Optional.empty();
    }
    return Optional.of(
        new ReadingEntered(keys.text("reading"), keys.text("typed"), amount, verdict));
  }

  private static Optional<Amount.Bound> bound(String text) {
    for (Amount.Bound bound : Amount.Bound.values()) {
      if (word(bound).equals(text)) {
        return Optional.of(bound);
      }
    }
    return Optional.empty();
  }

  private static Optional<FileRole> fileKind(Keys keys) {
    String text = keys.text("kind");
    for (FileRole kind : FileRole.values()) {
      if (word(kind).equals(text)) {
        return Optional.of(kind);
      }
    }
    keys.unknownWord("kind", text, "run, runs-table, field-log, speeds, report, plan");
    return Optional.empty();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static com.fasterxml.jackson.databind.JsonNode parsed(String json) {
    try {
      return JSON.readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("the design is not JSON: " + e.getOriginalMessage(), e);
    }
  }
}
