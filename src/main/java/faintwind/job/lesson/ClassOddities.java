package faintwind.job.lesson;

import faintwind.guide.checklist.OwnFile;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.job.lesson.PairLook.Known;
import faintwind.message.Messages;
import faintwind.record.InstrumentState;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is odd about a class and stops nobody: swapped folders, files that are gone or not used. */
final class ClassOddities {
  private final Messages words;
  private final ClassWords names;

  ClassOddities(Messages words) {
    this.words = words;
    names = new ClassWords(words);
  }

  /** What is odd about the instrument in the place of a pair. */
  List<String> ofPair(SchoolClass it, Pair pair, Known known) {
    if (pair.number() == 0) {
      return List.of();
    }
    InstrumentState state = known.looked().view().state();
    String name = state.name().orElse("");
    if (state.teacher().isEmpty()) {
      return List.of(words.text("class.not-begun", name));
    }
    boolean own = names.label(pair).equals(name);
    boolean others =
        it.pairs().stream()
            .filter(other -> other.number() != pair.number())
            .anyMatch(other -> names.label(other).equals(name));
    return others && !own ? List.of(words.text("class.swapped", name)) : List.of();
  }

  /** Files of the class that are gone or not used, a row each. */
  List<PairLook> files(Path folder, SchoolClass it, List<PairLook> pairs) {
    List<PairLook> rows = new ArrayList<>();
    it.design()
        .filter(file -> !Files.isRegularFile(folder.resolve(file)))
        .ifPresent(file -> rows.add(row(file, words.text("class.design-gone"))));
    Map<String, String> refused = new LinkedHashMap<>();
    for (PairLook pair : pairs) {
      pair.known().stream()
          .flatMap(known -> known.looked().view().checklist().ownFiles().stream())
          .filter(file -> !file.refused().isEmpty())
          .forEach(file -> refused.putIfAbsent(file.file(), why(file)));
    }
    refused.forEach((file, why) -> rows.add(row("checklist/" + file, why)));
    return rows;
  }

  private String why(OwnFile file) {
    return words.text("class.step-unused", words.lines(file.refused()));
  }

  private static PairLook row(String file, String why) {
    return new PairLook(new Pair(0, file, ""), file, Optional.of(why), List.of(), Optional.empty());
  }
}
