package faintwind.ui.frame;

import faintwind.message.Messages;
import faintwind.ui.fold.ProseLink;
import java.util.List;
import java.util.function.BooleanSupplier;
import javafx.geometry.Side;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.ToggleGroup;

/** The three links at the right of the top strip: look, text size, help. */
public final class LookMenu {
  private static final int[] SIZES_PCT = {100, 110, 125, 150, 175, 200};

  private final Messages words;
  private final Look look;
  private final LanguageMenu language;
  private final Hyperlink lookLink;
  private final Hyperlink textLink;
  private final Hyperlink helpLink;

  /**
   * The links.
   *
   * @param speak goes on in the language that is chosen now; false where it cannot yet
   */
  public LookMenu(Desk desk, KeptLook kept, Runnable help, BooleanSupplier speak) {
    words = desk.words();
    look = desk.look();
    language = new LanguageMenu(desk, kept, speak);
    lookLink = link("look", "window.look");
    lookLink.setOnAction(event -> themes().show(lookLink, Side.BOTTOM, 0, 0));
    textLink = link("text-size", "window.text-size");
    textLink.setOnAction(event -> sizes().show(textLink, Side.BOTTOM, 0, 0));
    helpLink = link("help", "window.help");
    helpLink.setOnAction(event -> help.run());
  }

  Hyperlink lookLink() {
    return lookLink;
  }

  Hyperlink textLink() {
    return textLink;
  }

  Hyperlink helpLink() {
    return helpLink;
  }

  /** The same as items of a menu, where the strip has no room for the links. */
  List<MenuItem> items() {
    Menu themes = new Menu(words.text("window.look"));
    themes.getItems().setAll(themes().getItems());
    Menu sizes = new Menu(words.text("window.text-size"));
    sizes.getItems().setAll(sizes().getItems());
    MenuItem help = new MenuItem(words.text("window.help"));
    help.setOnAction(event -> helpLink.fire());
    return List.of(themes, sizes, help);
  }

  private ContextMenu themes() {
    ContextMenu menu = new ContextMenu();
    ToggleGroup group = new ToggleGroup();
    for (Theme theme : Theme.values()) {
      RadioMenuItem item = new RadioMenuItem(words.text(theme.key()));
      item.setId("theme-" + theme.styleClass());
      item.setToggleGroup(group);
      item.setSelected(theme == look.theme().get());
      item.setOnAction(event -> look.theme().set(theme));
      menu.getItems().add(item);
    }
    CheckMenuItem motion = new CheckMenuItem(words.text("window.less-motion"));
    motion.setId("less-motion");
    motion.setSelected(look.lessMotion().get());
    motion.setOnAction(event -> look.lessMotion().set(motion.isSelected()));
    MenuItem projector = new MenuItem(words.text("window.projector"));
    projector.setId("projector");
    projector.setOnAction(event -> look.projector().set(!look.projector().get()));
    menu.getItems().addAll(motion, projector, language.menu(lookLink));
    return menu;
  }

  private ContextMenu sizes() {
    ContextMenu menu = new ContextMenu();
    ToggleGroup group = new ToggleGroup();
    for (int pct : SIZES_PCT) {
      RadioMenuItem item = new RadioMenuItem(words.text("window.text-pct", pct));
      item.setId("text-" + pct);
      item.setToggleGroup(group);
      item.setSelected(pct == look.textPct().get());
      item.setOnAction(event -> look.textPct().set(pct));
      menu.getItems().add(item);
    }
    return menu;
  }

  private Hyperlink link(String id, String key) {
    Hyperlink link = new ProseLink(words.text(key));
    link.setId(id);
    link.getStyleClass().addAll("fine", "strip-link");
    return link;
  }
}
