package faintwind.job.air;

import faintwind.files.AtomicFile;
import faintwind.message.Messages;
import faintwind.report.figure.SummaryPlots;
import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PictureImage;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.picture.PictureSvg;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;

/** The figures of a log as a picture in a file of its own. */
public final class SummaryPicture {
  private static final PictureSize SIZE = new PictureSize(900, 640);
  private static final double SCALE = 2;
  private static final int EDGE = 32;

  private SummaryPicture() {}

  /** Whether a file's name ends as a picture's does. */
  public static boolean isNamed(Path target) {
    String name = target.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".svg") || name.endsWith(".png");
  }

  /**
   * Puts the picture in a file's place, whole or not at all.
   *
   * @param target {@code .png} gives PNG, anything else SVG
   * @throws IOException where the disk or a permission fails
   */
  public static void write(Path target, Summary summary, Messages words) throws IOException {
    PlotFigure figure = figure(summary, words);
    boolean png = target.toString().toLowerCase(Locale.ROOT).endsWith(".png");
    AtomicFile.write(target, png ? png(figure, words) : svg(figure, words));
  }

  /** The picture as it is drawn. */
  public static PlotFigure figure(Summary summary, Messages words) {
    double zero_s = summary.start().map(s -> s.toLocalTime().toSecondOfDay()).orElse(0);
    return new SummaryPlots(words).figure(summary.found(), zero_s);
  }

  private static byte[] svg(PlotFigure figure, Messages words) {
    String svg = PictureSvg.of(figure, SIZE, PictureStyle.report(words.locale()));
    // a page takes the name space from its own; a file needs it said
    String own =
        svg.contains("xmlns=")
            ? svg
            : svg.replaceFirst("<svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"");
    return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + own).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] png(PlotFigure figure, Messages words) throws IOException {
    BufferedImage drawn = PictureImage.of(figure, SIZE, PictureStyle.report(words.locale()), SCALE);
    BufferedImage paper =
        new BufferedImage(
            drawn.getWidth() + 2 * EDGE, drawn.getHeight() + 2 * EDGE, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = paper.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, paper.getWidth(), paper.getHeight());
    g.drawImage(drawn, EDGE, EDGE, null);
    g.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(paper, "png", bytes);
    return bytes.toByteArray();
  }
}
