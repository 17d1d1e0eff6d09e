package faintwind.job.bench;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.record.AtInstrument;
import faintwind.job.record.Enter;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows that were worked out before are used again, and only where they still hold. */
class ReadBenchTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-11-29T10:00Z");
  private static final Clock CLOCK = Clock.fixed(NOW.toInstant(), ZoneOffset.UTC);
  private static final int MANY = 26;

  @TempDir Path folder;
  private Path kept = Path.of("");

  @BeforeEach
  void manyInstruments() throws IOException {
    for (int i = 0; i < MANY; i++) {
      InstrumentCreated first = new InstrumentCreated("Ball " + i, true);
      Enter.begin(folder.resolve("ball-" + i), first, CLOCK, Enter.Person.named("Ada"));
    }
    kept = folder.resolve(".bench-rows.json");
  }

  private List<BenchRow> rows(OffsetDateTime now) throws IOException {
    return new ReadBench(Messages.of(Locale.UK)).rows(folder, now);
  }

  private BenchRow row(String name) throws IOException {
    return rows(NOW).stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void secondLookShowsWhatTheFirstOneDid() throws IOException {
    List<BenchRow> first = rows(NOW);
    assertThat(kept).exists();
    assertThat(rows(NOW.plusHours(1))).isEqualTo(first);
  }

  @Test
  void keptRowIsWhatIsShown() throws IOException {
    rows(NOW);
    Files.writeString(kept, Files.readString(kept).replace("Ball 7", "Ball of the kept row"));
    assertThat(row("Ball of the kept row").folder()).isEqualTo(folder.resolve("ball-7"));
  }

  @Test
  void instrumentThatChangedIsReadAgain() throws IOException {
    rows(NOW);
    Files.writeString(kept, Files.readString(kept).replace("Ball 7", "Ball of the kept row"));
    new AtInstrument(folder.resolve("ball-7"), CLOCK, "Ada")
        .work((view, enter) -> enter.plain(Optional.empty(), new Event.NoteWritten("looked at")));
    assertThat(row("Ball 7").folder()).isEqualTo(folder.resolve("ball-7"));
  }

  @Test
  void ownChecklistOfTheFolderMakesAllBeReadAgain() throws IOException {
    rows(NOW);
    Files.writeString(kept, Files.readString(kept).replace("Ball 7", "Ball of the kept row"));
    Files.createDirectories(folder.resolve("checklist"));
    Files.writeString(folder.resolve("checklist/remedies.json"), "{}");
    assertThat(row("Ball 7").folder()).isEqualTo(folder.resolve("ball-7"));
  }

  @Test
  void bothOfTwoFoldersThatBeginAlikeSaySo() throws IOException {
    Path copy = Files.createDirectories(folder.resolve("ball-7 (conflict)"));
    Files.copy(folder.resolve("ball-7/journal.jsonl"), copy.resolve("journal.jsonl"));
    List<BenchRow> copied =
        rows(NOW).stream().filter(row -> row.need().kind() == BenchRow.Kind.COPIED).toList();
    assertThat(copied)
        .extracting(row -> row.folder().getFileName().toString())
        .containsExactlyInAnyOrder("ball-7", "ball-7 (conflict)");
    assertThat(row("Ball 8").need().kind()).isEqualTo(BenchRow.Kind.READY);
    new Archive(Messages.of(Locale.UK), CLOCK, "Ada").putAway(List.of(copy));
    assertThat(rows(NOW)).noneMatch(row -> row.need().kind() == BenchRow.Kind.COPIED);
  }

  @Test
  void whatWasHandedOverSaysSoUntilTheNextEntry() throws IOException {
    AtInstrument given = new AtInstrument(folder.resolve("ball-7"), CLOCK, "Ada");
    given.work((view, enter) -> enter.plain(Optional.empty(), new Event.HandedOver("Jo", "")));
    assertThat(row("Ball 7").need().kind()).isEqualTo(BenchRow.Kind.HANDED_OVER);
    assertThat(row("Ball 7").need().reason()).startsWith("To Jo, on 29 November 2026");
    given.work((view, enter) -> enter.plain(Optional.empty(), new Event.NoteWritten("got it")));
    assertThat(row("Ball 7").need().kind()).isEqualTo(BenchRow.Kind.READY);
  }

  @Test
  void whatIsDamagedIsARowWithItsReasonAndTheOthersAreShown() throws IOException {
    Path shorter = folder.resolve("ball-1/journal.jsonl");
    new AtInstrument(folder.resolve("ball-1"), CLOCK, "Ada")
        .work((view, enter) -> enter.plain(Optional.empty(), new Event.NoteWritten("lost soon")));
    Files.write(shorter, Files.readAllLines(shorter).subList(0, 1));
    Files.delete(folder.resolve("ball-2/journal.jsonl"));
    Files.delete(folder.resolve("ball-3/journal.jsonl"));
    Files.createSymbolicLink(folder.resolve("ball-3/journal.jsonl"), Path.of("/dev/zero"));
    Files.delete(folder.resolve("ball-4/journal.jsonl"));
    Files.createSymbolicLink(folder.resolve("ball-4/journal.jsonl"), folder.resolve("gone"));

    assertThat(rows(NOW)).hasSize(MANY);
    assertThat(row("Ball 1").need().kind()).isEqualTo(BenchRow.Kind.ATTENTION);
    assertThat(row("Ball 1").need().reason()).contains("has lost its last 1 of 2 lines");
    for (String broken : List.of("ball-2", "ball-3", "ball-4")) {
      assertThat(row(broken).need().kind()).as(broken).isEqualTo(BenchRow.Kind.BROKEN);
    }
    assertThat(row("ball-2").need().reason()).contains("its journal.jsonl is gone");
    assertThat(row("ball-3").need().reason()).contains("no plain file");
    assertThat(row("Ball 5").need().kind()).isEqualTo(BenchRow.Kind.READY);
  }

  @Test
  void whatTheJournalHasLostIsToldToWhoeverGoesOn() throws IOException {
    AtInstrument it = new AtInstrument(folder.resolve("ball-1"), CLOCK, "Ada");
    AtInstrument.Work<JournalEntry> note =
        (view, enter) -> enter.plain(Optional.empty(), new Event.NoteWritten("a word"));
    Path journal = folder.resolve("ball-1/journal.jsonl");
    it.work(note);
    Files.write(journal, Files.readAllLines(journal).subList(0, 1));
    assertThat(it.work(note).problems())
        .singleElement()
        .matches(told -> told.id().equals("journal.shorter") && !told.isError());
    assertThat(it.work(note).problems()).isEmpty();
  }

  @Test
  void keptFileThatIsBrokenCountsAsNone() throws IOException {
    List<BenchRow> first = rows(NOW);
    for (String broken : List.of("", "{\"basis\": 3", "{\"basis\":\"x\",\"rows\":[{}]}")) {
      Files.writeString(kept, broken);
      assertThat(rows(NOW)).as(broken).isEqualTo(first);
    }
  }
}
