package faintwind.ui.frame;

import faintwind.message.Messages;
import faintwind.ui.fold.FoldingRow;
import faintwind.ui.fold.Prose;
import faintwind.ui.part.Act;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.Next;
import faintwind.ui.part.Words;
import faintwind.ui.work.Running;
import faintwind.ui.work.WorkWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The foot of every screen: one sentence, one filled button; while long work runs, its wire. */
public final class NextLine extends FoldingRow {
  /** As long as nobody can have read what is new here and pressed a key for it. */
  private static final long SEEN_NS = 300_000_000L;

  private final Messages words;
  private final MarkShape mark;
  private final Label sentence = new Prose();
  private final Label detail = new Prose();
  private final ProgressBar wire = new ProgressBar(0);
  private final VBox said = new VBox(sentence, detail);
  private final HBox buttons = Boxes.row("next-buttons");
  private Next next = Next.say(Mark.READY, "");
  private boolean working;
  private boolean asking;
  private boolean aboutWork;
  private String meaning = "";
  private boolean undrawn = true;
  private long drawn_ns;
  private boolean narrow;
  private String warning = "";

  public NextLine(Messages words) {
    this.words = words;
    mark = new MarkShape(Mark.READY, "");
    getStyleClass().add("next-line");
    setMinHeight(Region.USE_PREF_SIZE);
    setId("next-line");
    sentence.setId("next-sentence");
    sentence.getStyleClass().addAll("tell", "semibold");
    sentence.setWrapText(true);
    detail.setId("next-detail");
    detail.getStyleClass().addAll("fine", "soft");
    detail.setWrapText(true);
    wire.setId("next-wire");
    wire.getStyleClass().add("wire-bar");
    said.getStyleClass().add("next-said");
    HBox.setHgrow(said, Priority.ALWAYS);
    getChildren().addAll(mark, said, buttons);
    setAccessibleText("");
  }

  public void show(Next now) {
    next = now;
    if (!working && !asking) {
      put(next);
    }
  }

  /** Leaves the detail out where there is little room. */
  void setNarrow(boolean isNarrow) {
    narrow = isNarrow;
    if (!working && !asking) {
      put(next);
    }
  }

  /** Says in place of the detail what went wrong; empty words take it away again. */
  public void warn(String trouble) {
    warning = trouble;
    if (!working && !asking) {
      put(next);
    }
  }

  /** Another screen stands over it: a key that was made for the one before means nothing here. */
  public void renew() {
    undrawn = true;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    super.layoutChildren();
    if (undrawn) {
      undrawn = false;
      drawn_ns = System.nanoTime();
    }
  }

  /** Whether what it offers has stood here long enough to have been seen. */
  public boolean isSeen() {
    return !undrawn && System.nanoTime() - drawn_ns >= SEEN_NS;
  }

  /** Puts a question about long work in the place of the wire until it is answered or over. */
  public void askAboutWork(Next question) {
    ask(question);
    aboutWork = true;
  }

  /** Puts a question in the place of the sentence until it is answered. */
  public void ask(Next question) {
    asking = true;
    aboutWork = false;
    working = false;
    put(question);
  }

  /** The question was answered. */
  public void asked() {
    asking = false;
    put(next);
  }

  /** Shows how far a long job has come in place of the sentence. */
  public void work(Running running, long nowNs) {
    if (asking) {
      return;
    }
    Running.Progress progress = running.latest();
    if (!working) {
      working = true;
      said.getChildren().setAll(sentence, wire);
      mark.show(Mark.DOING, words.text(Mark.DOING.key()), 0);
      Button cancel =
          button(new Act("next-cancel", words.text("window.work.cancel"), running::cancel));
      replaceButtons(List.of(cancel));
    }
    sentence.setText(WorkWords.say(words, progress, running.rest(nowNs)));
    wire.setProgress(running.share());
    if (running.cancelled()) {
      sentence.setText(words.text("window.work.stopping"));
    }
  }

  /** No job is to be shown now. */
  public void workEnded() {
    if (working) {
      working = false;
      put(next);
    }
  }

  /** No job is left that a question could be about. */
  public void workQuestionEnded() {
    working = false;
    asking = asking && !aboutWork;
    if (!asking) {
      put(next);
    }
  }

  /** The filled button, if it is time for it. */
  public Optional<Button> mainButton() {
    return buttons.getChildren().stream()
        .filter(node -> node.getStyleClass().contains("main"))
        .map(Button.class::cast)
        .findFirst();
  }

  private void put(Next now) {
    mark.show(now.mark(), words.text(now.mark().key()), 0.4);
    sentence.setText(now.sentence());
    String small = warning.isEmpty() ? (narrow ? "" : now.detail()) : warning;
    detail.setText(small);
    detail.getStyleClass().remove("mark-blocked");
    if (!warning.isEmpty()) {
      detail.getStyleClass().add("mark-blocked");
    }
    said.getChildren().setAll(small.isEmpty() ? List.of(sentence) : List.of(sentence, detail));
    List<Button> shown = new ArrayList<>();
    now.others().forEach(act -> shown.add(button(act)));
    now.act()
        .ifPresent(
            act -> {
              Button main = button(act);
              main.getStyleClass().add("main");
              shown.add(main);
            });
    setAccessibleText(now.sentence() + " " + small);
    // A number that runs in the sentence makes no new one of it.
    String means = now.sentence().replaceAll("\\d+", "") + shown.stream().map(Node::getId).toList();
    if (!means.equals(meaning)) {
      meaning = means;
      renew();
    }
    replaceButtons(shown);
  }

  /**
   * Keeps the focus at the foot. It goes to the same button drawn again, never to one of another
   * meaning: a key pressed twice must not do the next thing too.
   */
  private void replaceButtons(List<Button> shown) {
    Optional<Node> focused =
        Optional.ofNullable(getScene())
            .map(Scene::getFocusOwner)
            .filter(owner -> Focus.isInside(owner, this));
    buttons.getChildren().setAll(shown);
    focused.ifPresent(
        was ->
            shown.stream()
                .filter(button -> Objects.equals(button.getId(), was.getId()))
                .<Node>map(button -> button)
                .findFirst()
                .orElse(this)
                .requestFocus());
  }

  private Button button(Act act) {
    Runnable once =
        () -> {
          renew(); // what it does may take a while to show
          act.run().run();
        };
    Button button = Words.button(act.id(), act.label(), once);
    button.getStyleClass().add("act");
    return button;
  }

  /** What F6 focuses here: the filled button, else the first one, else the line. */
  public Node focusTarget() {
    return mainButton()
        .<Node>map(b -> b)
        .orElseGet(() -> buttons.getChildren().isEmpty() ? this : buttons.getChildren().get(0));
  }
}
