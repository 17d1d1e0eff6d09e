package faintwind.ui.frame;

import faintwind.message.Messages;
import java.util.function.Consumer;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** The places of an instrument as a menu, where the top strip has no room for their names. */
final class PlacesMenu {
  private PlacesMenu() {}

  static void show(Node owner, Messages words, Place here, Consumer<Place> go, LookMenu look) {
    ContextMenu menu = new ContextMenu();
    for (Place place : Place.values()) {
      MenuItem item = new MenuItem(words.text(place.key()));
      item.setId("menu-" + place.id());
      item.setDisable(place == here);
      item.setOnAction(event -> go.accept(place));
      menu.getItems().add(item);
    }
    menu.getItems().add(new SeparatorMenuItem());
    menu.getItems().addAll(look.items());
    menu.show(owner, Side.BOTTOM, 0, 0);
  }
}
