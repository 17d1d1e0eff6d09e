package faintwind.report.plot;

import faintwind.report.picture.PlotToken;
import java.util.List;

/**
 * How a series is drawn: never by colour alone.
 *
 * @param colour its colour
 * @param dash its dash, {@link PlotDash#NONE} for markers only
 * @param marker its marker, {@link PlotMarker#NONE} for a line only
 * @param width of the line, pixels at 100 %
 */
public record PlotLook(PlotToken colour, PlotDash dash, PlotMarker marker, double width) {

  private static final List<PlotToken> COLOURS =
      List.of(
          PlotToken.SERIES_1,
          PlotToken.SERIES_2,
          PlotToken.SERIES_3,
          PlotToken.SERIES_4,
          PlotToken.SERIES_5,
          PlotToken.SERIES_6);
  private static final List<PlotDash> DASHES =
      List.of(
          PlotDash.SOLID,
          PlotDash.LONG,
          PlotDash.SHORT,
          PlotDash.LONG_SHORT,
          PlotDash.SHORT_DOTS,
          PlotDash.DOTS);

  /**
   * The look of the series with this number: six colours each with its own dash, then the same six
   * colours with the dashes moved on by one.
   *
   * @param number from 1
   */
  public static PlotLook series(int number) {
    int index = Math.floorMod(number - 1, 6);
    int turn = Math.floorDiv(number - 1, 6);
    PlotDash dash = DASHES.get(Math.floorMod(index + turn, 6));
    return new PlotLook(COLOURS.get(index), dash, PlotMarker.NONE, number == 1 ? 2.6 : 2.2);
  }

  /** Markers without a line. */
  public static PlotLook markers(PlotMarker marker, PlotToken colour) {
    return new PlotLook(colour, PlotDash.NONE, marker, 1.6);
  }

  public boolean isLine() {
    return dash != PlotDash.NONE;
  }
}
