package faintwind.files.instrument;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonTypeName;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.annotation.JsonSerialize;
import com.fasterxml.jackson.databind.util.StdConverter;
import faintwind.files.JsonFile;
import faintwind.files.JsonForm;
import faintwind.message.Amount;
import faintwind.message.Amount.Bound;
import faintwind.record.Event;
import faintwind.record.ReadingVerdict;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The keys of a journal event. The key {@code what} names the kind; all kinds and keys are in
 * {@code assets/schemas/journal.schema.json}.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "what")
@JsonSubTypes({
  @JsonSubTypes.Type(name = "instrument", value = Event.InstrumentCreated.class),
  @JsonSubTypes.Type(name = "rehearsal", value = Event.RehearsalBegun.class),
  @JsonSubTypes.Type(name = "design", value = Event.DesignChosen.class),
  @JsonSubTypes.Type(name = "checklist", value = Event.ChecklistChosen.class),
  @JsonSubTypes.Type(name = "step-opened", value = Event.StepOpened.class),
  @JsonSubTypes.Type(name = "step-finished", value = Event.StepFinished.class),
  @JsonSubTypes.Type(name = "reading", value = Event.ReadingEntered.class),
  @JsonSubTypes.Type(name = "answer", value = Event.QuestionAnswered.class),
  @JsonSubTypes.Type(name = "caution", value = Event.CautionAcknowledged.class),
  @JsonSubTypes.Type(name = "clock", value = Event.ClockStarted.class),
  @JsonSubTypes.Type(name = "clock-confirmed", value = Event.ClockConfirmed.class),
  @JsonSubTypes.Type(name = "meter", value = Event.MeterChosen.class),
  @JsonSubTypes.Type(name = "own-file", value = Event.OwnFileNoted.class),
  @JsonSubTypes.Type(name = "photo", value = Event.PhotoAdded.class),
  @JsonSubTypes.Type(name = "waiver", value = Event.Waived.class),
  @JsonSubTypes.Type(name = "part", value = Event.PartRecorded.class),
  @JsonSubTypes.Type(name = "note", value = Event.NoteWritten.class),
  @JsonSubTypes.Type(name = "file", value = Event.FileAdded.class),
  @JsonSubTypes.Type(name = "calibration", value = Event.CalibrationMade.class),
  @JsonSubTypes.Type(name = "in-force", value = Event.CalibrationPutInForce.class),
  @JsonSubTypes.Type(name = "converted", value = Event.LogConverted.class),
  @JsonSubTypes.Type(name = "recheck", value = Event.Rechecked.class),
  @JsonSubTypes.Type(name = "repair", value = Event.Repaired.class),
  @JsonSubTypes.Type(name = "hand-over", value = Event.HandedOver.class),
  @JsonSubTypes.Type(name = "retired", value = Event.Retired.class),
  @JsonSubTypes.Type(name = "chain", value = Event.ChainBegun.class),
  @JsonSubTypes.Type(name = "lines-lost", value = Event.LinesLost.class),
  @JsonSubTypes.Type(name = "accepted", value = Event.AlterationAccepted.class),
  @JsonSubTypes.Type(name = "correction", value = Event.Corrected.class)
})
interface EventForm {
  JsonForm JSON =
      new JsonForm(
          Map.of(
              Event.class, EventForm.class,
              Event.DesignChosen.class, Design.class,
              Event.ReadingEntered.class, Reading.class,
              Event.Waived.class, Waiver.class,
              Event.CalibrationPutInForce.class, InForce.class,
              Event.PartRecorded.class, Part.class));

  /** A design stands in the line as the object it is. */
  @JsonPropertyOrder({"why", "design"})
  interface Design {
    @JsonProperty("design")
    @JsonSerialize(converter = FromText.class)
    @JsonDeserialize(converter = ToText.class)
    String json();
  }

  @JsonSerialize(converter = FromInForce.class)
  @JsonDeserialize(converter = ToInForce.class)
  interface InForce {}

  /** Since when it counts stands as a time with its offset. */
  @JsonTypeName("in-force")
  record StoredInForce(String file, Optional<String> from) {}

  interface Waiver {
    @JsonProperty("waived")
    String what();
  }

  interface Part {
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    String currency();
  }

  @JsonSerialize(converter = FromReading.class)
  @JsonDeserialize(converter = ToReading.class)
  interface Reading {}

  /** A reading with its amount flat beside it; no value where it is over range. */
  @JsonTypeName("reading")
  record StoredReading(
      String reading,
      String typed,
      OptionalDouble value,
      String unit,
      Optional<Bound> bound,
      OptionalDouble tolerance,
      Optional<ReadingVerdict> verdict) {}

  /** Text to object. */
  final class FromText extends StdConverter<String, JsonNode> {
    @Override
    public JsonNode convert(String text) {
      return JsonFile.object(text);
    }
  }

  /** Object to text. */
  final class ToText extends StdConverter<JsonNode, String> {
    @Override
    public String convert(JsonNode object) {
      return object.toString();
    }
  }

  /** Into the file. */
  final class FromInForce extends StdConverter<Event.CalibrationPutInForce, StoredInForce> {
    @Override
    public StoredInForce convert(Event.CalibrationPutInForce e) {
      return new StoredInForce(e.file(), e.from().map(OffsetDateTime::toString));
    }
  }

  /** Out of the file. */
  final class ToInForce extends StdConverter<StoredInForce, Event.CalibrationPutInForce> {
    @Override
    public Event.CalibrationPutInForce convert(StoredInForce stored) {
      return new Event.CalibrationPutInForce(
          stored.file(), stored.from().map(OffsetDateTime::parse));
    }
  }

  /** Into the file. */
  final class FromReading extends StdConverter<Event.ReadingEntered, StoredReading> {
    @Override
    public StoredReading convert(Event.ReadingEntered e) {
      Amount amount = e.amount();
      return new StoredReading(
          e.reading(),
          e.typed(),
          amount.bound() == Bound.OVER_RANGE
              ? OptionalDouble.empty()
              : OptionalDouble.of(amount.value()),
          amount.unit(),
          Optional.of(amount.bound()).filter(bound -> bound != Bound.EXACT),
          amount.tolerance(),
          e.verdict());
    }
  }

  /** Out of the file. */
  final class ToReading extends StdConverter<StoredReading, Event.ReadingEntered> {
    @Override
    public Event.ReadingEntered convert(StoredReading stored) {
      Amount amount =
          new Amount(
              stored.value().orElse(Double.POSITIVE_INFINITY),
              stored.unit(),
              stored.bound().orElse(Bound.EXACT),
              stored.tolerance());
      return new Event.ReadingEntered(stored.reading(), stored.typed(), amount, stored.verdict());
    }
  }
}
