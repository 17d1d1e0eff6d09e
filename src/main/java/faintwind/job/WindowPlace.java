package faintwind.job;

import faintwind.files.AtomicFile;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * Where the window was when it was closed, in pixels of the screen; kept beside the instruments.
 *
 * @param maximized whether it filled its screen
 */
public record WindowPlace(double left, double top, double width, double height, boolean maximized) {
  /** So much of a title bar can be taken hold of. */
  private static final double HELD_PX = 120;

  private static final String FILE = "window-place.properties";

  /**
   * The place kept in a folder; empty where none was, or where the file cannot be understood: it
   * holds nothing that could be lost.
   */
  public static Optional<WindowPlace> read(Path folder) throws IOException {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    Properties kept = new Properties();
    try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      kept.load(in);
      WindowPlace place =
          new WindowPlace(
              number(kept, "left"),
              number(kept, "top"),
              number(kept, "width"),
              number(kept, "height"),
              Boolean.parseBoolean(kept.getProperty("maximized")));
      return place.width() > 0 && place.height() > 0 ? Optional.of(place) : Optional.empty();
    } catch (IllegalArgumentException notUnderstood) {
      return Optional.empty();
    }
  }

  private static double number(Properties kept, String name) {
    double value = Double.parseDouble(kept.getProperty(name, ""));
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " = " + value);
    }
    return value;
  }

  /** All of a screen, without being maximized. */
  public static WindowPlace filling(Area screen) {
    return new WindowPlace(screen.left(), screen.top(), screen.width(), screen.height(), false);
  }

  /**
   * The area of a screen.
   *
   * @param left its left edge among all screens
   */
  public record Area(double left, double top, double width, double height) {}

  /**
   * The same where it can be taken hold of: as it is where its upper edge lies on a screen, else
   * pulled into the screen that shows most of it, or into the first.
   *
   * @param screens at least one
   */
  public WindowPlace on(List<Area> screens) {
    if (screens.stream().anyMatch(this::canBeHeldOn)) {
      return this;
    }
    Area screen =
        screens.stream()
            .filter(area -> shared(area) > 0)
            .max(Comparator.comparingDouble(this::shared))
            .orElse(screens.get(0));
    double wide = Math.min(width, screen.width());
    double high = Math.min(height, screen.height());
    return new WindowPlace(
        within(left, screen.left(), screen.left() + screen.width() - wide),
        within(top, screen.top(), screen.top() + screen.height() - high),
        wide,
        high,
        maximized);
  }

  private boolean canBeHeldOn(Area screen) {
    double seen = overlap(left, width, screen.left(), screen.width());
    return seen >= Math.min(HELD_PX, width)
        && top >= screen.top()
        && top <= screen.top() + screen.height() - HELD_PX / 2;
  }

  private double shared(Area screen) {
    return overlap(left, width, screen.left(), screen.width())
        * overlap(top, height, screen.top(), screen.height());
  }

  private static double overlap(double at, double length, double other, double otherLength) {
    return Math.max(0, Math.min(at + length, other + otherLength) - Math.max(at, other));
  }

  private static double within(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }

  /** Keeps the place in a folder that is there. */
  public void write(Path folder) throws IOException {
    Properties kept = new Properties();
    kept.setProperty("left", String.valueOf(left));
    kept.setProperty("top", String.valueOf(top));
    kept.setProperty("width", String.valueOf(width));
    kept.setProperty("height", String.valueOf(height));
    kept.setProperty("maximized", String.valueOf(maximized));
    StringWriter text = new StringWriter();
    kept.store(text, "where the window was");
    AtomicFile.write(folder.resolve(FILE), text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
