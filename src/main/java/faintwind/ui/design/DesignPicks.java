package faintwind.ui.design;

import faintwind.ui.fold.FoldingChoice;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Tooltip;

/**
 * The lists of a form to pick from, by what each is for. A person's pick is told; what is shown by
 * {@link #show} is not.
 */
final class DesignPicks<K> {
  private final Map<K, ComboBox<DesignChoices.Option>> combos = new LinkedHashMap<>();
  private boolean showing;

  /**
   * A name with a list under it, as wide as the form, so that no entry is cut.
   *
   * @param picked told the id of what a person picked
   */
  Node row(K key, String id, String name, Consumer<String> picked) {
    ComboBox<DesignChoices.Option> combo = new FoldingChoice<>();
    combo.setId(id);
    combo.setAccessibleText(name);
    combo
        .valueProperty()
        .addListener(
            (property, was, now) -> {
              if (!showing && now != null) {
                picked.accept(now.id());
              }
            });
    combos.put(key, combo);
    return Boxes.column("pick-row row", Words.label(name), combo);
  }

  /** Shows what can be picked and the id of what is. */
  void show(Function<K, List<DesignChoices.Option>> options, Function<K, String> picked) {
    showing = true;
    combos.forEach((key, combo) -> show(combo, options.apply(key), picked.apply(key)));
    showing = false;
  }

  private static void show(
      ComboBox<DesignChoices.Option> combo, List<DesignChoices.Option> options, String id) {
    if (!combo.getItems().equals(options)) {
      combo.getItems().setAll(options);
    }
    options.stream()
        .filter(o -> o.id().equals(id))
        .findFirst()
        .ifPresent(
            o -> {
              combo.setValue(o);
              combo.setTooltip(new Tooltip(o.name()));
            });
  }
}
