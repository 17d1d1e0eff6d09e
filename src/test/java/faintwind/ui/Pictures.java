package faintwind.ui;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** Keeps pictures of the window, small: the 256 most frequent colours, nearest for the rest. */
public final class Pictures {
  private static final int COLOURS = 256;

  private Pictures() {}

  /** Writes a picture of the scene; on the JavaFX thread. */
  public static void keep(Scene scene, Path file) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      ImageIO.write(indexed(scene.snapshot(null)), "png", file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BufferedImage indexed(WritableImage image) {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    PixelReader pixels = image.getPixelReader();
    Map<Integer, Integer> counts = new HashMap<>();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        counts.merge(pixels.getArgb(x, y) & 0xFFFFFF, 1, Integer::sum);
      }
    }
    List<Integer> palette =
        counts.entrySet().stream()
            .sorted(
                Map.Entry.<Integer, Integer>comparingByValue()
                    .reversed()
                    .thenComparing(Map.Entry.comparingByKey()))
            .limit(COLOURS)
            .map(Map.Entry::getKey)
            .toList();
    int[] colours = palette.stream().mapToInt(Integer::intValue).toArray();
    IndexColorModel model =
        new IndexColorModel(8, colours.length, colours, 0, false, -1, DataBuffer.TYPE_BYTE);
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model);
    WritableRaster raster = small.getRaster();
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int colour = pixels.getArgb(x, y) & 0xFFFFFF;
        raster.setSample(x, y, 0, nearest.computeIfAbsent(colour, c -> nearest(c, colours)));
      }
    }
    return small;
  }

  private static int nearest(int colour, int[] palette) {
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < palette.length; i++) {
      int distance = 0;
      for (int shift = 0; shift <= 16; shift += 8) {
        int step = ((colour >> shift) & 0xFF) - ((palette[i] >> shift) & 0xFF);
        distance += step * step;
      }
      if (distance < least) {
        least = distance;
        best = i;
      }
    }
    return best;
  }
}
