package faintwind.job.design;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Messages;
import faintwind.physics.advice.PartNeed;
import faintwind.physics.advice.PartNeed.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the steps want at hand and what the parts list has hold one another, both ways. */
class StepsAndPartsTest {
  private static final Checklist STEPS = ShippedChecklist.standard();
  private static final Path MADE = Path.of("src/test/resources/parts/by-step.csv");
  private static final Path DESIGN = Path.of("src/test/resources/design/half-inch-copper.json");
  private static final Set<Kind> OF_THE_BENCH =
      Set.of(Kind.CONSUMABLE, Kind.TOOL, Kind.ARM, Kind.HOME_PLATING);
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);

  /** What a step calls a part of the design, or what was made of it. */
  private final Map<String, Kind> made = new HashMap<>();

  @BeforeEach
  void readMade() throws IOException {
    for (String line : Files.readAllLines(MADE).stream().skip(1).toList()) {
      int comma = line.lastIndexOf(',');
      made.put(line.substring(0, comma).replace("\"", ""), Kind.valueOf(line.substring(comma + 1)));
    }
  }

  private static List<PartsList.Line> list(int instruments, String coat) throws IOException {
    String json = Files.readString(DESIGN).replace("bare-polished-copper", coat);
    Sized sized = KeptDesigns.withShippedParts().sized(json).orElseThrow();
    return new PartsList(sized, instruments, WORDS).lines();
  }

  private static List<PartsList.Line> everything() throws IOException {
    List<PartsList.Line> all = new ArrayList<>(list(1, "gold"));
    all.addAll(list(1, "white-paint"));
    return all;
  }

  private static Set<String> atHand() {
    Set<String> all = new TreeSet<>();
    for (Step step : STEPS.steps()) {
      all.addAll(step.kit().tools());
      all.addAll(step.kit().parts());
    }
    return all;
  }

  @Test
  void everythingAStepWantsAtHandIsInTheList() throws IOException {
    Set<String> things = new HashSet<>();
    Set<Kind> kinds = new HashSet<>();
    for (PartsList.Line line : everything()) {
      if (OF_THE_BENCH.contains(line.need().kind())) {
        things.add(line.what());
      } else {
        kinds.add(line.need().kind());
      }
    }
    for (String wanted : atHand()) {
      boolean listed = things.contains(wanted) || kinds.contains(made.get(wanted));
      assertThat(listed).as("\"%s\" is at hand in a step and not in the list", wanted).isTrue();
    }
  }

  @Test
  void everythingInTheListIsWantedByAStep() throws IOException {
    Set<String> wanted = atHand();
    Set<Kind> kinds = new HashSet<>();
    wanted.stream().filter(made::containsKey).forEach(text -> kinds.add(made.get(text)));
    for (PartsList.Line line : everything()) {
      PartNeed need = line.need();
      boolean used =
          OF_THE_BENCH.contains(need.kind())
              ? wanted.contains(line.what())
              : kinds.contains(need.kind());
      assertThat(used).as("\"%s\" is in the list and in no step", line.what()).isTrue();
    }
  }

  @Test
  void everyNameOfWhatWasMadeIsUsed() {
    assertThat(atHand()).containsAll(made.keySet());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 7, 30})
  void everyLineHasACount(int instruments) throws IOException {
    for (PartsList.Line line : list(instruments, "gold")) {
      assertThat(line.need().buy()).as(line.what()).isPositive();
      assertThat(line.what()).isNotBlank();
      assertThat(line.lookFor()).isNotBlank();
    }
  }

  @Test
  void toolsAreCountedOnceAndWhatIsUsedUpGrows() throws IOException {
    Map<String, PartNeed> one = needs(1);
    Map<String, PartNeed> class30 = needs(30);
    assertThat(buy(class30, "tool-multimeter")).isEqualTo(buy(one, "tool-multimeter"));
    assertThat(buy(class30, "arm-bearing")).isEqualTo(1);
    assertThat(buy(class30, "tool-goggles")).isEqualTo(31);
    assertThat(buy(class30, "consumable-fuse")).isEqualTo(32);
    assertThat(buy(class30, "consumable-solder")).isEqualTo(3);
  }

  private static double buy(Map<String, PartNeed> needs, String key) {
    return Objects.requireNonNull(needs.get(key), key).buy();
  }

  private static Map<String, PartNeed> needs(int instruments) throws IOException {
    Map<String, PartNeed> needs = new HashMap<>();
    list(instruments, "gold").forEach(line -> needs.put(line.need().key(), line.need()));
    return needs;
  }

  /** The step says four balls and three resistors; the list must buy as many. */
  @Test
  void sparesOfTheStepsAreThoseOfTheList() throws IOException {
    String how = String.join("\n", STEPS.step("get-parts").orElseThrow().text().how());
    assertThat(how).contains("Buy four balls").contains("Buy three resistors");
    assertThat(buy(Kind.BALL)).isEqualTo(4);
    assertThat(buy(Kind.RESISTOR)).isEqualTo(3);
  }

  private static double buy(Kind kind) throws IOException {
    return list(1, "gold").stream()
        .map(PartsList.Line::need)
        .filter(need -> need.kind() == kind)
        .findFirst()
        .orElseThrow()
        .buy();
  }

  @Test
  void bareBallsNeedNothingForPlating() throws IOException {
    assertThat(list(1, "bare-polished-copper"))
        .extracting(line -> line.need().kind())
        .doesNotContain(Kind.HOME_PLATING, Kind.PLATING);
    assertThat(buy(Kind.PLATING)).isEqualTo(2);
  }
}
