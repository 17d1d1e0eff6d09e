package faintwind.calibration.plan;

import faintwind.message.Field;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Every field of what a plan starts from: what may be typed, what is usual, where it stands in the
 * file, how a request shows it. {@link PlanTerms} reads them.
 */
@SuppressWarnings("ImmutableEnumChecker") // its field is a record, its function has no state
public enum PlanField {
  RADIUS(
      ArmSetup.RADIUS,
      "arm.radii.radius_mm",
      r -> list(r.arm().radii_m(), radius -> n(1e3 * radius.value()))),
  U_RADIUS(
      ArmSetup.U_RADIUS,
      "arm.radii.u_radius_mm",
      r -> list(r.arm().radii_m(), radius -> n(radius.u(), 1e-3))),
  WAY(ArmSetup.WAY, "arm.way", r -> r.arm().way().kind().word()),
  CABLE_TURNS(ArmSetup.CABLE_TURNS, "arm.cable_turns", r -> n(r.arm().way().turnBudget())),
  BATTERY(ArmSetup.BATTERY, "arm.battery_s", r -> n(r.arm().way().battery_s(), 3600)),
  SLOWEST(PlanWish.SLOWEST, "wish.from_m_s", r -> n(r.wish().least_m_s())),
  FASTEST(PlanWish.FASTEST, "wish.to_m_s", r -> n(r.wish().most_m_s())),
  LEAST_BEATS(PlanWish.LEAST_BEATS, "wish.least_beats", r -> n(r.wish().beats().least())),
  MOST_BEATS(PlanWish.MOST_BEATS, "wish.most_beats", r -> n(r.wish().beats().most())),
  BEATS_A_TURN(
      PlanWish.BEATS_A_TURN,
      "wish.beats_a_turn",
      r -> list(r.wish().beats().aTurn(), Object::toString)),
  DIRECTIONS(PlanWish.DIRECTIONS, "wish.directions", r -> Field.word(r.wish().directions())),
  MINUTES(PlanWish.MINUTES, "wish.available_s", r -> n(r.wish().time().available_s(), 60)),
  LESSONS(
      PlanWish.LESSONS,
      "wish.most_lessons",
      r -> r.wish().time().lesson().map(l -> n(l.most())).orElse("")),
  LESSON_LENGTH(
      PlanWish.LESSON_LENGTH,
      "wish.lesson_s",
      r -> r.wish().time().lesson().map(l -> n(l.length_s() / 60)).orElse("")),
  U_SWIRL(PlanRequest.U_SWIRL, "u_swirl_pct", r -> n(r.uCarried(), 0.01)),
  ASYMMETRY(PlanRequest.ASYMMETRY, "asymmetry_pct", r -> n(100 * r.asymmetry()));

  private final Field field;
  private final String path;
  private final Function<PlanRequest, String> text;

  PlanField(Field field, String path, Function<PlanRequest, String> text) {
    this.field = field;
    this.path = path;
    this.text = text;
  }

  public Field field() {
    return field;
  }

  /** Its key in the plan file, with dots. */
  public String path() {
    return path;
  }

  /** How many of the file's unit make one of the field's: the file counts time in seconds. */
  public double perUnit() {
    if (!path.endsWith("_s") || path.endsWith("_m_s")) {
      return 1;
    }
    return field.unit().equals("h") ? 3600 : 60;
  }

  /** Its option on the command line, such as {@code --radius-mm}. */
  public String option() {
    return "--" + field.key().replace('_', '-');
  }

  /** Whether it may be given several times over, with commas between. */
  public boolean isList() {
    return this == RADIUS || this == U_RADIUS || this == BEATS_A_TURN;
  }

  /** What a request says of it, as it is typed; empty where it says nothing. */
  public String of(PlanRequest request) {
    return text.apply(request);
  }

  /** What counts where nothing is given, by id. */
  public static Map<String, String> usual() {
    Map<String, String> texts = new HashMap<>();
    for (PlanField each : values()) {
      texts.put(each.field.id(), each.field.usual());
    }
    return texts;
  }

  /** All that a request says, by id. */
  public static Map<String, String> texts(PlanRequest request) {
    Map<String, String> texts = new HashMap<>();
    for (PlanField each : values()) {
      texts.put(each.field.id(), each.of(request));
    }
    return texts;
  }

  static PlanField named(String id) {
    return Arrays.stream(values()).filter(f -> f.field.id().equals(id)).findFirst().orElseThrow();
  }

  private static <T> String list(List<T> values, Function<T, String> text) {
    return values.stream().map(text).collect(Collectors.joining(","));
  }

  private static String n(double value) {
    return Field.plain(value);
  }

  private static String n(OptionalDouble value) {
    return n(value, 1);
  }

  private static String n(OptionalDouble value, double unit) {
    return value.isPresent() ? n(value.getAsDouble() / unit) : "";
  }
}
