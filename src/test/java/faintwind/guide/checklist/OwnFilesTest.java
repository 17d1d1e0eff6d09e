package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.OwnFileNoted;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A teacher's own files over the shipped checklist, against what the journal knows of them. */
class OwnFilesTest {
  private static final String FILE = "04-assemble/coat-parts.json";

  private static Checklist over(OwnFile... files) {
    return ShippedChecklist.standard().withOwnFiles(List.of(files));
  }

  private static InstrumentState knowing(OwnFileNoted... notes) {
    List<JournalEntry> entries = new ArrayList<>();
    for (OwnFileNoted note : notes) {
      entries.add(
          new JournalEntry(
              "e" + entries.size(), SampleBuild.BEGIN, "Ada Test", Optional.empty(), note));
    }
    return InstrumentState.replay(entries);
  }

  private static OwnFile used(String sha256) {
    return new OwnFile(FILE, sha256, List.of());
  }

  @Test
  void aNewOrChangedFileIsNotedOnce() {
    OwnFileNoted noted = new OwnFileNoted(FILE, "1", "");
    assertThat(OwnFiles.toNote(over(used("1")), knowing())).containsExactly(noted);
    assertThat(OwnFiles.toNote(over(used("1")), knowing(noted))).isEmpty();
    assertThat(OwnFiles.toNote(over(used("2")), knowing(noted)))
        .containsExactly(new OwnFileNoted(FILE, "2", ""));
  }

  @Test
  void aFileThatIsGoneIsNotedOnce() {
    OwnFileNoted noted = new OwnFileNoted(FILE, "1", "");
    OwnFileNoted gone = new OwnFileNoted(FILE, "", "");
    assertThat(OwnFiles.toNote(over(), knowing(noted))).containsExactly(gone);
    assertThat(OwnFiles.toNote(over(), knowing(noted, gone))).isEmpty();
  }

  @Test
  void aRefusedFileIsNotedWithItsReasons() {
    Problem dropped = Problem.error("checklist.caution-dropped", Where.NOWHERE, "lead-hot");
    Problem bare = Problem.error("checklist.cycle", Where.NOWHERE, "");
    OwnFile refused = new OwnFile(FILE, "3", List.of(dropped, bare, dropped));
    assertThat(OwnFiles.toNote(over(refused), knowing()))
        .containsExactly(
            new OwnFileNoted(FILE, "3", "checklist.caution-dropped: lead-hot; checklist.cycle"));
  }
}
