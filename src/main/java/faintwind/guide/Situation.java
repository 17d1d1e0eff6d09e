package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.MeterClass;
import faintwind.guide.checklist.Meters;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.message.Amount;
import faintwind.message.AmountText;
import faintwind.message.Messages;
import faintwind.message.NumberText;
import faintwind.physics.part.Coat;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Everything that a verdict or a gate depends on beside the checklist. Safe from any thread. */
public final class Situation {
  private static final Pattern VALUE = Pattern.compile("\\{([A-Za-z0-9_]+)}");
  private static final int DIGITS = 3;
  private static final Set<String> FINE_UNITS = Set.of("Ω", "hPa");

  /** In formulas: 1 where there is no design or it says stop, else 0. */
  public static final String DESIGN_STOPS = "design_stops";

  /** In formulas: 1 where the balls of the design are painted, else 0. */
  public static final String BALLS_PAINTED = "balls_painted";

  private static final String LOW = "low_";
  private static final String HIGH = "high_";

  private static final Set<String> OWN_NAMES = Set.of(DESIGN_STOPS, BALLS_PAINTED);

  /**
   * A design sheet and since when it counts.
   *
   * @param since when the entry was made
   * @param sheet what counts since
   * @param entry id of the journal's entry that brought it; empty where it comes from elsewhere
   */
  public record DatedSheet(OffsetDateTime since, DesignSheet sheet, Optional<String> entry) {
    /** A sheet that no journal knows of. */
    public DatedSheet(OffsetDateTime since, DesignSheet sheet) {
      this(since, sheet, Optional.empty());
    }
  }

  private final InstrumentState state;
  private final List<DatedSheet> designs;
  private final OffsetDateTime now;
  private final Meters meters;

  /** What formulas may name, worked out at the first need: many ask. */
  private final Map<String, Map<String, Double>> values = new HashMap<>();

  /**
   * A situation.
   *
   * @param state replayed from the journal
   * @param designs what each design on record adds up to, in the order they were chosen
   * @param now the time
   * @param meters the classes of meters that are known
   */
  public Situation(
      InstrumentState state, List<DatedSheet> designs, OffsetDateTime now, Meters meters) {
    this.state = state;
    this.designs = List.copyOf(designs);
    this.now = now;
    this.meters = meters;
  }

  /** The same without any meter: readings are taken as they are. */
  public Situation(InstrumentState state, List<DatedSheet> designs, OffsetDateTime now) {
    this(state, designs, now, Meters.NONE);
  }

  public InstrumentState state() {
    return state;
  }

  public List<DatedSheet> designs() {
    return designs;
  }

  public OffsetDateTime now() {
    return now;
  }

  public Meters meters() {
    return meters;
  }

  /** The meter in use at a time. */
  public Optional<MeterClass> meterAt(OffsetDateTime when) {
    return meters.at(state, when);
  }

  /** The sheet in force. */
  public Optional<DesignSheet> sheet() {
    return designs.isEmpty()
        ? Optional.empty()
        : Optional.of(designs.get(designs.size() - 1).sheet());
  }

  /** Which of the designs was in force at a time; empty for none. */
  OptionalInt designAt(OffsetDateTime when) {
    return IntStream.range(0, designs.size())
        .filter(i -> !designs.get(i).since().isAfter(when))
        .max();
  }

  /** The entries that brought the sheets: those on record with them, or each choice of a design. */
  List<String> bringing() {
    List<String> known = designs.stream().flatMap(dated -> dated.entry().stream()).toList();
    return known.isEmpty()
        ? state.standing(DesignChosen.class).stream().map(Standing::entry).toList()
        : known;
  }

  /**
   * The numbers that formulas may name: each quantity of the sheet by its id, with {@code low_} and
   * {@code high_} before it for the edges of its band, and each reading that counts as {@code
   * reading_ID} in the unit it is judged in, with {@code error_ID} for what the meter may be wrong
   * by in it and {@code least_ID} for the least it can be. An over-range reading is beyond every
   * number. Each choice of a question is 1 where it was answered, else 0, as {@code
   * answer_STEP_QUESTION_CHOICE}.
   */
  public synchronized Map<String, Double> values(Checklist checklist) {
    return values.computeIfAbsent(
        checklist.sha256(), same -> Collections.unmodifiableMap(found(checklist)));
  }

  private Map<String, Double> found(Checklist checklist) {
    Map<String, Double> found = sheetValues();
    for (Step step : checklist.steps()) {
      for (Reading reading : step.asks().readings()) {
        state
            .reading(step.id(), reading.id())
            .ifPresent(
                line -> {
                  double value = inUnit(line, reading);
                  found.put(reading.name(), value);
                  found.put(reading.leastName(), least(line, reading, value));
                  found.put(reading.errorName(), reading.meterError(value, meterAt(line.at())));
                });
      }
      step.asks().questions().forEach(question -> putAnswer(step, question, found));
    }
    return found;
  }

  private void putAnswer(Step step, Question question, Map<String, Double> values) {
    Optional<String> chosen =
        state.answer(step.id(), question.id()).map(line -> line.event().choice());
    for (Question.Choice choice : question.choices()) {
      boolean is = chosen.filter(choice.id()::equals).isPresent();
      values.put(step.answerName(question, choice), is ? 1.0 : 0.0);
    }
  }

  /** The quantities of the sheet in force alone. */
  public Map<String, Double> sheetValues() {
    Map<String, Double> values = sheet().map(Situation::values).orElseGet(HashMap::new);
    values.put(DESIGN_STOPS, sheet().filter(sheet -> !sheet.stops()).isPresent() ? 0.0 : 1.0);
    return values;
  }

  private static boolean isPainted(DesignSheet sheet) {
    return sheet
        .design()
        .filter(design -> design.ball().coat().kind() == Coat.Kind.PAINTED)
        .isPresent();
  }

  private static double inUnit(Standing<ReadingEntered> line, Reading reading) {
    Amount amount = line.event().amount();
    return switch (amount.bound()) {
      case AT_LEAST, OVER_RANGE -> Reading.BEYOND;
      case EXACT, AT_MOST -> NumberText.convert(amount.value(), amount.unit(), reading.unit());
    };
  }

  /** What is shown for certain: over range says no more than the range it was seen on. */
  private double least(Standing<ReadingEntered> line, Reading reading, double value) {
    Amount amount = line.event().amount();
    return switch (amount.bound()) {
      case EXACT -> value;
      case AT_MOST -> 0;
      case AT_LEAST -> NumberText.convert(amount.value(), amount.unit(), reading.unit());
      case OVER_RANGE ->
          meters.knowsRange(state, line.at())
              ? meterAt(line.at()).map(m -> m.top(reading.unit()).orElse(0)).orElse(Reading.BEYOND)
              : 0;
    };
  }

  /** The numbers of a sheet by the names that formulas use. */
  public static Map<String, Double> values(DesignSheet sheet) {
    Map<String, Double> values = new HashMap<>();
    for (Outcome quantity : sheet.quantities()) {
      String id = quantity.id().id();
      values.put(id, quantity.value().nominal());
      values.put(LOW + id, quantity.value().low());
      values.put(HIGH + id, quantity.value().high());
    }
    values.put(BALLS_PAINTED, isPainted(sheet) ? 1.0 : 0.0);
    return values;
  }

  /** Whether a name can be a value of a design sheet: an id, or an id after low_ or high_. */
  public static boolean isSheetName(String name) {
    return OWN_NAMES.contains(name) || OutcomeId.of(plainName(name)).isPresent();
  }

  static String plainName(String name) {
    return name.startsWith(LOW) || name.startsWith(HIGH)
        ? name.substring(name.indexOf('_') + 1)
        : name;
  }

  /** A text with its {@code {values}} filled in from the sheet in force. */
  public String fill(String text, Messages messages) {
    Map<String, Double> values = sheetValues();
    Matcher matcher = VALUE.matcher(text);
    StringBuilder filled = new StringBuilder();
    while (matcher.find()) {
      String name = matcher.group(1);
      Double value = values.get(name);
      String words =
          value == null
              ? messages.text("guide.value-not-known")
              : shown(value, unit(name), messages);
      matcher.appendReplacement(filled, Matcher.quoteReplacement(words));
    }
    return matcher.appendTail(filled).toString();
  }

  /** A time to wait is whole minutes and never too short. */
  private static String shown(double value, String unit, Messages messages) {
    double whole = unit.equals("min") ? Math.ceil(value) : value;
    return AmountText.quantity(whole, unit, digits(value, unit), messages.locale());
  }

  /** As many as are known, and as the instrument at hand can show. */
  private static int digits(double value, String unit) {
    return FINE_UNITS.contains(unit) && Math.abs(value) >= 100 ? DIGITS + 1 : DIGITS;
  }

  private static String unit(String name) {
    return OutcomeId.of(plainName(name)).map(OutcomeId::unit).orElse("");
  }
}
