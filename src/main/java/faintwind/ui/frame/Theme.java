package faintwind.ui.frame;

import java.util.Locale;

/** The three sets of colours. */
public enum Theme {
  LIGHT,
  DARK,
  CONTRAST;

  /** Style class of the scene's root that carries the set. */
  public String styleClass() {
    return "fw-" + name().toLowerCase(Locale.ROOT);
  }

  /** Bundle key of its name. */
  public String key() {
    return "window.theme." + name().toLowerCase(Locale.ROOT);
  }
}
