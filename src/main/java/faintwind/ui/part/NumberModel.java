package faintwind.ui.part;

import faintwind.message.Amount;
import faintwind.message.AmountText;
import faintwind.message.Messages;
import faintwind.message.NumberText;
import faintwind.message.Problem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * A number as a person types it, and what was understood of it. Nothing is judged at each key: the
 * field says when. What was typed is never changed.
 */
public final class NumberModel {
  private static final String UNSURE_ID = "number.unsure";

  private boolean asksForUnit;
  private final String unit;
  private final Messages words;
  private final StringProperty typed = new SimpleStringProperty("");
  private final StringProperty remark = new SimpleStringProperty("");
  private final ReadOnlyObjectWrapper<Judged> judged = new ReadOnlyObjectWrapper<>(Judged.NOTHING);

  /**
   * What was understood.
   *
   * @param typed the text that was judged
   * @param understood the words under the field
   * @param amount the number in the field's unit; empty where it is not a number
   * @param choices two readings to pick from where the text could mean both
   */
  public record Judged(
      String typed, String understood, Optional<Amount> amount, List<String> choices) {
    static final Judged NOTHING = new Judged("", "", Optional.empty(), List.of());

    public Judged {
      choices = List.copyOf(choices);
    }

    /** Whether something was typed that is not a number. */
    public boolean isRefused() {
      return !typed.isEmpty() && amount.isEmpty();
    }
  }

  /**
   * An empty field.
   *
   * @param unit symbol of the unit the number is wanted in; empty for a plain number
   */
  public NumberModel(String unit, Messages words) {
    this.unit = unit;
    this.words = words;
  }

  /** Asks, where a bare number may be in another unit than the one it is wanted in. */
  public NumberModel askingForTheUnit() {
    asksForUnit = true;
    return this;
  }

  /** The text in the field; a person types into it. */
  public StringProperty typed() {
    return typed;
  }

  /** A remark that stands after what was understood, such as "nearest in E24: 100 Ω". */
  public StringProperty remark() {
    return remark;
  }

  public String unit() {
    return unit;
  }

  public ReadOnlyObjectProperty<Judged> judged() {
    return judged.getReadOnlyProperty();
  }

  /** The number, where the text last judged is one. */
  public Optional<Amount> amount() {
    return judged.get().amount();
  }

  /** Judges what stands in the field now. */
  public void judge() {
    String text = typed.get().trim();
    if (text.equals(judged.get().typed())) {
      return;
    }
    judged.set(text.isEmpty() ? Judged.NOTHING : read(text, asksForUnit));
  }

  /** Puts a text into the field and judges it. */
  public void set(String text) {
    typed.set(text);
    judge();
  }

  /** Puts a text into the field that was entered before: nothing about it is asked again. */
  public void setKept(String text) {
    typed.set(text);
    String trimmed = text.trim();
    judged.set(trimmed.isEmpty() ? Judged.NOTHING : read(trimmed, false));
  }

  private Judged read(String text, boolean asks) {
    return NumberText.read(text, unit)
        .fold(
            (amount, notes) -> understood(text, amount, asks),
            problems -> new Judged(text, sentences(problems), Optional.empty(), choices(problems)));
  }

  private Judged understood(String text, Amount amount, boolean asks) {
    List<String> either = asks ? NumberText.eitherUnit(text, amount) : List.of();
    return either.isEmpty()
        ? new Judged(text, AmountText.understood(amount, words), Optional.of(amount), List.of())
        : new Judged(
            text,
            words.text("number.which-unit", either.get(0), either.get(1)),
            Optional.empty(),
            either);
  }

  private String sentences(List<Problem> problems) {
    return problems.stream().map(words::sentence).collect(Collectors.joining(" "));
  }

  private static List<String> choices(List<Problem> problems) {
    return problems.stream()
        .filter(problem -> problem.id().equals(UNSURE_ID))
        .flatMap(problem -> problem.details().stream())
        .toList();
  }
}
