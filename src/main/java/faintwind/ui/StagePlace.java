package faintwind.ui;

import faintwind.job.WindowPlace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Puts the window where it was when it was closed, where there is still a screen there. */
final class StagePlace {
  private StagePlace() {}

  static void restore(Stage stage, Path folder) {
    // a screen that was taken away takes no window with it
    place(folder)
        .map(place -> place.on(screens()))
        .or(() -> Double.isNaN(stage.getWidth()) ? fitting(stage.getScene()) : Optional.empty())
        .ifPresent(place -> put(stage, place));
  }

  /** The first time, on a screen that is smaller than the window would like. */
  private static Optional<WindowPlace> fitting(Scene scene) {
    WindowPlace.Area screen = screens().get(0);
    return screen.width() < scene.getWidth() || screen.height() < scene.getHeight()
        ? Optional.of(WindowPlace.filling(screen))
        : Optional.empty();
  }

  private static Optional<WindowPlace> place(Path folder) {
    try {
      return WindowPlace.read(folder);
    } catch (IOException notReadable) {
      // Where the window opens is not worth refusing to open it.
      return Optional.empty();
    }
  }

  /** What windows may cover, the first screen first. */
  private static List<WindowPlace.Area> screens() {
    return Stream.concat(Stream.of(Screen.getPrimary()), Screen.getScreens().stream())
        .map(Screen::getVisualBounds)
        .map(b -> new WindowPlace.Area(b.getMinX(), b.getMinY(), b.getWidth(), b.getHeight()))
        .toList();
  }

  private static void put(Stage stage, WindowPlace place) {
    stage.setX(place.left());
    stage.setY(place.top());
    stage.setWidth(place.width());
    stage.setHeight(place.height());
    stage.setMaximized(place.maximized());
  }

  static void keep(Stage stage, Path folder) {
    WindowPlace place =
        new WindowPlace(
            stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight(), stage.isMaximized());
    if (stage.isFullScreen() || stage.isIconified() || !Files.isDirectory(folder)) {
      return;
    }
    try {
      place.write(folder);
    } catch (IOException full) {
      System.Logger log = System.getLogger(StagePlace.class.getName());
      log.log(System.Logger.Level.DEBUG, "window place not kept in {0}", folder);
    }
  }
}
