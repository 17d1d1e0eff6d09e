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
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Standing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * Looks at the folder of a class, again and again: only what changed since is read anew. A pair's
 * folder that is broken, newer, missing or copied twice is a row with its reason; one that vanished
 * keeps what it told last.
 */
public final class LookAtClass {
  /** A clock may differ by less and nobody has to hear of it. */
  private static final Duration FAST = Duration.ofMinutes(5);

  /** From so many hours on a time is said in hours, from so many days on in days. */
  private static final int LONG = 3;

  private final Path folder;
  private final Messages words;
  private final ClassWords names;
  private final ReadBench bench;
  private final ClassOddities oddities;
  private final Map<String, Kept> kept = new ConcurrentHashMap<>();

  /** Folders that tell less than they should, as they are now. */
  private final Map<String, Kept> odd = new ConcurrentHashMap<>();

  private Optional<SchoolClass> last = Optional.empty();

  /**
   * What a folder told, for as long as nothing in it changes and no clock or date passes.
   *
   * @param seen when it last told it
   */
  private record Kept(
      String print, Optional<OffsetDateTime> until, Known known, OffsetDateTime seen) {
    boolean holds(String nowPrint, OffsetDateTime now) {
      return print.equals(nowPrint) && until.filter(u -> !u.isAfter(now)).isEmpty();
    }
  }

  /** One look: when, what pairs share, and the instruments there are by their folders' names. */
  private record Round(
      SchoolClass it, OffsetDateTime now, String shared, Map<String, Path> there) {}

  public LookAtClass(Path folder, Messages words) {
    this.folder = folder;
    this.words = words;
    names = new ClassWords(words);
    bench = new ReadBench(words);
    oddities = new ClassOddities(words);
  }

  /** Whether a folder is that of a class. */
  public static boolean is(Path folder) {
    return Files.isRegularFile(folder.resolve(ClassFile.NAME));
  }

  /**
   * The class now. Once it was seen, a class folder that drops off the network is no reason to
   * refuse: every pair is a row with what it told last, and comes back by itself.
   *
   * @return refused where the file of the class cannot be used and never could
   * @throws IOException where the class folder itself cannot be read and never could
   */
  public synchronized Checked<ClassLook> look(OffsetDateTime now) throws IOException {
    try {
      if (last.isEmpty() && Files.notExists(folder.resolve(ClassFile.NAME))) {
        return Checked.refused(PairPlaces.noClass(folder));
      }
      Checked<SchoolClass> read = ClassFile.read(folder);
      if (read instanceof Checked.Ok<SchoolClass> ok) {
        last = Optional.of(ok.value());
        return Checked.ok(look(ok.value(), now, Optional.empty()));
      }
      return last.isEmpty()
          ? Checked.refused(read.problems())
          : Checked.ok(look(last.get(), now, Optional.of(words.lines(read.problems()))));
    } catch (IOException | UncheckedIOException gone) {
      if (last.isEmpty()) {
        throw gone;
      }
      String why = words.text("class.unreadable", String.valueOf(gone.getMessage()));
      return Checked.ok(look(last.get(), now, Optional.of(why)));
    }
  }

  private ClassLook look(SchoolClass it, OffsetDateTime now, Optional<String> trouble) {
    Map<String, Path> there = new TreeMap<>();
    String shared = "";
    Optional<String> all = trouble;
    try {
      BenchFolder.instruments(folder).forEach(path -> there.put(plain(path), path));
      shared = FolderPrint.of(folder.resolve("checklist"));
      shared += FolderPrint.of(folder.resolve("meters"));
    } catch (IOException | UncheckedIOException gone) {
      there.clear();
      all = Optional.of(words.text("class.unreadable", String.valueOf(gone.getMessage())));
    }
    Round round = new Round(it, now, shared, there);
    List<PairLook> pairs = it.pairs().parallelStream().map(pair -> look(pair, round)).toList();
    List<PairLook> rows = new ArrayList<>(CopiedPairs.told(pairs, strangers(it, round), words));
    rows.addAll(all.isEmpty() ? oddities.files(folder, it, rows) : List.of());
    return new ClassLook(it, rows, now, all);
  }

  /** The name of a folder; some systems write an umlaut as two letters, others as one. */
  private static String plain(Path path) {
    return Normalizer.normalize(String.valueOf(path.getFileName()), Normalizer.Form.NFC);
  }

  private PairLook look(Pair pair, Round round) {
    String name = Normalizer.normalize(pair.folder(), Normalizer.Form.NFC);
    Optional<Kept> before = Optional.ofNullable(kept.get(name));
    Optional<Path> instrument = Optional.ofNullable(round.there().get(name));
    if (instrument.isEmpty()) {
      String why = words.text(before.isPresent() ? "class.gone" : "class.missing", pair.folder());
      return asBefore(pair, why, before, round);
    }
    try {
      Checked<Known> known = known(name, instrument.get(), round);
      if (!(known instanceof Checked.Ok<Known> ok)) {
        return asBefore(pair, words.lines(known.problems()), before, round);
      }
      boolean open = WriterLock.heldBy(instrument.get()).isPresent();
      Optional<String> trouble = broken(ok.value());
      // a journal only grows: one that is shorter is half copied, cut or an old one
      Optional<Kept> whole = before.filter(b -> lines(b.known()) > lines(ok.value()));
      return whole.isPresent()
          ? asBefore(pair, trouble.orElse(words.text("class.shorter")), whole, round)
          : new PairLook(
              pair,
              names.label(pair),
              trouble,
              remarks(pair, ok.value(), open, round),
              Optional.of(ok.value()));
    } catch (IOException | UncheckedIOException vanished) {
      String why = words.text("class.unreadable", String.valueOf(vanished.getMessage()));
      return asBefore(pair, why, before, round);
    }
  }

  /** A folder that tells nothing now: its row is the one of before, with the time of that. */
  private PairLook asBefore(Pair pair, String why, Optional<Kept> before, Round round) {
    String said =
        before
            .map(b -> DateText.near(words, b.seen(), round.now()))
            .map(seen -> why + " " + words.text("class.last-seen", seen))
            .orElse(why);
    return new PairLook(
        pair, names.label(pair), Optional.of(said), List.of(), before.map(Kept::known));
  }

  private String fast(Duration ahead) {
    if (ahead.toHours() < LONG) {
      return words.text("class.clock-fast", ahead.toMinutes());
    }
    return ahead.toDays() < LONG
        ? words.text("class.clock-fast-hours", ahead.toHours())
        : words.text("class.clock-fast-days", ahead.toDays());
  }

  /** What is odd and no trouble: it is open elsewhere; its clock is fast; it is another pair's. */
  private List<String> remarks(Pair pair, Known known, boolean open, Round round) {
    List<String> remarks = new ArrayList<>(oddities.ofPair(round.it(), pair, known));
    if (open) {
      remarks.add(words.text("class.open-at"));
    }
    List<? extends Standing<?>> lines = known.looked().view().state().lines();
    if (!lines.isEmpty()) {
      Duration ahead = Duration.between(round.now(), lines.get(lines.size() - 1).at());
      if (ahead.compareTo(FAST) > 0) {
        remarks.add(fast(ahead));
      }
    }
    return remarks;
  }

  private static int lines(Known known) {
    return known.looked().view().state().lines().size();
  }

  /** A folder that can only be read tells why; entries of a newer program are among the reasons. */
  private Optional<String> broken(Known known) {
    return known.looked().view().writable()
        ? Optional.empty()
        : Optional.of(
            words.lines(
                known.looked().view().problems().stream().filter(Problem::isError).toList()));
  }

  private Checked<Known> known(String name, Path instrument, Round round) throws IOException {
    String print = FolderPrint.of(instrument) + round.shared();
    Kept before = kept.get(name);
    if (before != null && before.holds(print, round.now())) {
      kept.put(name, new Kept(print, before.until(), before.known(), round.now()));
      return Checked.ok(before.known());
    }
    Kept same = odd.get(name);
    if (same != null && same.holds(print, round.now())) {
      return Checked.ok(same.known());
    }
    Checked<Looked> looked = bench.look(instrument, round.now());
    if (!(looked instanceof Checked.Ok<Looked> ok)) {
      return Checked.refused(looked.problems());
    }
    Known known = PairNumbers.known(ok.value(), round.now());
    boolean whole =
        broken(known).isEmpty() && (before == null || lines(before.known()) <= lines(known));
    Kept now = new Kept(print, ok.value().row().until(), known, round.now());
    (whole ? kept : odd).put(name, now);
    return Checked.ok(known);
  }

  /** Instruments in the class folder that no pair has. */
  private List<PairLook> strangers(SchoolClass it, Round round) {
    Set<String> own =
        it.pairs().stream()
            .map(pair -> Normalizer.normalize(pair.folder(), Normalizer.Form.NFC))
            .collect(Collectors.toSet());
    List<PairLook> strangers = new ArrayList<>();
    for (String name : round.there().keySet()) {
      if (!own.contains(name)) {
        PairLook look = look(new Pair(0, name, ""), round);
        String why = look.trouble().orElse(words.text("class.stranger"));
        strangers.add(
            new PairLook(look.pair(), name, Optional.of(why), look.remarks(), look.known()));
      }
    }
    return strangers;
  }
}
