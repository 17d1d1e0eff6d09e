package faintwind.ui.turntable;

import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.VBox;

/**
 * What usually goes wrong at the turntable, what each does to the data, and what to do now. Each
 * can be noted with the run that is open.
 */
final class WentWrong extends VBox {
  private static final List<String> USUAL = List.of("arm", "count", "draught", "logger", "heater");

  /**
   * The list.
   *
   * @param note takes what is noted
   * @param close takes the list away
   */
  WentWrong(Desk desk, Consumer<String> note, Runnable close) {
    setId("went-wrong");
    getStyleClass().add("fact-block");
    getChildren().add(Words.label(desk.text("turntable.wrong.title"), "tell", "semibold"));
    for (String what : USUAL) {
      String key = "turntable.wrong." + what;
      VBox one =
          Boxes.column(
              "plan-part",
              Words.label(desk.text(key), "semibold"),
              Words.label(desk.text(key + ".does")),
              Words.label(desk.text(key + ".now"), "fine", "soft"),
              Words.link(
                  "wrong-" + what,
                  desk.text("turntable.wrong.note"),
                  () -> {
                    note.accept(desk.text(key + ".noted"));
                    close.run();
                  }));
      getChildren().add(one);
    }
    getChildren().add(Words.link("wrong-close", desk.text("turntable.wrong.close"), close));
  }
}
