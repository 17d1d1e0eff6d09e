package faintwind.ui.frame;

import faintwind.ui.part.Next;
import faintwind.ui.work.Running;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;

/**
 * What a screen of data hands to the frame: a sheet, what stands beside it, the Next line; and the
 * filling of them at every change of what its model shows, until the screen is left.
 */
public final class DataScreen implements Screen {
  private final Node sheet;
  private final ObservableValue<Next> next;
  private Optional<Node> path = Optional.empty();
  private List<Node> margin = List.of();
  private Supplier<Optional<Running>> work = Optional::empty;
  private Runnable leaving = () -> {};

  private DataScreen(Node sheet, ObservableValue<Next> next) {
    this.sheet = sheet;
    this.next = next;
  }

  /** A sheet alone. */
  public static DataScreen of(Node sheet, ObservableValue<Next> next) {
    return new DataScreen(sheet, next);
  }

  /** With a path at its left. */
  public DataScreen withPath(Node left) {
    path = Optional.of(left);
    return this;
  }

  /** With a margin at its right. */
  public DataScreen withMargin(Node right) {
    margin = List.of(right);
    return this;
  }

  /** With a job of minutes that the Next line shows. */
  public DataScreen withWork(Supplier<Optional<Running>> job) {
    work = job;
    return this;
  }

  /** Fills now and at every change, until the screen is left: a model may outlive it. */
  public <V> DataScreen filledBy(ObservableValue<V> view, Consumer<V> fill) {
    ChangeListener<V> changed = (property, was, now) -> fill.accept(now);
    view.addListener(changed);
    fill.accept(view.getValue());
    return whenLeft(() -> view.removeListener(changed));
  }

  /** Does this too when the screen is left. */
  public DataScreen whenLeft(Runnable act) {
    Runnable before = leaving;
    leaving =
        () -> {
          before.run();
          act.run();
        };
    return this;
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
  public Optional<Running> work() {
    return work.get();
  }

  @Override
  public void left() {
    leaving.run();
  }
}
