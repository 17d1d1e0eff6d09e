package faintwind.ui.part;

import java.util.Locale;

/** The eight states of anything in the window, each one piece of wire with a word beside it. */
public enum Mark {
  READY,
  DOING,
  WAITING,
  ATTENTION,
  BLOCKED,
  DONE,
  CORRECTED,
  REHEARSAL;

  /** The style class that gives the mark and its word their colour token. */
  public String styleClass() {
    return "mark-" + name().toLowerCase(Locale.ROOT);
  }

  /** Bundle key of the word that stands for the mark. */
  public String key() {
    return "mark." + name().toLowerCase(Locale.ROOT);
  }
}
