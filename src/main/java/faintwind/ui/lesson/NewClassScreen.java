package faintwind.ui.lesson;

import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.instrument.Workspace;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** The form for a class of pairs: what a person decides once, before the first lesson. */
public final class NewClassScreen extends DataScreen {
  private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");
  private static final int CODE_COLUMNS = 10;
  private static final int NAME_COLUMNS = 20;
  private static final int LINE_COLUMNS = 34;

  private final NewClassModel model;
  private final NewClassForm form;

  @FXML private VBox boxes;

  private NewClassScreen(Desk desk, NewClassModel model) {
    super(desk, model.next());
    this.model = model;
    form = model.form();
    boxes
        .getChildren()
        .addAll(
            field("name", NAME_COLUMNS, form.name()),
            field("purpose", LINE_COLUMNS, form.purpose())
                .why(text("class.new.purpose-example"))
                .optional(),
            field("pairs", TypedField.counted("class-new-pairs"), form.pairs())
                .why(text("class.new.pairs-why")),
            field("nicknames", LINE_COLUMNS, form.nicknames())
                .why(text("class.new.nicknames-why"))
                .optional(),
            field("roles", LINE_COLUMNS, form.roles()).why(text("class.new.roles-why")).optional(),
            new NewLessonsView(desk, model),
            design(),
            Boxes.column(
                "typed-box",
                Boxes.row("class-new-many", code("code", form.code()), code("again", form.again())),
                Words.label(text("class.new.code-why"), "fine", "soft")),
            field("folder", NAME_COLUMNS, form.folder()));
    filledBy(model.view(), boxes::setDisable);
    model.whenRefused(this::toFirstRefused);
    whenLeft(model::left);
  }

  /**
   * An empty form.
   *
   * @param toBoard shows the board of the class that was made
   */
  public static NewClassScreen on(Desk desk, Workspace workspace, Consumer<Path> toBoard) {
    return new NewClassScreen(desk, new NewClassModel(desk, workspace, toBoard));
  }

  private TypedField field(String name, int columns, TypedBox box) {
    return field(name, TypedField.line("class-new-" + name, columns), box);
  }

  private TypedField code(String name, TypedBox box) {
    PasswordField field =
        TypedField.dressed(new PasswordField(), "class-new-" + name, CODE_COLUMNS);
    return field(name, field, box).optional();
  }

  private TypedField field(String name, TextField field, TypedBox box) {
    return new TypedField(text("class.new." + name), field, box, () -> model.leave(box));
  }

  private Node design() {
    Button choose =
        Words.button(
            "class-new-design-choose", text("class.new.design-choose"), form.design()::chooseFile);
    choose.getStyleClass().add("quiet");
    NewDesign design = form.design();
    ComboBox<NewDesign.Choice> choice =
        Fields.choice("class-new-design", design.choices(), each -> each.words(), design.chosen());
    choice.setItems(design.choices()); // the very list: one that is filled anew forgets the choice
    choice.setAccessibleText(text("class.new.design"));
    return Boxes.column(
        "typed-box",
        Words.label(text("class.new.design"), "semibold"),
        Boxes.row("class-new-many", choice, choose),
        Words.label(text("class.new.design-why"), "fine", "soft"),
        TypedField.said("class-new-design", design.said()));
  }

  private void toFirstRefused() {
    refused(boxes).ifPresent(Node::requestFocus);
  }

  /** The first field that is marked. */
  private static Optional<Node> refused(Node under) {
    if (under instanceof TextField && under.getPseudoClassStates().contains(REFUSED)) {
      return Optional.of(under);
    }
    return under instanceof Parent parent
        ? parent.getChildrenUnmodifiable().stream()
            .flatMap(child -> refused(child).stream())
            .findFirst()
        : Optional.empty();
  }

  @Override
  public Optional<String> help() {
    return Optional.of("class-new");
  }

  @Override
  public Optional<Unsaved> unsaved() {
    return model
        .unsaved()
        .map(question -> new Unsaved(question, Optional.empty(), text("class.new.leave")));
  }
}
