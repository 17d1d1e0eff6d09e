package faintwind.ui.lesson;

import faintwind.guide.checklist.Stage;
import faintwind.job.lesson.ClassLook;
import faintwind.job.lesson.ClassText;
import faintwind.job.lesson.PairLook;
import faintwind.job.lesson.ToSign;
import faintwind.message.FirstSentences;
import faintwind.message.Typeset;
import faintwind.ui.fold.FoldingRow;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Focus;
import faintwind.ui.frame.Screen;
import faintwind.ui.instrument.StepMarks;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ChangeListener;
import javafx.fxml.FXML;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/**
 * Where each pair is, the turntable, what fits, clocks and spread. On the projector only numbers,
 * marks and the turntable are shown, in large type.
 */
public final class ClassScreen extends DataScreen {
  private static final Duration AGAIN = Duration.seconds(5);
  private static final int MINUTES_COLUMNS = 4;
  private static final int CODE_COLUMNS = 8;
  private static final int REASON_COLUMNS = 24;

  /** Width of the board from which a share stands beside its mark, in em. */
  private static final double ROOMY_EM = 58;

  private static final double BASE_FONT_PX = 15;

  /** Letters of what a pair that is not stuck is at; its instrument says the rest. */
  private static final int STATE_LETTERS = 120;

  private final ClassModel model;
  private final Consumer<Path> toPair;
  private final Timeline again = new Timeline();

  /** What came of signing, beside the code. */
  private final Label signed = Words.label("");

  @FXML private Label title;
  @FXML private Label lesson;
  @FXML private HBox ways;
  @FXML private Label remark;
  @FXML private GridPane matrix;
  @FXML private VBox queue;
  @FXML private VBox fits;
  @FXML private VBox sign;
  @FXML private VBox clocks;
  @FXML private VBox spread;

  /**
   * The board of a class by its folder.
   *
   * @param toPair opens the folder of a pair
   */
  public ClassScreen(Desk desk, Path folder, Consumer<Path> toPair) {
    this(desk, new ClassModel(desk, folder), toPair);
  }

  private ClassScreen(Desk desk, ClassModel model, Consumer<Path> toPair) {
    super(desk, model.next());
    this.model = model;
    this.toPair = toPair;
    fillWays();
    remark.textProperty().bind(model.remark().map(Typeset::of));
    signed.textProperty().bind(model.remark().map(Typeset::of));
    signed.setId("class-sign-remark");
    model.remark().addListener((property, was, now) -> showNow());
    ChangeListener<Boolean> shown = (property, was, now) -> showNow();
    desk.look().projector().addListener(shown);
    whenLeft(() -> desk.look().projector().removeListener(shown));
    model.minutes().addListener((property, was, now) -> showNow());
    filledBy(model.view(), look -> showNow());
    again.getKeyFrames().add(new KeyFrame(AGAIN, event -> model.look()));
    again.setCycleCount(Animation.INDEFINITE);
    again.play();
    whenLeft(again::stop);
    model.look();
  }

  private void fillWays() {
    TextField minutes =
        Fields.field(
            "class-minutes", "class.minutes", model.minutes(), MINUTES_COLUMNS, desk().words());
    minutes.setMinWidth(Region.USE_PREF_SIZE); // the whole number is seen
    filledBy(
        model.view(),
        look -> look.ifPresent(l -> minutes.setPromptText(String.valueOf(l.minutes()))));
    ways.getChildren()
        .addAll(
            Words.whole(text("class.minutes")),
            minutes,
            Words.button("class-sheets", text("class.print-sheets"), model::sheets),
            Words.button("class-labels", text("class.print-labels"), model::labels),
            Words.button(
                "class-projector",
                text("window.projector"),
                () -> desk().look().projector().set(!desk().look().projector().get())));
  }

  private boolean isProjected() {
    return desk().look().projector().get();
  }

  private void showNow() {
    model.view().get().ifPresent(look -> Focus.keep(sheet(), () -> show(look)));
  }

  private void show(ClassLook look) {
    boolean big = isProjected();
    ClassText said = model.said();
    title.setText(said.title(look));
    Boxes.present(title, !big);
    lesson.setText(said.lesson(look));
    matrix.getChildren().clear();
    matrix.getColumnConstraints().clear();
    if (big) {
      tiles(look);
    } else {
      matrix(look);
    }
    part(queue, "class.part.queue", big ? List.of() : said.queue(look));
    Boxes.present(ways, !big);
    Boxes.present(lesson, !big);
    part(fits, "class.part.fits", big ? List.of() : model.fits(look));
    part(clocks, "class.part.clocks", big ? List.of() : said.clocks(look));
    part(spread, "class.part.spread", big ? List.of() : said.spread(look));
    sign(big ? List.of() : model.toSign(look));
    boolean beside = model.isRemarkOfSigning() && sign.isVisible();
    boolean came = !big && !model.remark().get().isEmpty();
    Boxes.present(remark, came && !beside);
    Boxes.present(signed, came && beside);
    sheet().getStyleClass().remove("class-projected");
    if (big) {
      sheet().getStyleClass().add("class-projected");
    }
  }

  private void part(VBox box, String head, List<String> lines) {
    box.getChildren().clear();
    Boxes.present(box, !lines.isEmpty());
    if (!lines.isEmpty()) {
      VBox said = Boxes.column("aside-part", Words.label(text(head), "tell", "semibold"));
      lines.forEach(line -> said.getChildren().add(Words.label(line)));
      box.getChildren().add(said);
    }
  }

  /** Two columns of pairs by their numbers, and nothing else: twelve fit without scrolling. */
  private void tiles(ClassLook look) {
    List<PairLook> pairs = look.pairs().stream().filter(p -> p.pair().number() > 0).toList();
    int high = (pairs.size() + 1) / 2;
    for (int i = 0; i < pairs.size(); i++) {
      matrix.add(tile(look, pairs.get(i)), i / high, i % high);
    }
  }

  private Node tile(ClassLook look, PairLook pair) {
    FoldingRow first = new FoldingRow("class-tile", name(pair, true));
    pair.known()
        .flatMap(ClassText::stage)
        .ifPresent(
            stage -> {
              Mark mark = StepMarks.of(stage, pair.known().orElseThrow().looked().progress());
              first.getChildren().add(new MarkShape(mark, text(mark.key()), 0.6));
            });
    first.getChildren().add(state(pair, model.said().shortState(pair)));
    return Boxes.column("class-tile", first, Words.label(model.said().where(look, pair), "soft"));
  }

  private Label name(PairLook pair, boolean numberOnly) {
    Label name = Words.whole(model.said().label(pair, numberOnly), "semibold");
    name.setId(nameId(pair));
    return name;
  }

  private static String nameId(PairLook pair) {
    return "class-pair-" + pair.pair().folder();
  }

  /** Leads to the pair's instrument, where its folder can be read. */
  private Labeled wayToPair(PairLook pair) {
    if (pair.trouble().isPresent()) {
      return name(pair, false);
    }
    Path its = model.folder().resolve(pair.pair().folder());
    String called = model.said().label(pair, false);
    Labeled link = Words.link(nameId(pair), called, () -> toPair.accept(its));
    link.setTooltip(new Tooltip(text("class.open-pair", called)));
    return link;
  }

  private static Label state(PairLook pair, String words) {
    Label state = Words.label(words, ClassText.isStuck(pair) ? "bold" : "soft");
    state.setId("class-state-" + pair.pair().folder());
    state.getStyleClass().add("class-state");
    return state;
  }

  /** A row a pair, a column a stage, and what it is stuck on. */
  private void matrix(ClassLook look) {
    List<Stage> stages = ClassText.stages(look);
    for (int i = 0; i <= stages.size(); i++) {
      ColumnConstraints column = new ColumnConstraints();
      // what is said of a pair takes the whole width, and is as high as it is there
      column.setHgrow(i == stages.size() ? Priority.ALWAYS : Priority.NEVER);
      matrix.getColumnConstraints().add(column);
    }
    int row = 1;
    for (int i = 0; i < stages.size(); i++) {
      matrix.add(Words.label(stages.get(i).title(), "column-head"), i + 1, 0);
    }
    for (PairLook pair : look.pairs()) {
      matrix.add(wayToPair(pair), 0, row);
      for (int i = 0; i < stages.size(); i++) {
        Stage stage = stages.get(i);
        int column = i + 1;
        int line = row;
        pair.known().ifPresent(known -> matrix.add(cell(known, stage), column, line));
      }
      Label state = state(pair, stateOnBoard(pair));
      GridPane.setValignment(state, VPos.TOP); // close to its pair, however high the row
      matrix.add(state, 1, row + 1, stages.size() + 1, 1);
      row += 2;
    }
  }

  /** In few words where nothing presses, so that many pairs are seen at once. */
  private String stateOnBoard(PairLook pair) {
    String all = model.said().state(pair);
    boolean presses = ClassText.isStuck(pair) || !pair.remarks().isEmpty();
    return presses ? all : FirstSentences.of(all, STATE_LETTERS);
  }

  private Node cell(PairLook.Known known, Stage stage) {
    Mark mark = StepMarks.of(stage, known.looked().progress());
    String said = stage.title() + ": " + text(mark.key()) + ", " + known.share(stage);
    MarkShape shape = new MarkShape(mark, said, 0.6);
    Tooltip.install(shape, new Tooltip(said));
    Label share = Words.whole(known.share(stage), "fine", "soft", "class-cell");
    share.setGraphic(shape);
    share
        .contentDisplayProperty()
        .bind(
            Bindings.createObjectBinding(
                () -> isRoomy() ? ContentDisplay.LEFT : ContentDisplay.TOP,
                matrix.widthProperty(),
                desk().look().textPct()));
    return share;
  }

  /** Whether all stages have room for their share beside their mark. */
  private boolean isRoomy() {
    return matrix.getWidth() >= ROOMY_EM * BASE_FONT_PX * desk().look().effectivePct() / 100;
  }

  private void sign(List<ToSign> all) {
    List<Node> kept = List.copyOf(sign.getChildren());
    Boxes.present(sign, !all.isEmpty());
    if (all.isEmpty()) {
      sign.getChildren().clear();
      return;
    }
    Node head = kept.isEmpty() ? signHead() : kept.get(0);
    sign.getChildren().setAll(head);
    for (ToSign one : all) {
      String id = "class-sign-" + one.pair() + "-" + one.name();
      sign.getChildren()
          .add(
              new FoldingRow(
                  "class-sign",
                  Words.label(one.text()),
                  Words.button(id, text("class.sign"), () -> model.sign(one))));
    }
  }

  private Node signHead() {
    PasswordField code = new PasswordField();
    code.setId("class-code");
    code.setPrefColumnCount(CODE_COLUMNS);
    code.setAccessibleText(text("class.code"));
    code.textProperty().bindBidirectional(model.code());
    TextField because =
        Fields.field(
            "class-because", "class.because", model.because(), REASON_COLUMNS, desk().words());
    FoldingRow row =
        new FoldingRow(
            "class-sign",
            Words.whole(text("class.because")),
            because,
            Words.whole(text("class.code")),
            code);
    return Boxes.column("aside-part", Words.label(text("class.to-be-signed"), "tell"), row, signed);
  }

  /** The folder of the class that a screen shows; empty for any other screen. */
  public static Optional<Path> shownBy(Screen screen) {
    return screen instanceof ClassScreen it ? Optional.of(it.model.folder()) : Optional.empty();
  }

  @Override
  public Optional<String> help() {
    return Optional.of("class");
  }

  @Override
  public Optional<Node> firstFocus() {
    return ways.getChildren().stream().filter(TextField.class::isInstance).findFirst();
  }
}
