package faintwind.job.record;

import faintwind.files.instrument.ChainHeads;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import faintwind.files.instrument.PackFolder;
import faintwind.files.instrument.UnpackFolder;
import faintwind.files.instrument.UnpackFolder.Unpacked;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Hands an instrument over in one sealed file, and takes one in. */
public final class HandOver {
  private HandOver() {}

  /**
   * Packs an instrument.
   *
   * @return hash of the journal's last line, to be told to whoever takes it in; refused where the
   *     folder is not what its journal says, with all that is wrong, or the archive would lie in it
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<String> pack(Path folder, Path archive) throws IOException {
    if (!AtInstrument.is(folder)) {
      Where where = Where.file(folder.toString());
      return Checked.refused(Problem.error("folder.no-journal", where, folder.toString()));
    }
    if (archive.toAbsolutePath().normalize().startsWith(folder.toAbsolutePath().normalize())) {
      return Checked.refused(
          Problem.error("pack.inside", Where.file(archive.toString()), archive.toString()));
    }
    List<Problem> problems = new InstrumentFolder(folder).audit().problems();
    return problems.stream().anyMatch(Problem::isError)
        ? Checked.refused(problems)
        : Checked.ok(PackFolder.write(folder, archive), problems);
  }

  /**
   * What was taken in.
   *
   * @param folder where it lies now
   * @param head hash of its journal's last line
   */
  public record TakenIn(Path folder, String head) {}

  /**
   * Unpacks an archive into a folder of instruments, in a folder of its own: nothing that is there
   * is replaced.
   *
   * @return refused where the archive is not what was packed, or the very same is there already; a
   *     note where the same instrument is there with another journal
   * @throws IOException where the disk or a permission fails; then nothing stays
   */
  public static Checked<TakenIn> unpack(Path archive, Path into) throws IOException {
    if (!Files.isRegularFile(archive)) {
      Where where = Where.file(archive.toString());
      return Checked.refused(Problem.error("file.missing", where, archive.toString()));
    }
    Files.createDirectories(into);
    Checked<Unpacked> read = UnpackFolder.read(archive, into);
    if (!(read instanceof Checked.Ok<Unpacked> ok)) {
      return Checked.refused(read.problems());
    }
    Unpacked unpacked = ok.value();
    List<Problem> notes = new ArrayList<>();
    ChainHeads there = ChainHeads.of(Journal.in(unpacked.folder()));
    for (Path other : instruments(into, unpacked.folder())) {
      same(there, other).ifPresent(notes::add);
    }
    if (notes.stream().anyMatch(Problem::isError)) {
      UnpackFolder.delete(unpacked.folder());
      return Checked.refused(notes);
    }
    Path target = Workplace.freeFolder(into, unpacked.instrument());
    UnpackFolder.place(unpacked, target);
    return Checked.ok(new TakenIn(target, unpacked.head()), notes);
  }

  private static Optional<Problem> same(ChainHeads there, Path other) throws IOException {
    ChainHeads here = ChainHeads.of(Journal.in(other));
    if (!here.first().equals(there.first())) {
      return Optional.empty();
    }
    Where where = Where.file(other.toString());
    String name = String.valueOf(other.getFileName());
    if (here.last().equals(there.last())) {
      return Optional.of(Problem.error("unpack.there-already", where, name));
    }
    String id =
        there.has(here.last())
            ? "unpack.newer"
            : here.has(there.last()) ? "unpack.older" : "unpack.parted";
    return Optional.of(Problem.warning(id, where, name));
  }

  private static List<Path> instruments(Path into, Path but) throws IOException {
    try (Stream<Path> all = Files.list(into)) {
      return all.filter(AtInstrument::is).filter(path -> !path.equals(but)).sorted().toList();
    }
  }
}
