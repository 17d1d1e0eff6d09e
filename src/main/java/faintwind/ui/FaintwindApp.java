package faintwind.ui;

import atlantafx.base.theme.PrimerLight;
import faintwind.job.CrashReport;
import faintwind.job.SoftwareVersion;
import faintwind.job.language.Spoken;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.ui.frame.Fonts;
import faintwind.ui.frame.KeptLook;
import faintwind.ui.frame.LanguageMenu;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;

/** Starts JavaFX and shows the window. */
public final class FaintwindApp {
  private FaintwindApp() {}

  /**
   * Opens the window on a folder of instruments and comes back when it is closed.
   *
   * @param folder the folder of instruments; need not exist yet
   * @param calibration a file of somebody's instrument to convert logs by, shown first
   * @param language its code; where empty, the one kept beside the instruments or the system's
   * @return why no window could be opened, such as a missing display; empty after a normal close
   */
  public static Optional<Problem> open(
      Path folder, Optional<Path> calibration, Optional<String> language) {
    // JavaFX warns on the class path, which is how this program is meant to run.
    Logger javafx = Logger.getLogger("javafx");
    javafx.setLevel(Level.SEVERE);
    CountDownLatch closed = new CountDownLatch(1);
    try {
      Platform.startup(() -> show(folder, calibration, language, closed));
      closed.await();
      Platform.exit();
      return Optional.empty();
    } catch (UnsupportedOperationException noDisplay) {
      return Optional.of(
          Problem.error(
              "window.no-display", Where.NOWHERE, String.valueOf(noDisplay.getMessage())));
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** A fault ends what was being done, not the window; what it was is kept, and never sent. */
  private static void keepFaults(Path folder) {
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, fault) -> {
          System.Logger log = System.getLogger(FaintwindApp.class.getName());
          try {
            OffsetDateTime now = OffsetDateTime.now(Clock.system(ZoneId.systemDefault()));
            Path kept = CrashReport.keep(folder, SoftwareVersion.text(), now, fault);
            log.log(System.Logger.Level.ERROR, "a fault in the program is described in " + kept);
          } catch (IOException notKept) {
            log.log(System.Logger.Level.ERROR, "a fault in the program", fault);
          }
        });
  }

  private static void show(
      Path folder, Optional<Path> calibration, Optional<String> language, CountDownLatch closed) {
    keepFaults(folder);
    dressProgram();
    Stage stage = new Stage();
    stage.setOnHidden(event -> closed.countDown());
    KeptLook kept = KeptLook.in(folder);
    Spoken spoken = spoken(language.orElseGet(kept.language()::get), folder);
    FaintwindWindow window =
        new FaintwindWindow(stage, spoken.words(), kept, Clock.system(ZoneId.systemDefault()));
    window.show();
    LanguageMenu.tell(window.desk(), spoken.problems(), stage.getScene().getRoot());
    calibration.ifPresent(window::showField);
  }

  /** The words of a language by its code; of the system's where it is empty. */
  static Spoken spoken(String code, Path folder) {
    return Spoken.of(Optional.of(code), Locale.getDefault(), folder);
  }

  /** Loads fonts and the base theme; once, on the JavaFX thread, before the first window. */
  public static void dressProgram() {
    Fonts.load();
    Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
  }
}
