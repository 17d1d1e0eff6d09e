package faintwind.files.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.ChecklistRules;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.physics.sheet.DesignSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChecklistFilesTest {
  private static final Path SHIPPED = Path.of("checklists/standard");
  @TempDir Path copy;

  @BeforeEach
  void copyShipped() throws IOException {
    try (Stream<Path> files = Files.walk(SHIPPED)) {
      for (Path file : files.toList()) {
        Path to = copy.resolve(SHIPPED.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(to);
        } else {
          Files.copy(file, to);
        }
      }
    }
  }

  private static Checklist ok(Checked<Checklist> checked) {
    assertThat(checked.isOk()).as(checked.problems().toString()).isTrue();
    return ((Checked.Ok<Checklist>) checked).value();
  }

  private Checklist shipped() throws IOException {
    return ok(ChecklistFiles.shipped("standard"));
  }

  private void change(String file, String from, String to) throws IOException {
    String text = Files.readString(copy.resolve(file));
    assertThat(text).contains(from);
    Files.writeString(copy.resolve(file), text.replace(from, to));
  }

  private List<String> problems() throws IOException {
    Checked<Checklist> read = ChecklistFiles.read(List.of(copy), Locale.ENGLISH);
    assertThat(read.isOk()).isFalse();
    Messages english = Messages.of(Locale.ENGLISH);
    read.problems().forEach(problem -> assertThat(english.line(problem)).isNotBlank());
    return read.problems().stream().map(Problem::id).toList();
  }

  @Test
  void theShippedChecklistHasEightStagesAndNothingWrong() throws IOException {
    Checklist standard = shipped();
    assertThat(standard.stages()).hasSize(8);
    assertThat(standard.steps()).hasSizeGreaterThan(40);
    assertThat(ChecklistRules.problems(standard)).isEmpty();
    assertThat(withoutAnswer(standard, SampleBuild.sheet())).isEmpty();
  }

  /** Bands and clocks that give no answer with a design where every quantity is known. */
  private static List<String> withoutAnswer(Checklist checklist, DesignSheet sheet) {
    Map<String, Double> values = new HashMap<>(Situation.values(sheet));
    for (Step step : checklist.steps()) {
      for (Reading reading : step.asks().readings()) {
        values.put(reading.name(), 1.0);
        values.put(reading.errorName(), 0.0);
      }
    }
    values.put(Reading.VALUE, 1.0);
    values.put(Reading.METER_ERROR, 0.0);
    List<String> without = new ArrayList<>();
    for (Step step : checklist.steps()) {
      step.asks().readings().stream()
          .flatMap(reading -> reading.bands().stream())
          .filter(band -> band.when().holds(values).isEmpty())
          .forEach(band -> without.add(step.id() + ": " + band.when().text()));
      step.asks()
          .clock()
          .filter(clock -> !(clock.duration_s().number(values).orElse(-1) >= 0))
          .ifPresent(clock -> without.add(step.id() + ": " + clock.duration_s().text()));
    }
    return without;
  }

  @Test
  void localRulesStandOnEveryPlatingStep() throws IOException {
    Stage plating = shipped().stages().get(2);
    String words = "Local rules and a licensed plater come first";
    assertThat(plating.banner()).contains(words);
    for (Step step : plating.steps()) {
      assertThat(step.text().why()).as(step.id()).startsWith(words);
    }
  }

  @Test
  void everyCautionNamesItsSourceOrSaysThatThereIsNone() throws IOException {
    for (Step step : shipped().steps()) {
      step.cautions().forEach(c -> assertThat(c.source()).as(step.id() + c.id()).isNotBlank());
    }
  }

  @Test
  void aCycleIsRefusedNamingItsSteps() throws IOException {
    change("04-assemble/heater-alone.json", "polish-and-degrease", "glue-heater");
    assertThat(problems()).contains("checklist.cycle");
  }

  @Test
  void anUnknownQuantityIsRefused() throws IOException {
    change("04-assemble/heater-alone.json", "value >= low_heater_ohm", "value >= ohms_low");
    assertThat(problems()).containsExactly("checklist.unknown-name");
  }

  @Test
  void anUnknownValueInATextIsRefused() throws IOException {
    change("02-make/drill-heated.json", "{bore_mm}", "{bore_inch}");
    assertThat(problems()).containsExactly("checklist.unknown-name");
  }

  @Test
  void aFunctionInABandIsRefused() throws IOException {
    change("04-assemble/heater-alone.json", "value >= low_heater_ohm", "ABS(value) >= 1");
    assertThat(problems()).contains("condition.not-understood");
  }

  @Test
  void aMissingPictureIsRefused() throws IOException {
    change("04-assemble/glue-heater.json", "glue-heater.svg", "ball-photo.png");
    assertThat(problems()).containsExactly("checklist.picture-missing");
  }

  @Test
  void anUnknownUnitGateNeedAndStepAreAllListedAtOnce() throws IOException {
    change("02-make/weigh-blanks.json", "\"unit\": \"g\"", "\"unit\": \"stone\"");
    change("06-turntable/arm-safety.json", "first-spin", "first-dance");
    change("02-make/mark-and-flat.json", "ready-workplace", "ready-kitchen");
    assertThat(problems())
        .contains(
            "checklist.unknown-unit",
            "checklist.unknown-gate",
            "checklist.gate-never-opens",
            "checklist.unknown-step");
  }

  @Test
  void aStepNobodyWouldComeToIsRefused() throws IOException {
    Files.copy(copy.resolve("02-make/weigh-blanks.json"), copy.resolve("02-make/weigh-more.json"));
    assertThat(problems()).containsExactly("checklist.step-not-listed");
  }

  @Test
  void anIdThatComesTwiceIsRefused() throws IOException {
    change("02-make/weigh-drilled.json", "\"id\": \"heated-mass\"", "\"id\": \"blank-a\"");
    assertThat(problems()).contains("checklist.id-twice");
  }

  @Test
  void aMissingFileAndAnUnknownKeyAreRefused() throws IOException {
    Files.delete(copy.resolve("02-make/weigh-blanks.json"));
    change("02-make/mark-and-flat.json", "\"good\":", "\"praise\":");
    assertThat(problems()).contains("checklist.file-missing", "json.key-missing");
  }

  @Test
  void aTeachersStepReplacesTheShippedOneAndShowsInTheHash(@TempDir Path own) throws IOException {
    Path instrument = own.resolve("rind");
    Path step = instrument.resolve("checklist/02-make/mark-and-flat.json");
    Files.createDirectories(step.getParent());
    Files.writeString(
        step,
        Files.readString(copy.resolve("02-make/mark-and-flat.json"))
            .replace("File a flat and punch the centre", "Ask for the jig first"));
    Checklist changed = ok(ChecklistFiles.forInstrument(instrument, "standard", Locale.ENGLISH));
    assertThat(changed.step("mark-and-flat").orElseThrow().title())
        .isEqualTo("Ask for the jig first");
    assertThat(changed.steps()).hasSameSizeAs(shipped().steps());
    assertThat(changed.sha256()).isNotEqualTo(shipped().sha256());
  }

  private Checklist inXx(String texts, String reviewed) throws IOException {
    return ok(read(texts, reviewed));
  }

  private Checked<Checklist> read(String texts, String reviewed) throws IOException {
    Files.createDirectories(copy.resolve("lang"));
    Files.writeString(
        copy.resolve("lang/xx.json"),
        "{\"format\": \"faintwind-language/1\", \"language\": \"xx\", \"texts\": {"
            + texts
            + "}, \"reviewed\": {"
            + reviewed
            + "}}");
    return ChecklistFiles.read(List.of(copy), Locale.forLanguageTag("xx"));
  }

  @Test
  void anotherLanguageLiesOverTheTextAndLeavesTheRest() throws IOException {
    Checklist other =
        inXx(
            """
            "stages.02-make.title": "Stufe",
            "steps.heater-alone.title": "Allein",
            "steps.heater-alone.readings.heater-alone.label": "Draht"
            """,
            "");
    Step step = other.step("heater-alone").orElseThrow();
    assertThat(step.title()).isEqualTo("Allein");
    assertThat(step.asks().readings().get(0).label()).isEqualTo("Draht");
    assertThat(step.asks().readings().get(0).unit()).isEqualTo("Ω");
    assertThat(other.stages().get(1).title()).isEqualTo("Stufe");
    assertThat(step.text().why()).startsWith("[en] ");
  }

  @Test
  void theHashIsTheSameInEveryLanguage() throws IOException {
    Checklist other = inXx("\"stages.02-make.title\": \"Stufe\"", "");
    assertThat(other.sha256()).isEqualTo(shipped().sha256());
    assertThat(other.ownFiles()).isEmpty();
  }

  @Test
  void aCautionCountsOnlyWhereItWasReviewedAgainstTheEnglishOfToday() throws IOException {
    String key = "steps.first-power.cautions.hot-ball.text";
    String english = hotBall(shipped());
    String texts = "\"%s\": \"Heiß\"".formatted(key);
    String mark = "\"%s\": {\"on\": \"2026-11-29\", \"english\": \"%s\"}";
    assertThat(hotBall(inXx(texts, ""))).isEqualTo("[en] " + english);
    assertThat(hotBall(inXx(texts, mark.formatted(key, "It is cold.")))).startsWith("[en] ");
    assertThat(hotBall(inXx(texts, mark.formatted(key, english)))).isEqualTo("Heiß");
  }

  private static String hotBall(Checklist checklist) {
    return checklist.step("first-power").orElseThrow().cautions().get(0).text();
  }

  @Test
  void whatToDoInAStepThatCanHurtIsOnSafetyToo() throws IOException {
    Checklist other =
        inXx(
            """
            "steps.first-power.how.0": "Riechen",
            "steps.first-power.title": "Einschalten",
            "steps.first-power.readings.supply-volts.bands.2.words": "Weiter"
            """,
            "");
    Step step = other.step("first-power").orElseThrow();
    assertThat(step.title()).isEqualTo("Einschalten");
    assertThat(step.text().how().get(0)).startsWith("[en] If anything smells");
    assertThat(step.asks().readings().get(0).bands().get(2).words()).startsWith("[en] Switch off");
  }

  @Test
  void formulasAndNeedsHaveNoKeyToReplaceThemBy() throws IOException {
    String foreign = "\"steps.first-power.readings.supply-volts.bands.0.when\": \"1 > 0\"";
    assertThat(read(foreign, "").problems())
        .extracting(Problem::id)
        .containsExactly("language.foreign-key");
    assertThat(read("\"steps.first-power.needs.0\": \"drill\"", "").isOk()).isFalse();
  }

  @Test
  void aValueThatIsMissingIsRefusedWithFileAndKey() throws IOException {
    List<Problem> problems = read("\"steps.first-power.good\": \"Etwa {fuse_mA}\"", "").problems();
    assertThat(problems)
        .extracting(Problem::id)
        .contains("language.value-missing", "language.value-foreign");
    assertThat(problems.get(0).where().file()).contains("lang/xx.json");
    assertThat(problems.get(0).where().column()).contains("steps.first-power.good");
  }
}
