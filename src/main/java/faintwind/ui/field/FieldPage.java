package faintwind.ui.field;

import java.util.Locale;

/** The pages of the field: what a log says, and two jobs that an instrument is made for. */
public enum FieldPage {
  /** A log as air speed. */
  LOG,
  /** The figures of a log. */
  SUMMARY,
  /** Flow through an opening. */
  OPENING,
  /** A list of places, ranked. */
  SURVEY;

  /** The word in keys and ids. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
