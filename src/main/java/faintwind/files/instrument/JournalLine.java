package faintwind.files.instrument;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** One line of {@code journal.jsonl}: a JSON object with id, at, who, step and the event's keys. */
final class JournalLine {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private JournalLine() {}

  /** The entry as one line without its line end, and without the hash of the line before it. */
  static String write(JournalEntry entry) {
    ObjectNode node = JSON.createObjectNode();
    node.put("id", entry.id()).put("at", entry.at().toString()).put("who", entry.who());
    entry.step().ifPresent(step -> node.put("step", step));
    return node.setAll(EventForm.JSON.write(entry.event())).toString();
  }

  /** The entry in a line; refused with what is missing or not understood. */
  static Checked<JournalEntry> read(String line, Where where) {
    Optional<ObjectNode> object = object(line);
    if (object.isEmpty()) {
      return Checked.refused(
          Problem.error("journal.not-json", where, JournalRules.shortened(line)));
    }
    List<Problem> problems = JournalRules.problems(object.get(), where);
    return problems.isEmpty() ? Checked.ok(entry(object.get())) : Checked.refused(problems);
  }

  private static Optional<ObjectNode> object(String line) {
    try {
      return JSON.readTree(line) instanceof ObjectNode object
          ? Optional.of(object)
          : Optional.empty();
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
  }

  private static JournalEntry entry(ObjectNode line) {
    return new JournalEntry(
        line.path("id").textValue(),
        OffsetDateTime.parse(line.path("at").textValue()),
        line.path("who").textValue(),
        Optional.ofNullable(line.path("step").textValue()),
        EventForm.JSON.read(line, Event.class));
  }
}
