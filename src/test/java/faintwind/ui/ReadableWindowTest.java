package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.ui.frame.Theme;
import faintwind.ui.measure.Finding;
import faintwind.ui.measure.LaidOut;
import faintwind.ui.measure.OtherDates;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javafx.scene.Parent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * Everything in the window can be read: on every screen, at six sizes of the window and three of
 * text. The looks differ in colours alone ({@link LooksTest}), so that one of them is measured here
 * and all three in the long run, as well as the longer language at every size.
 */
@ExtendWith(ApplicationExtension.class)
class ReadableWindowTest {
  private static final double BASE_PX = 15;

  /** A size of the window in pixels. */
  private record Size(int wide, int high) {}

  private static final List<Size> SIZES =
      List.of(
          new Size(960, 600),
          new Size(1024, 700),
          new Size(1280, 800),
          new Size(1366, 768),
          new Size(1920, 1080),
          new Size(3840, 2160));
  private static final List<Size> EXTREMES = List.of(new Size(960, 600), new Size(1366, 768));
  private static final List<Integer> TEXTS_PCT = List.of(100, 150, 200);

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final Map<String, List<String>> findings = new TreeMap<>();

  @BeforeAll
  static void language() throws IOException {
    LongerWords.write();
  }

  @Tag("long")
  @Test
  void everythingCanBeReadAtEverySize(FxRobot robot) throws IOException {
    walk(robot, Locale.ENGLISH, SIZES, List.of(Theme.LIGHT));
    assertNothing();
  }

  @Tag("long")
  @Test
  void everythingCanBeReadInALongerLanguage(FxRobot robot) throws IOException {
    walk(robot, LongerWords.LOCALE, EXTREMES, List.of(Theme.LIGHT));
    assertNothing();
  }

  @Tag("slow")
  @Test
  void everythingCanBeReadInEveryLookAndALongerLanguage(FxRobot robot) throws IOException {
    walk(robot, LongerWords.LOCALE, SIZES, List.of(Theme.values()));
    assertNothing();
  }

  private void walk(FxRobot robot, Locale locale, List<Size> sizes, List<Theme> themes)
      throws IOException {
    for (String part : List.of("fresh", "made", "many", "live")) {
      Path place = Files.createDirectories(folder.resolve(part));
      Journey journey = Journey.of(robot, place).in(Messages.of(locale));
      EveryScreen screens =
          new EveryScreen(
              robot,
              journey,
              place,
              name -> robot.interact(() -> measure(journey, name, sizes, themes)));
      switch (part) {
        case "fresh" -> screens.fresh();
        case "made" -> {
          screens.prepare();
          screens.all();
        }
        case "many" -> {
          screens.unasked();
          screens.many();
        }
        default -> {
          screens.unasked();
          screens.live();
        }
      }
    }
  }

  private void measure(Journey journey, String name, List<Size> sizes, List<Theme> themes) {
    Parent root = journey.stage().getScene().getRoot();
    if (journey.window().desk().words().locale().equals(Locale.ENGLISH)) { // it knows its months
      OtherDates.under(root)
          .forEach(text -> findings.computeIfAbsent(name, n -> new ArrayList<>()).add(text));
    }
    double wide = root.getLayoutBounds().getWidth();
    double high = root.getLayoutBounds().getHeight();
    for (Theme theme : themes) {
      journey.window().desk().look().theme().set(theme);
      for (int pct : TEXTS_PCT) {
        journey.window().desk().look().textPct().set(pct);
        for (Size size : sizes) {
          lay(root, size.wide(), size.high());
          List<Finding> faults =
              LaidOut.faults(root, size.wide(), size.high(), BASE_PX * pct / 100);
          String at = size.wide() + "x" + size.high() + " " + pct + " % " + theme;
          faults.forEach(
              f -> findings.computeIfAbsent(name, n -> new ArrayList<>()).add(at + ": " + f));
        }
      }
    }
    journey.window().desk().look().theme().set(themes.get(0));
    journey.window().desk().look().textPct().set(100);
    lay(root, wide, high);
  }

  /** As the window does at its pulses, which go on until nothing changes any more. */
  private static void lay(Parent root, double wide, double high) {
    root.resize(wide, high);
    for (int pass = 0; pass < 5; pass++) {
      root.applyCss();
      root.layout();
    }
  }

  private void assertNothing() {
    List<String> all = new ArrayList<>();
    findings.forEach(
        (screen, list) -> {
          all.add("== " + screen + ": " + list.size());
          all.addAll(list);
        });
    try {
      Files.writeString(Path.of("target/readable.txt"), String.join("\n", all));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(all.stream().limit(60)).as("all in target/readable.txt").isEmpty();
  }
}
