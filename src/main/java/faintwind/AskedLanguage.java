package faintwind;

import faintwind.job.language.Spoken;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
    return value(LANGUAGE).map(code -> Spoken.in(code, folder()));
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
