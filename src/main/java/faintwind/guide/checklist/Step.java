package faintwind.guide.checklist;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * One thing to do, as data.
 *
 * @param id unique in its checklist
 * @param title verb first
 * @param text what is said
 * @param cautions before the instruction
 * @param order what must come before and what waits for it
 * @param kit what to have at hand
 * @param asks what is to be typed, answered, waited for, photographed
 */
public record Step(
    String id, String title, Words text, List<Caution> cautions, Order order, Kit kit, Asks asks) {
  private static final Pattern VALUE = Pattern.compile("[A-Za-z0-9_]+");

  public Step {
    cautions = List.copyOf(cautions);
  }

  /**
   * The texts; each may hold {@code {values}} of the design sheet.
   *
   * @param why the reason for the step
   * @param how instructions, one a line
   * @param good what good looks like
   * @param wrong what goes wrong, and what to do then
   * @param picture drawn beside it
   * @param card worked out from the design and shown beside it
   */
  public record Words(
      String why,
      List<String> how,
      String good,
      List<String> wrong,
      Optional<Picture> picture,
      Optional<Card> card) {
    public Words {
      how = List.copyOf(how);
      wrong = List.copyOf(wrong);
    }
  }

  /** A picture file under {@code assets/pictures} with what it shows in words. */
  public record Picture(String file, String shows) {}

  /**
   * Order.
   *
   * @param needs steps that must be finished before
   * @param gate the gate this step helps to open
   * @param behind gates that must be open before this step
   * @param bench what it needs of the things on the bench, and what it does to them
   */
  public record Order(List<String> needs, Optional<String> gate, List<String> behind, Bench bench) {
    public Order {
      needs = List.copyOf(needs);
      behind = List.copyOf(behind);
    }
  }

  /**
   * Tools and parts, and the time.
   *
   * @param minutes how long it takes with one's hands, without the time of its clock
   */
  public record Kit(List<String> tools, List<String> parts, OptionalInt minutes) {
    public Kit {
      tools = List.copyOf(tools);
      parts = List.copyOf(parts);
    }
  }

  /**
   * What a person has to give.
   *
   * @param questions to be answered
   * @param readings to be typed
   * @param clock to run to its end
   * @param photo a photo that is wanted: of what
   * @param notes what may be written down here, each by its label; nothing waits for it
   * @param bought what may be entered here with lot and price, by its label; nothing waits for it
   */
  public record Asks(
      List<Question> questions,
      List<Reading> readings,
      Optional<ClockSpec> clock,
      Optional<String> photo,
      List<String> notes,
      Optional<String> bought) {
    public Asks {
      notes = List.copyOf(notes);
      questions = List.copyOf(questions);
      readings = List.copyOf(readings);
    }
  }

  /**
   * A waiting time.
   *
   * @param id unique in its step
   * @param label what is waited for
   * @param duration_s number of seconds, a formula over the design sheet
   * @param then what to do when it has ended
   * @param afterReadings whether the step's readings are taken before it is started, as those of
   *     epoxy that is still soft; else they are taken when it has ended
   * @param own the time of a tin, which may count in its place
   */
  public record ClockSpec(
      String id,
      String label,
      Condition duration_s,
      String then,
      boolean afterReadings,
      Optional<OwnTime> own) {

    /**
     * Whether there is anything to wait for: paint dries on painted balls alone.
     *
     * @param values those of the design sheet
     */
    public boolean runs(Map<String, Double> values) {
      OptionalDouble wait_s = duration_s.number(values);
      return wait_s.isEmpty() || wait_s.getAsDouble() > 0;
    }
  }

  /**
   * The time that a tin or packet states, where it may count in place of the usual one.
   *
   * @param label such as "Drying time on the tin"
   * @param least_h the shortest that is believed, h
   * @param most_h the longest, h
   */
  public record OwnTime(String label, double least_h, double most_h) {}

  /** The reading with that id. */
  public Optional<Reading> reading(String readingId) {
    return asks.readings().stream().filter(r -> r.id().equals(readingId)).findFirst();
  }

  /** The caution with that id. */
  public Optional<Caution> caution(String cautionId) {
    return cautions.stream().filter(c -> c.id().equals(cautionId)).findFirst();
  }

  /** The name under which formulas know whether a choice was answered. */
  public String answerName(Question question, Question.Choice choice) {
    return String.join("_", "answer", id, question.id(), choice.id()).replace('-', '_');
  }

  /** Every name of a value in its texts and formulas. */
  public Set<String> names() {
    Set<String> names = new TreeSet<>(textNames());
    asks.readings().forEach(reading -> names.addAll(reading.names()));
    asks.clock().ifPresent(clock -> names.addAll(clock.duration_s().names()));
    asks.questions().stream()
        .flatMap(question -> question.choices().stream())
        .flatMap(choice -> choice.stopsIf().stream())
        .forEach(stop -> names.addAll(stop.when().names()));
    return names;
  }

  private Set<String> textNames() {
    StringBuilder all = new StringBuilder(text.why());
    text.how().forEach(line -> all.append(line).append('\n'));
    all.append(text.good());
    text.wrong().forEach(line -> all.append(line).append('\n'));
    for (Reading reading : asks.readings()) {
      all.append(reading.label()).append(reading.expected());
      reading.bands().forEach(band -> all.append(band.words()));
    }
    asks.clock().ifPresent(clock -> all.append(clock.label()).append(clock.then()));
    Set<String> names = new TreeSet<>();
    int open = all.indexOf("{");
    while (open >= 0) {
      int close = all.indexOf("}", open);
      String name = close < 0 ? "" : all.substring(open + 1, close);
      if (VALUE.matcher(name).matches()) {
        names.add(name);
      }
      open = all.indexOf("{", open + 1);
    }
    return names;
  }
}
