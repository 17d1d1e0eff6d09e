package faintwind.ui.frame;

import faintwind.message.Messages;
import faintwind.ui.part.Note;
import java.util.List;

/** The keys of the window as a note in the margin. */
public final class HelpNote {
  private static final List<String> KEYS =
      List.of(
          "next",
          "regions",
          "steps",
          "correct",
          "undo",
          "why",
          "home",
          "places",
          "table",
          "read",
          "print",
          "paste",
          "text",
          "esc",
          "projector");

  private HelpNote() {}

  public static Note keys(Messages words) {
    List<String> lines = KEYS.stream().map(key -> words.text("window.key." + key)).toList();
    return new Note(words.text("window.help.title"), words.text("window.help.text"), lines, "", "");
  }
}
