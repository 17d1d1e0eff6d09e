package faintwind.ui.design;

import faintwind.job.design.PartsList;
import faintwind.job.design.Sized;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Where;
import faintwind.physics.advice.Prices;
import faintwind.ui.part.NumberModel;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What to buy for the present design, for how many instruments, at which prices. */
public final class DesignPartsModel {
  private final Messages words;
  private final Background background;
  private final Function<String, Optional<Path>> askTarget;
  private final Consumer<Checked<Prices>> change;
  private final NumberModel instruments;
  private final StringProperty currency = new SimpleStringProperty("");
  private final ReadOnlyObjectWrapper<Optional<PartsList>> list =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private Optional<Sized> present = Optional.empty();

  /**
   * A list without a design.
   *
   * @param askTarget asks where a file goes, given a name
   * @param change changes the present design, which carries the prices
   */
  DesignPartsModel(
      Messages words,
      Background background,
      Function<String, Optional<Path>> askTarget,
      Consumer<Checked<Prices>> change) {
    this.words = words;
    this.background = background;
    this.askTarget = askTarget;
    this.change = change;
    instruments = new NumberModel("", words);
    instruments.set("1");
    instruments.judged().addListener((property, was, now) -> make());
  }

  public NumberModel instruments() {
    return instruments;
  }

  /** The currency, as typed. */
  public StringProperty currency() {
    return currency;
  }

  /** The list; empty until there is a design, and while the number of instruments is none. */
  public ReadOnlyObjectProperty<Optional<PartsList>> list() {
    return list.getReadOnlyProperty();
  }

  void present(Sized worked) {
    present = Optional.of(worked);
    currency.set(worked.prices().currency());
    make();
  }

  private void make() {
    list.set(present.flatMap(p -> count().map(n -> new PartsList(p, n, words))));
  }

  private Optional<Integer> count() {
    return DesignChoices.exact(instruments)
        .filter(a -> PartsList.INSTRUMENTS.trouble(Field.plain(a.value()), Where.NOWHERE).isEmpty())
        .map(a -> (int) Math.rint(a.value()));
  }

  /** A price was typed for one piece or metre of a part; an empty field takes it away. */
  void priced(String key, NumberModel price) {
    if (price.typed().get().isBlank()) {
      priced(p -> p.with(key, ""));
    } else {
      DesignChoices.exact(price).ifPresent(a -> priced(p -> p.with(key, Field.plain(a.value()))));
    }
  }

  /** The currency was typed. */
  void currencyTyped() {
    String typed = currency.get().strip();
    priced(p -> Checked.ok(p.in(typed)));
  }

  private void priced(Function<Prices, Checked<Prices>> other) {
    if (present.isPresent()) {
      Prices before = present.get().prices();
      Checked<Prices> now = other.apply(before);
      if (!now.equals(Checked.ok(before))) {
        change.accept(now);
      }
    }
  }

  /**
   * Asks where the list goes and writes it.
   *
   * @param ending {@code csv}, {@code html} or {@code pdf}
   * @param saved told where it went
   * @param broke told what the world refused
   */
  void save(String ending, Consumer<Path> saved, Consumer<IOException> broke) {
    Optional<PartsList> now = list.get();
    if (now.isEmpty()) {
      return;
    }
    askTarget
        .apply(words.text("design.parts.file", ending))
        .ifPresent(
            target ->
                background.entry(
                    watch -> {
                      now.get().write(target);
                      return target;
                    },
                    saved,
                    broke));
  }
}
