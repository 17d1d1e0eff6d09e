package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A step has a field for everything that its text asks a person to type, note or show. */
class StepFieldsTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();

  /** What is held in mind for a minute, or written on a bottle, needs no field. */
  private static final Pattern IN_MIND =
      Pattern.compile("note what it shows|Note the signal|note it again|Write on each");

  private static final Pattern TYPES = Pattern.compile("\\b[Tt]ype\\b");
  private static final Pattern WRITES =
      Pattern.compile("\\b[Ww]rite down\\b|\\b[Ww]rite one|\\b[Nn]ote (it|the|each|below)\\b");
  private static final Pattern ENTERS = Pattern.compile("\\b[Ee]nter each part\\b");
  private static final Pattern SHOWS = Pattern.compile("\\btake a photo\\b");

  private static List<String> asking(Pattern verb, Predicate<Step> answered) {
    return CHECKLIST.steps().stream()
        .filter(step -> sentences(step).anyMatch(verb.asPredicate()))
        .filter(answered.negate())
        .map(Step::id)
        .toList();
  }

  private static Stream<String> sentences(Step step) {
    return Stream.concat(step.text().how().stream(), step.text().wrong().stream())
        .flatMap(line -> Stream.of(line.split("(?<=[.:])\\s")))
        .filter(IN_MIND.asPredicate().negate());
  }

  @Test
  void whatIsTypedHasABox() {
    assertThat(
            asking(
                TYPES,
                step ->
                    !step.asks().readings().isEmpty()
                        || step.asks().clock().flatMap(Step.ClockSpec::own).isPresent()))
        .isEmpty();
  }

  @Test
  void whatIsWrittenDownHasALine() {
    assertThat(asking(WRITES, step -> !step.asks().notes().isEmpty())).isEmpty();
  }

  @Test
  void partsAreEnteredAndPhotosAdded() {
    assertThat(asking(ENTERS, step -> step.asks().bought().isPresent())).isEmpty();
    assertThat(asking(SHOWS, step -> step.asks().photo().isPresent())).isEmpty();
  }

  @ParameterizedTest(name = "{0} asks for {1}")
  @CsvSource({
    "choose-use, in one sentence",
    "choose-use, slowest and the fastest",
    "drill-reference, two depths differ",
    "prove-meter, highest ohm range",
    "set-up-input, sign of the chain",
    "warm-up-run, when the heater went on",
    "spin-runs, in which run",
    "place-probe, way the pair points",
    "place-probe, heater was switched on",
    "care, was repaired",
  })
  void notesAreAskedByName(String step, String label) {
    assertThat(CHECKLIST.step(step).orElseThrow().asks().notes())
        .anyMatch(asked -> asked.contains(label));
  }

  /** Varnish and epoxy differ: each clock that waits for a tin or packet takes its time. */
  @ParameterizedTest
  @CsvSource({"coat-parts", "second-coat", "glue-heater", "glue-junctions", "mount-pair"})
  void clocksOfTinsTakeTheirTimeWithinLimits(String step) {
    Step.OwnTime own =
        CHECKLIST
            .step(step)
            .flatMap(found -> found.asks().clock())
            .flatMap(Step.ClockSpec::own)
            .orElseThrow();
    assertThat(own.least_h()).isPositive().isLessThan(own.most_h());
  }
}
