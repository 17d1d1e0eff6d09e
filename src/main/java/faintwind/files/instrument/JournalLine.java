package faintwind.files.instrument;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** One line of {@code journal.jsonl}: a JSON object with id, at, who, step and the event's keys. */
final class JournalLine {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  /** What some editors put before the first line of a file in UTF-8. */
  private static final String MARK = "\ufeff";

  private static final List<String> EVERY_ENTRY = List.of("id", "at", "who", "step", "prev");

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
    byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
    return read(new RawLine(bytes, 0, bytes.length), where);
  }

  /** The same of the bytes of a line. */
  static Checked<JournalEntry> read(RawLine line, Where where) {
    Optional<ObjectNode> object = object(line);
    if (object.isEmpty()) {
      String text = JournalRules.shortened(line.text());
      boolean marked = text.startsWith(MARK);
      return Checked.refused(
          Problem.error(marked ? "journal.mark" : "journal.not-json", where, text));
    }
    JournalRules rules = JournalRules.of(object.get(), where);
    return rules.problems().isEmpty()
        ? Checked.ok(entry(object.get(), rules.at().orElseThrow()))
        : Checked.refused(rules.problems());
  }

  private static Optional<ObjectNode> object(RawLine line) {
    try {
      return line.json(JSON) instanceof ObjectNode object ? Optional.of(object) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** What is left of a line without the keys of every entry is the event. */
  private static JournalEntry entry(ObjectNode line, OffsetDateTime at) {
    String id = line.path("id").textValue();
    String who = line.path("who").textValue();
    Optional<String> step = Optional.ofNullable(line.path("step").textValue());
    line.remove(EVERY_ENTRY);
    return new JournalEntry(id, at, who, step, EventForm.JSON.read(line, Event.class));
  }
}
