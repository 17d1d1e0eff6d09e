package faintwind.report.card;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.guide.Progress;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.Messages;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.InstrumentState;
import faintwind.report.picture.PlotFonts;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every move of the hands has a drawing of its own, in words too, and each can be read. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StepDrawingsTest {
  private static final Path PICTURES = Path.of("assets/pictures");
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final Progress ALL_NEEDED = new Progress(List.of());
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);

  /** Decisions, and work at the screen: nothing is moved by hand. */
  private static final Set<String> NO_MOVE =
      Set.of("plating-needed", "plating-who", "plan-runs", "bring-in-runs");

  private static final Pattern TEXT =
      Pattern.compile(
          "<text class=\"(label|small)\" x=\"([-0-9.]+)\" y=\"([-0-9.]+)\""
              + "(?: text-anchor=\"(start|middle|end)\")?>([^<]*)</text>");
  private static final Pattern ELEMENT = Pattern.compile("<([a-z]+)");
  private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"");

  private final Situation situation = situation();

  StepDrawingsTest() throws IOException {}

  private record Shown(String words, Rectangle2D box) {}

  static Stream<Step> moves() {
    return CHECKLIST.stages().stream()
        .filter(stage -> stage.id().matches("0[23456].*"))
        .map(Stage::steps)
        .flatMap(List::stream)
        .filter(step -> !NO_MOVE.contains(step.id()));
  }

  static List<Path> pictures() throws IOException {
    try (Stream<Path> files = Files.list(PICTURES)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("moves")
  void everyMoveHasADrawing(Step step) {
    boolean tips =
        !step.asks().readings().isEmpty()
            && step.asks().readings().stream().map(Reading::tips).allMatch(t -> t.isPresent());
    assertThat(step.text().picture().isPresent() || tips).as(step.id()).isTrue();
    step.text()
        .picture()
        .ifPresent(picture -> assertThat(picture.shows()).hasSizeGreaterThan(50).endsWith("."));
  }

  @Test
  void noTwoStepsShareADrawing() {
    Map<String, String> of = new HashMap<>();
    for (Step step : CHECKLIST.steps()) {
      step.text()
          .picture()
          .ifPresent(p -> assertThat(of.put(p.file(), step.id())).as(p.file()).isNull());
    }
    assertThat(of).hasSizeGreaterThan(40);
  }

  @Test
  void everyStageSaysAtItsStartWhatItGivesAndTakes() {
    for (Stage stage : CHECKLIST.stages()) {
      StepCard card = StageCard.of(stage, ALL_NEEDED, situation, WORDS);
      assertThat(card.rows().get(0).value()).isEqualTo(stage.ends().orElseThrow());
      assertThat(card.rows().get(1).value()).matches("about [0-9.]+\u00a0(h|min)");
      assertThat(card.remarks()).as(stage.id()).anyMatch(line -> line.startsWith("Parts: "));
    }
    Stage assemble = CHECKLIST.stageOf("glue-heater").orElseThrow();
    StepCard card = StageCard.of(assemble, ALL_NEEDED, situation, WORDS);
    assertThat(card.rows())
        .contains(
            new StepCard.Row("The epoxy of the heater cures, at 20 °C or more", "24\u00a0h", ""));
    assertThat(card.remarks().get(0)).contains("clamp").startsWith("Tools: ");
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void aDrawingCanBeReadWithTheNumbersOfADesign(Path file) throws IOException {
    String svg = situation.fill(Files.readString(file), WORDS);
    assertThat(svg).doesNotContain(WORDS.text("guide.value-not-known"));
    assertThat(ELEMENT.matcher(svg).results().map(m -> m.group(1)))
        .as("what the window can draw")
        .isSubsetOf("svg", "title", "style", "g", "path", "line", "circle", "rect", "text");
    if (svg.contains("translate(")) {
      return; // places of texts within a group are relative
    }
    Rectangle2D frame = frame(svg);
    List<Shown> shown = texts(svg);
    for (int i = 0; i < shown.size(); i++) {
      assertThat(frame.contains(shown.get(i).box())).as(shown.get(i).words() + frame).isTrue();
      for (Shown other : shown.subList(i + 1, shown.size())) {
        assertThat(shown.get(i).box().intersects(other.box()))
            .as("%s over %s", shown.get(i).words(), other.words())
            .isFalse();
      }
    }
  }

  private static Rectangle2D frame(String svg) {
    Matcher box = BOX.matcher(svg);
    assertThat(box.find()).isTrue();
    return new Rectangle2D.Double(
        0, 0, Double.parseDouble(box.group(1)), Double.parseDouble(box.group(2)));
  }

  private static List<Shown> texts(String svg) {
    FontRenderContext context = new FontRenderContext(null, true, true);
    List<Shown> all = new ArrayList<>();
    for (MatchResult text : TEXT.matcher(svg).results().toList()) {
      boolean strong = text.group(1).equals("label");
      Font font = strong ? PlotFonts.window().strong(13) : PlotFonts.window().regular(13);
      double width = font.getStringBounds(text.group(5), context).getWidth();
      String anchor = String.valueOf(text.group(4));
      double share = anchor.equals("end") ? 1 : anchor.equals("middle") ? 0.5 : 0;
      double x = Double.parseDouble(text.group(2)) - share * width;
      double y = Double.parseDouble(text.group(3));
      // from the height of a capital to a little below the line
      all.add(new Shown(text.group(5), new Rectangle2D.Double(x, y - 9.5, width, 11.5)));
    }
    return all;
  }

  private static Situation situation() throws IOException {
    DesignSheet sheet =
        DesignFile.parse(
                Files.readString(Path.of("src/test/resources/design/half-inch-copper.json")),
                Library.shipped())
            .fold(
                (value, notes) -> DesignSheet.of(value),
                problems -> {
                  throw new AssertionError(problems);
                });
    OffsetDateTime now = OffsetDateTime.parse("2026-11-21T14:30:00Z");
    return new Situation(
        InstrumentState.replay(List.of()), List.of(new Situation.DatedSheet(now, sheet)), now);
  }
}
