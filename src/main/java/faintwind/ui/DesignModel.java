package faintwind.ui;

import faintwind.job.DesignWork;
import faintwind.job.PartsList;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.physics.design.Catalogue;
import faintwind.physics.design.DesignChange;
import faintwind.physics.design.Verdict;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
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
  private static final int MOST_COMPARED = 4;
  private static final double THINNER_MM = 10;

  private final Messages words;
  private final Background background;
  private final Ways ways;
  private final DesignChoices choices;
  private final ReadOnlyObjectWrapper<View> view = new ReadOnlyObjectWrapper<>(View.NOTHING);
  private final ReadOnlyObjectWrapper<Next> next;
  private Optional<DesignWork> work = Optional.empty();
  private String text = DesignWork.START;
  private String kept = "";
  private String saved = "";
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
   * @param compared designs side by side, the present one first
   */
  public record View(
      Optional<DesignWork.Worked> worked, List<String> problems, List<Compared> compared) {
    static final View NOTHING = new View(Optional.empty(), List.of(), List.of());

    public View {
      problems = List.copyOf(problems);
      compared = List.copyOf(compared);
    }
  }

  /**
   * One design of a comparison.
   *
   * @param name metal and diameter
   * @param worked what follows from it
   */
  public record Compared(String name, DesignWork.Worked worked) {}

  /** A model that begins at the starting design. */
  public DesignModel(Messages words, Background background, Ways ways) {
    this.words = words;
    this.background = background;
    this.ways = ways;
    choices = new DesignChoices(words);
    next = new ReadOnlyObjectWrapper<>(Next.say(Mark.READY, words.text("design.next.wait")));
  }

  public ReadOnlyObjectProperty<View> view() {
    return view.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Next> next() {
    return next.getReadOnlyProperty();
  }

  public DesignChoices choices() {
    return choices;
  }

  /** What can be picked from; empty until the parts are read. */
  public Optional<Catalogue> parts() {
    return work.map(DesignWork::parts);
  }

  /**
   * Begins with a design on record, or the starting one.
   *
   * @param onRecord the design file's text
   * @param ownParts folder with parts of the user's own
   */
  public void begin(Optional<String> onRecord, Optional<Path> ownParts) {
    onRecord.ifPresent(json -> text = json);
    kept = onRecord.orElse("");
    background.entry(
        watch -> DesignWork.open(ownParts).then(opened -> first(opened, text)),
        this::begun,
        this::broke);
  }

  private record First(DesignWork work, DesignWork.Worked worked, List<Compared> compared) {}

  private Checked<First> first(DesignWork opened, String design) {
    try {
      Checked<DesignWork.Worked> worked = opened.with(design, List.of());
      List<Compared> beside = new ArrayList<>();
      if (worked instanceof Checked.Ok<DesignWork.Worked> ok) {
        beside.addAll(beside(opened, ok.value()));
      }
      return worked.map(w -> new First(opened, w, beside));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Another metal of the same size and a thinner ball of the same metal. */
  private List<Compared> beside(DesignWork opened, DesignWork.Worked worked) throws IOException {
    List<Compared> beside = new ArrayList<>();
    String metal = worked.design().ball().metal().label().id();
    String other = metal.startsWith("aluminium") ? "copper" : "aluminium";
    List<DesignChange> bare =
        List.of(
            DesignChange.text("ball", "metal", other),
            DesignChange.without("ball", "coat"),
            DesignChange.without("ball", "plating"));
    List<DesignChange> thinner =
        List.of(
            DesignChange.number("ball", "diameter_mm", THINNER_MM),
            DesignChange.without("ball", "diameter_in"),
            DesignChange.without("ball", "reference_bore_depth_mm"));
    for (List<DesignChange> changes : List.of(bare, thinner)) {
      opened
          .with(worked.text(), changes)
          .fold((value, notes) -> beside.add(new Compared(name(value), value)), problems -> false);
    }
    return beside;
  }

  private void begun(Checked<First> first) {
    first.fold(
        (value, notes) -> {
          work = Optional.of(value.work());
          List<Compared> all = new ArrayList<>();
          all.add(new Compared(name(value.worked()), value.worked()));
          all.addAll(value.compared());
          show(value.worked(), all);
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

  private void change(List<DesignChange> changes) {
    if (showing || changes.isEmpty() || work.isEmpty()) {
      return;
    }
    long turn = ++asked;
    DesignWork by = work.get();
    String from = text;
    background.entry(
        watch -> by.with(from, changes),
        worked -> {
          // a later choice has newer news
          if (turn == asked) {
            worked(worked);
          }
        },
        this::broke);
  }

  private void worked(Checked<DesignWork.Worked> worked) {
    worked.fold(
        (value, notes) -> {
          List<Compared> all = new ArrayList<>(view.get().compared());
          Compared now = new Compared(name(value), value);
          if (all.isEmpty()) {
            all.add(now);
          } else {
            all.set(0, now);
          }
          show(value, all);
          return true;
        },
        this::refused);
  }

  private void show(DesignWork.Worked worked, List<Compared> compared) {
    text = worked.text();
    saved = "";
    showing = true;
    choices.show(worked.design());
    showing = false;
    remark(worked);
    view.set(new View(Optional.of(worked), List.of(), compared));
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
    View now = view.get();
    view.set(
        new View(now.worked(), problems.stream().map(words::sentence).toList(), now.compared()));
    say();
    return false;
  }

  private void broke(IOException broke) {
    View now = view.get();
    view.set(new View(now.worked(), List.of(DiskWords.say(broke, words)), now.compared()));
    say();
  }

  /** Puts the present design beside itself, to stay while the choices change. */
  public void compare() {
    List<Compared> all = new ArrayList<>(view.get().compared());
    if (all.isEmpty() || all.size() >= MOST_COMPARED) {
      return;
    }
    all.add(1, all.get(0));
    view.set(new View(view.get().worked(), view.get().problems(), all));
  }

  private String name(DesignWork.Worked worked) {
    return words.text(
        "design.compared",
        DesignWords.plain(worked.design().ball().metal().label().name()),
        DesignWords.figures(1e3 * worked.design().ball().diameter_m().nominal()));
  }

  /** Keeps the design in the journal. */
  public void keep() {
    kept = text;
    ways.keep().accept(text);
    say();
  }

  /** Asks where the parts list goes and writes it. */
  public void saveParts() {
    Optional<DesignWork.Worked> worked = view.get().worked();
    if (worked.isEmpty()) {
      return;
    }
    PartsList list = new PartsList(worked.get().sized(), 1, words);
    ways.askTarget()
        .apply(words.text("design.parts.file"))
        .ifPresent(
            target ->
                background.entry(
                    watch -> {
                      list.write(target);
                      return target;
                    },
                    written -> {
                      saved = written.toString();
                      say();
                    },
                    this::broke));
  }

  /** The verdict in a sentence. */
  public String title() {
    if (view.get().worked().isEmpty()) {
      return words.text(
          view.get().problems().isEmpty() ? "design.title.wait" : "design.title.refused");
    }
    long stops = count(Verdict.STOP);
    long better = count(Verdict.IMPROVE);
    if (stops > 0) {
      return words.text("design.title.stop", stops);
    }
    return words.text(better == 0 ? "design.title.good" : "design.title.improve", better);
  }

  private long count(Verdict verdict) {
    return view.get().worked().stream()
        .flatMap(w -> w.sheet().quantities().stream())
        .filter(q -> q.verdict() == verdict)
        .count();
  }

  private void say() {
    Act parts = new Act("design-parts", words.text("design.next.parts.act"), this::saveParts);
    Act keep = new Act("design-keep", words.text("design.next.keep.act"), this::keep);
    if (!view.get().problems().isEmpty()) {
      next.set(
          Next.say(Mark.BLOCKED, words.text("design.next.refused"))
              .withDetail(words.text("design.next.refused-detail")));
    } else if (view.get().worked().isEmpty()) {
      next.set(Next.say(Mark.READY, words.text("design.next.wait")));
    } else if (!saved.isEmpty()) {
      next.set(Next.say(Mark.DONE, words.text("design.next.saved", saved)));
    } else if (count(Verdict.STOP) > 0) {
      next.set(
          Next.say(Mark.BLOCKED, words.text("design.next.stop"))
              .withDetail(words.text("design.next.stop-detail"))
              .withOther(parts));
    } else if (text.equals(kept)) {
      next.set(
          Next.say(Mark.DONE, words.text("design.next.parts"), parts)
              .withDetail(words.text("design.next.parts-detail")));
    } else {
      Mark mark = count(Verdict.IMPROVE) > 0 ? Mark.ATTENTION : Mark.DONE;
      next.set(
          Next.say(mark, words.text("design.next.keep"), keep)
              .withDetail(words.text("design.next.keep-detail"))
              .withOther(parts));
    }
  }
}
