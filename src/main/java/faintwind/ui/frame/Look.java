package faintwind.ui.frame;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;

/** How the window looks and moves, as the person chose it. */
public final class Look {
  /** Smallest and largest text size, in per cent. */
  public static final int LEAST_PCT = 100;

  public static final int MOST_PCT = 200;
  private static final int STEP_PCT = 10;
  private static final int PROJECTOR_PCT = 150;

  private final IntegerProperty textPct = new SimpleIntegerProperty(LEAST_PCT);
  private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
  private final BooleanProperty lessMotion = new SimpleBooleanProperty();
  private final BooleanProperty projector = new SimpleBooleanProperty();

  public IntegerProperty textPct() {
    return textPct;
  }

  public ObjectProperty<Theme> theme() {
    return theme;
  }

  public BooleanProperty lessMotion() {
    return lessMotion;
  }

  public BooleanProperty projector() {
    return projector;
  }

  /** One step larger, up to {@link #MOST_PCT}. */
  public void larger() {
    textPct.set(Math.min(MOST_PCT, textPct.get() + STEP_PCT));
  }

  /** One step smaller, down to {@link #LEAST_PCT}. */
  public void smaller() {
    textPct.set(Math.max(LEAST_PCT, textPct.get() - STEP_PCT));
  }

  /** The size in use: the projector's is at least 150 %. */
  public int effectivePct() {
    return projector.get() ? Math.max(PROJECTOR_PCT, textPct.get()) : textPct.get();
  }
}
