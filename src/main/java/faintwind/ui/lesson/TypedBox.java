package faintwind.ui.lesson;

import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A box of a form: what is typed, and what is said below it once it was judged. */
final class TypedBox {
  private final Messages words;
  private final Function<String, Checked<String>> judging;
  private final StringProperty typed = new SimpleStringProperty("");
  private final ReadOnlyObjectWrapper<Said> said = new ReadOnlyObjectWrapper<>(Said.NOTHING);

  /** Words below a box: what was understood, or why it is refused and what is expected. */
  record Said(String text, boolean refused) {
    static final Said NOTHING = new Said("", false);
  }

  /**
   * An empty box.
   *
   * @param judging gives what was understood in words
   */
  TypedBox(Messages words, Function<String, Checked<String>> judging) {
    this.words = words;
    this.judging = judging;
  }

  /** The same with something in it. */
  TypedBox with(String text) {
    typed.set(text);
    return this;
  }

  StringProperty typed() {
    return typed;
  }

  String text() {
    return typed.get();
  }

  ReadOnlyObjectProperty<Said> said() {
    return said.getReadOnlyProperty();
  }

  boolean isRefused() {
    return said.get().refused();
  }

  /** Judges what stands in it. */
  void judge() {
    judging
        .apply(typed.get())
        .fold(
            (understood, notes) -> {
              said.set(new Said(understood, false));
              return true;
            },
            problems -> {
              refuse(problems);
              return false;
            });
  }

  /** Judges it when somebody goes on to the next box: what is empty may still be filled. */
  void judgeOnLeaving() {
    if (typed.get().isBlank()) {
      said.set(Said.NOTHING);
    } else {
      judge();
    }
  }

  /** Says why it is refused, whoever found it. */
  void refuse(List<Problem> problems) {
    said.set(
        new Said(problems.stream().map(words::sentence).collect(Collectors.joining(" ")), true));
  }
}
