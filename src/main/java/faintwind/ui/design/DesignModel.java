package faintwind.ui.design;

import faintwind.job.design.DesignWork;
import faintwind.job.design.Size;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.physics.advice.Prices;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignChange;
import faintwind.physics.part.Catalogue;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** A design while it is being chosen: every choice is worked out off the JavaFX thread at once. */
public final class DesignModel {
  private final Messages words;
  private final Background background;
  private final Ways ways;
  private final DesignChoices choices;
  private final DesignWishModel wish;
  private final DesignOthersModel others;
  private final DesignSideModel side;
  private final DesignPartsModel partsList;
  private final ReadOnlyObjectWrapper<View> view = new ReadOnlyObjectWrapper<>(View.NOTHING);
  private final ReadOnlyObjectWrapper<DesignPage> page =
      new ReadOnlyObjectWrapper<>(DesignPage.DESIGN);
  private final ReadOnlyObjectWrapper<Next> next;
  private Optional<DesignWork> work = Optional.empty();
  private Optional<Design> keptDesign = Optional.empty();
  private String text = DesignWork.START;
  private String kept = "";
  private String saved = "";
  private final List<DesignChange> pending = new ArrayList<>();
  private boolean showing;
  private long asked;

  /**
   * How the design leaves the screen.
   *
   * @param keep writes the design file's text to the journal
   * @param askTarget asks where a file goes, given a name
   */
  public record Ways(Consumer<String> keep, Function<String, Optional<Path>> askTarget) {}

  /**
   * What there is to show.
   *
   * @param worked the design and what follows; empty until it is worked out
   * @param problems what is wrong with the last choice; the design before it still shows
   */
  public record View(Optional<DesignWork.Worked> worked, List<String> problems) {
    static final View NOTHING = new View(Optional.empty(), List.of());

    public View {
      problems = List.copyOf(problems);
    }
  }

  /** A model that begins at the starting design. */
  public DesignModel(Messages words, Background background, Ways ways) {
    this.words = words;
    this.background = background;
    this.ways = ways;
    choices = new DesignChoices(words);
    wish = new DesignWishModel(words, background);
    others = new DesignOthersModel(words, background);
    side = new DesignSideModel(words, background);
    partsList = new DesignPartsModel(words, background, ways.askTarget(), this::change);
    next = new ReadOnlyObjectWrapper<>(Next.say(Mark.READY, words.text("design.next.wait")));
    wish.answer().addListener((property, was, now) -> say());
  }

  public ReadOnlyObjectProperty<View> view() {
    return view.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Next> next() {
    return next.getReadOnlyProperty();
  }

  /** The page that is open. */
  public ReadOnlyObjectProperty<DesignPage> page() {
    return page.getReadOnlyProperty();
  }

  public DesignChoices choices() {
    return choices;
  }

  public DesignWishModel wish() {
    return wish;
  }

  public DesignOthersModel others() {
    return others;
  }

  public DesignSideModel side() {
    return side;
  }

  public DesignPartsModel partsList() {
    return partsList;
  }

  /** What can be picked from; empty until the parts are read. */
  public Optional<Catalogue> parts() {
    return work.map(DesignWork::parts);
  }

  /** Opens a page. */
  public void open(DesignPage now) {
    page.set(now);
    saved = "";
    beginPage();
    say();
  }

  /** What a page works out only where somebody looks at it. */
  private void beginPage() {
    if (work.isEmpty() || view.get().worked().isEmpty()) {
      return;
    }
    DesignWork.Worked worked = view.get().worked().get();
    switch (page.get()) {
      case WISH -> wish.begin(worked.design(), work.get().parts());
      case OTHERS -> others.begin(work.get(), worked);
      case PARTS -> partsList.present(worked);
      case DESIGN, SIDE -> side.present(work.get(), worked);
    }
  }

  /**
   * Begins with a design on record, or the starting one and the question what it is for.
   *
   * @param onRecord the design file's text
   * @param ownParts folder with parts of the user's own
   */
  public void begin(Optional<String> onRecord, Optional<Path> ownParts) {
    onRecord.ifPresent(json -> text = json);
    kept = onRecord.orElse("");
    page.set(onRecord.isPresent() ? DesignPage.DESIGN : DesignPage.WISH);
    background.entry(
        watch -> DesignWork.open(ownParts).then(opened -> first(opened, text)),
        this::begun,
        this::broke);
  }

  private record First(DesignWork work, DesignWork.Worked worked) {}

  private static Checked<First> first(DesignWork opened, String design) {
    try {
      return opened.with(design, List.of()).map(w -> new First(opened, w));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private void begun(Checked<First> first) {
    first.fold(
        (value, notes) -> {
          work = Optional.of(value.work());
          keptDesign = kept.isEmpty() ? Optional.empty() : Optional.of(value.worked().design());
          show(value.worked());
          return true;
        },
        problems -> refused(problems));
  }

  /** A part was picked. */
  public void picked(DesignChoices.Pick pick) {
    change(choices.changes(pick));
  }

  /** A number was judged. */
  public void typed(DesignChoices.Figure number) {
    change(choices.changes(number));
  }

  /** A change that comes before the last one is worked out goes on from it. */
  private void change(List<DesignChange> changes) {
    if (!showing && !changes.isEmpty()) {
      pending.addAll(changes);
      become(text, List.copyOf(pending), () -> {});
    }
  }

  /** Works a design out and shows it; a later choice has newer news. */
  private void become(String from, List<DesignChange> changes, Runnable then) {
    if (work.isEmpty()) {
      return;
    }
    long turn = ++asked;
    DesignWork by = work.get();
    background.entry(
        watch -> by.with(from, changes),
        worked -> {
          if (turn == asked) {
            pending.clear();
            worked.fold((value, notes) -> shown(value, then), this::refused);
          }
        },
        this::broke);
  }

  private boolean shown(DesignWork.Worked value, Runnable then) {
    show(value);
    then.run();
    return true;
  }

  /** A suggestion with the prices typed so far. */
  DesignWork.Worked asWorked(Suggestion suggestion) {
    Prices prices = view.get().worked().map(w -> w.sized().prices()).orElse(Prices.NONE);
    return new DesignWork.Worked(
        DesignWork.text(suggestion.design(), prices),
        new Size.Sized(suggestion.design(), suggestion.sheet(), prices));
  }

  /** Makes a suggestion the present design, with the prices typed so far, and keeps it. */
  public void take(Suggestion suggestion) {
    become(
        asWorked(suggestion).text(),
        List.of(),
        () -> {
          keep();
          open(DesignPage.DESIGN);
        });
  }

  /** Makes another design the present one, to be looked at before it is kept. */
  public void use(DesignWork.Worked other) {
    become(other.text(), List.of(), () -> open(DesignPage.DESIGN));
  }

  private void show(DesignWork.Worked worked) {
    text = worked.text();
    saved = "";
    showing = true;
    choices.show(worked.design());
    showing = false;
    remark(worked);
    view.set(new View(Optional.of(worked), List.of()));
    beginPage();
    say();
  }

  private void remark(DesignWork.Worked worked) {
    double ohm = worked.design().heater().resistance_ohm().nominal();
    choices
        .number(DesignChoices.Figure.POWER)
        .remark()
        .set(
            words.text(
                "design.remark.resistor",
                worked.design().heater().series().name(),
                DesignWords.figures(ohm)));
    choices
        .number(DesignChoices.Figure.ALTITUDE)
        .remark()
        .set(
            words.text(
                "design.remark.pressure",
                Math.round(worked.design().air().pressure_Pa() / 100),
                Math.round(100 * worked.design().air().relativeHumidity())));
  }

  private boolean refused(List<Problem> problems) {
    view.set(new View(view.get().worked(), problems.stream().map(words::sentence).toList()));
    say();
    return false;
  }

  private void broke(IOException broke) {
    view.set(new View(view.get().worked(), List.of(DiskWords.say(broke, words))));
    say();
  }

  /** Keeps the design in the journal. */
  public void keep() {
    kept = text;
    keptDesign = view.get().worked().map(DesignWork.Worked::design);
    ways.keep().accept(text);
    say();
  }

  /** Whether the present design, apart from prices, is the one on record. */
  boolean isKept() {
    return keptDesign.isPresent()
        && keptDesign.equals(view.get().worked().map(DesignWork.Worked::design));
  }

  /**
   * Asks where the parts list goes and writes it; prices typed for the design on record are kept
   * with it.
   *
   * @param ending {@code csv}, {@code html} or {@code pdf}
   */
  public void saveParts(String ending) {
    view.get().worked().ifPresent(partsList::present);
    partsList.save(
        ending,
        written -> {
          if (isKept() && !text.equals(kept)) {
            keep();
          }
          saved = written.toString();
          say();
        },
        this::broke);
  }

  /** The verdict in a sentence. */
  public String title() {
    if (view.get().worked().isEmpty()) {
      return words.text(
          view.get().problems().isEmpty() ? "design.title.wait" : "design.title.refused");
    }
    long stops = count(DesignVerdict.STOP);
    long better = count(DesignVerdict.IMPROVE);
    if (stops > 0) {
      return words.text("design.title.stop", stops);
    }
    return words.text(better == 0 ? "design.title.good" : "design.title.improve", better);
  }

  /** How many outcomes have a verdict. */
  long count(DesignVerdict verdict) {
    return view.get().worked().stream()
        .flatMap(w -> w.sheet().quantities().stream())
        .filter(q -> q.verdict() == verdict)
        .count();
  }

  /** Where the parts list was saved last, while that is news. */
  String saved() {
    return saved;
  }

  private void say() {
    next.set(DesignNext.of(this, words));
  }
}
