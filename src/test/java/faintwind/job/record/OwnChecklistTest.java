package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.SampleBuild;
import faintwind.job.record.Enter.Person;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.OwnFileNoted;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A teacher's own checklist files: used in place of the shipped ones, or refused and said so. */
class OwnChecklistTest {
  private static final Path SHIPPED = Path.of("checklists/standard");
  private static final String STEP = "04-assemble/coat-parts.json";
  private static final String TITLE = "Coat junctions and leads";
  private static final Clock CLOCK =
      Clock.fixed(SampleBuild.LATER.toInstant(), SampleBuild.LATER.getOffset());

  private final AtomicInteger ids = new AtomicInteger();
  private final Person ada = new Person("Ada Test", () -> "e" + ids.incrementAndGet());
  @TempDir Path workspace;
  private Path instrument;

  @BeforeEach
  void begin() throws IOException {
    instrument = workspace.resolve("rind");
    Enter.begin(instrument, new InstrumentCreated("Rind 9", true), CLOCK, ada);
  }

  private InstrumentView view() throws IOException {
    Checked<InstrumentView> opened =
        InstrumentView.open(instrument, json -> Optional.of(SampleBuild.sheet()));
    assertThat(opened.isOk()).as(opened.problems().toString()).isTrue();
    return ((Checked.Ok<InstrumentView>) opened).value();
  }

  private static String shipped(String file) throws IOException {
    return Files.readString(SHIPPED.resolve(file));
  }

  private static Path put(Path folder, String file, String text) throws IOException {
    Path path = folder.resolve("checklist").resolve(file);
    Files.createDirectories(path.getParent());
    return Files.writeString(path, text);
  }

  private void note() throws IOException {
    new Enter(view(), CLOCK, ada).plain(Optional.empty(), new NoteWritten("looked in"));
  }

  private List<OwnFileNoted> noted() throws IOException {
    return view().state().standing(OwnFileNoted.class).stream().map(Standing::event).toList();
  }

  private static String sha256(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError(e);
    }
  }

  private String title() throws IOException {
    return view().checklist().step("coat-parts").orElseThrow().title();
  }

  @Test
  void aCopyInTheInstrumentWinsOverOneInTheWorkspaceAndBothOverTheShippedOne() throws IOException {
    put(workspace, STEP, shipped(STEP).replace(TITLE, "Coat as in the workshop"));
    assertThat(title()).isEqualTo("Coat as in the workshop");
    put(instrument, STEP, shipped(STEP).replace(TITLE, "Coat as in group three"));
    assertThat(title()).isEqualTo("Coat as in group three");
    assertThat(view().problems()).isEmpty();
  }

  @Test
  void theLogSaysWhichOwnFileWasUsedWithItsHashOnceAndWhenItIsGone() throws IOException {
    String own = shipped(STEP).replace(TITLE, "Coat as in the workshop");
    Path file = put(workspace, STEP, own);
    note();
    note();
    assertThat(noted()).containsExactly(new OwnFileNoted(STEP, sha256(own), ""));
    assertThat(view().state().all(OwnFileNoted.class).get(0).who()).isEqualTo("faintwind");
    Files.delete(file);
    note();
    note();
    assertThat(noted()).hasSize(2).last().isEqualTo(new OwnFileNoted(STEP, "", ""));
    assertThat(title()).isEqualTo(TITLE);
  }

  @ParameterizedTest(name = "{0}: {1} becomes {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "checklist.cycle | \"join-leads\" | \"mount-pair\"",
        "checklist.unknown-step | \"join-leads\" | \"join-feet\"",
        "checklist.bench-asks | \"leads-joined\" | \"cable-joined\"",
        "checklist.unknown-name | 24*3600 | 24*cure_h",
        "condition.not-understood | 24*3600 | MAX(1)",
        "checklist.caution-dropped | \"id\": \"varnish\" | \"id\": \"paint\"",
        "json.foreign-key | \"good\" | \"praise\"",
        "json.syntax | \"why\": | \"why\"",
        "checklist.id-not-file | \"id\": \"coat-parts\" | \"id\": \"coat-all\""
      })
  void aBrokenCopyIsRefusedAndTheShippedStepStands(String problem, String from, String to)
      throws IOException {
    String own = shipped(STEP).replace(TITLE, "Mine").replaceFirst(Pattern.quote(from), to);
    assertThat(own).contains(to);
    put(instrument, STEP, own);
    assertThat(title()).isEqualTo(TITLE);
    assertThat(view().problems()).extracting(Problem::id).contains(problem);
    Messages english = Messages.of(Locale.ENGLISH);
    view().problems().forEach(p -> assertThat(english.line(p)).isNotBlank());
    note();
    assertThat(noted()).hasSize(1);
    assertThat(noted().get(0).sha256()).isEqualTo(sha256(own));
    assertThat(noted().get(0).refused()).contains(problem);
    assertThat(view().writable()).isTrue();
  }

  @Test
  void aMissingPictureIsRefusedAndOneBesideTheCopyIsTaken() throws IOException {
    String step = "04-assemble/glue-heater.json";
    put(instrument, step, shipped(step).replace("glue-heater.svg", "my-leads.svg"));
    assertThat(view().problems()).extracting(Problem::id).contains("checklist.picture-missing");
    put(instrument, "pictures/my-leads.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
    assertThat(view().problems()).isEmpty();
  }

  @Test
  void aBrokenCopyDoesNotTakeAGoodOneWithIt() throws IOException {
    put(instrument, STEP, "{\"format\"");
    String other = "02-make/mark-and-flat.json";
    String title = view().checklist().step("mark-and-flat").orElseThrow().title();
    put(instrument, other, shipped(other).replace(title, "Ask for the jig first"));
    assertThat(title()).isEqualTo(TITLE);
    assertThat(view().checklist().step("mark-and-flat").orElseThrow().title())
        .isEqualTo("Ask for the jig first");
  }

  @Test
  void aCopyThatOpensTheHeaterToAnybodyIsRefused() throws IOException {
    String step = "05-chain/first-power.json";
    put(instrument, step, shipped(step).replace("\"heater-power\"", ""));
    assertThat(view().problems()).extracting(Problem::id).contains("checklist.gate-dropped");
    assertThat(view().checklist().step("first-power").orElseThrow().order().behind())
        .containsExactly("heater-power");
  }

  @ParameterizedTest(name = "{0} becomes {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"id\": \"lead-a-ball\" | \"id\": \"lead-c-ball\"",
        "value >= insulation_good_Mohm | value >= 0",
        "\"verdict\": \"stop\" | \"verdict\": \"good\"",
        "\"unit\": \"MΩ\" | \"unit\": \"Ω\"",
        "\"other\": \"heated-ball\" | \"other\": \"lead-b\""
      })
  void aCopyThatTakesEvidenceFromTheGateIsRefused(String from, String to) throws IOException {
    String step = "04-assemble/heater-insulation.json";
    String own = shipped(step).replaceFirst(Pattern.quote(from), to);
    assertThat(own).contains(to);
    put(instrument, step, own);
    assertThat(view().problems()).extracting(Problem::id).contains("checklist.reading-dropped");
    Messages english = Messages.of(Locale.ENGLISH);
    view().problems().forEach(p -> assertThat(english.line(p)).isNotBlank());
    assertThat(view().checklist().step("heater-insulation").orElseThrow().reading("lead-a-ball"))
        .isPresent();
  }

  @Test
  void aCopyThatDropsTheStopOfTheSheetIsRefused() throws IOException {
    String step = "01-design/choose-design.json";
    put(instrument, step, shipped(step).replace("design_stops > 0", "design_stops > 7"));
    assertThat(view().problems()).extracting(Problem::id).contains("checklist.stop-dropped");
  }

  @Test
  void anOwnOrderOfStepsThatIsTornLeavesTheShippedOne() throws IOException {
    put(workspace, "checklist.json", "{\"format\": \"faintwind-checklist/1\"}");
    assertThat(view().checklist().stages()).hasSize(8);
    assertThat(view().problems()).extracting(Problem::id).contains("json.key-missing");
  }
}
