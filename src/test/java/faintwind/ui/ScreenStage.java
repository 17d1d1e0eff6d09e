package faintwind.ui;

import faintwind.message.Messages;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.FileQuestion;
import faintwind.ui.frame.Frame;
import faintwind.ui.frame.KeptLook;
import faintwind.ui.frame.Look;
import faintwind.ui.frame.LookMenu;
import faintwind.ui.frame.NextLine;
import faintwind.ui.frame.Place;
import faintwind.ui.frame.Screen;
import faintwind.ui.frame.Theme;
import faintwind.ui.frame.TopStrip;
import faintwind.ui.part.Notes;
import faintwind.ui.work.Background;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** One screen in the window's frame, for tests that need no instrument folder. */
public final class ScreenStage {
  public final Messages words = Messages.of(Locale.ENGLISH);
  final Look look = new Look();
  public final Notes notes = new Notes();
  public final Background background = new Background(Platform::runLater);
  public final Desk desk;
  private final Stage stage;
  private final NextLine nextLine;
  private final Frame frame;
  private Optional<Path> chosen = Optional.empty();

  public ScreenStage(Stage stage) {
    this.stage = stage;
    FaintwindApp.dressProgram();
    desk =
        new Desk(
            words,
            background,
            notes,
            place -> {},
            answers(),
            look,
            Clock.fixed(Instant.parse("2026-11-21T12:00:00Z"), ZoneOffset.UTC));
    nextLine = new NextLine(words);
    TopStrip strip =
        new TopStrip(
            words,
            place -> {},
            new LookMenu(desk, KeptLook.in(Path.of("none")), () -> {}, () -> false));
    frame = new Frame(words, notes, strip, nextLine);
    frame.getStyleClass().add("fw-light");
    frame.setStyle("-fx-font-size: 15px;");
    Scene scene = new Scene(frame, 1280, 800);
    for (String sheet : new String[] {"tokens", "faintwind", "data"}) {
      scene.getStylesheets().add(Dress.stylesheet("/faintwind/ui/" + sheet + ".css"));
    }
    stage.setScene(scene);
    strip.showInstrument("Rind 1, north shelf", Place.TURNTABLE, words.text("window.made-up"));
  }

  /** Answers every file question from now on. */
  public void choose(Path file) {
    chosen = Optional.of(file);
  }

  public void show(Screen screen) {
    screen.next().addListener((property, was, now) -> nextLine.show(now));
    nextLine.show(screen.next().getValue());
    frame.show(screen);
    stage.show();
  }

  /** Shows a screen with the keys of the window. */
  void showWithKeys(Screen screen) {
    new Keys(new Keys.Ways(() -> Optional.of(screen), () -> {}, () -> {}), frame, nextLine, desk)
        .listenOn(stage.getScene());
    show(screen);
  }

  public void theme(Theme theme) {
    frame.getStyleClass().removeIf(name -> name.startsWith("fw-"));
    frame.getStyleClass().add(theme.styleClass());
    look.theme().set(theme);
  }

  /** Keeps a picture under target/pictures; on the JavaFX thread. */
  public void picture(String name) {
    frame.applyCss();
    frame.layout();
    Pictures.keep(stage.getScene(), Path.of("target/pictures/" + name + ".png"));
  }

  private FileQuestion answers() {
    return new FileQuestion() {
      @Override
      public Optional<Path> open(String title, String kind, String... patterns) {
        return chosen;
      }

      @Override
      public Optional<Path> save(String title, String suggestedName) {
        return chosen.map(folder -> folder.resolve(suggestedName));
      }
    };
  }
}
