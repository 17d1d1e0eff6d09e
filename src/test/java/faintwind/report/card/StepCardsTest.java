package faintwind.report.card;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Card;
import faintwind.message.Amount;
import faintwind.message.Messages;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.Event;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StepCardsTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-11-21T14:30:00Z");
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);

  private final List<JournalEntry> entries = new ArrayList<>();
  private String design =
      Files.readString(Path.of("src/test/resources/design/half-inch-copper.json"));

  StepCardsTest() throws IOException {}

  private void add(String step, Event event) {
    String id = "e" + entries.size();
    entries.add(new JournalEntry(id, NOW.minusHours(1), "Ida", Optional.of(step), event));
  }

  private StepCard card(Card card) throws IOException {
    DesignSheet sheet =
        DesignFile.parse(design, Library.shipped())
            .fold(
                (value, notes) -> DesignSheet.of(value),
                problems -> {
                  throw new AssertionError(problems);
                });
    Situation situation =
        new Situation(
            InstrumentState.replay(entries),
            List.of(new Situation.DatedSheet(NOW.minusDays(1), sheet)),
            NOW);
    return new StepCards(WORDS).of(card, situation).orElseThrow();
  }

  private static String all(StepCard card) {
    return plain(
        card.rows().stream()
                .map(row -> row.what() + ": " + row.value() + " " + row.why())
                .collect(Collectors.joining("\n"))
            + "\n"
            + String.join("\n", card.remarks()));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replace('\u202f', ' ');
  }

  @ParameterizedTest
  @EnumSource(Card.class)
  void everyCardHasRowsAndRemarksAndNothingUnknown(Card kind) throws IOException {
    design = design.replace("\"bare-polished-copper\"", "\"gold\"");
    StepCard card = card(kind);
    assertThat(card.rows()).isNotEmpty();
    assertThat(card.remarks()).isNotEmpty();
    assertThat(all(card)).doesNotContain(WORDS.text("guide.value-not-known")).doesNotContain("{");
  }

  @Test
  void withoutADesignThereIsNoCard() {
    Situation nothing = new Situation(InstrumentState.EMPTY, List.of(), NOW);
    assertThat(new StepCards(WORDS).of(Card.DRILLING, nothing)).isEmpty();
  }

  @Test
  void drillingCardGivesDepthPecksAndTwoDrawings() throws IOException {
    StepCard card = card(Card.DRILLING);
    // by hand: flat 6.35 − √(6.35² − 1.65²) = 0.218 mm; point 1.65·tan 31° = 0.991 mm
    // reference: 9.5 − 0.218 = 9.28 mm from the flat, tip 10.27 mm, 10.27/3.3 → 4 pecks
    assertThat(all(card))
        .contains("it takes off 0.218")
        .contains("9.28 mm deep from the flat to the end of the full width; 4 pecks")
        .contains("right through, without a depth stop");
    assertThat(card.drawings()).hasSize(2);
  }

  /** n = v/(π·d) with the cutting speeds in the metals' files. */
  @ParameterizedTest
  @CsvSource({"copper, 2026, 4341", "aluminium, 5884, 11768"})
  void drillSpeedIsCuttingSpeedOverCircumference(String metal, double low, double high)
      throws IOException {
    design =
        design
            .replace("\"metal\": \"copper\"", "\"metal\": \"" + metal + "\"")
            .replace("bare-polished-copper", "bare-polished-" + metal);
    String speeds =
        card(Card.DRILLING).rows().stream()
            .filter(row -> row.what().equals("Speed of the drill"))
            .map(StepCard.Row::value)
            .findFirst()
            .orElseThrow();
    List<Double> numbers =
        List.of(speeds.replace("1/min", "").split("to", 2)).stream()
            .map(number -> Double.valueOf(number.replaceAll("[^0-9]", "")))
            .toList();
    assertThat(numbers.get(0)).isBetween(low * 0.98, low * 1.02);
    assertThat(numbers.get(1)).isBetween(high * 0.98, high * 1.02);
  }

  @Test
  void wrongMassIsPutIntoMillimetresOfBore() throws IOException {
    // a millimetre of a 3.3 mm bore in copper is 0.0764 g; two of them left in
    String before = all(card(Card.WEIGHING));
    assertThat(before).contains("0.0764").doesNotContain("not drilled, or");
    double heavy_g = 8.84 + 2 * 0.0764;
    add(
        "weigh-drilled",
        new ReadingEntered(
            "reference-mass",
            String.valueOf(heavy_g),
            Amount.exact(heavy_g, "g"),
            Optional.empty()));
    assertThat(all(card(Card.WEIGHING))).contains("as if the bore were 2").contains("too short");
  }

  @ParameterizedTest
  @CsvSource({
    "voltage, from signal minus",
    "difference, which ball it takes from which",
    "compensated, adds the temperature of its own terminals"
  })
  void wiringFollowsTheKindOfInput(String answer, String says) throws IOException {
    add("set-up-input", new QuestionAnswered("input", answer));
    StepCard card = card(Card.WIRING);
    assertThat(all(card)).contains(says);
    assertThat(card.drawings().get(0).description()).containsIgnoringCase("input");
  }

  @ParameterizedTest
  @CsvSource({
    "K, IEC 60584-3:2007, plus nickel-chromium: green, white",
    "K, ASTM E230, plus nickel-chromium: yellow, red",
    "T, IEC 60584-3:2007, plus copper: brown, white",
    "T, ASTM E230, plus copper: blue, red",
    "J, ASTM E230, plus iron: white, red"
  })
  void coloursStandByStandard(String letter, String standard, String plus, String minus)
      throws IOException {
    design = design.replace("\"thermocouple\": \"K\"", "\"thermocouple\": \"" + letter + "\"");
    StepCard.Row row =
        card(Card.WIRING).rows().stream()
            .filter(r -> r.what().endsWith(standard))
            .findFirst()
            .orElseThrow();
    assertThat(row.value()).startsWith(plus).endsWith(": " + minus);
  }

  @Test
  void orderNamesUnderlayerThicknessAreaMaskingAndPieces() throws IOException {
    // π·1.27² = 5.067 cm²
    assertThat(all(card(Card.PLATING_ORDER)))
        .contains("2 balls", "5.07", "3 to 5", "nickel", "plugged", "degreased");
  }
}
