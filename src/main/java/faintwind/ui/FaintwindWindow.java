package faintwind.ui;

import faintwind.calibration.plan.PlannedSession;
import faintwind.job.WindowChoices;
import faintwind.job.language.Spoken;
import faintwind.message.Messages;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.FileQuestion;
import faintwind.ui.frame.FirstStartScreen;
import faintwind.ui.frame.Frame;
import faintwind.ui.frame.HelpNote;
import faintwind.ui.frame.KeptLook;
import faintwind.ui.frame.LanguageMenu;
import faintwind.ui.frame.Look;
import faintwind.ui.frame.LookMenu;
import faintwind.ui.frame.NextLine;
import faintwind.ui.frame.Place;
import faintwind.ui.frame.Screen;
import faintwind.ui.frame.TopStrip;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.home.HomeModel;
import faintwind.ui.home.HomeScreen;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.instrument.Workspace;
import faintwind.ui.lesson.ClassScreen;
import faintwind.ui.lesson.NewClassScreen;
import faintwind.ui.part.Notes;
import faintwind.ui.turntable.LiveTables;
import faintwind.ui.work.Background;
import faintwind.ui.work.DiskWords;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import javafx.util.Duration;

/** The window: one scene, one frame, the screens wired in one visible place. */
public final class FaintwindWindow {
  private static final double WIDTH_PX = 1280;
  private static final double HEIGHT_PX = 800;
  private static final double LEAST_WIDTH_PX = 960;
  private static final double LEAST_HEIGHT_PX = 600;
  private static final Duration TICK = Duration.seconds(10);

  private final Stage stage;
  private final Desk desk;
  private final KeptLook kept;
  private final Workspace own;
  private Workspace workspace;
  private final LiveTables tables;
  private final FieldRoom field;
  private final Rooms rooms;
  private final TopStrip strip;
  private final NextLine nextLine;
  private final Questions questions;
  private final Leaving leaving;
  private final Frame frame;
  private final Dress dress;
  private final Scene scene;
  private final Shown shown;
  private final Timeline ticking = new Timeline(new KeyFrame(TICK, event -> tick()));
  private final EventHandler<WindowEvent> hidden = gone -> hidden();
  private Optional<OpenInstrument> instrument = Optional.empty();

  /** Empty at the first start. */
  private Optional<Place> place = Optional.empty();

  /**
   * A window on a folder of instruments.
   *
   * @param stage not yet shown
   * @param words texts in the person's language
   * @param kept look and name as chosen before, and the folder of instruments
   * @param clock the time of day
   */
  public FaintwindWindow(Stage stage, Messages words, KeptLook kept, Clock clock) {
    this(stage, words, kept, clock, FileQuestion.over(stage));
  }

  /** A window that asks for files in the given way. */
  FaintwindWindow(Stage stage, Messages words, KeptLook kept, Clock clock, FileQuestion files) {
    this.stage = stage;
    this.kept = kept;
    Look look = kept.look();
    desk =
        new Desk(
            words, new Background(Platform::runLater), new Notes(), this::go, files, look, clock);
    own = new Workspace(kept.folder(), clock, words.locale());
    workspace = own;
    tables = new LiveTables(desk);
    strip = new TopStrip(words, this::go, new LookMenu(desk, kept, this::help, this::speak));
    strip.whenDemoIsLeft(this::leaveDemo);
    nextLine = new NextLine(words);
    questions = new Questions(desk, nextLine);
    leaving = new Leaving(desk.background(), nextLine, questions);
    frame = new Frame(words, desk.notes(), strip, nextLine);
    shown = new Shown(desk, frame, nextLine);
    field = new FieldRoom(desk, tables, this::change);
    dress = new Dress(stage, frame, look);
    scene = new Scene(frame, WIDTH_PX, HEIGHT_PX);
    rooms = new Rooms(desk, tables, field, this::rehearse);
    listen();
    new Meant(scene, nextLine).listen();
    new KeptFocus(scene, strip, shown::nextThing).listen();
    new Keys(
            new Keys.Ways(
                shown::screen, this::help, () -> shown.work().ifPresent(questions::askToStop)),
            frame,
            nextLine,
            desk)
        .listenOn(scene);
  }

  /** Shows the window with all instruments of the folder. */
  public void show() {
    stage.setScene(scene);
    stage.setMinWidth(LEAST_WIDTH_PX);
    stage.setMinHeight(LEAST_HEIGHT_PX);
    StagePlace.restore(stage, kept.folder());
    begin();
    stage.show();
    dress.fit();
  }

  private void begin() {
    stage.setTitle(desk.text("window.name"));
    desk.files().beginIn(kept.folder());
    if (kept.asked()) {
      go(Place.HOME);
    } else {
      shown.show(new FirstStartScreen(desk, this::firstStartDone));
      strip.showHome("");
    }
    stage.setOnCloseRequest(
        event -> {
          event.consume();
          leave(stage::close);
        });
    stage.addEventHandler(WindowEvent.WINDOW_HIDDEN, hidden);
    ticking.setCycleCount(Animation.INDEFINITE);
    ticking.play();
  }

  private void leave(Runnable then) {
    List<Unsaved> elsewhere = new ArrayList<>(field.unsaved());
    elsewhere.addAll(tables.unsaved());
    leaving.leaveAll(shown.screen(), elsewhere, instrument, then);
  }

  private void hidden() {
    StagePlace.keep(stage, kept.folder());
    closeInstrument();
  }

  /** Goes on in the language that was chosen; not while something is turned or worked out. */
  private boolean speak() {
    boolean now = !tables.isBusy() && desk.background().count().get() == 0;
    if (now) {
      leave(this::inOtherWords);
    }
    return now;
  }

  /** Another window takes the place of this one, with the same instrument at the same place. */
  private void inOtherWords() {
    ticking.stop();
    stage.removeEventHandler(WindowEvent.WINDOW_HIDDEN, hidden);
    Optional<Path> opened = instrument.map(OpenInstrument::folder);
    closeInstrument();
    desk.background().close();
    Spoken spoken = kept.spoken(Optional.empty());
    FaintwindWindow next =
        new FaintwindWindow(stage, spoken.words(), kept.again(), desk.clock(), desk.files());
    double wide = stage.getWidth();
    double high = stage.getHeight();
    stage.setScene(next.scene);
    stage.setWidth(wide);
    stage.setHeight(high);
    next.begin();
    next.dress.fit();
    opened.ifPresent(folder -> next.openAgain(folder, place));
    shown.screen().flatMap(ClassScreen::shownBy).ifPresent(next::showClass);
    LanguageMenu.tell(next.desk, spoken.problems(), next.frame);
  }

  private void openAgain(Path folder, Optional<Place> at) {
    desk.background()
        .entry(
            watch -> own.standpoint(folder),
            standpoint -> open(standpoint, at),
            world -> nextLine.warn(DiskWords.say(world, desk.words())));
  }

  /** Shows where field logs are converted, by a calibration of an instrument that is not here. */
  public void showField(Path calibration) {
    shown.show(DataScreens.field(desk, calibration));
    strip.showHome(workspace.name());
  }

  private void firstStartDone() {
    kept.wasAsked();
    keepChoices();
    go(Place.HOME);
  }

  private void keepChoices() {
    WindowChoices choices = kept.choices();
    desk.background()
        .entry(
            watch -> {
              choices.write(kept.folder());
              return choices;
            },
            written -> {},
            world ->
                nextLine.warn(desk.text("window.not-kept", String.valueOf(world.getMessage()))));
  }

  private void tick() {
    instrument.ifPresent(
        opened -> {
          opened.tryAgain();
          opened.tick();
        });
  }

  /** The screen that stands in the frame. */
  public Optional<Screen> screen() {
    return shown.screen();
  }

  Desk desk() {
    return desk;
  }

  /** Opens an instrument at the step where its journal left off; one that is new at its design. */
  void open(OpenInstrument.Standpoint standpoint) {
    open(standpoint, Optional.empty());
  }

  private void open(OpenInstrument.Standpoint standpoint, Optional<Place> at) {
    OpenInstrument opened = new OpenInstrument(desk, standpoint, workspace.opening(), kept.who());
    opened.trouble().addListener((property, was, now) -> nextLine.warn(now));
    opened.stranded().addListener((property, was, now) -> questions.offerAnotherPlace(opened, now));
    instrument.ifPresent(OpenInstrument::close);
    instrument = Optional.of(opened);
    desk.files().beginIn(opened.folder());
    opened.hold();
    boolean enters = isDemo(opened) && !workspace.isDemo();
    workspace = isDemo(opened) ? demo() : own;
    strip.demo(workspace.isDemo());
    Place first = opened.isNew() ? Place.DESIGN : Place.MAKE;
    go(at.orElse(enters ? Place.FIELD : opened.rehearsal() ? Place.TURNTABLE : first));
  }

  private Workspace demo() {
    return own.demo(desk.text("window.demo-folder"));
  }

  private boolean isDemo(OpenInstrument opened) {
    return opened.folder().startsWith(demo().folder());
  }

  /** Back to one's own instruments, from wherever in the demonstration. */
  private void leaveDemo() {
    closeInstrument();
    workspace = own;
    strip.demo(false);
    desk.files().beginIn(own.folder());
    go(Place.HOME);
  }

  private void closeInstrument() {
    instrument.ifPresent(OpenInstrument::close);
    instrument = Optional.empty();
  }

  private void help() {
    Node asker = Optional.ofNullable(scene.getFocusOwner()).orElse(nextLine);
    shown.screen().ifPresent(asked -> HelpNote.toggle(desk, asked, place, asker));
  }

  /** Opens the folder for rehearsals, whatever instrument was open; with a plan to be rehearsed. */
  private void rehearse(Optional<PlannedSession> plan) {
    desk.background()
        .entry(
            watch -> own.rehearsal(desk.text("window.rehearsal"), plan),
            this::open,
            world ->
                nextLine.warn(
                    desk.text("window.home.not-begun", DiskWords.say(world, desk.words()))));
  }

  private void go(Place place) {
    if (place != Place.HOME && instrument.isEmpty()) {
      return;
    }
    leaving.leave(shown.screen(), () -> come(place));
  }

  private void come(Place there) {
    place = Optional.of(there);
    frame.rehearsal(there != Place.HOME && instrument.get().rehearsal());
    shown.show(there == Place.HOME ? home() : rooms.at(there, instrument.get()));
    if (there == Place.HOME) {
      strip.showHome(workspace.name());
      nextLine.warn("");
    } else {
      OpenInstrument opened = instrument.get();
      strip.showInstrument(opened.name(), there, opened.mark());
    }
  }

  private Screen home() {
    HomeModel model = new HomeModel(desk, workspace, kept.who(), this::open);
    model.picked().whenEntering(this::letGo);
    model.classes().whenAsked(this::showClass, this::makeClass);
    return new HomeScreen(desk, model, this::change);
  }

  private void makeClass() {
    leaving.leave(
        shown.screen(), () -> shown.show(NewClassScreen.on(desk, workspace, this::showClass)));
  }

  /** No pair's instrument stays held by this window: the teacher may sign for it. */
  private void showClass(Path folder) {
    leaving.leave(
        shown.screen(),
        () -> {
          closeInstrument();
          shown.show(new ClassScreen(desk, folder, its -> openAgain(its, Optional.empty())));
        });
  }

  /** Closes the instrument of a folder, where it is the one that is open. */
  private void letGo(Path folder) {
    if (instrument.filter(opened -> opened.folder().equals(folder)).isPresent()) {
      closeInstrument();
    }
  }

  /** Shows another screen, once it is said what becomes of what is not kept on this one. */
  private void change(Screen now) {
    leaving.leave(shown.screen(), () -> shown.show(now));
  }

  private void listen() {
    dress.put(scene);
    kept.whenChanged(
        () -> {
          if (kept.asked()) {
            keepChoices();
          }
        });
    scene
        .focusOwnerProperty()
        .addListener(
            (property, was, now) -> {
              if (now != null) {
                frame.reveal(now);
              }
            });
  }
}
