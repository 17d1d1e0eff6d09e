package faintwind.files.instrument;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.JsonFile;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.StepFinished;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.util.List;

/** What a journal comes to, as {@code instrument.json} ({@code assets/schemas/instrument}). */
final class InstrumentSummary {
  private InstrumentSummary() {}

  static String of(InstrumentState state, Journal.Content journal) {
    List<JournalEntry> entries = journal.entries();
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("format", "faintwind-instrument/1");
    node.put("note", "Made from journal.jsonl; the journal counts where the two differ.");
    state.name().ifPresent(name -> node.put("name", name));
    node.put("made_up", state.madeUp());
    if (!entries.isEmpty()) {
      node.put("begun", entries.get(0).at().toString());
      node.put("last_entry", entries.get(entries.size() - 1).id());
    }
    node.put("entries", entries.size());
    state
        .checklist()
        .ifPresent(
            c ->
                node.putObject("checklist")
                    .put("id", c.checklist())
                    .put("version", c.version())
                    .put("sha256", c.sha256()));
    ArrayNode finished = node.putArray("steps_finished");
    state.standing(StepFinished.class).stream()
        .flatMap(line -> line.step().stream())
        .distinct()
        .forEach(finished::add);
    state
        .last(CalibrationPutInForce.class)
        .ifPresent(line -> node.put("calibration_in_force", line.event().file()));
    state.designJson().ifPresent(json -> node.set("design", JsonFile.object(json)));
    node.put("lines", journal.lines());
    node.put("head", state.head());
    return Seal.sealed(node);
  }
}
