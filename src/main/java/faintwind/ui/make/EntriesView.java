package faintwind.ui.make;

import faintwind.guide.checklist.Step;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Typeset;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** Below the readings: notes, parts, the time of a tin, and a photo put off with a reason. */
final class EntriesView extends VBox {
  private static final int LONG = 40;
  private static final int SHORT = 10;

  private final Step step;
  private final EntriesModel entries;
  private final StepModel model;
  private final Messages words;
  private final List<Runnable> keeping = new ArrayList<>();
  private final VBox kept = Boxes.column("aside-part");
  private final VBox hours = Boxes.column("aside-part");
  private final VBox photo = Boxes.column("aside-part");

  EntriesView(Step step, StepModel model, Messages words) {
    this.step = step;
    this.model = model;
    this.entries = model.entries();
    this.words = words;
    getStyleClass().add("entries");
    for (int i = 0; i < step.asks().notes().size(); i++) {
      note("entry-note-" + i, step.asks().notes().get(i));
    }
    step.asks().bought().ifPresent(this::part);
    kept.setId("entries-kept");
    step.asks().clock().flatMap(Step.ClockSpec::own).ifPresent(this::hours);
    step.asks().photo().ifPresent(this::photo);
    getChildren().addAll(kept, hours, photo);
    refresh();
  }

  /** Shows what is kept now, and what can still be entered. */
  void refresh() {
    List<String> lines = entries.kept(step);
    boolean asks = !step.asks().notes().isEmpty() || step.asks().bought().isPresent();
    kept.getChildren()
        .setAll(
            lines.stream()
                .map(line -> Words.label(words.text("window.entry.kept", line), "soft"))
                .toList());
    Boxes.present(kept, asks && !lines.isEmpty());
    Boxes.present(
        hours, model.isMissing("gate.clock-not-started") && !hours.getChildren().isEmpty());
    Boxes.present(photo, model.isMissing("gate.photo") && !photo.getChildren().isEmpty());
  }

  /** Keeps what is still typed: the step is left. */
  void leave() {
    keeping.forEach(Runnable::run);
  }

  /** Whether there is anything to enter. */
  boolean asks() {
    return getChildren().stream().anyMatch(Node::isManaged);
  }

  private void note(String id, String label) {
    StringProperty text = new SimpleStringProperty("");
    TextField field = optional(id, label, text);
    Runnable keep =
        () -> {
          entries.note(step, text.get());
          text.set("");
        };
    field.setOnAction(event -> keep.run());
    keeping.add(keep);
    Label name = Words.label(label, "semibold");
    name.setLabelFor(field);
    getChildren()
        .addAll(name, field, Words.button(id + "-keep", words.text("window.entry.keep"), keep));
  }

  private TextField optional(String id, String label, StringProperty text) {
    TextField field = new TextField();
    field.setId(id);
    field.setPrefColumnCount(LONG);
    field.setAccessibleText(label);
    field.getStyleClass().add("optional");
    field.textProperty().bindBidirectional(text);
    return field;
  }

  private void part(String label) {
    List<String> names = List.of("part", "lot", "price", "currency");
    EntriesModel.TypedPart draft = entries.draft(step);
    List<StringProperty> typed =
        Stream.of(draft.part(), draft.lot(), draft.price(), draft.currency())
            .<StringProperty>map(SimpleStringProperty::new)
            .toList();
    Node[] fields = new Node[names.size()];
    for (int i = 0; i < fields.length; i++) {
      String key = "window.entry." + names.get(i);
      TextField field =
          Fields.field(
              "entry-" + names.get(i), key, typed.get(i), i == 0 ? 2 * SHORT : SHORT, words);
      field.getStyleClass().add("optional");
      fields[i] = Fields.named(key, field, words);
    }
    Label refusal = Words.label("", "mark-attention");
    refusal.setId("entry-part-refusal");
    Consumer<Optional<String>> answer =
        why -> {
          refusal.setText(why.orElse(""));
          Boxes.present(refusal, why.isPresent());
          if (why.isEmpty()) {
            typed.subList(0, 3).forEach(text -> text.set(""));
          }
        };
    Runnable leave = () -> answer.accept(entries.leavePart(step, typedPart(typed)));
    leave.run();
    keeping.add(leave);
    getChildren()
        .addAll(
            Words.label(label, "semibold"),
            Fields.line(fields),
            Words.button(
                "entry-part-keep",
                words.text("window.entry.keep-part"),
                () -> answer.accept(entries.part(step, typedPart(typed)))),
            refusal);
  }

  private static EntriesModel.TypedPart typedPart(List<StringProperty> typed) {
    return new EntriesModel.TypedPart(
        typed.get(0).get(), typed.get(1).get(), typed.get(2).get(), typed.get(3).get());
  }

  private void hours(Step.OwnTime own) {
    String label =
        words.text(
            "window.entry.hours",
            own.label(),
            Numerals.digits(own.least_h(), 3),
            Numerals.digits(own.most_h(), 3));
    TextField field = optional("entry-hours", label, entries.hours());
    field.setPrefColumnCount(SHORT);
    field.setMaxWidth(USE_PREF_SIZE);
    Label remark = Words.label("", "mark-attention");
    remark.textProperty().bind(entries.remark().map(Typeset::of));
    entries.remark().addListener((p, was, now) -> Boxes.present(remark, !now.isEmpty()));
    Boxes.present(remark, false);
    hours
        .getChildren()
        .addAll(
            Words.label(label, "semibold"),
            field,
            Words.label(words.text("window.entry.hours-usual"), "fine", "soft"),
            remark);
  }

  /** The photo is asked for first; only then why there may be none. */
  private void photo(String wanted) {
    StringProperty reason = new SimpleStringProperty("");
    TextField field =
        optional("photo-later-reason", words.text("window.entry.photo-reason"), reason);
    Label refusal = Words.label("", "mark-attention");
    Boxes.present(refusal, false);
    Runnable later =
        () -> {
          List<String> why = model.putOffPhoto(reason.get());
          refusal.setText(String.join(" ", why));
          Boxes.present(refusal, !why.isEmpty());
        };
    photo
        .getChildren()
        .addAll(
            Words.label(words.text("window.next.photo", wanted), "semibold"),
            Words.button("entry-photo-add", words.text("window.step.add-photo"), model::addPhoto),
            Words.label(words.text("window.entry.photo-reason"), "soft"),
            field,
            Words.button("photo-later", words.text("window.entry.photo-later"), later),
            refusal);
  }
}
