package faintwind.ui;

import faintwind.job.WindowChoices;
import faintwind.ui.frame.Place;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.testfx.api.FxRobot;

/** Goes to every screen of the window, on made-up instruments, and stops at each. */
final class EveryScreen {
  private static final Path FOREIGN = Path.of("assets/loggers/semicolons-clock.sample.csv");

  private final FxRobot robot;
  private final Journey journey;
  private final Path folder;
  private final Consumer<String> stop;

  EveryScreen(FxRobot robot, Journey journey, Path folder, Consumer<String> stop) {
    this.robot = robot;
    this.journey = journey;
    this.folder = folder;
    this.stop = stop;
  }

  /** Before anything was made: first start, no instrument, the naming of one. */
  void fresh() {
    journey.open();
    await("#first-keep");
    stop.accept("first-start");
    fire("#first-keep");
    await("#first-rehearse");
    stop.accept("home-first");
    classForm();
    fire("#start-parts");
    await("#new-name");
    stop.accept("home-naming");
    journey.close();
  }

  /** The form of a class: filled in, then with something wrong in every box. */
  private void classForm() {
    fire("#first-class");
    await("#class-new-name");
    stop.accept("class-new-empty");
    fill("name", "Year 10");
    fill("pairs", "12");
    fill("nicknames", "Otters, Newts, , Herons");
    fill("first", "2026-12-22 09:50");
    fire("#class-new-add");
    await("#class-new-lesson-6");
    fill("folder", "year-10");
    robot.interact(() -> robot.lookup("#class-new-code").query().requestFocus());
    stop.accept("class-new");
    for (String box : List.of("pairs", "nicknames", "roles", "first", "lesson-2", "code")) {
      fill(box, ",x,");
    }
    fire("#class-new-make");
    await("#class-new-lesson-2-said");
    stop.accept("class-new-wrong");
    fire("#class-new-back");
    fire("#unsaved-drop");
    await("#first-rehearse");
  }

  private void fill(String box, String text) {
    await("#class-new-" + box);
    robot.interact(
        () -> robot.lookup("#class-new-" + box).queryAs(TextInputControl.class).setText(text));
  }

  /** Instruments at every kind of step, and the shipped cellar. */
  void prepare() throws IOException {
    new WindowChoices(100, "light", true, "Ida", "").write(folder);
    Cellar.begin("Rind 2, by the door")
        .design()
        .before("heater-insulation")
        .open("heater-insulation")
        .cautions("heater-insulation")
        .type("heater-insulation", "lead-a-ball", "6M")
        .type("heater-insulation", "lead-b-ball", "OL 20M")
        .type("heater-insulation", "lead-to-lead", "100,3")
        .into(folder, "rind-2");
    Cellar.begin("Rind 3, floor drain")
        .design()
        .before("coat-parts")
        .open("coat-parts")
        .cautions("coat-parts")
        .clock("coat-parts", 24 * 3600, 21 * 60)
        .into(folder, "rind-3");
    Cellar.begin("Rind 4, photo")
        .design()
        .before("drill-heated")
        .open("drill-heated")
        .cautions("drill-heated")
        .into(folder, "rind-4");
    Cellar.begin("Rind 5, glue")
        .design()
        .before("glue-heater")
        .open("glue-heater")
        .into(folder, "rind-5");
    Cellar.shipped(folder, "rind-1");
    Cellar.begin("Rind 6, new").into(folder, "rind-6");
  }

  /** The window was asked nothing yet but its look. */
  void unasked() throws IOException {
    new WindowChoices(100, "light", true, "Ida", "").write(folder);
  }

  void all() {
    journey.open();
    await("#instrument-rind-2");
    stop.accept("home");
    fire("#today-ask");
    stop.accept("home-today");
    making();
    place(Place.DESIGN);
    designing();
    stepOf("rind-3", "clock");
    journey.go("plating-home-cautions");
    stop.accept("plating");
    journey.go("get-parts");
    stop.accept("step-entries");
    stepOf("rind-4", "photo");
    stepOf("rind-5", "cautions");
    data();
    journey.close();
  }

  /** Instruments laid beside one another, and a class with its projector. */
  void many() throws IOException {
    for (String one : List.of("cellar", "cellar-door", "ripening-room")) {
      journey.copy(Path.of("demo-projects").resolve(one), one);
    }
    RehearsedClass.into(folder, Quiet.CLOCK);
    journey.open();
    for (String one : List.of("cellar", "cellar-door", "ripening-room", "pair-03")) {
      fire("#tick-" + one);
    }
    stop.accept("home-picked");
    fire("#home-compare");
    await("#compare-curves");
    stop.accept("compare");
    fire("#compare-back");
    fire("#open-class");
    await("#class-pair-pair-01");
    stop.accept("class");
    fire("#class-projector");
    stop.accept("class-projector");
    journey.close();
  }

  private void making() {
    open("rind-2");
    await("#waive");
    stop.accept("step-trouble");
    journey.type("lead-a-ball", "27");
    await("#reading-lead-a-ball-choice-1");
    stop.accept("step-which-unit");
    fire("#waive");
    await("#waiver-name");
    stop.accept("step-waiver");
    robot.interact(() -> robot.lookup("#help").queryAs(ButtonBase.class).fire());
    await("#note");
    stop.accept("help");
    place(Place.RECORD);
    await("#ledger .row");
    stop.accept("record-made");
  }

  private void designing() {
    await("#outcome-smallest-speed-m-s");
    await("#beside-table");
    fire("#design-all");
    fire("#why-smallest-speed-m-s");
    await("#note");
    stop.accept("design");
    for (List<String> page :
        List.of(
            List.of("wish", "#wish-table"),
            List.of("others", "#other-all"),
            List.of("side", "#side-look-4"),
            List.of("parts", "#parts-cost"))) {
      fire("#design-page-" + page.get(0));
      await(page.get(1));
      stop.accept("design-" + page.get(0));
    }
  }

  private void stepOf(String instrument, String name) {
    place(Place.HOME);
    open(instrument);
    stop.accept("step-" + name);
  }

  private void data() {
    place(Place.HOME);
    open("rind-1");
    place(Place.TURNTABLE);
    await("#caution-spinning-arm-read");
    stop.accept("turntable-caution");
    fire("#caution-spinning-arm-read");
    await("#recording-1");
    stop.accept("turntable");
    for (String way : List.of("plan", "live", "file", "typed")) {
      fire("#turntable-way-" + way);
      if (way.equals("typed")) {
        fire("#turntable-add-flow");
      }
      stop.accept("turntable-" + way);
      if (way.equals("plan")) {
        fire("#turntable-plan-make");
        await("#turntable-plan-steps");
        stop.accept("turntable-planned");
        fire("#turntable-plan-keep");
      }
    }
    place(Place.FORMULA);
    await("#formula-loss");
    stop.accept("formula");
    place(Place.FIELD);
    await("#field-plot");
    stop.accept("field");
    journey.press(KeyCode.CONTROL, KeyCode.T);
    stop.accept("field-table");
    new AirWalk(robot, stop).all();
    journey.choose(FOREIGN);
    place(Place.RECORD);
    await("#ledger .row");
    stop.accept("record");
    fire("#happened-repair");
    stop.accept("record-repair");
    fire("#happened-hand-over");
    stop.accept("record-hand-over");
    fire("#happened-leave");
  }

  /** The live table, rehearsed. */
  void live() {
    journey.open();
    fire("#first-rehearse");
    fire("#caution-spinning-arm-read");
    await("#caution-eyes-read");
    stop.accept("live-caution");
    for (String caution :
        List.of("eyes", "hair", "circle", "loose", "tip-speed", "guard", "start")) {
      fire("#caution-" + caution + "-read");
    }
    stop.accept("live-start");
    fire("#rehearse-short");
    fire("#live-pace-100");
    fire("#live-heater-on");
    await("#live-spin");
    stop.accept("live-warm");
    fire("#live-spin");
    stop.accept("live-spin");
    fire("#live-wrong");
    await("#went-wrong");
    stop.accept("live-wrong");
    journey.close();
  }

  private void open(String instrument) {
    await("#instrument-" + instrument);
    robot.interact(
        () -> robot.lookup("#instrument-" + instrument).query().fireEvent(Presses.click()));
    await("#step-title");
  }

  private void place(Place place) {
    robot.interact(() -> journey.window().desk().go().accept(place));
  }

  private void fire(String id) {
    await(id);
    journey.fire(id);
  }

  private void await(String id) {
    try {
      Waiting.until(() -> journey.there(id));
    } catch (AssertionError notThere) {
      throw new AssertionError(id + " is not there", notThere);
    }
  }
}
