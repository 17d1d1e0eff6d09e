package faintwind.ui.turntable;

import faintwind.calibration.plan.DataWay;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanField;
import faintwind.calibration.plan.PlanTerms;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.Response;
import faintwind.job.turntable.PlanTurntable;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.FieldTexts;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.part.NumberModel;
import faintwind.ui.work.Background;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** The plan of a session: what the bench has and the person wants, and what follows from it. */
public final class TurntablePlanModel {
  private static final int RADII = 3;
  private static final String BOTH_WAYS = PlanField.DIRECTIONS.field().usual();

  private final Messages words;
  private final Background background;
  private final Ways ways;
  private final List<NumberModel> radii = new ArrayList<>();
  private final Map<PlanField, NumberModel> numbers = new EnumMap<>(PlanField.class);
  private Map<String, String> texts = PlanField.usual();
  private final ObjectProperty<DataWay.Kind> way =
      new SimpleObjectProperty<>(DataWay.Kind.RIDING_LOGGER);
  private final BooleanProperty bothWays = new SimpleBooleanProperty(true);
  private final ObjectProperty<Plan.Form> form = new SimpleObjectProperty<>(Plan.Form.STAIRCASE);
  private final BooleanProperty changing = new SimpleBooleanProperty(true);
  private final ReadOnlyObjectWrapper<View> view = new ReadOnlyObjectWrapper<>(View.NOTHING);
  private final ReadOnlyObjectWrapper<Next> next;
  private Optional<Act> guide = Optional.empty();
  private Optional<PlannedSession> kept = Optional.empty();

  /** The numbers that are typed; the radii have boxes of their own. */
  static final List<PlanField> NUMBERS =
      List.of(
          PlanField.U_RADIUS,
          PlanField.CABLE_TURNS,
          PlanField.BATTERY,
          PlanField.SLOWEST,
          PlanField.FASTEST,
          PlanField.LEAST_BEATS,
          PlanField.MOST_BEATS,
          PlanField.MINUTES,
          PlanField.LESSONS,
          PlanField.LESSON_LENGTH);

  /**
   * How the model reaches what it does not own.
   *
   * @param response how the instrument answers, by what is on record
   * @param keep keeps a plan with the instrument
   * @param askTarget asks where the sheet goes, by a suggested name
   * @param title stands on the sheet
   */
  public record Ways(
      Asked response,
      Consumer<PlannedSession> keep,
      Function<String, Optional<Path>> askTarget,
      String title) {}

  /**
   * What there is to show.
   *
   * @param planned the plan, where there is one
   * @param problems notes, or why there is none, in sentences
   * @param refused whether the problems keep a plan from being made
   * @param done what was kept or saved last, in words
   */
  public record View(
      Optional<PlannedSession> planned, List<String> problems, boolean refused, String done) {
    static final View NOTHING = new View(Optional.empty(), List.of(), false, "");

    public View {
      problems = List.copyOf(problems);
    }
  }

  /** A model with the usual numbers. */
  public TurntablePlanModel(Messages words, Background background, Ways ways) {
    this.words = words;
    this.background = background;
    this.ways = ways;
    for (int i = 0; i < RADII; i++) {
      radii.add(new NumberModel(PlanField.RADIUS.field().unit(), words));
    }
    NUMBERS.forEach(f -> numbers.put(f, new NumberModel(f.field().unit(), words)));
    fill();
    next = new ReadOnlyObjectWrapper<>(toMake());
    view.addListener((property, was, now) -> say());
    changing.addListener((property, was, now) -> say());
  }

  /** A number's box. */
  public NumberModel number(PlanField field) {
    return Objects.requireNonNull(numbers.get(field));
  }

  /** The boxes for the radii of the arm. */
  public List<NumberModel> radii() {
    return radii;
  }

  /** How data and power come off the arm. */
  public ObjectProperty<DataWay.Kind> way() {
    return way;
  }

  /** Whether the arm may turn both ways. */
  public BooleanProperty bothWays() {
    return bothWays;
  }

  /** Whether the numbers are open to be changed; else the plan has the room. */
  public BooleanProperty changing() {
    return changing;
  }

  /** What to do now. */
  public ReadOnlyObjectProperty<Next> next() {
    return next.getReadOnlyProperty();
  }

  /** What a plan that is kept leads to: the arm turned by it. */
  void leadsTo(Act begin) {
    guide = Optional.of(begin);
    say();
  }

  private Next toMake() {
    return Next.say(
            Mark.READY,
            words.text("turntable.plan.next.make"),
            new Act("turntable-plan-make", words.text("turntable.plan.make"), this::plan))
        .withDetail(words.text("turntable.plan.next.make-detail"));
  }

  private void say() {
    View now = view.get();
    if (now.refused()) {
      Act again = new Act("turntable-plan-make", words.text("turntable.plan.make"), this::plan);
      next.set(Next.say(Mark.BLOCKED, words.text("turntable.plan.next.refused"), again));
      return;
    }
    if (now.planned().isEmpty() || changing.get()) {
      next.set(toMake());
      return;
    }
    Act sheet =
        new Act("turntable-plan-sheet", words.text("turntable.plan.sheet"), this::saveSheet);
    Act keep = new Act("turntable-plan-keep", words.text("turntable.plan.keep"), this::keep);
    next.set(
        isUnsaved()
            ? Next.say(Mark.READY, words.text("turntable.plan.next.keep"), keep)
                .withDetail(now.done())
                .withOther(sheet)
            : guide
                .map(begin -> Next.say(Mark.DONE, now.done(), begin).withOther(sheet))
                .orElseGet(() -> Next.say(Mark.DONE, now.done(), sheet)));
  }

  /** Whether a plan was made that is not kept with the instrument. */
  boolean isUnsaved() {
    return view.get().planned().isPresent() && !view.get().planned().equals(kept);
  }

  /** Which of the two plans is shown in full. */
  public ObjectProperty<Plan.Form> form() {
    return form;
  }

  public ReadOnlyObjectProperty<View> view() {
    return view.getReadOnlyProperty();
  }

  /** The plan that is shown in full. */
  public Optional<Plan> shown() {
    return view.get()
        .planned()
        .map(planned -> planned.choice().of(form.get()).orElse(planned.choice().staircase()));
  }

  /** Shows a plan that was kept before, with the numbers it started from. */
  public void show(PlannedSession planned) {
    texts = PlanField.texts(planned.request());
    fill();
    kept = Optional.of(planned);
    changing.set(false);
    view.set(new View(Optional.of(planned), List.of(), false, words.text("turntable.plan.kept")));
  }

  private void fill() {
    List<String> typed = Arrays.asList(text(PlanField.RADIUS).split(",", -1));
    for (int i = 0; i < RADII; i++) {
      radii.get(i).set(i < typed.size() ? typed.get(i) : "");
    }
    numbers.forEach(
        (field, number) -> {
          String first = text(field).split(",", 2)[0];
          number.set(first.isEmpty() ? field.field().usual() : first);
        });
    way.set(
        new FieldTexts(texts, f -> Where.NOWHERE).word(PlanField.WAY.field(), DataWay.Kind.class));
    bothWays.set(text(PlanField.DIRECTIONS).equals(BOTH_WAYS));
  }

  private String text(PlanField field) {
    return texts.getOrDefault(field.field().id(), "");
  }

  /** Makes the plan off the JavaFX thread. */
  public void plan() {
    Checked<PlanTerms> terms = terms();
    if (!(terms instanceof Checked.Ok<PlanTerms> ok)) {
      refuse(terms.problems());
      return;
    }
    background.run(
        watch ->
            ways.response()
                .ask()
                .then(response -> PlanTurntable.plan(ok.value().with(response), watch)),
        this::planned,
        broke ->
            view.set(new View(Optional.empty(), List.of(DiskWords.say(broke, words)), true, "")));
  }

  private void planned(Checked<PlannedSession> planned) {
    planned.fold(
        (value, notes) -> {
          form.set(Plan.Form.STAIRCASE);
          changing.set(false);
          view.set(new View(Optional.of(value), sentences(notes), false, ""));
          return true;
        },
        problems -> {
          refuse(problems);
          return false;
        });
  }

  private void refuse(List<Problem> problems) {
    changing.set(true);
    view.set(new View(Optional.empty(), sentences(problems), true, ""));
  }

  private List<String> sentences(List<Problem> problems) {
    return problems.stream().map(words::sentence).toList();
  }

  /** What the boxes say, with the earlier texts of the fields that have none. */
  private Checked<PlanTerms> terms() {
    List<Problem> unread = new ArrayList<>();
    texts = new HashMap<>(texts);
    texts.put(
        PlanField.RADIUS.field().id(),
        radii.stream()
            .map(radius -> typed(PlanField.RADIUS, radius, unread))
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(",")));
    numbers.forEach((field, box) -> texts.put(field.field().id(), typed(field, box, unread)));
    boolean cable = way.get() == DataWay.Kind.CABLE;
    if (!cable) {
      texts.remove(PlanField.CABLE_TURNS.field().id());
    }
    texts.put(PlanField.WAY.field().id(), way.get().word());
    texts.put(PlanField.DIRECTIONS.field().id(), bothWays.get() ? BOTH_WAYS : "one-way");
    return unread.isEmpty() ? PlanTerms.of(texts, field -> Where.NOWHERE) : Checked.refused(unread);
  }

  /** The text of a box in the field's unit; what is empty but has a usual value is missing. */
  private static String typed(PlanField field, NumberModel box, List<Problem> unread) {
    box.judge();
    String text = box.typed().get().strip();
    if (text.isEmpty()) {
      if (!field.field().usual().isEmpty() && field != PlanField.RADIUS) {
        field.field().needed().trouble("", Where.NOWHERE).ifPresent(unread::add);
      }
      return "";
    }
    Optional<Amount> amount = box.amount().filter(a -> a.bound() == Amount.Bound.EXACT);
    if (amount.isEmpty()) {
      field.field().trouble(text, Where.NOWHERE).ifPresent(unread::add);
    }
    return amount.map(a -> Field.plain(a.value())).orElse(text);
  }

  /** Keeps the plan with the instrument. */
  public void keep() {
    view.get()
        .planned()
        .ifPresent(
            planned -> {
              ways.keep().accept(planned);
              kept = Optional.of(planned);
              done(words.text("turntable.plan.kept"));
            });
  }

  /** Asks where the run sheet goes and writes it. */
  public void saveSheet() {
    Optional<PlannedSession> planned = view.get().planned();
    if (planned.isEmpty()) {
      return;
    }
    Plan.Form which = form.get();
    ways.askTarget()
        .apply(words.text("turntable.plan.sheet.file"))
        .ifPresent(
            target ->
                background.entry(
                    watch -> {
                      PlanTurntable.writeSheet(planned.get(), which, target, ways.title(), words);
                      return target;
                    },
                    written -> done(words.text("turntable.plan.sheet.saved", written.toString())),
                    broke -> done(DiskWords.say(broke, words))));
  }

  private void done(String message) {
    View now = view.get();
    view.set(new View(now.planned(), now.problems(), now.refused(), message));
  }

  /** How the instrument answers, asked when a plan is made. */
  @FunctionalInterface
  public interface Asked {
    Checked<Response> ask() throws IOException;
  }
}
