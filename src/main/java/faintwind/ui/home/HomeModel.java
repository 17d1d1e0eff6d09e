package faintwind.ui.home;

import faintwind.job.lesson.FoundClass;
import faintwind.message.Messages;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.instrument.StepMarks;
import faintwind.ui.instrument.Workspace;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** All instruments of the folder, or the first run where there is none yet. */
public final class HomeModel {
  private final Messages words;
  private final Background background;
  private final Workspace workspace;
  private final HomeWords homeWords;
  private final TodayModel today;
  private final Consumer<Standpoint> open;
  private final StringProperty who;
  private final StringProperty newName = new SimpleStringProperty("");
  private final ReadOnlyObjectWrapper<HomeView> view = new ReadOnlyObjectWrapper<>(HomeView.EMPTY);
  private final ReadOnlyObjectWrapper<Mode> mode = new ReadOnlyObjectWrapper<>(Mode.READING);
  private final ReadOnlyObjectWrapper<Next> next;
  private Workspace.Found found = new Workspace.Found(List.of(), List.of());
  private final PickedModel picked;
  private final HomeClasses classes;
  private List<HomeView.Line> lines = List.of();
  private HomeChoice choice = HomeChoice.ALL_BY_NEED;
  private Optional<Path> selected = Optional.empty();

  /** What the sheet shows. */
  public enum Mode {
    /** The folder is being read. */
    READING,
    /** There is no instrument yet. */
    FIRST_RUN,
    LIST,
    /** A new instrument is being named. */
    NAMING
  }

  /**
   * A model on a folder.
   *
   * @param who the name that entries are signed with
   * @param open shows an instrument
   */
  public HomeModel(Desk desk, Workspace workspace, StringProperty who, Consumer<Standpoint> open) {
    words = desk.words();
    background = desk.background();
    picked = new PickedModel(desk);
    this.workspace = workspace;
    classes = new HomeClasses(workspace.folder());
    this.who = who;
    this.open = open;
    homeWords = new HomeWords(words);
    today = new TodayModel(desk, this::byNeed);
    next = new ReadOnlyObjectWrapper<>(Next.say(Mark.DOING, words.text("window.home.reading")));
    newName.addListener((property, was, now) -> showNext());
    who.addListener((property, was, now) -> showNext());
  }

  public ReadOnlyObjectProperty<HomeView> view() {
    return view.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Mode> mode() {
    return mode.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Next> next() {
    return next.getReadOnlyProperty();
  }

  /** Name of the instrument that is being begun. */
  public StringProperty newName() {
    return newName;
  }

  /** The person's name. */
  public StringProperty who() {
    return who;
  }

  /** All that is in the folder. */
  private record Read(List<FoundClass> classes, Workspace.Found found) {}

  /** Reads the folder in the background. */
  public void read() {
    read(() -> {});
  }

  /** Reads it again and says this of it. */
  private void read(Next of) {
    read(() -> next.set(of));
  }

  private void read(Runnable then) {
    background.entry(
        watch ->
            new Read(
                classes.read(), workspace.read(many -> background.meanwhile(() -> glance(many)))),
        read -> {
          classes.show(read.classes());
          show(read.found());
          then.run();
        },
        this::unreadable);
  }

  private void unreadable(IOException world) {
    next.set(
        Next.say(
            Mark.BLOCKED,
            words.text("window.home.unreadable", String.valueOf(world.getMessage()))));
  }

  /** Shows which instruments there are, before what each needs is known. */
  private void glance(List<Path> folders) {
    if (mode.get() == Mode.READING && found.isEmpty()) {
      mode.set(Mode.LIST);
      lines = homeWords.glance(folders);
      String title = words.text("window.home.reading-many", lines.size());
      view.set(new HomeView(title, lines, List.of(), List.of()));
      next.set(Next.say(Mark.DOING, words.text("window.home.reading")));
    }
  }

  private void show(Workspace.Found now) {
    found = now;
    lines = homeWords.lines(now);
    boolean empty = now.isEmpty();
    if (mode.get() != Mode.NAMING) {
      mode.set(empty ? Mode.FIRST_RUN : Mode.LIST);
    }
    sort();
    showNext();
  }

  /** Orders by name, or by need again. */
  public void toggleOrder() {
    choose(choice.inOtherOrder());
  }

  public boolean isByName() {
    return choice.byName();
  }

  /** Shows only some of them. */
  void filter(HomeFilter now) {
    picked.clear();
    choose(choice.with(now));
  }

  /** Shows only those whose row says this. */
  void find(String wanted) {
    choose(choice.with(wanted));
  }

  private void choose(HomeChoice now) {
    choice = now;
    if (!found.isEmpty()) {
      sort();
      showNext();
    }
  }

  /** How many there are, shown or not. */
  int size() {
    return lines.size();
  }

  private void sort() {
    view.set(homeWords.view(found, lines, choice));
  }

  /** Whether those that were taken off the bench are shown. */
  boolean showsArchive() {
    return choice.filter() == HomeFilter.ARCHIVED;
  }

  /** The classes of the folder. */
  public HomeClasses classes() {
    return classes;
  }

  /** The instruments that are ticked. */
  public PickedModel picked() {
    return picked;
  }

  /** Takes what is ticked off the bench, or brings it back where the archive is shown. */
  void archive() {
    String person = who.get().trim();
    if (showsArchive()) {
      picked.bringBack(person, this::read);
    } else {
      picked.putAway(person, this::read);
    }
  }

  /** The way in for an instrument that somebody packed. */
  TakingIn takingIn(Desk desk) {
    return new TakingIn(
        desk, workspace.folder(), new TakingIn.Answers(this::read, next::set, this::open));
  }

  /** What fits into the time there is. */
  TodayModel today() {
    return today;
  }

  private List<Standpoint> byNeed() {
    return found.instruments().stream()
        .map(Workspace.Listed::standpoint)
        .filter(standpoint -> !standpoint.view().state().retired())
        .sorted(
            Comparator.comparing(HomeWords::mark, StepMarks.byNeed())
                .thenComparing(HomeWords::name, String.CASE_INSENSITIVE_ORDER))
        .toList();
  }

  /** The row that is selected: the Next line speaks of it and its button opens it. */
  void select(Path folder) {
    selected = Optional.of(folder);
    if (mode.get() == Mode.LIST && !found.isEmpty()) {
      showNext();
    }
  }

  /** The row that is selected: the first one until somebody selects another; empty where none. */
  Optional<HomeView.Line> selected() {
    List<HomeView.Line> shown = view.get().lines();
    return shown.stream()
        .filter(line -> selected.filter(line.folder()::equals).isPresent())
        .findFirst()
        .or(() -> shown.stream().findFirst());
  }

  /** Opens the instrument of a folder. */
  public void open(Path folder) {
    found.instruments().stream()
        .map(Workspace.Listed::standpoint)
        .filter(standpoint -> standpoint.view().path().equals(folder))
        .findFirst()
        .ifPresentOrElse(open, () -> openUnread(folder));
  }

  /** One that was asked for before all are read does not wait for the others. */
  private void openUnread(Path folder) {
    background.runQuietly(watch -> workspace.standpoint(folder), open, this::unreadable);
  }

  /** Shows the form for a new instrument. */
  public void beginNaming() {
    mode.set(Mode.NAMING);
    showNext();
  }

  /** Back from the form without a new instrument. */
  public void stopNaming() {
    mode.set(Mode.READING);
    show(found);
  }

  /** Whether a new instrument can be begun: it has a name, and so has the person. */
  public boolean canBegin() {
    return !newName.get().isBlank() && !who.get().isBlank();
  }

  /** Begins the new instrument and opens it. */
  public void begin() {
    if (!canBegin()) {
      return;
    }
    String name = newName.get().trim();
    String person = who.get().trim();
    newName.set(""); // asked once more while it is made, it makes no second one
    background.entry(
        watch -> workspace.begin(name, person),
        open,
        world -> {
          newName.set(name);
          next.set(
              Next.say(
                  Mark.BLOCKED,
                  words.text("window.home.not-begun", String.valueOf(world.getMessage()))));
        });
  }

  /** Opens the folder for rehearsals. */
  public void rehearse() {
    background.entry(
        watch -> workspace.rehearsal(words.text("window.rehearsal")),
        open,
        world ->
            next.set(
                Next.say(
                    Mark.BLOCKED,
                    words.text("window.home.not-begun", String.valueOf(world.getMessage())))));
  }

  /** Opens the made-up demonstration, in its own folder. */
  public void openDemo() {
    Workspace demo = workspace.demo(words.text("window.demo-folder"));
    background.run(
        watch -> demo.demonstration(),
        open,
        world ->
            next.set(
                Next.say(
                    Mark.BLOCKED,
                    words.text("window.home.no-demo", String.valueOf(world.getMessage())))));
  }

  /** Whether these are the made-up instruments. */
  boolean isDemo() {
    return workspace.isDemo();
  }

  private void showNext() {
    next.set(
        switch (mode.get()) {
          case READING -> Next.say(Mark.DOING, words.text("window.home.reading"));
          case FIRST_RUN ->
              Next.say(
                      Mark.READY,
                      words.text("window.home.first-next"),
                      new Act("start-parts", words.text("window.home.start"), this::beginNaming))
                  .withDetail(words.text("window.home.first-detail"));
          case NAMING -> naming();
          case LIST -> list();
        });
  }

  private Next naming() {
    Act back = new Act("naming-back", words.text("window.home.back"), this::stopNaming);
    return new Next(
        Mark.DOING,
        words.text("window.home.naming"),
        words.text("window.home.naming-detail"),
        canBegin()
            ? Optional.of(new Act("begin", words.text("window.home.begin"), this::begin))
            : Optional.empty(),
        List.of(back));
  }

  private Next nothingShown() {
    if (!choice.wanted().isEmpty()) {
      return Next.say(Mark.READY, words.text("window.home.none-found", choice.wanted()))
          .withDetail(words.text("window.home.none-found-how"));
    }
    return showsArchive()
        ? Next.say(Mark.READY, words.text("window.home.archive-empty"))
            .withDetail(words.text("window.home.archive-how"))
        : Next.say(Mark.DONE, words.text("window.home.none-shown"));
  }

  private Next list() {
    return selected()
        .map(
            line ->
                Next.say(
                    line.state().mark(),
                    words.text("window.home.next", line.name(), line.next().sentence()),
                    new Act(
                        "open-first",
                        words.text("window.home.open", line.name()),
                        () -> open(line.folder()))))
        .orElseGet(
            () ->
                found.instruments().isEmpty()
                    ? Next.say(Mark.BLOCKED, words.text("window.home.all-broken"))
                    : nothingShown());
  }
}
