package faintwind.job.lesson;

import faintwind.files.FolderPrint;
import faintwind.files.instrument.WriterLock;
import faintwind.files.lesson.ClassFile;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.job.bench.BenchFolder;
import faintwind.job.bench.ReadBench;
import faintwind.job.bench.ReadBench.Looked;
import faintwind.job.lesson.PairLook.Known;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Looks at the folder of a class, again and again: only what changed since is read anew. A pair's
 * folder that is broken, newer, missing or copied twice is a row with its reason; one that vanished
 * keeps what it told last.
 */
public final class LookAtClass {
  private final Path folder;
  private final Messages words;
  private final ClassWords names;
  private final ReadBench bench;
  private final Map<String, Kept> kept = new ConcurrentHashMap<>();

  /** What a folder told, for as long as nothing in it changes and no clock or date passes. */
  private record Kept(String print, Optional<OffsetDateTime> until, Known known) {
    boolean holds(String nowPrint, OffsetDateTime now) {
      return print.equals(nowPrint) && until.filter(u -> !u.isAfter(now)).isEmpty();
    }
  }

  public LookAtClass(Path folder, Messages words) {
    this.folder = folder;
    this.words = words;
    names = new ClassWords(words);
    bench = new ReadBench(words);
  }

  /** Whether a folder is that of a class. */
  public static boolean is(Path folder) {
    return Files.isRegularFile(folder.resolve(ClassFile.NAME));
  }

  /**
   * The class now.
   *
   * @return refused where the file of the class cannot be used
   * @throws IOException where the class folder itself cannot be read
   */
  public Checked<ClassLook> look(OffsetDateTime now) throws IOException {
    Checked<SchoolClass> read = ClassFile.read(folder);
    if (!(read instanceof Checked.Ok<SchoolClass> ok)) {
      return Checked.refused(read.problems());
    }
    String shared = shared();
    List<PairLook> pairs =
        ok.value().pairs().parallelStream().map(pair -> look(pair, shared, now)).toList();
    return Checked.ok(
        new ClassLook(ok.value(), withCopies(pairs, strangers(ok.value(), shared, now)), now));
  }

  /** What every pair's checklist and meters depend on beside its own folder. */
  private String shared() throws IOException {
    return FolderPrint.of(folder.resolve("checklist")) + FolderPrint.of(folder.resolve("meters"));
  }

  private PairLook look(Pair pair, String shared, OffsetDateTime now) {
    Path instrument = folder.resolve(pair.folder());
    String label = names.label(pair);
    Optional<Known> before = Optional.ofNullable(kept.get(pair.folder())).map(Kept::known);
    if (!BenchFolder.isInstrument(instrument)) {
      String gone = words.text(before.isPresent() ? "class.gone" : "class.missing", pair.folder());
      return new PairLook(pair, label, Optional.of(gone), Optional.empty(), before);
    }
    try {
      Checked<Known> known = known(pair.folder(), instrument, shared, now);
      Optional<String> openAt = WriterLock.heldBy(instrument);
      return known.fold(
          (now1, notes) -> new PairLook(pair, label, broken(now1), openAt, Optional.of(now1)),
          problems -> new PairLook(pair, label, Optional.of(sentences(problems)), openAt, before));
    } catch (IOException | UncheckedIOException vanished) {
      String gone = words.text("class.unreadable", String.valueOf(vanished.getMessage()));
      return new PairLook(pair, label, Optional.of(gone), Optional.empty(), before);
    }
  }

  /** A folder that can only be read tells why; entries of a newer program are among the reasons. */
  private Optional<String> broken(Known known) {
    return known.looked().view().writable()
        ? Optional.empty()
        : Optional.of(
            sentences(known.looked().view().problems().stream().filter(Problem::isError).toList()));
  }

  private String sentences(List<Problem> problems) {
    return problems.stream().map(words::line).collect(Collectors.joining(" "));
  }

  private Checked<Known> known(String name, Path instrument, String shared, OffsetDateTime now)
      throws IOException {
    String print = FolderPrint.of(instrument) + shared;
    Kept before = kept.get(name);
    if (before != null && before.holds(print, now)) {
      return Checked.ok(before.known());
    }
    Checked<Looked> looked = bench.look(instrument, now);
    if (!(looked instanceof Checked.Ok<Looked> ok)) {
      return Checked.refused(looked.problems());
    }
    Known known = PairNumbers.known(ok.value(), now);
    kept.put(name, new Kept(print, ok.value().row().until(), known));
    return Checked.ok(known);
  }

  /** Instruments in the class folder that no pair has. */
  private List<PairLook> strangers(SchoolClass it, String shared, OffsetDateTime now)
      throws IOException {
    Set<String> own = it.pairs().stream().map(Pair::folder).collect(Collectors.toSet());
    List<PairLook> strangers = new ArrayList<>();
    for (Path path : BenchFolder.instruments(folder)) {
      String name = String.valueOf(path.getFileName());
      if (!own.contains(name)) {
        PairLook look = look(new Pair(0, name, ""), shared, now);
        String why = look.trouble().orElse(words.text("class.stranger"));
        strangers.add(
            new PairLook(look.pair(), name, Optional.of(why), look.openAt(), look.known()));
      }
    }
    return strangers;
  }

  /** Of two folders with the same beginning one is a copy: both are told, and neither is judged. */
  private List<PairLook> withCopies(List<PairLook> pairs, List<PairLook> strangers) {
    Map<String, List<PairLook>> byOrigin = new HashMap<>();
    List<PairLook> all = Stream.concat(pairs.stream(), strangers.stream()).toList();
    for (PairLook pair : all) {
      pair.known()
          .ifPresent(k -> byOrigin.computeIfAbsent(k.origin(), o -> new ArrayList<>()).add(pair));
    }
    return all.stream().map(pair -> told(pair, byOrigin)).toList();
  }

  private PairLook told(PairLook pair, Map<String, List<PairLook>> byOrigin) {
    List<String> others =
        pair
            .known()
            .map(known -> Objects.requireNonNull(byOrigin.get(known.origin())))
            .orElse(List.of())
            .stream()
            .filter(other -> !other.equals(pair))
            .map(other -> other.pair().folder())
            .toList();
    boolean original =
        pair.pair().number() > 0 && others.stream().allMatch(o -> isStranger(o, byOrigin));
    return others.isEmpty() || original
        ? pair
        : new PairLook(
            pair.pair(),
            pair.label(),
            Optional.of(words.text("class.copy", String.join(", ", others))),
            pair.openAt(),
            pair.known());
  }

  private static boolean isStranger(String folder, Map<String, List<PairLook>> byOrigin) {
    return byOrigin.values().stream()
        .flatMap(List::stream)
        .anyMatch(p -> p.pair().folder().equals(folder) && p.pair().number() == 0);
  }
}
