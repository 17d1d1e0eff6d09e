package faintwind.ui.frame;

import faintwind.ui.part.Next;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/**
 * What the screens of data share: a sheet from their layout, what stands beside it, the Next line;
 * and the filling of them at every change of what their model shows, until the screen is left.
 */
public class DataScreen implements Screen {
  private final Desk desk;
  private final Node sheet;
  private final ObservableValue<Next> next;
  private Optional<Node> path = Optional.empty();
  private List<Node> margin = List.of();
  private Runnable leaving = () -> {};

  /** A screen whose sheet is its own layout. */
  protected DataScreen(Desk desk, ObservableValue<Next> next) {
    this.desk = desk;
    this.next = next;
    this.sheet = FxScreen.load(this, desk.words(), VBox.class);
  }

  private DataScreen(Desk desk, Node sheet, ObservableValue<Next> next) {
    this.desk = desk;
    this.sheet = sheet;
    this.next = next;
  }

  /** A sheet alone. */
  public static DataScreen of(Desk desk, Node sheet, ObservableValue<Next> next) {
    return new DataScreen(desk, sheet, next);
  }

  /** Puts a path at its left. */
  protected final void withPath(Node left) {
    path = Optional.of(left);
  }

  /** Puts a margin at its right. */
  protected final void withMargin(Node right) {
    margin = List.of(right);
  }

  /** Fills now and at every change, until the screen is left: a model may outlive it. */
  protected final <V> void filledBy(ObservableValue<V> view, Consumer<V> fill) {
    ChangeListener<V> changed = (property, was, now) -> fill.accept(now);
    view.addListener(changed);
    fill.accept(view.getValue());
    whenLeft(() -> view.removeListener(changed));
  }

  /** Does this too when the screen is left. */
  protected final void whenLeft(Runnable act) {
    Runnable before = leaving;
    leaving =
        () -> {
          before.run();
          act.run();
        };
  }

  protected final Desk desk() {
    return desk;
  }

  /** Words in the person's language. */
  protected final String text(String key, Object... arguments) {
    return desk.text(key, arguments);
  }

  @Override
  public Node sheet() {
    return sheet;
  }

  @Override
  public Optional<Node> path() {
    return path;
  }

  @Override
  public List<Node> margin() {
    return margin;
  }

  @Override
  public ObservableValue<Next> next() {
    return next;
  }

  @Override
  public void left() {
    leaving.run();
  }
}
