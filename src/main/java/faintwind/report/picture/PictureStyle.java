package faintwind.report.picture;

import java.util.Locale;

/**
 * How a picture is dressed: the same description gives a dark window and a black-on-white page.
 *
 * @param palette the theme's colours
 * @param fonts the faces
 * @param locale decides the decimal mark
 */
public record PictureStyle(PlotPalette palette, PlotFonts fonts, Locale locale) {

  /** Paper: black on white, DejaVu Sans. */
  public static PictureStyle paper(Locale locale) {
    return new PictureStyle(PlotPalette.print(), PlotFonts.paper(), locale);
  }

  /** A report: ink and the light theme's series on white, the window's own faces. */
  public static PictureStyle report(Locale locale) {
    return new PictureStyle(PlotPalette.report(), PlotFonts.window(), locale);
  }

  /**
   * The window under one theme class.
   *
   * @param themeClass {@code fw-light}, {@code fw-dark} or {@code fw-contrast}
   */
  public static PictureStyle window(String themeClass, Locale locale) {
    return new PictureStyle(PlotPalette.ofClass(themeClass), PlotFonts.window(), locale);
  }
}
