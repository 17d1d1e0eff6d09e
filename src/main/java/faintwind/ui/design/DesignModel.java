package faintwind.ui.design;

import faintwind.job.design.DesignWork;
import faintwind.job.design.Sized;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.physics.advice.Prices;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.choice.DesignField;
import faintwind.physics.part.Catalogue;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** A design while it is being chosen: every choice is worked out off the JavaFX thread at once. */
public final class DesignModel implements DesignNext.Acts {
  private final Messages words;
  private final Background background;
  private final Ways ways;
  private final DesignChoices choices;
  private final DesignWishModel wish;
  private final DesignOthersModel others;
  private final DesignSideModel side;
  private final DesignPartsModel partsList;
  private final ReadOnlyObjectWrapper<DesignAnswer> view =
      new ReadOnlyObjectWrapper<>(DesignAnswer.NOTHING);
  private final ReadOnlyObjectWrapper<DesignPage> page =
      new ReadOnlyObjectWrapper<>(DesignPage.DESIGN);
  private final ReadOnlyObjectWrapper<Next> next;
  private Optional<DesignWork> work = Optional.empty();
  private Optional<Sized> kept = Optional.empty();
  private String saved = "";
  private final Deque<Sized> before = new ArrayDeque<>();
  private final Map<DesignField, String> pending = new LinkedHashMap<>();
  private boolean showing;
  private boolean keepsNext;
  private long asked;

  /**
   * How the design leaves the screen.
   *
   * @param keep writes the design file's text to the journal
   * @param askTarget asks where a file goes, given a name
   * @param make goes to the steps of making it
   */
  public record Ways(
      Consumer<String> keep, Function<String, Optional<Path>> askTarget, Runnable make) {}

  /** A model that begins at the starting design. */
  public DesignModel(Messages words, Background background, Ways ways) {
    this.words = words;
    this.background = background;
    this.ways = ways;
    choices = new DesignChoices(words);
    wish = new DesignWishModel(words, background);
    others = new DesignOthersModel(words, background);
    side = new DesignSideModel(words, background);
    partsList = new DesignPartsModel(words, background, ways.askTarget(), this::priced);
    next = new ReadOnlyObjectWrapper<>(Next.say(Mark.READY, words.text("design.next.wait")));
    wish.answer().addListener((property, was, now) -> say());
  }

  public ReadOnlyObjectProperty<DesignAnswer> view() {
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
  @Override
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
    Sized worked = view.get().worked().get();
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
    page.set(onRecord.isPresent() ? DesignPage.DESIGN : DesignPage.WISH);
    background.entry(
        watch -> DesignWork.open(ownParts).then(opened -> first(opened, onRecord)),
        (Checked<First> first) ->
            first.fold((value, notes) -> begun(value, onRecord.isPresent()), this::refused),
        this::broke);
  }

  private record First(DesignWork work, Sized worked) {}

  private static Checked<First> first(DesignWork opened, Optional<String> onRecord) {
    try {
      Checked<Sized> first = onRecord.isPresent() ? opened.read(onRecord.get()) : opened.start();
      return first.map(worked -> new First(opened, worked));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private boolean begun(First first, boolean onRecord) {
    work = Optional.of(first.work());
    kept = onRecord ? Optional.of(first.worked()) : Optional.empty();
    return show(first.worked());
  }

  /** Something was picked or typed; a change before the last is worked out goes on from it. */
  public void said(DesignField field) {
    Map<DesignField, String> changes = choices.said(field);
    if (showing || changes.isEmpty() || work.isEmpty() || view.get().worked().isEmpty()) {
      return;
    }
    changes.keySet().forEach(pending::remove);
    pending.putAll(changes);
    long turn = ++asked;
    DesignWork by = work.get();
    Sized from = view.get().worked().get();
    Map<DesignField, String> all = new LinkedHashMap<>(pending);
    background.entry(
        watch -> by.with(from, all),
        worked -> {
          if (turn == asked) {
            pending.clear();
            boolean shown = worked.fold((value, notes) -> show(value), this::refused);
            if (shown && keepsNext) {
              keep();
            }
          }
        },
        this::broke);
  }

  private void priced(Checked<Prices> prices) {
    prices.fold(
        (value, notes) -> view.get().worked().map(w -> show(w.with(value))).isPresent(),
        this::refused);
  }

  /** A suggestion with the prices typed so far. */
  Sized asWorked(Suggestion suggestion) {
    return view.get().worked().orElseThrow().with(suggestion.design(), suggestion.sheet());
  }

  /** Makes a suggestion the present design, with the prices typed so far, and keeps it. */
  @Override
  public void take(Suggestion suggestion) {
    become(asWorked(suggestion));
    keep();
    open(DesignPage.DESIGN);
  }

  /** Takes the first of the proposals for the wish; empty where there is none. */
  Optional<Act> takeFirst() {
    return DesignNext.taking(wish.answer().get(), this, words);
  }

  /** Makes another design the present one, to be looked at before it is kept. */
  public void use(Sized other) {
    become(other);
    open(DesignPage.DESIGN);
  }

  /** A later choice has newer news. */
  private void become(Sized other) {
    asked++;
    pending.clear();
    show(other);
  }

  /** Takes the last change back; tells whether there was one. */
  public boolean undo() {
    if (before.isEmpty()) {
      return false;
    }
    asked++;
    pending.clear();
    view.set(DesignAnswer.NOTHING); // what is taken back is not to be come back to
    return show(before.pop());
  }

  /** Whether something was chosen here that is not on record. */
  public boolean isUnsaved() {
    boolean changed = !before.isEmpty() && view.get().worked().isPresent() && !isKept();
    return changed || !pending.isEmpty();
  }

  private boolean show(Sized worked) {
    saved = "";
    view.get()
        .worked()
        .filter(last -> !last.design().equals(worked.design()))
        .ifPresent(before::push);
    showing = true;
    choices.show(worked.design());
    showing = false;
    remark(worked);
    view.set(new DesignAnswer(Optional.of(worked), List.of()));
    beginPage();
    say();
    return true;
  }

  private void remark(Sized worked) {
    double ohm = worked.design().heater().resistance_ohm().nominal();
    choices
        .number(DesignField.POWER)
        .remark()
        .set(
            words.text(
                "design.remark.resistor",
                worked.design().heater().series().name(),
                Numerals.digits(ohm)));
    choices
        .number(DesignField.ALTITUDE)
        .remark()
        .set(
            words.text(
                "design.remark.pressure",
                Math.round(worked.design().air().pressure_Pa() / 100),
                Math.round(100 * worked.design().air().relativeHumidity())));
  }

  private boolean refused(List<Problem> problems) {
    view.set(view.get().refused(problems.stream().map(words::sentence).toList()));
    say();
    return false;
  }

  private void broke(IOException broke) {
    view.set(view.get().refused(List.of(DiskWords.say(broke, words))));
    say();
  }

  /** Keeps the design in the journal, once the last choice is worked out. */
  @Override
  public void keep() {
    keepsNext = !pending.isEmpty();
    if (keepsNext) {
      return;
    }
    wish.taken();
    kept = view.get().worked();
    kept.ifPresent(worked -> ways.keep().accept(worked.text()));
    say();
  }

  /** Whether the present design, apart from prices, is the one on record. */
  private boolean isKept() {
    return kept.isPresent()
        && kept.map(Sized::design).equals(view.get().worked().map(Sized::design));
  }

  /**
   * Asks where the parts list goes and writes it; prices typed for the design on record are kept
   * with it.
   *
   * @param ending {@code csv}, {@code html} or {@code pdf}
   */
  @Override
  public void saveParts(String ending) {
    view.get().worked().ifPresent(partsList::present);
    partsList.save(
        ending,
        written -> {
          if (isKept() && !kept.equals(view.get().worked())) {
            keep();
          }
          saved = written.toString();
          say();
        },
        this::broke);
  }

  @Override
  public void make() {
    ways.make().run();
  }

  /** The verdict in a sentence. */
  public String title() {
    if (view.get().worked().isEmpty()) {
      return words.text(
          view.get().problems().isEmpty() ? "design.title.wait" : "design.title.refused");
    }
    long stops = view.get().count(DesignVerdict.STOP);
    long better = view.get().count(DesignVerdict.IMPROVE);
    if (stops > 0) {
      return words.text("design.title.stop", stops);
    }
    return words.text(better == 0 ? "design.title.good" : "design.title.improve", better);
  }

  private void say() {
    DesignNext now =
        new DesignNext(
            new DesignNext.At(view.get(), page.get(), wish.answer().get(), isKept(), saved),
            this,
            words);
    next.set(now.say());
  }
}
