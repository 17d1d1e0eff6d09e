package faintwind.job.record;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.design.Design;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** Begins an instrument in a folder that has none, and chooses designs. */
public final class BeginInstrument {
  private final Clock clock;
  private final String who;
  private final Optional<Integer> members;

  public BeginInstrument(Clock clock, String who) {
    this(clock, who, Optional.empty());
  }

  /** The same for so many who build it together; each of them reads every caution. */
  public BeginInstrument(Clock clock, String who, Optional<Integer> members) {
    this.clock = clock;
    this.who = who;
    this.members = members;
  }

  /**
   * Begins.
   *
   * @param name of the instrument; that of its design or of the folder where empty
   * @param design a design file
   * @return refused where there is an instrument already, or the design is wrong; then nothing is
   *     written
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Path> begin(Path folder, Optional<String> name, Optional<Path> design)
      throws IOException {
    Where where = Where.file(folder.toString());
    if (AtInstrument.is(folder)) {
      return Checked.refused(Problem.error("new.there-already", where, folder.toString()));
    }
    if (who.isBlank()) {
      return Checked.refused(Problem.error("enter.no-name", Where.NOWHERE, ""));
    }
    Optional<Checked<Design>> read =
        design.isEmpty()
            ? Optional.empty()
            : Optional.of(DesignFile.read(design.get(), Library.shipped()));
    if (read.isPresent() && !read.get().isOk()) {
      return Checked.refused(read.get().problems());
    }
    Path last = folder.toAbsolutePath().normalize().getFileName();
    String called =
        name.filter(text -> !text.isBlank())
            .or(
                () ->
                    read.flatMap(
                        r -> r.fold((d, n) -> Optional.of(d.name()), p -> Optional.empty())))
            .orElse(String.valueOf(last));
    Enter.begin(
        folder, new InstrumentCreated(called, false, members), clock, Enter.Person.named(who));
    if (design.isEmpty()) {
      return Checked.ok(folder);
    }
    return choose(folder, design.get(), "first design").map(entry -> folder);
  }

  /**
   * Chooses a design for an instrument that was begun.
   *
   * @param why the reason, which stands in the log
   * @throws IOException where the disk or a permission fails
   */
  public Checked<JournalEntry> choose(Path folder, Path design, String why) throws IOException {
    Checked<Design> read = DesignFile.read(design, Library.shipped());
    if (!read.isOk()) {
      return Checked.refused(read.problems());
    }
    String json = Files.readString(design);
    return new AtInstrument(folder, clock, who)
        .work((view, enter) -> enter.plain(Optional.empty(), new DesignChosen(json, why)));
  }
}
