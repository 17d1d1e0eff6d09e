package faintwind.ui.frame;

import faintwind.job.language.Spoken;
import faintwind.message.Problem;
import faintwind.ui.part.Note;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.ToggleGroup;

/** The choice of the language; the window speaks it at once, as long as nothing runs in it. */
public final class LanguageMenu {
  private final Desk desk;
  private final KeptLook kept;
  private final BooleanSupplier speak;

  /**
   * A menu.
   *
   * @param speak goes on in the language that is chosen now; false where it cannot yet
   */
  LanguageMenu(Desk desk, KeptLook kept, BooleanSupplier speak) {
    this.desk = desk;
    this.kept = kept;
    this.speak = speak;
  }

  /** Every language there is now, each by its own name. */
  Menu menu(Node asker) {
    Menu menu = new Menu(desk.text("window.language"));
    menu.setId("language");
    ToggleGroup group = new ToggleGroup();
    List<String> codes = new ArrayList<>(List.of(""));
    codes.addAll(Spoken.known(kept.folder()));
    for (String code : codes) {
      RadioMenuItem item = new RadioMenuItem(name(code));
      item.setId(code.isEmpty() ? "language-system" : "language-" + code);
      item.setToggleGroup(group);
      item.setSelected(code.equals(kept.language().get()));
      item.setOnAction(event -> choose(code, asker));
      menu.getItems().add(item);
    }
    return menu;
  }

  private String name(String code) {
    Locale language = Locale.forLanguageTag(code);
    return code.isEmpty() ? desk.text("window.language.system") : language.getDisplayName(language);
  }

  private void choose(String code, Node asker) {
    kept.language().set(code);
    if (speak.getAsBoolean()) {
      return;
    }
    String title = desk.text("window.language.chosen", name(code));
    desk.notes().clear();
    desk.notes()
        .toggle(new Note(title, desk.text("window.language.later"), List.of(), "", ""), asker);
  }

  /** Says why the language that was chosen is not the one of the window. */
  public static void tell(Desk desk, List<Problem> problems, Node asker) {
    if (!problems.isEmpty()) {
      List<String> lines = problems.stream().map(desk.words()::line).toList();
      desk.notes().toggle(new Note(desk.text("window.language.not"), "", lines, "", ""), asker);
    }
  }
}
