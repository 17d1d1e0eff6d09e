package faintwind.report.picture;

/**
 * Width and height of a picture in pixels at 100 %.
 *
 * @param width at least 40
 * @param height at least 20
 */
public record PictureSize(int width, int height) {
  public PictureSize {
    if (width < 40 || height < 20) {
      throw new IllegalArgumentException(
          "picture " + width + " x " + height + ", allowed from 40 x 20");
    }
  }
}
