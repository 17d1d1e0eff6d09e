package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import faintwind.files.SchemaCheck;
import faintwind.files.Sha256;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class JournalTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private static final String HASH = "0123456789abcdef".repeat(4);
  @TempDir Path folder;

  private static JournalEntry entry(String id, Event event) {
    return new JournalEntry(id, AT, "Käthe µ\n\"x\"", Optional.of("step-a"), event);
  }

  static List<Event> everyKind() {
    Amount tolerance = new Amount(5, "V", Amount.Bound.EXACT, OptionalDouble.of(0.1));
    Amount atLeast = new Amount(20, "MΩ", Amount.Bound.AT_LEAST, OptionalDouble.empty());
    Event reading =
        new Event.ReadingEntered("loop", "12,1", Amount.exact(12.1, "Ω"), Optional.empty());
    return List.of(
        new Event.InstrumentCreated("Rind 1", true),
        new Event.DesignChosen("{\"a\":1,\"b\":[\"µ\"]}", "first"),
        new Event.ChecklistChosen("standard", "1.0", HASH),
        new Event.StepOpened(),
        new Event.StepFinished(),
        reading,
        new Event.ReadingEntered(
            "lead", "OL", Amount.overRange("MΩ"), Optional.of(ReadingVerdict.GOOD)),
        new Event.ReadingEntered("lead", "> 20 M", atLeast, Optional.of(ReadingVerdict.STOP)),
        new Event.ReadingEntered("supply", "5 V ±2 %", tolerance, Optional.empty()),
        new Event.QuestionAnswered("place", "indoors"),
        new Event.CautionAcknowledged("hot-ball"),
        new Event.ClockStarted("cure", 86400),
        new Event.PhotoAdded("photos/x.jpg", HASH, "the bore"),
        new Event.Waived("lead", "for show"),
        new Event.PartRecorded("resistor", "lot 7", OptionalDouble.of(0.12), "EUR"),
        new Event.PartRecorded("wire", "", OptionalDouble.empty(), ""),
        new Event.NoteWritten("line 1\nline 2 \u2028 end"),
        new Event.FileAdded(Event.FileRole.RUNS_TABLE, "runs/runs.csv", HASH),
        new Event.CalibrationMade("calibrations/1.json", HASH),
        new Event.CalibrationPutInForce("calibrations/1.json"),
        new Event.LogConverted(
            "logs/a.csv", "logs/speeds-a.csv", "calibrations/1.json", HASH, Optional.of("0.1.0")),
        new Event.Rechecked(
            "calibrations/1.json", HASH, "runs/check-1/runs.csv", true, "said", Optional.empty()),
        new Event.Repaired("lead B soldered again"),
        new Event.HandedOver("Käthe", "with its jar"),
        new Event.HandedOver("Käthe", ""),
        new Event.Retired("lead broken off"),
        new Event.ChainBegun(12, HASH),
        new Event.LinesLost(HASH, 12, 9),
        new Event.AlterationAccepted("journal.jsonl:3", HASH, "typed by hand in haste"),
        new Event.FileAdded(Event.FileRole.TORN_LINE, "journal.torn", HASH),
        new Event.Corrected("e1", "slip", Optional.empty()),
        new Event.Corrected("e1", "slip", Optional.of(reading)));
  }

  @ParameterizedTest
  @MethodSource("everyKind")
  void everyKindOfEventComesBackAsItWas(Event event) throws IOException {
    JournalEntry entry = entry("e7", event);
    Journal.in(folder).append(List.of(entry));
    assertThat(read()).containsExactly(entry);
  }

  @ParameterizedTest
  @MethodSource("everyKind")
  void everyLineAgreesWithItsSchema(Event event) throws IOException {
    Journal.in(folder).append(List.of(entry("e7", event)));
    String line = Files.readString(folder.resolve("journal.jsonl"));
    assertThat(SchemaCheck.of("journal").problems(new ObjectMapper().readTree(line), Where.NOWHERE))
        .isEmpty();
  }

  @Test
  void everyLineOfAShippedJournalIsWrittenAsItStands() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("demo-projects/cellar/journal.jsonl"));
    List<String> again = new ArrayList<>();
    for (String line : lines) {
      Checked<JournalEntry> read = JournalLine.read(line, Where.NOWHERE);
      String prev = again.isEmpty() ? ChainedLines.START : sha256(again.get(again.size() - 1));
      again.add(
          read.fold(
              (entry, notes) -> ChainedLines.after(prev, JournalLine.write(entry)).text(),
              List::toString));
    }
    assertThat(again).hasSizeGreaterThan(100).isEqualTo(lines);
  }

  private static String sha256(String line) {
    return Sha256.of(line.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aLineTornAtAnyByteLosesNothingThatWasKept() throws IOException {
    Journal journal = Journal.in(folder);
    List<JournalEntry> kept =
        List.of(entry("e1", new Event.StepOpened()), entry("e2", new Event.NoteWritten("µ Ω")));
    journal.append(kept);
    byte[] whole = Files.readAllBytes(journal.file());
    journal.append(List.of(entry("e3", new Event.NoteWritten("torn µ"))));
    byte[] longer = Files.readAllBytes(journal.file());
    JournalEntry next = entry("e4", new Event.StepFinished());
    for (int end = whole.length; end <= longer.length; end++) {
      Files.write(journal.file(), Arrays.copyOf(longer, end));
      Files.deleteIfExists(folder.resolve("journal.torn"));
      boolean complete = end >= longer.length - 1;
      Journal.Content content = journal.content();
      assertThat(content.entries()).hasSize(complete ? 3 : 2).containsAll(kept);
      assertThat(content.problems())
          .extracting(Problem::id)
          .isEqualTo(complete || end == whole.length ? List.of() : List.of("journal.torn"));
      journal.append(List.of(next));
      assertThat(read()).containsAll(kept).endsWith(next);
      if (complete) {
        assertThat(read()).hasSize(4);
      } else if (end == whole.length) {
        assertThat(read()).hasSize(3);
      } else {
        assertThat(read()).hasSize(4);
        Event aside = read().get(2).event();
        assertThat(aside)
            .isEqualTo(
                new Event.FileAdded(
                    Event.FileRole.TORN_LINE,
                    "journal.torn",
                    Sha256.of(folder.resolve("journal.torn"))));
        assertThat(Files.readAllBytes(folder.resolve("journal.torn")))
            .startsWith(Arrays.copyOfRange(longer, whole.length, end));
      }
    }
  }

  @Test
  void aBrokenLineInTheMiddleIsRefusedWithItsNumber() throws IOException {
    Journal journal = Journal.in(folder);
    journal.append(List.of(entry("e1", new Event.StepOpened())));
    Files.writeString(
        journal.file(), Files.readString(journal.file()) + "{\"id\":\"e2\"}\nnot json\n");
    journal.append(List.of(entry("e3", new Event.StepOpened())));
    Checked<List<JournalEntry>> read = journal.read();
    assertThat(read.isOk()).isFalse();
    assertThat(read.problems())
        .extracting(p -> p.where().line().getAsInt() + " " + p.id())
        .contains("2 journal.key-missing", "3 journal.not-json", "2 journal.link-broken");
    assertThat(journal.content().entries()).hasSize(2);
  }

  /** A parser that stops at the end of the object would lose the second entry without a word. */
  @Test
  void aLineWithSomethingAfterItsObjectIsAnError() throws IOException {
    Journal journal = Journal.in(folder);
    journal.append(List.of(entry("a", new Event.StepOpened()), entry("b", new Event.StepOpened())));
    String text = Files.readString(journal.file());
    Files.writeString(journal.file(), text.replaceFirst("\n", ""));
    assertThat(journal.content().problems()).extracting(Problem::id).contains("journal.not-json");
  }

  @Test
  void anIdThatComesTwiceIsRefused() throws IOException {
    Journal journal = Journal.in(folder);
    journal.append(List.of(entry("e1", new Event.StepOpened())));
    journal.append(List.of(entry("e1", new Event.StepFinished())));
    assertThat(journal.read().problems())
        .extracting(Problem::id)
        .containsExactly("journal.id-twice");
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "{\"id\":\"a\",\"at\":\"yesterday\",\"who\":\"x\",\"what\":\"step-opened\"} | journal.not-a-time",
        "{\"id\":\"a\",\"at\":\"2026-03-02T09:00:00Z\",\"who\":\"x\",\"what\":\"party\"} | journal.unknown-word",
        "{\"id\":\"a\",\"at\":\"2026-03-02T09:00:00Z\",\"who\":7,\"what\":\"step-opened\"} | journal.key-missing",
        "{\"id\":\"a\",\"at\":\"2026-03-02T09:00:00Z\",\"who\":\"x\",\"what\":\"reading\",\"reading\":\"r\",\"typed\":\"5\",\"unit\":\"V\"} | journal.key-missing",
        "{\"id\":\"a\",\"at\":\"2026-03-02T09:00:00Z\",\"who\":\"x\",\"what\":\"correction\",\"entry\":\"b\",\"why\":\"\",\"replacement\":{\"what\":\"zzz\"}} | journal.unknown-word",
        "[1] | journal.not-json"
      })
  void aLineThatIsNoEntryIsRefusedByKind(String line, String id) {
    assertThat(JournalLine.read(line, Where.NOWHERE).problems())
        .extracting(Problem::id)
        .contains(id);
  }

  @Test
  void twoWritersAtOnceLoseNothing() throws Exception {
    ExecutorService two = Executors.newFixedThreadPool(2);
    List<Future<?>> writers = new ArrayList<>();
    for (String name : List.of("a", "b")) {
      writers.add(
          two.submit(
              () -> {
                for (int i = 0; i < 40; i++) {
                  Journal.in(folder).append(List.of(entry(name + i, new Event.StepOpened())));
                }
                return null;
              }));
    }
    for (Future<?> writer : writers) {
      writer.get();
    }
    two.shutdown();
    assertThat(read()).hasSize(80);
  }

  @Test
  void aFolderThatIsNotThereFailsAndLeavesNothing() {
    Journal journal = Journal.in(folder.resolve("missing"));
    assertThatThrownBy(() -> journal.append(List.of(entry("e1", new Event.StepOpened()))))
        .isInstanceOf(IOException.class);
    assertThat(folder.resolve("missing")).doesNotExist();
  }

  @Test
  void theFileIsPlainTextWithOneLineAnEntry() throws IOException {
    Journal.in(folder)
        .append(
            List.of(
                entry("e1", new Event.NoteWritten("a\nb")), entry("e2", new Event.StepOpened())));
    assertThat(Files.readString(folder.resolve("journal.jsonl"), StandardCharsets.UTF_8).lines())
        .hasSize(2)
        .allMatch(line -> line.startsWith("{\"id\":\"e"));
  }

  private List<JournalEntry> read() throws IOException {
    Checked<List<JournalEntry>> read = Journal.in(folder).read();
    assertThat(read.isOk()).as(read.problems().toString()).isTrue();
    return ((Checked.Ok<List<JournalEntry>>) read).value();
  }
}
