package faintwind.ui.figure;

import faintwind.report.picture.Picture;
import faintwind.report.picture.PictureImage;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.ui.frame.Look;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.stage.Window;

/**
 * Shows a picture of the report package at the size it is given, in the window's theme and text
 * size. It draws again when one of them changes.
 */
public final class FigureView extends Region {
  private static final double BASE_FONT_PX = 15;

  private final Look look;
  private final Locale locale;
  private final double height_em;
  private final ImageView image = new ImageView();
  private final InvalidationListener dressed = property -> redraw();
  private Optional<Picture> picture = Optional.empty();
  private String drawn = "";

  /**
   * An empty place of a preferred height.
   *
   * @param height_em least height in em; it grows with what it is given
   */
  public FigureView(Look look, Locale locale, double height_em) {
    this.look = look;
    this.locale = locale;
    this.height_em = height_em;
    getStyleClass().add("figure");
    image.setManaged(false);
    getChildren().add(image);
    // Weak: a look outlives the screens.
    look.theme().addListener(new WeakInvalidationListener(dressed));
    look.textPct().addListener(new WeakInvalidationListener(dressed));
    look.projector().addListener(new WeakInvalidationListener(dressed));
  }

  public void show(Picture now) {
    picture = Optional.of(now);
    redraw();
  }

  private void redraw() {
    drawn = "";
    requestLayout();
  }

  private double em() {
    return BASE_FONT_PX * look.effectivePct() / 100.0;
  }

  @Override
  protected double computePrefHeight(double width) {
    return height_em * em();
  }

  @Override
  protected double computeMinHeight(double width) {
    return height_em * em();
  }

  @Override
  protected double computePrefWidth(double height) {
    return 20 * em();
  }

  @Override
  protected double computeMinWidth(double height) {
    return 10 * em();
  }

  /** How many times as large as usual the text is. */
  double text() {
    return look.effectivePct() / 100.0;
  }

  /** The size of the picture, pixels at 100 % text. */
  PictureSize size() {
    return new PictureSize(
        (int) Math.floor(getWidth() / text()), (int) Math.floor(getHeight() / text()));
  }

  PictureStyle style() {
    return PictureStyle.window(look.theme().get().styleClass(), locale);
  }

  @Override
  protected void layoutChildren() {
    double text = text();
    int width = (int) Math.floor(getWidth() / text);
    int height = (int) Math.floor(getHeight() / text);
    String wanted = width + "x" + height + look.theme().get() + text;
    if (picture.isEmpty() || width < 40 || height < 20 || wanted.equals(drawn)) {
      return;
    }
    drawn = wanted;
    double scale = text * outputScale();
    image.setImage(javafx(PictureImage.of(picture.get(), size(), style(), scale)));
    image.setFitWidth(width * text);
    image.setFitHeight(height * text);
  }

  private double outputScale() {
    Window window = getScene() == null ? null : getScene().getWindow();
    return window == null ? 1 : Math.min(4, Math.max(1, window.getOutputScaleX()));
  }

  /** The image without a second copy of its pixels: premultiplied, as JavaFX wants it. */
  private static WritableImage javafx(BufferedImage drawn) {
    int[] pixels = ((DataBufferInt) drawn.getRaster().getDataBuffer()).getData();
    return new WritableImage(
        new PixelBuffer<>(
            drawn.getWidth(),
            drawn.getHeight(),
            IntBuffer.wrap(pixels),
            PixelFormat.getIntArgbPreInstance()));
  }
}
