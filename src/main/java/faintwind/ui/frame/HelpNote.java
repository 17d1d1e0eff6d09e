package faintwind.ui.frame;

import faintwind.message.Messages;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Note;
import faintwind.ui.part.Notes;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Help for the screen that is shown: what it is for, its keys, its words. */
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

  /**
   * Opens the help in the margin, or closes it.
   *
   * @param place whose help; empty at the first start
   * @param asker gets the focus back
   */
  public static void toggle(Desk desk, Screen screen, Optional<Place> place, Node asker) {
    Notes notes = desk.notes();
    if (notes.open().get().filter(open -> open.more().isPresent()).isPresent()) {
      notes.close();
    } else {
      notes.open(
          new Notes.Open(
              note(desk.words(), screen, place), asker, Optional.of(more(desk, screen, place))));
    }
  }

  private static Note note(Messages words, Screen screen, Optional<Place> place) {
    String key =
        screen
            .help()
            .map(own -> "help." + own + ".title")
            .or(() -> place.map(Place::key))
            .orElse("window.name");
    String title = words.text("help.title", words.text(key));
    return new Note(title, words.text("help." + name(screen, place)), List.of(), "", "");
  }

  private static String name(Screen screen, Optional<Place> place) {
    return screen
        .help()
        .or(() -> place.map(p -> p.name().toLowerCase(Locale.ROOT)))
        .orElse("first");
  }

  private static Node more(Desk desk, Screen screen, Optional<Place> place) {
    VBox column = Boxes.column("aside-part");
    if (place.isPresent()) {
      column.getChildren().add(Words.label(desk.text("help.keys"), "semibold"));
      String keys = desk.text("help." + name(screen, place) + ".keys");
      Stream.of(keys.split(",")).map(key -> key(desk, key)).forEach(column.getChildren()::add);
    }
    VBox all = Boxes.column("aside-part");
    Boxes.present(all, false);
    KEYS.forEach(key -> all.getChildren().add(key(desk, key)));
    Runnable toggle = () -> Boxes.present(all, !all.isManaged());
    column
        .getChildren()
        .addAll(
            Words.link("help-all-keys", desk.text("help.all-keys"), toggle),
            all,
            new HelpWords(desk.words(), screen));
    return column;
  }

  private static Label key(Desk desk, String key) {
    return Words.label(desk.text("window.key." + key));
  }
}
