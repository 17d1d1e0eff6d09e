package faintwind.report.picture;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What each {@link PlotToken} looks like in one theme. The themes of the window are read from the
 * style sheet that the window itself uses, so that a colour is stated once.
 */
public final class PlotPalette {
  private static final String TOKENS = "/faintwind/ui/tokens.css";
  private static final Pattern COLOUR = Pattern.compile("-fw-([a-z0-9-]+):\\s*#([0-9A-Fa-f]{6})");

  private final Map<PlotToken, Color> colours;

  private PlotPalette(Map<PlotToken, Color> colours) {
    this.colours = colours;
  }

  /** Dark ink on a light sheet. */
  public static PlotPalette light() {
    return ofClass("fw-light");
  }

  /** Black on white, for paper: series differ in dash, marker and label; greys only in areas. */
  public static PlotPalette print() {
    Map<PlotToken, Color> map = new EnumMap<>(PlotToken.class);
    for (PlotToken token : PlotToken.values()) {
      map.put(token, Color.BLACK);
    }
    map.put(PlotToken.SHEET, Color.WHITE);
    map.put(PlotToken.GROUND, new Color(0xE6E6E6));
    map.put(PlotToken.GOOD_WASH, new Color(0xE6E6E6));
    map.put(PlotToken.MARGIN, new Color(0xF0F0F0));
    map.put(PlotToken.RULE, new Color(0xC8C8C8));
    map.put(PlotToken.INK_SOFT, new Color(0x333333));
    map.put(PlotToken.EDGE, new Color(0x666666));
    map.put(PlotToken.SERIES_2, new Color(0x555555));
    return new PlotPalette(map);
  }

  /** The light theme's ink and series on white, for a report that is read and printed. */
  public static PlotPalette report() {
    PlotPalette light = light();
    Map<PlotToken, Color> map = new EnumMap<>(light.colours);
    map.put(PlotToken.SHEET, Color.WHITE);
    return new PlotPalette(map);
  }

  /**
   * The palette of a theme class of the window.
   *
   * @param themeClass {@code fw-light}, {@code fw-dark} or {@code fw-contrast}
   * @throws IllegalArgumentException where the style sheet has no such theme
   */
  public static PlotPalette ofClass(String themeClass) {
    Matcher block =
        Pattern.compile("\\." + Pattern.quote(themeClass) + "\\s*\\{(.*?)\\}", Pattern.DOTALL)
            .matcher(tokens());
    if (!block.find()) {
      throw new IllegalArgumentException("theme " + themeClass + " is not in " + TOKENS);
    }
    Map<PlotToken, Color> map = new EnumMap<>(PlotToken.class);
    Matcher colour = COLOUR.matcher(block.group(1));
    while (colour.find()) {
      for (PlotToken token : PlotToken.values()) {
        if (token.cssName().equals(colour.group(1))) {
          map.put(token, Color.decode("#" + colour.group(2)));
        }
      }
    }
    return new PlotPalette(map);
  }

  private static String tokens() {
    try (InputStream in = PlotPalette.class.getResourceAsStream(TOKENS)) {
      if (in == null) {
        throw new IllegalStateException(TOKENS + " is not part of this program's files");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The colour of a token. */
  public Color colour(PlotToken token) {
    Color found = colours.get(token);
    if (found == null) {
      throw new IllegalStateException("no colour for " + token + " in the style sheet");
    }
    return found;
  }

  /** The same colour, {@code alpha} of it opaque. */
  public Color wash(PlotToken token, double alpha) {
    Color c = colour(token);
    return new Color(c.getRed(), c.getGreen(), c.getBlue(), (int) Math.round(255 * alpha));
  }
}
