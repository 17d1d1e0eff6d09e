package faintwind.ui.turntable;

import faintwind.ui.fold.FoldingRow;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.NumberModel;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Places for reference flows, and for the carried air that a vane or a thread showed. */
final class TypedFlowsBox extends VBox {
  private final Desk desk;
  private final TypedFlowsModel model;
  private final VBox flows = Boxes.column("typed-runs");

  TypedFlowsBox(Desk desk, TypedFlowsModel model) {
    this.desk = desk;
    this.model = model;
    setId("typed-flows");
    getStyleClass().add("data-body");
    FoldingRow carried =
        Boxes.row(
            "typed-run",
            named("swirl", "typed-swirl", model.swirl()),
            named("u-swirl", "typed-u-swirl", model.uSwirl()));
    getChildren()
        .addAll(
            Words.label(desk.text("turntable.typed.swirl.title"), "semibold"),
            Rows.soft(desk.text("turntable.typed.swirl.how")),
            carried,
            Words.label(desk.text("turntable.typed.flow.title"), "semibold"),
            Rows.soft(desk.text("turntable.typed.flow.how")),
            flows,
            Words.link("turntable-add-flow", desk.text("turntable.typed.flow.add"), this::add));
    for (int i = 0; i < model.rows().size(); i++) {
      show(i);
    }
  }

  private void add() {
    model.addRow();
    show(model.rows().size() - 1);
  }

  private void show(int index) {
    TypedFlowsModel.Row row = model.rows().get(index);
    String id = "flow-" + (index + 1) + "-";
    flows
        .getChildren()
        .add(
            Boxes.row(
                "typed-run",
                named("flow.speed", id + "speed", row.speed()),
                named("flow.u", id + "u", row.u()),
                named("flow.from", id + "from", row.from()),
                named("stop", id + "to", row.to())));
  }

  private Node named(String key, String id, NumberModel number) {
    String name = desk.text("turntable.typed." + key);
    return Boxes.column(
        "typed-field", Words.whole(name, "column-head"), new NumberField(id, name, number));
  }
}
