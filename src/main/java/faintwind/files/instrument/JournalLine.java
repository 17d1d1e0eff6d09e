package faintwind.files.instrument;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.JournalEntry;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One line of {@code journal.jsonl}: a JSON object with id, at, who, step and the event's keys. */
final class JournalLine {
  private static final ObjectMapper JSON = new ObjectMapper();

  private JournalLine() {}

  /** The entry as one line without its line end. */
  static String write(JournalEntry entry) {
    ObjectNode node = JSON.createObjectNode();
    node.put("id", entry.id());
    node.put("at", entry.at().toString());
    node.put("who", entry.who());
    entry.step().ifPresent(step -> node.put("step", step));
    EventJson.write(entry.event(), node);
    return node.toString();
  }

  /** The entry in a line; refused with what is missing or not understood. */
  static Checked<JournalEntry> read(String line, Where where) {
    JsonNode node;
    try {
      node = JSON.readTree(line);
    } catch (JsonProcessingException e) {
      return Checked.refused(Problem.error("journal.not-json", where, shortened(line)));
    }
    if (!(node instanceof ObjectNode object)) {
      return Checked.refused(Problem.error("journal.not-json", where, shortened(line)));
    }
    List<Problem> problems = new ArrayList<>();
    Keys keys = new Keys(object, where, problems);
    String id = keys.text("id");
    Optional<OffsetDateTime> at = time(keys.text("at"), where, problems);
    String who = keys.text("who");
    Optional<String> step = keys.optionalText("step");
    Optional<faintwind.record.Event> event = EventJson.read(keys);
    if (id.isBlank() && problems.isEmpty()) {
      problems.add(Problem.error("journal.key-missing", where.atColumn("id"), "", "id"));
    }
    if (!problems.isEmpty() || at.isEmpty() || event.isEmpty()) {
      return Checked.refused(problems);
    }
    return Checked.ok(new JournalEntry(id, at.get(), who, step, event.get()));
  }

  private static Optional<OffsetDateTime> time(String text, Where where, List<Problem> problems) {
    try {
      return Optional.of(OffsetDateTime.parse(text));
    } catch (DateTimeParseException e) {
      problems.add(Problem.error("journal.not-a-time", where.atColumn("at"), text));
      return Optional.empty();
    }
  }

  static String shortened(String line) {
    return line.length() <= 60 ? line : line.substring(0, 57) + "...";
  }
}
