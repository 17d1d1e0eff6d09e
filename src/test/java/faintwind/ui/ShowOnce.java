package faintwind.ui;

import faintwind.message.Messages;
import faintwind.ui.frame.KeptLook;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.stage.Stage;
import javafx.util.Duration;

/** Shows the real window once, prints how long the process took to show it, and ends. */
final class ShowOnce {
  private ShowOnce() {}

  public static void main(String[] arguments) {
    Platform.startup(() -> show(Path.of(arguments[0])));
  }

  private static void show(Path folder) {
    FaintwindApp.dressProgram();
    Stage stage = new Stage();
    new FaintwindWindow(
            stage, Messages.of(Locale.ENGLISH), KeptLook.in(folder), Clock.system(ZoneOffset.UTC))
        .show();
    // The first pulses draw the window.
    PauseTransition drawn = new PauseTransition(Duration.millis(60));
    drawn.setOnFinished(
        event -> {
          long up_ms = ManagementFactory.getRuntimeMXBean().getUptime();
          System.out.println((stage.isShowing() ? "shown " : "hidden ") + up_ms);
          Platform.exit();
        });
    drawn.play();
  }
}
