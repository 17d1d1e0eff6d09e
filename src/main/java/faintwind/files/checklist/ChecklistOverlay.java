package faintwind.files.checklist;

import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.message.Problem;
import faintwind.message.Translation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A language file of one folder, with the English texts that it may stand for. */
final class ChecklistOverlay {
  private final int folder;
  private final String file;
  private final Translation texts;
  private final Map<String, String> english = new HashMap<>();

  /**
   * An overlay.
   *
   * @param folder number of the folder it lies in, 0 the one laid over all others
   * @param file its name
   */
  ChecklistOverlay(int folder, String file, Translation texts) {
    this.folder = folder;
    this.file = file;
    this.texts = texts;
  }

  int folder() {
    return folder;
  }

  Translation texts() {
    return texts;
  }

  /** Whether it has any text of a step, a stage or a remedy. */
  boolean has(String key) {
    return texts.texts().keySet().stream().anyMatch(own -> own.startsWith(key + "."));
  }

  /**
   * Notes what a step says in English, to compare with; of a step that another folder replaced, its
   * own texts count as known.
   *
   * @param at number of the folder that the step comes from
   */
  void meet(ObjectNode step, String key, int at) {
    if (at >= folder) {
      ChecklistTexts.each(step.deepCopy(), key, this::note);
    } else {
      texts.texts().forEach((own, text) -> noteReplaced(key, own, text));
    }
  }

  private void noteReplaced(String step, String key, String text) {
    if (key.startsWith(step + ".")) {
      english.put(key, text);
    }
  }

  private String note(String key, String text, boolean onSafety) {
    english.put(key, text);
    return text;
  }

  /** Keys that no text has, values that are missing or foreign. */
  List<Problem> problems() {
    return texts.problems(english, file);
  }
}
