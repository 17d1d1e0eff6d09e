package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can hurt stands in a caution of the step where it can, with its source. */
class SafetyCautionsTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();

  @ParameterizedTest(name = "{0} warns of {1}")
  @CsvSource({
    "get-parts, lithium, charge",
    "get-parts, adapter, isolated",
    "ready-supply, fuse, short",
    "ready-supply, lithium, swollen",
    "ready-supply, adapter, extra-low voltage",
    "set-up-arm, riding-pack, after a fall",
    "field-cautions, lithium, wet",
    "make-junctions, acid-flux, eyes",
    "join-cable, acid-flux, eyes",
    "make-junctions, lead, children",
    "join-leads, lead, lead-free",
    "make-junctions, spark-welder, stays charged",
    "heater-insulation, drilling-out, last way",
    "loop-insulation, drilling-out, last way",
    "field-cautions, explosive, silo",
    "field-cautions, explosive, biogas",
    "field-cautions, explosive, solvents",
    "field-cautions, children-animals, guard",
    "choose-design, children, animals",
    "first-power, guard, children",
    "jar-check, closed-jar, switch off",
    "sense-check, closed-box, hotter",
    "arm-drive, stop, outside the circle",
    "arm-safety, guard, while a motor",
    "arm-safety, start, clear",
    "drill-reference, eyes-and-spindle, goggles",
    "care, cold-first, as long as",
    "arm-drive, circle, steps into",
    "arm-drive, start, looks round",
    "place-probe, dry-things, char or burn",
    "joined-check, solvent, open a window",
    "joined-check, hot-air, no alcohol",
    "cable-check, solvent, flames",
    "quiet-room, fire, water",
    "build-beam, drill, no gloves",
    "build-hub, lift, knees",
    "field-cautions, adapter-outdoors, stays indoors",
    "field-cautions, height, second person"
  })
  void whatCanHurtIsSaidWhereItCan(String step, String caution, String words) {
    Caution said = CHECKLIST.step(step).orElseThrow().caution(caution).orElseThrow();
    assertThat(said.text().toLowerCase(Locale.ROOT)).contains(words);
  }

  @Test
  void everyCautionHasItsSourceOrSaysThatThereIsNone() {
    for (Step step : CHECKLIST.steps()) {
      for (Caution caution : step.cautions()) {
        assertThat(caution.source()).as(step.id() + " " + caution.id()).hasSizeGreaterThan(8);
      }
    }
  }

  @Test
  void noBurnThresholdIsWordedAsAPermission() {
    for (Step step : CHECKLIST.steps()) {
      List<String> all = new ArrayList<>(step.text().how());
      all.add(step.text().why());
      all.add(step.text().good());
      step.cautions().forEach(caution -> all.add(caution.text()));
      for (String text : all) {
        assertThat(text.toLowerCase(Locale.ROOT))
            .as(step.id())
            .doesNotContain("may be touched", "can be touched", "safe to touch");
      }
    }
  }

  /** The lithium pack, the fuse and the adapter come before the heater is first switched on. */
  @Test
  void powerWaitsForTheFuseAndForTheMeter() {
    List<String> gate = CHECKLIST.stepsOfGate("heater-power").stream().map(Step::id).toList();
    assertThat(gate)
        .contains("prove-meter", "join-leads", "mounted-check", "joined-check", "ready-supply");
    assertThat(CHECKLIST.allNeeds(CHECKLIST.step("first-power").orElseThrow()))
        .contains("ready-supply");
  }

  /** Nothing turns before the arm is built, balanced and can be stopped. */
  @Test
  void theFirstTurnWaitsForTheWholeArm() {
    assertThat(CHECKLIST.allNeeds(CHECKLIST.step("arm-safety").orElseThrow()))
        .contains(
            "choose-arm", "build-hub", "build-beam", "set-up-arm", "balance-arm", "arm-drive");
  }

  /** A pair on a thread swings out: the steps forbid it where the pair is held. */
  @ParameterizedTest
  @CsvSource({"mount-pair", "build-beam"})
  void noThreadHoldsThePair(String step) {
    String how = String.join("\n", CHECKLIST.step(step).orElseThrow().text().how());
    assertThat(how).contains("No thread").contains("{arm_thread_growth_mm}");
    assertThat(how).doesNotContain("thread hold them");
  }
}
