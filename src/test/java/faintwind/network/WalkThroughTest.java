package faintwind.network;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.BenchWalk;
import faintwind.guide.ChecklistRules;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Bench;
import faintwind.guide.checklist.BenchFact;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.Tips;
import faintwind.message.Amount;
import faintwind.message.Messages;
import faintwind.message.NumberText;
import faintwind.message.Problem;
import faintwind.record.InstrumentState;
import faintwind.record.ReadingVerdict;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A sound build walks through the steps in their order. Where a step asks for what is not so, puts
 * a tip where there is no bare metal, or expects what a meter cannot show then, the walk fails. It
 * fails too where the words of a step do to the bench what its data do not say.
 */
class WalkThroughTest {
  private static final Checklist SHIPPED = ShippedChecklist.standard();

  private static List<String> walk(Checklist checklist) {
    List<String> wrong = new ArrayList<>();
    for (BenchDesign design : BenchDesign.all()) {
      Set<BenchFact> facts = BenchWalk.atFirst();
      for (Step step : checklist.steps()) {
        BenchModel model = new BenchModel(design, BenchWalk.during(facts, step));
        facts = BenchWalk.after(facts, step);
        for (Reading reading : step.asks().readings()) {
          Optional<String> shown = shown(model, reading);
          shown
              .filter(typed -> verdict(reading, typed, design) != ReadingVerdict.GOOD)
              .ifPresent(typed -> wrong.add(step.id() + ": " + reading.id() + " reads " + typed));
        }
      }
    }
    return wrong;
  }

  private static Optional<String> shown(BenchModel model, Reading reading) {
    return switch (reading.id()) {
      case "supply-open" -> Optional.of(model.open_V() + " V");
      case "supply-volts" -> Optional.of(model.voltage_V() + " V");
      case "supply-current" -> Optional.of(model.current_A() + " A");
      default -> reading.tips().map(tips -> ohms(model, reading, tips));
    };
  }

  private static String ohms(BenchModel model, Reading reading, Tips tips) {
    double ohm = model.ohm(tips.one(), tips.other(), reading.label().contains("clip"));
    return String.format(Locale.ROOT, "%.3f Ω", ohm);
  }

  private static ReadingVerdict verdict(Reading reading, String typed, BenchDesign design) {
    Map<String, Double> values =
        new Situation(
                InstrumentState.EMPTY,
                List.of(new Situation.DatedSheet(BenchDesign.SINCE, design.sheet())),
                BenchDesign.SINCE)
            .sheetValues();
    Amount amount =
        NumberText.read(typed, reading.unit())
            .fold(
                (a, notes) -> a,
                problems -> {
                  throw new AssertionError(reading.id() + " " + typed + problems);
                });
    return reading.judge(amount, values).orElseThrow().verdict();
  }

  @Test
  void everyReadingOfASoundBuildIsGoodWhenItsTurnComes() {
    assertThat(walk(SHIPPED)).isEmpty();
  }

  @Test
  void everyOhmReadingIsWalked() {
    long walked =
        SHIPPED.steps().stream()
            .flatMap(step -> step.asks().readings().stream())
            .filter(reading -> reading.tips().isPresent())
            .count();
    assertThat(walked).isGreaterThan(40);
  }

  @Test
  void theShippedStepsCanBeDoneInTheirOrder() {
    assertThat(words(SHIPPED)).isEmpty();
  }

  /** Each of these orders was once in the steps, or is a slip that is easily made. */
  @ParameterizedTest(name = "{0} moved behind {1}: {2}")
  @CsvSource({
    "cable-check, close-joints, puts a tip of the meter where there is no bare metal",
    "coat-parts, glue-heater, asks for something that is not so",
    "heater-alone, join-leads, asks for something that is not so",
    "prove-meter, heater-alone, asks for something that is not so",
    "plating-home-nickel, glue-heater, asks for something that is not so",
    "drill-heated, glue-junctions, asks for something that is not so",
    "mounted-check, join-cable, puts a tip of the meter where there is no bare metal",
    "joined-check, first-power, cannot be taken when its turn comes",
    "first-power, close-joints, asks for something that is not so",
    "zero-check, sense-check, cannot be taken when its turn comes",
    "ready-supply, first-power, asks for something that is not so",
    "balance-arm, spin-runs, asks for something that is not so"
  })
  void aStepAtTheWrongPlaceIsRefused(String moved, String behind, String says) {
    assertThat(words(move(moved, behind))).contains(says);
  }

  @Test
  void aLooseCableMeasuredAfterItWasJoinedReadsTheHeater() {
    assertThat(walk(move("cable-check", "join-cable")))
        .anyMatch(line -> line.startsWith("cable-check: cable-heater-pair reads"));
  }

  @Test
  void partsThatWereNotCoatedReadShortOnThePlate() {
    Checklist bare = change("coat-parts", step -> without(step, "heater-coated"));
    assertThat(walk(bare)).anyMatch(line -> line.startsWith("coats-on-plate: lead-a-plate"));
    assertThat(walk(bare)).anyMatch(line -> line.startsWith("heater-insulation: lead-a-ball"));
  }

  @Test
  void aSupplyLeftOnTheCableSpoilsTheReadingOfTheHeater() {
    Checklist left = change("close-joints", step -> without(step, "not supply-on-cable"));
    assertThat(walk(left)).anyMatch(line -> line.startsWith("close-joints: heater-pair-closed"));
    assertThat(words(left)).contains("not supply-on-cable");
  }

  /** What the words of a step do, and what its data must then say. */
  @ParameterizedTest(name = "\"{0}\" means {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "(?i)\\bswitch (it |the heater )?on\\b(?! (with|its));power-on",
        "(?i)^wind one thin wire;leads-joined",
        "(?i)^dip both junctions;junctions-coated",
        "(?i)pull the dots off;ball-spot-bare",
        "(?i)^dip the resistor;heater-in-ball",
        "(?i)push junction 1;junctions-in-balls",
        "(?i)shrink them with hot air, away from the ball;not heater-joints-bare",
        "(?i)shrink the two signal sleeves;not signal-joints-bare",
        "(?i)^put a fuse;fuse-fitted",
        "(?i)^connect signal plus;logger-on-cable",
        "(?i)to the stiff holder;pair-on-arm",
        "(?i)move the counterweight until;arm-balanced",
        "(?i)^strip 6 mm at all eight;cable-near-bare",
        "(?i)^hold a 1 MΩ;meter-proven"
      })
  void theWordsOfAStepDoWhatItsDataSay(String words, String mark) {
    Pattern pattern = Pattern.compile(words);
    List<Step> doing =
        SHIPPED.steps().stream()
            .filter(step -> step.text().how().stream().anyMatch(l -> pattern.matcher(l).find()))
            .filter(step -> !step.id().startsWith("plating"))
            .toList();
    assertThat(doing).as("no step says %s", words).isNotEmpty();
    for (Step step : doing) {
      Bench bench = step.order().bench();
      List<String> marks =
          Stream.of(bench.leaves(), bench.during(), bench.asks())
              .flatMap(List::stream)
              .map(Bench.Mark::word)
              .toList();
      boolean noPowerStep = mark.equals("power-on") && marks.contains("not power-on");
      assertThat(marks.contains(mark) || noPowerStep).as(step.id() + " " + marks).isTrue();
    }
  }

  @Test
  void everyFactIsBroughtAboutByAStepAndNeededByOne() {
    Set<BenchFact> made = new HashSet<>(BenchWalk.atFirst());
    Set<BenchFact> needed = new HashSet<>();
    for (Step step : SHIPPED.steps()) {
      step.order().bench().leaves().forEach(mark -> made.add(mark.fact()));
      step.order().bench().asks().forEach(mark -> needed.add(mark.fact()));
    }
    assertThat(made).contains(BenchFact.values());
    assertThat(needed).contains(BenchFact.values());
  }

  private static String words(Checklist checklist) {
    Messages messages = Messages.of(Locale.ENGLISH);
    return String.join(
        "\n",
        ChecklistRules.problems(checklist).stream()
            .filter(problem -> problem.id().startsWith("checklist.bench"))
            .map((Problem problem) -> messages.line(problem))
            .toList());
  }

  /** All steps in one stage, one of them behind another. */
  private static Checklist move(String moved, String behind) {
    List<Step> steps = new ArrayList<>(SHIPPED.steps());
    Step step = SHIPPED.step(moved).orElseThrow();
    steps.remove(step);
    steps.add(ids(steps).indexOf(behind) + 1, step);
    return of(steps);
  }

  private static List<String> ids(List<Step> steps) {
    return steps.stream().map(Step::id).toList();
  }

  private static Checklist change(String id, UnaryOperator<Step> how) {
    return of(SHIPPED.steps().stream().map(s -> s.id().equals(id) ? how.apply(s) : s).toList());
  }

  private static Step without(Step step, String mark) {
    Bench bench = step.order().bench();
    List<Bench.Mark> leaves = bench.leaves().stream().filter(m -> !m.word().equals(mark)).toList();
    Step.Order order =
        new Step.Order(
            step.order().needs(),
            step.order().gate(),
            step.order().behind(),
            new Bench(bench.asks(), bench.during(), leaves));
    return new Step(
        step.id(), step.title(), step.text(), step.cautions(), order, step.kit(), step.asks());
  }

  private static Checklist of(List<Step> steps) {
    Stage stage = new Stage("all", "All", "All", Optional.empty(), Optional.empty(), steps);
    return new Checklist("walked", "1", "0", List.of(stage), List.of());
  }
}
