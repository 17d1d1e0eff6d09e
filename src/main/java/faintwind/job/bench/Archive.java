package faintwind.job.bench;

import faintwind.job.record.AtInstrument;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event.Retired;
import faintwind.record.JournalEntry;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Takes instruments off the bench and brings them back. It is an entry of the journal, so that a
 * copy knows of it, too; bringing back strikes that entry through.
 */
public final class Archive {
  private final Messages words;
  private final Clock clock;
  private final String who;

  public Archive(Messages words, Clock clock, String who) {
    this.words = words;
    this.clock = clock;
    this.who = who;
  }

  /** Takes instruments off the bench; tells why not where one cannot be written. */
  public List<Problem> putAway(List<Path> instruments) throws IOException {
    List<Problem> problems = new ArrayList<>();
    for (Path instrument : instruments) {
      Retired retired = new Retired(words.text("bench-list.put-away"));
      Checked<JournalEntry> done =
          new AtInstrument(instrument, clock, who)
              .work((view, enter) -> enter.plain(Optional.empty(), retired));
      problems.addAll(done.isOk() ? List.of() : done.problems());
    }
    return problems;
  }

  /** Brings instruments back; tells why not where one cannot be written. */
  public List<Problem> bringBack(List<Path> instruments) throws IOException {
    String why = words.text("bench-list.brought-back");
    List<Problem> problems = new ArrayList<>();
    for (Path instrument : instruments) {
      Checked<Integer> done =
          new AtInstrument(instrument, clock, who)
              .work(
                  (view, enter) -> {
                    for (Standing<Retired> line : view.state().standing(Retired.class)) {
                      Checked<JournalEntry> struck =
                          enter.correct(line.entry(), why, Optional.empty());
                      if (!struck.isOk()) {
                        return Checked.refused(struck.problems());
                      }
                    }
                    return Checked.ok(0);
                  });
      problems.addAll(done.isOk() ? List.of() : done.problems());
    }
    return problems;
  }
}
