package faintwind.report.picture;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The faces of a picture: Lato in the window, DejaVu Sans on paper. Sizes are in pixels at 100 %.
 */
public final class PlotFonts {
  private static final String FOLDER = "/faintwind/assets/fonts/";
  public static final float FINE = 13;
  public static final float BODY = 15;
  static final float TELL = 18;

  private final Font regular;
  private final Font strong;

  private PlotFonts(String regular, String strong) {
    this.regular = load(regular);
    this.strong = load(strong);
  }

  /** Lato, as in the window. */
  public static PlotFonts window() {
    return Window.FONTS;
  }

  /** DejaVu Sans, as on paper. */
  public static PlotFonts paper() {
    return Paper.FONTS;
  }

  /** Read once, when first needed. */
  private static final class Window {
    private static final PlotFonts FONTS = new PlotFonts("Lato-Regular.ttf", "Lato-Semibold.ttf");
  }

  /** Read once, when first needed. */
  private static final class Paper {
    private static final PlotFonts FONTS = new PlotFonts("DejaVuSans.ttf", "DejaVuSans-Bold.ttf");
  }

  private static Font load(String file) {
    try (InputStream in = PlotFonts.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException(FOLDER + file + " is not part of this program's files");
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (FontFormatException e) {
      throw new IllegalStateException(FOLDER + file + " is not a font", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public Font regular(float size) {
    return regular.deriveFont(size);
  }

  public Font strong(float size) {
    return strong.deriveFont(size);
  }
}
