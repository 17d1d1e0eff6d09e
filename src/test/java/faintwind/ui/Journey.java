package faintwind.ui;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.WindowChoices;
import faintwind.message.Messages;
import faintwind.record.InstrumentState;
import faintwind.ui.frame.KeptLook;
import faintwind.ui.frame.NextLine;
import faintwind.ui.frame.Theme;
import faintwind.ui.make.StepScreen;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/**
 * The window of one journey: a folder of instruments, a clock, answers to every question for a
 * file, and hands. All journeys of a process share its one started toolkit.
 */
public final class Journey {
  private final FxRobot robot;
  private final Path folder;
  private final Clock clock;
  private final ChosenFiles files = new ChosenFiles();
  private Messages words = Messages.of(Locale.ENGLISH);
  private Optional<FaintwindWindow> window = Optional.empty();
  private Optional<Stage> stage = Optional.empty();
  private boolean keysAlone;

  public Journey(FxRobot robot, Path folder, Clock clock) {
    this.robot = robot;
    this.folder = folder;
    this.clock = clock;
  }

  /** A journey at the time of the made-up cellars. */
  public static Journey of(FxRobot robot, Path folder) {
    return new Journey(robot, folder, Quiet.CLOCK);
  }

  /** In other words than English ones. */
  Journey in(Messages others) {
    words = others;
    return this;
  }

  /** With the keyboard alone from now on. */
  Journey withKeysAlone() {
    keysAlone = true;
    return this;
  }

  private Optional<KeyHands> keys() {
    return keysAlone ? stage.map(shown -> new KeyHands(robot, shown)) : Optional.empty();
  }

  /** What the window asks at its first start was answered by Ida before. */
  public Journey asked() throws IOException {
    new WindowChoices(100, "light", false, "Ida", "").write(folder);
    return this;
  }

  /** A copy of a shipped project as an instrument of the folder. */
  Journey copy(Path demo, String instrument) throws IOException {
    Path to = folder.resolve(instrument);
    try (Stream<Path> all = Files.walk(demo)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, to.resolve(demo.relativize(file).toString()));
      }
    }
    return this;
  }

  /** Opens the window in a size of its own. */
  public void open(int wide, int high) {
    robot.interact(
        () -> {
          Stage opened = new Stage();
          opened.setWidth(wide);
          opened.setHeight(high);
          show(opened);
        });
  }

  public void open() {
    robot.interact(() -> show(new Stage()));
  }

  private void show(Stage opened) {
    FaintwindApp.dressProgram();
    stage = Optional.of(opened);
    window = Optional.of(new FaintwindWindow(opened, words, KeptLook.in(folder), clock, files));
    window.get().show();
  }

  public void close() {
    robot.interact(() -> stage.ifPresent(Stage::close));
  }

  FaintwindWindow window() {
    return window.orElseThrow();
  }

  Stage stage() {
    return stage.orElseThrow();
  }

  /** Opens an instrument from Home and waits for its step. */
  public void openInstrument(String instrument) {
    String row = "#instrument-" + instrument;
    Waiting.until(() -> there(row));
    keys()
        .ifPresentOrElse(
            hands -> {
              hands.goToRow(row);
              hands.press(KeyCode.ENTER);
            },
            () -> robot.clickOn(row));
    Waiting.until(() -> there("#step-title"));
  }

  /** The file that every question for one is answered with from now on. */
  public void choose(Path file) {
    files.choose(file);
  }

  /** What the journal of an instrument says. */
  InstrumentState state(String instrument) {
    try {
      return new InstrumentFolder(folder.resolve(instrument)).open().state();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The step on the sheet; empty where another place is shown. */
  String stepId() {
    return window()
        .screen()
        .filter(StepScreen.class::isInstance)
        .map(screen -> ((StepScreen) screen).stepId())
        .orElse("");
  }

  /** Waits until a step is on the sheet, to which the window goes by itself. */
  void step(String id) {
    Waiting.until(() -> stepId().equals(id));
  }

  /** Opens a step as its link in the path does. */
  public void go(String id) {
    robot.interact(() -> ((StepScreen) window().screen().orElseThrow()).openStep(id));
    step(id);
  }

  /** Waits for a button or link and presses it, in one go: the screens are drawn anew often. */
  public void fire(String id) {
    keys()
        .ifPresentOrElse(
            hands -> hands.fire(id), () -> Presses.fire(robot, stage().getScene().getRoot(), id));
  }

  public boolean there(String id) {
    return Presses.there(robot, id);
  }

  /** All words within a node, in order, with plain spaces; none where it is not there. */
  public String words(String id) {
    Optional<Node> part = robot.lookup(id).tryQuery();
    return part.map(this::words).orElse("");
  }

  /** The same in this journey's own window, where another one is open too. */
  public String wordsHere(String id) {
    Node root = stage().getScene().getRoot();
    return robot.from(root).lookup(id).tryQuery().map(this::words).orElse("");
  }

  private String words(Node node) {
    String words =
        node instanceof Labeled labeled
            ? labeled.getText()
            : robot.from(node).lookup(".label").queryAllAs(Labeled.class).stream()
                .map(Labeled::getText)
                .collect(Collectors.joining(" "));
    return words.replace('\u00a0', ' ');
  }

  /** Types a reading in place of what stands there, and leaves the field. */
  void type(String reading, String typed) {
    write("#reading-" + reading, typed);
  }

  /** Types into a field in place of what stands there, and leaves it. */
  void write(String field, String typed) {
    Waiting.until(() -> there(field));
    if (keysAlone) {
      keys().orElseThrow().type(field, typed);
      return;
    }
    robot.interact(
        () -> {
          TextInputControl box = robot.lookup(field).queryAs(TextInputControl.class);
          box.requestFocus();
          box.selectAll();
        });
    robot.write(typed);
    press(KeyCode.TAB);
  }

  /** Waits as long as a person needs to see what the Next line says now. */
  public void settle() {
    NextLine line = robot.lookup("#next-line").queryAs(NextLine.class);
    Waiting.until(line::isSeen);
  }

  /** Presses keys together, as for a shortcut. */
  public void press(KeyCode... keys) {
    robot.press(keys);
    for (int i = keys.length - 1; i >= 0; i--) {
      robot.release(keys[i]);
    }
  }

  /** Keeps a picture under target/pictures. */
  public void picture(String name) {
    robot.interact(
        () -> Pictures.keep(stage().getScene(), Path.of("target/pictures/" + name + ".png")));
  }

  /**
   * Keeps pictures in every size, theme and text size people have; only with {@code
   * -Djourney.pictures=FOLDER}.
   */
  public void pictures(String name) {
    String into = System.getProperty("journey.pictures", "");
    if (into.isEmpty()) {
      return;
    }
    for (int[] size : new int[][] {{1024, 700}, {1366, 768}, {1920, 1080}}) {
      for (int text : new int[] {100, 150}) {
        look(size, text, Theme.LIGHT, Path.of(into, name + "-" + size[0] + "-" + text + ".png"));
      }
    }
    look(new int[] {1366, 768}, 100, Theme.DARK, Path.of(into, name + "-1366-100-dark.png"));
    look(new int[] {1280, 800}, 100, Theme.LIGHT, Path.of(into, name + ".png"));
  }

  private void look(int[] size, int text, Theme theme, Path file) {
    robot.interact(
        () -> {
          stage().setWidth(size[0]);
          stage().setHeight(size[1]);
          window().desk().look().textPct().set(text);
          window().desk().look().theme().set(theme);
        });
    for (int i = 0; i < 3; i++) {
      WaitForAsyncUtils.waitForFxEvents();
      robot.sleep(60);
    }
    robot.interact(
        () -> {
          stage().getScene().getRoot().applyCss();
          stage().getScene().getRoot().layout();
          Pictures.keep(stage().getScene(), file);
        });
  }
}
