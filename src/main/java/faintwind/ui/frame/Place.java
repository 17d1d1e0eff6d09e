package faintwind.ui.frame;

import java.util.Locale;

/** Where the window can be; all but the first belong to one open instrument. */
public enum Place {
  HOME,
  DESIGN,
  MAKE,
  TURNTABLE,
  FORMULA,
  FIELD,
  RECORD;

  /** Bundle key of the name in the top strip; its link's id is the same with hyphens. */
  public String key() {
    return "window.place." + name().toLowerCase(Locale.ROOT);
  }

  /** Id of the link in the top strip. */
  public String id() {
    return "place-" + name().toLowerCase(Locale.ROOT);
  }
}
