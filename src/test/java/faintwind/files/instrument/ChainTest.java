package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.Sha256;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an alteration of a chained folder is found as. */
class ChainTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private static final int LINES = 6;
  @TempDir Path path;
  private InstrumentFolder folder;

  private static JournalEntry entry(int number, Event event) {
    return new JournalEntry("e" + number, AT, "Käthe", Optional.empty(), event);
  }

  @BeforeEach
  void sixNotes() throws IOException {
    folder = new InstrumentFolder(path);
    for (int i = 1; i <= LINES; i++) {
      folder.append(List.of(entry(i, new Event.NoteWritten("note " + i + " µ"))));
    }
    assertThat(problems()).isEmpty();
  }

  private List<String> problems() throws IOException {
    return folder.audit().problems().stream()
        .map(p -> p.where().file().orElse("") + line(p) + " " + p.id())
        .toList();
  }

  private static String line(Problem problem) {
    return problem.where().line().isPresent() ? ":" + problem.where().line().getAsInt() : "";
  }

  private Path journal() {
    return path.resolve("journal.jsonl");
  }

  private List<String> lines() throws IOException {
    return new ArrayList<>(Files.readAllLines(journal()));
  }

  private void write(List<String> lines) throws IOException {
    Files.writeString(journal(), String.join("\n", lines) + "\n");
  }

  @Test
  void eachLineCarriesTheHashOfTheBytesOfTheOneBefore() throws IOException {
    String prev = "0".repeat(64);
    for (String line : lines()) {
      assertThat(line).endsWith(",\"prev\":\"" + prev + "\"}");
      prev = Sha256.of(line.getBytes(StandardCharsets.UTF_8));
    }
    assertThat(folder.open().state().head()).isEqualTo(prev);
  }

  @Test
  void anAlteredLineIsNamed() throws IOException {
    for (int i = 0; i < LINES; i++) {
      List<String> altered = lines();
      List<String> whole = lines();
      altered.set(i, altered.get(i).replace("µ", "Ω"));
      write(altered);
      assertThat(problems()).containsExactly("journal.jsonl:" + (i + 1) + " journal.link-broken");
      assertThat(folder.open().access()).isEqualTo(InstrumentFolder.Access.READ_ONLY);
      write(whole);
    }
  }

  @Test
  void anAlteredHashIsNamedByItsOwnLine() throws IOException {
    List<String> altered = lines();
    String line = altered.get(2);
    char old = line.charAt(line.length() - 5);
    altered.set(
        2,
        line.substring(0, line.length() - 5)
            + (old == 'a' ? 'b' : 'a')
            + line.substring(line.length() - 4));
    write(altered);
    assertThat(problems()).containsExactly("journal.jsonl:3 journal.link-broken");
  }

  @Test
  void aRemovedLineIsFoundWhereItWas() throws IOException {
    for (int i = 0; i < LINES - 1; i++) {
      List<String> whole = lines();
      List<String> shorter = lines();
      shorter.remove(i);
      write(shorter);
      assertThat(problems()).contains("journal.jsonl:" + Math.max(1, i) + " journal.link-broken");
      write(whole);
    }
  }

  @Test
  void aRemovedLastLineIsMissedByTheSummary() throws IOException {
    List<String> shorter = lines();
    shorter.remove(LINES - 1);
    write(shorter);
    assertThat(problems()).containsExactly("journal.jsonl journal.shorter");
  }

  @Test
  void linesThatWereLostAreEnteredAsLostWithTheNextEntry() throws IOException {
    String head = folder.open().state().head();
    List<String> shorter = lines();
    write(shorter.subList(0, 3));
    folder.append(List.of(entry(9, new Event.NoteWritten("on"))));
    assertThat(problems()).isEmpty();
    List<JournalEntry> entries = folder.journal().content().entries();
    assertThat(entries.get(3).event()).isEqualTo(new Event.LinesLost(head, LINES, 3));
    assertThat(entries).hasSize(5);
  }

  @Test
  void swappedLinesAreBothNamed() throws IOException {
    List<String> swapped = lines();
    Collections.swap(swapped, 2, 3);
    write(swapped);
    assertThat(problems())
        .contains("journal.jsonl:3 journal.link-broken", "journal.jsonl:4 journal.link-broken");
  }

  @Test
  void anAddedLineIsNamed() throws IOException {
    List<String> added = lines();
    added.add(3, added.get(2).replace("\"e3\"", "\"e33\""));
    write(added);
    assertThat(problems()).contains("journal.jsonl:4 journal.link-broken");
    write(lines().stream().filter(l -> !l.contains("e33")).toList());
    assertThat(problems()).isEmpty();
  }

  @Test
  void anEmptyLineAndALostLineEndAreFound() throws IOException {
    String text = Files.readString(journal());
    Files.writeString(journal(), text.replaceFirst("\n", "\n\n"));
    assertThat(problems()).isNotEmpty();
    Files.writeString(journal(), text.substring(0, text.length() - 1));
    assertThat(problems()).containsExactly("journal.jsonl:6 journal.line-end-lost");
    Files.writeString(journal(), text + "x");
    assertThat(problems()).containsExactly("journal.jsonl:7 journal.added");
  }

  @Test
  void aLineThatACrashCutIsToldFromOneThatWasCutLater() throws IOException {
    byte[] before = Files.readAllBytes(path.resolve("instrument.json"));
    folder.append(List.of(entry(7, new Event.NoteWritten("seven"))));
    byte[] after = Files.readAllBytes(path.resolve("instrument.json"));
    String text = Files.readString(journal());
    Files.writeString(journal(), text.substring(0, text.length() - 20));
    assertThat(problems())
        .containsExactly("journal.jsonl:7 journal.torn", "journal.jsonl journal.shorter");
    Files.write(path.resolve("instrument.json"), before);
    assertThat(problems()).containsExactly("journal.jsonl:7 journal.torn");
    assertThat(after).isNotEqualTo(before);
  }

  @Test
  void aSummaryThatIsBehindIsToldOfAndNoError() throws IOException {
    byte[] before = Files.readAllBytes(path.resolve("instrument.json"));
    folder.append(List.of(entry(7, new Event.NoteWritten("seven"))));
    Files.write(path.resolve("instrument.json"), before);
    assertThat(problems()).containsExactly("instrument.json summary.behind");
    assertThat(folder.audit().problems()).noneMatch(Problem::isError);
    folder.append(List.of(entry(8, new Event.NoteWritten("eight"))));
    assertThat(problems()).isEmpty();
  }

  @Test
  void everySingleAlteredByteOfTheFolderIsFoundAndNamed() throws IOException {
    Random random = new Random(20261128);
    for (String name : List.of("journal.jsonl", "instrument.json")) {
      byte[] whole = Files.readAllBytes(path.resolve(name));
      for (int i = 0; i < whole.length; i++) {
        byte[] altered = whole.clone();
        altered[i] ^= (byte) (1 + random.nextInt(255));
        Files.write(path.resolve(name), altered);
        String where = String.format(Locale.ROOT, "byte %d of %s", i, name);
        assertThat(problems()).as(where).isNotEmpty().anyMatch(p -> p.startsWith(name));
      }
      Files.write(path.resolve(name), whole);
    }
  }

  @Test
  void aMissingSummaryIsSaidAndMadeAgain() throws IOException {
    Files.delete(path.resolve("instrument.json"));
    assertThat(problems()).containsExactly("instrument.json summary.missing");
    folder.append(List.of(entry(7, new Event.NoteWritten("seven"))));
    assertThat(problems()).isEmpty();
  }

  @Test
  void anOldJournalOpensSaysSoAndIsChainedFromThenOn() throws IOException {
    List<String> old =
        lines().stream().map(line -> line.replaceFirst(",\"prev\":\".*", "}")).toList();
    write(old);
    Files.writeString(path.resolve("instrument.json"), "{\n  \"entries\" : 6\n}\n");
    assertThat(problems()).containsExactly("journal.jsonl journal.unchained");
    InstrumentState before = folder.open().state();
    assertThat(before.lines()).hasSize(LINES);
    byte[] unchained = Files.readAllBytes(journal());
    folder.append(List.of(entry(7, new Event.NoteWritten("seven"))));
    assertThat(problems()).isEmpty();
    List<JournalEntry> entries = folder.journal().content().entries();
    assertThat(entries.get(LINES).event())
        .isEqualTo(new Event.ChainBegun(LINES, Sha256.of(unchained)));
    List<String> altered = lines();
    altered.set(2, altered.get(2).replace("µ", "Ω"));
    write(altered);
    assertThat(problems()).containsExactly("journal.jsonl journal.older-altered");
  }

  @Test
  void anAlterationThatAPersonAcceptsStaysInSightAndStandsInNobodysWay() throws IOException {
    List<String> altered = lines();
    altered.set(2, altered.get(2).replace("µ", "Ω"));
    write(altered);
    String now = Sha256.of(altered.get(2).getBytes(StandardCharsets.UTF_8));
    folder.append(
        List.of(
            entry(7, new Event.AlterationAccepted("journal.jsonl:3", now, "a slip of the pen"))));
    assertThat(problems()).containsExactly("journal.jsonl:3 journal.accepted");
    assertThat(folder.open().access()).isEqualTo(InstrumentFolder.Access.READ_WRITE);
    altered = lines();
    altered.set(2, altered.get(2).replace("Ω", "x"));
    write(altered);
    assertThat(problems()).contains("journal.jsonl:3 journal.link-broken");
  }

  @Test
  void filesOfTheFolderAreComparedWithTheirEntries() throws IOException {
    Files.writeString(path.resolve("a.csv"), "x\n");
    assertThat(problems()).containsExactly("a.csv folder.file-unknown");
    folder.append(
        List.of(
            entry(
                7,
                new Event.FileAdded(
                    Event.FileRole.OTHER, "a.csv", Sha256.of(path.resolve("a.csv"))))));
    assertThat(problems()).isEmpty();
    Files.writeString(path.resolve("a.csv"), "y\n");
    assertThat(problems()).containsExactly("a.csv folder.file-changed");
    Files.delete(path.resolve("a.csv"));
    assertThat(problems()).containsExactly("a.csv folder.file-missing");
  }
}
