package faintwind.files.design;

import java.util.Locale;

/** Defaults that depend on another key. */
final class DesignDefaults {
  private DesignDefaults() {}

  /** Surface of a metal that nothing was said about: polished, as it comes from making. */
  static String coat(String metal) {
    String id = metal.toLowerCase(Locale.ROOT);
    if (id.startsWith("copper")) {
      return "bare-polished-copper";
    }
    return id.startsWith("brass") ? "bare-brass" : "bare-polished-aluminium";
  }
}
