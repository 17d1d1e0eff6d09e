package faintwind.job.lesson;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.job.bench.BenchFolder;
import faintwind.job.record.AtInstrument;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Classroom;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Where the instruments of a class lie, and what lay there before. */
final class PairPlaces {
  private static final String BEGINNING = "pair-";

  private PairPlaces() {}

  /** The pairs of a class, each with its folder. */
  static List<Pair> pairs(List<String> called) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 1; i <= called.size(); i++) {
      String folder = String.format(Locale.ROOT, BEGINNING + "%02d", i);
      pairs.add(new Pair(i, folder, called.get(i - 1)));
    }
    return pairs;
  }

  /** Instruments in the pairs' places that somebody else than the teacher began. */
  static List<Problem> taken(Path folder, List<Pair> pairs, String teacher) throws IOException {
    List<Problem> problems = new ArrayList<>();
    for (Pair pair : pairs) {
      Path place = folder.resolve(pair.folder());
      if (AtInstrument.is(place)) {
        Optional<? extends Standing<?>> first =
            new InstrumentFolder(place).open().state().lines().stream().findFirst();
        first
            .map(Standing::who)
            .filter(who -> !Classroom.isSame(who, teacher))
            .map(
                who ->
                    Problem.error(
                        "class.place-taken", ClassPart.FOLDER.where(), pair.folder(), who))
            .ifPresent(problems::add);
      }
    }
    return problems;
  }

  /** Instruments in the folder that none of the pairs has, such as those of a larger class. */
  static List<Problem> left(Path folder, List<Pair> pairs) throws IOException {
    Set<String> own = pairs.stream().map(Pair::folder).collect(Collectors.toSet());
    List<String> left =
        BenchFolder.instruments(folder).stream()
            .map(path -> String.valueOf(path.getFileName()))
            .filter(name -> !own.contains(name))
            .toList();
    return left.isEmpty()
        ? List.of()
        : List.of(
            Problem.warning(
                "class.left-over",
                Where.file(folder.toString()),
                String.valueOf(left.size()),
                String.join(", ", left)));
  }

  /** Why a folder without a file of a class is none; a class that was made half way goes on. */
  static Problem noClass(Path folder) throws IOException {
    List<String> begun =
        BenchFolder.instruments(folder).stream()
            .map(path -> String.valueOf(path.getFileName()))
            .filter(name -> name.startsWith(BEGINNING))
            .toList();
    Where where = Where.file(folder.toString());
    if (!Files.isDirectory(folder)) {
      return Problem.error("world.missing", where, folder.toString());
    }
    return begun.isEmpty()
        ? Problem.error("class.none-here", where, folder.toString())
        : Problem.error("class.half-here", where, String.valueOf(begun.size()), folder.toString());
  }
}
