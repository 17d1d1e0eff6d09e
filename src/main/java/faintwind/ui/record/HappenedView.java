package faintwind.ui.record;

import faintwind.guide.checklist.Step;
import faintwind.ui.frame.ChosenWay;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.Words;
import faintwind.ui.record.HappenedModel.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** Where one enters what happened to an instrument, and packs it to be given away. */
final class HappenedView extends VBox {
  private static final String FIRST = "happened-first";
  private static final int LONG = 40;
  private static final int SHORT = 20;

  private final Desk desk;
  private final OpenInstrument instrument;
  private final HappenedModel model;
  private final VBox room = Boxes.column("entries");
  private final List<Hyperlink> links;
  private final ChosenWay ways;

  HappenedView(Desk desk, OpenInstrument instrument, HappenedModel model, Runnable pack) {
    this.desk = desk;
    this.instrument = instrument;
    this.model = model;
    setId("record-happened");
    getStyleClass().add("entries");
    links = Stream.of(Kind.values()).map(this::link).toList();
    ways = new ChosenWay(room, links.toArray(Hyperlink[]::new));
    List<Node> all = new ArrayList<>(links);
    all.add(Words.link("record-pack", desk.text("record.pack"), pack));
    Boxes.present(room, false);
    getChildren()
        .setAll(
            Words.label(desk.text("happened.head"), "tell", "semibold"),
            Boxes.row("ways", all.toArray(Node[]::new)),
            room);
  }

  private Hyperlink link(Kind kind) {
    return Words.link(kind.id(), desk.text(kind.key("link")), () -> model.begin(kind));
  }

  /** Shows the form that is open, or none. */
  void show(Optional<Kind> open) {
    Boxes.present(room, open.isPresent());
    if (open.isEmpty()) {
      room.getChildren().clear();
      return;
    }
    Kind kind = open.get();
    Node form = form(kind);
    links.stream()
        .filter(link -> link.getId().equals(kind.id()))
        .forEach(link -> ways.open(link, form));
    form.lookup("." + FIRST).requestFocus();
  }

  private Node form(Kind kind) {
    List<Node> fields = new ArrayList<>();
    if (kind == Kind.REPAIR) {
      ComboBox<Optional<Step>> choice =
          Fields.choice(
              "happened-step",
              HappenedModel.begun(instrument.checklist(), instrument.state()).stream()
                  .map(Optional::of)
                  .toList(),
              one -> one.map(Step::title).orElse(""),
              model.step());
      choice.setAccessibleText(desk.text("happened.repair.step"));
      fields.add(Fields.named("happened.repair.step", choice, desk.words()));
      choice.getStyleClass().add(FIRST);
    }
    if (kind == Kind.HAND_OVER) {
      TextField to =
          Fields.field("happened-to", "happened.hand-over.to", model.to(), SHORT, desk.words());
      to.getStyleClass().add(FIRST);
      fields.add(Fields.named("happened.hand-over.to", to, desk.words()));
    }
    TextField text =
        Fields.field("happened-text", kind.key("text"), model.said(), LONG, desk.words());
    text.getStyleClass().add(kind == Kind.NOTE ? FIRST : "happened-text");
    fields.add(Fields.named(kind.key("text"), text, desk.words()));
    return Fields.line(fields.toArray(Node[]::new));
  }
}
