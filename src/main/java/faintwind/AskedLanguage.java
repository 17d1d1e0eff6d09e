package faintwind;

import faintwind.job.bench.BenchFolder;
import faintwind.job.language.Spoken;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The language that a command line asks for, known before the command line is read: its own texts
 * are in that language.
 */
final class AskedLanguage {
  static final String LANGUAGE = "--language";
  static final String INSTRUMENTS = "--instruments";
  static final String OPEN = "--open";
  private static final Set<String> WINDOW = Set.of(LANGUAGE, INSTRUMENTS, OPEN);

  private final List<String> arguments;

  AskedLanguage(String... arguments) {
    List<String> all = Arrays.asList(arguments);
    int end = all.indexOf("--");
    this.arguments = List.copyOf(end < 0 ? all : all.subList(0, end));
  }

  /** Whether nothing is said but what the window is opened with. */
  static boolean asksForTheWindow(List<String> arguments) {
    boolean value = false;
    for (String word : arguments) {
      boolean option = WINDOW.contains(word);
      boolean whole = WINDOW.stream().anyMatch(name -> word.startsWith(name + "="));
      if (!option && !whole && (!value || word.startsWith("-"))) {
        return false;
      }
      value = option;
    }
    return true;
  }

  /** The words of the language asked for; empty where none is. */
  Optional<Spoken> spoken() {
    return value(LANGUAGE).map(code -> Spoken.in(code, folder(code)));
  }

  /**
   * The folder of instruments that the line names and that has the language, else the usual one.
   */
  private Path folder(String code) {
    return arguments.stream()
        .filter(word -> !word.startsWith("-"))
        .flatMap(AskedLanguage::named)
        .filter(folder -> Spoken.isIn(folder, code))
        .findFirst()
        .orElseGet(this::folder);
  }

  /** What a word names as a folder of instruments, or as one of them. */
  private static Stream<Path> named(String word) {
    try {
      Path folder = Path.of(word).toAbsolutePath().normalize();
      Stream<Path> beside = Stream.ofNullable(folder.getParent());
      return Files.isDirectory(folder) && BenchFolder.isInstrument(folder)
          ? beside
          : Stream.of(folder);
    } catch (InvalidPathException noPath) {
      return Stream.empty();
    }
  }

  /** Where the person's instruments are, and their languages beside them. */
  Path folder() {
    try {
      return value(INSTRUMENTS).map(Path::of).orElseGet(AskedLanguage::usualFolder);
    } catch (InvalidPathException noPath) {
      return usualFolder(); // the command line is refused for it
    }
  }

  static Path usualFolder() {
    return Path.of(System.getProperty("user.home"), "faintwind");
  }

  private Optional<String> value(String option) {
    for (int i = 0; i < arguments.size(); i++) {
      String word = arguments.get(i);
      if (word.startsWith(option + "=")) {
        return Optional.of(word.substring(option.length() + 1));
      }
      if (word.equals(option) && i + 1 < arguments.size()) {
        return Optional.of(arguments.get(i + 1));
      }
    }
    return Optional.empty();
  }
}
