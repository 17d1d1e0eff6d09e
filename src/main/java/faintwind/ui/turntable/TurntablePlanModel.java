package faintwind.ui.turntable;

import faintwind.calibration.plan.ArmSetup;
import faintwind.calibration.plan.DataWay;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlanWish;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Uncertain;
import faintwind.job.turntable.PlanTurntable;
import faintwind.message.Amount;
import faintwind.message.Checked;
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
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** The plan of a session: what the bench has and the person wants, and what follows from it. */
public final class TurntablePlanModel {
  private final Messages words;
  private final Background background;
  private final Ways ways;
  private final Map<Figure, NumberModel> figures = new EnumMap<>(Figure.class);
  private final ObjectProperty<DataWay.Kind> way =
      new SimpleObjectProperty<>(DataWay.Kind.RIDING_LOGGER);
  private final BooleanProperty bothWays = new SimpleBooleanProperty(true);
  private final ObjectProperty<Plan.Form> form = new SimpleObjectProperty<>(Plan.Form.STAIRCASE);
  private final BooleanProperty changing = new SimpleBooleanProperty(true);
  private final ReadOnlyObjectWrapper<View> view = new ReadOnlyObjectWrapper<>(View.NOTHING);
  private final ReadOnlyObjectWrapper<Next> next;

  /** The numbers that are typed. */
  public enum Figure {
    RADIUS("mm", "600"),
    SECOND_RADIUS("mm", ""),
    THIRD_RADIUS("mm", ""),
    U_RADIUS("mm", "2"),
    SLOWEST("m/s", "0.1"),
    FASTEST("m/s", "2.5"),
    LEAST_BEATS("", "40"),
    MOST_BEATS("", "120"),
    MINUTES("min", ""),
    LESSONS("", ""),
    CABLE_TURNS("", "");

    private final String unit;
    private final String usual;

    Figure(String unit, String usual) {
      this.unit = unit;
      this.usual = usual;
    }

    /** The word in ids and bundle keys. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

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
    for (Figure figure : Figure.values()) {
      NumberModel number = new NumberModel(figure.unit, words);
      number.set(figure.usual);
      figures.put(figure, number);
    }
    next = new ReadOnlyObjectWrapper<>(toMake());
    view.addListener((property, was, now) -> say());
    changing.addListener((property, was, now) -> say());
  }

  /** A number's field. */
  public NumberModel number(Figure figure) {
    return java.util.Objects.requireNonNull(figures.get(figure));
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
        now.done().isEmpty()
            ? Next.say(Mark.READY, words.text("turntable.plan.next.keep"), keep).withOther(sheet)
            : Next.say(Mark.DONE, now.done(), sheet));
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
    fill(planned.request());
    changing.set(false);
    view.set(new View(Optional.of(planned), List.of(), false, words.text("turntable.plan.kept")));
  }

  private void fill(PlanRequest request) {
    List<Uncertain> radii = request.arm().radii_m();
    List<Figure> fields = List.of(Figure.RADIUS, Figure.SECOND_RADIUS, Figure.THIRD_RADIUS);
    for (int i = 0; i < fields.size(); i++) {
      number(fields.get(i)).set(i < radii.size() ? plain(1000 * radii.get(i).value()) : "");
    }
    radii.get(0).u().ifPresent(u -> number(Figure.U_RADIUS).set(plain(1000 * u)));
    PlanWish wish = request.wish();
    number(Figure.SLOWEST).set(plain(wish.least_m_s()));
    number(Figure.FASTEST).set(plain(wish.most_m_s()));
    number(Figure.LEAST_BEATS).set(String.valueOf(wish.beats().least()));
    number(Figure.MOST_BEATS).set(String.valueOf(wish.beats().most()));
    OptionalDouble available_s = wish.time().available_s();
    number(Figure.MINUTES)
        .set(available_s.isPresent() ? plain(available_s.getAsDouble() / 60) : "");
    number(Figure.LESSONS).set(wish.time().lesson().map(l -> plain(l.most())).orElse(""));
    OptionalDouble turns = request.arm().way().turnBudget();
    number(Figure.CABLE_TURNS).set(turns.isPresent() ? plain(turns.getAsDouble()) : "");
    way.set(request.arm().way().kind());
    bothWays.set(wish.directions() == PlanWish.Directions.BOTH_WAYS);
  }

  private static String plain(double value) {
    return java.math.BigDecimal.valueOf(value)
        .round(new java.math.MathContext(6))
        .stripTrailingZeros()
        .toPlainString();
  }

  /** Makes the plan off the JavaFX thread. */
  public void plan() {
    List<Problem> problems = new ArrayList<>();
    Optional<ArmSetup> arm = arm(problems);
    Optional<PlanWish> wish = wish(problems);
    if (arm.isEmpty() || wish.isEmpty() || !problems.isEmpty()) {
      refuse(problems);
      return;
    }
    background.run(
        watch ->
            ways.response()
                .ask()
                .then(
                    response ->
                        PlanTurntable.plan(PlanRequest.of(arm.get(), wish.get(), response), watch)),
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

  private Optional<ArmSetup> arm(List<Problem> problems) {
    double u_mm = needed(Figure.U_RADIUS, problems);
    List<Uncertain> radii = new ArrayList<>();
    radii.add(Uncertain.of(needed(Figure.RADIUS, problems) / 1000, u_mm / 1000));
    for (Figure more : List.of(Figure.SECOND_RADIUS, Figure.THIRD_RADIUS)) {
      optional(more, problems).ifPresent(mm -> radii.add(Uncertain.of(mm / 1000, u_mm / 1000)));
    }
    boolean cable = way.get() == DataWay.Kind.CABLE;
    double turns = cable ? needed(Figure.CABLE_TURNS, problems) : 0;
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new ArmSetup(radii, cable ? DataWay.cable(turns) : DataWay.of(way.get())));
  }

  private Optional<PlanWish> wish(List<Problem> problems) {
    double slowest = needed(Figure.SLOWEST, problems);
    double fastest = needed(Figure.FASTEST, problems);
    double least = needed(Figure.LEAST_BEATS, problems);
    double most = needed(Figure.MOST_BEATS, problems);
    OptionalDouble minutes = optional(Figure.MINUTES, problems);
    OptionalDouble lessons = optional(Figure.LESSONS, problems);
    if (problems.isEmpty() && !(fastest > 1.5 * slowest && slowest <= 10 && fastest <= 10)) {
      problems.add(Problem.error("turntable.plan.range", Where.NOWHERE, plain(fastest)));
    }
    if (problems.isEmpty() && !(most >= least && most <= 1000)) {
      problems.add(Problem.error("turntable.plan.beats", Where.NOWHERE, plain(most)));
    }
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PlanWish(
            slowest,
            fastest,
            new PlanWish.Beats(
                (int) Math.ceil(least), (int) Math.ceil(most), PlanWish.Beats.usual().aTurn()),
            bothWays.get() ? PlanWish.Directions.BOTH_WAYS : PlanWish.Directions.ONE_WAY,
            time(minutes, lessons)));
  }

  private static PlanWish.Time time(OptionalDouble minutes, OptionalDouble lessons) {
    return new PlanWish.Time(
        minutes.isPresent()
            ? OptionalDouble.of(60 * minutes.getAsDouble())
            : OptionalDouble.empty(),
        lessons.isPresent()
            ? Optional.of(
                new PlanWish.Lesson(
                    PlanWish.Lesson.SCHOOL_S, (int) Math.max(1, Math.round(lessons.getAsDouble()))))
            : Optional.empty());
  }

  private double needed(Figure figure, List<Problem> problems) {
    OptionalDouble value = optional(figure, problems);
    if (value.isEmpty() && number(figure).typed().get().isBlank()) {
      problems.add(problem("turntable.plan.missing", figure, ""));
    }
    return value.orElse(0);
  }

  private OptionalDouble optional(Figure figure, List<Problem> problems) {
    NumberModel number = number(figure);
    number.judge();
    if (number.typed().get().isBlank()) {
      return OptionalDouble.empty();
    }
    Optional<Amount> amount =
        number.amount().filter(a -> a.bound() == Amount.Bound.EXACT && a.value() > 0);
    if (amount.isEmpty()) {
      problems.add(problem("turntable.plan.not-positive", figure, number.typed().get()));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(amount.get().value());
  }

  private Problem problem(String id, Figure figure, String found) {
    return Problem.error(
        id, Where.NOWHERE, found, words.text("turntable.plan.figure." + figure.word()));
  }

  /** Keeps the plan with the instrument. */
  public void keep() {
    view.get()
        .planned()
        .ifPresent(
            planned -> {
              ways.keep().accept(planned);
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

  private void done(String said) {
    View now = view.get();
    view.set(new View(now.planned(), now.problems(), now.refused(), said));
  }

  /** How the instrument answers, asked when a plan is made. */
  @FunctionalInterface
  public interface Asked {
    Checked<Response> ask() throws IOException;
  }
}
