package faintwind.report.picture;

import java.util.Locale;

/** Names of the colours a plot may use; a {@link PlotPalette} says what they are. */
public enum PlotToken {
  GROUND,
  SHEET,
  MARGIN,
  INK,
  INK_SOFT,
  RULE,
  EDGE,
  ACT,
  GOOD,
  GOOD_WASH,
  CARE,
  STOP,
  WAIT,
  PENCIL,
  HEATED,
  REFERENCE,
  SERIES_1,
  SERIES_2,
  SERIES_3,
  SERIES_4,
  SERIES_5,
  SERIES_6;

  /** The name after {@code -fw-} in the style sheet. */
  String cssName() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
