package faintwind.job.language;

import faintwind.files.language.LanguageFolders;
import faintwind.job.World;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.message.Translation;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The words that the program speaks in.
 *
 * @param words English where the language asked for cannot be used
 * @param problems why it cannot
 */
public record Spoken(Messages words, List<Problem> problems) {
  private static final Messages ENGLISH = Messages.of(Locale.ENGLISH);

  /** A file of another version may differ in each of its lines. */
  private static final int MOST = 20;

  public Spoken {
    problems = List.copyOf(problems);
  }

  /**
   * The words of a language that a person asked for.
   *
   * @param code of the language, such as {@code de}, which also serves {@code de-AT}
   * @param own folder of the person's instruments, whose {@code lang/} comes first
   */
  public static Spoken in(String code, Path own) {
    try {
      LanguageFolders folders = new LanguageFolders(own);
      boolean plain = folders.known(code).isEmpty();
      String language = Locale.forLanguageTag(code).getLanguage();
      return plain && language.equals(Locale.ENGLISH.getLanguage())
          ? new Spoken(ENGLISH, List.of())
          : of(code, folders.read(code));
    } catch (IOException world) {
      return new Spoken(ENGLISH, List.of(World.problem(world)));
    }
  }

  /** Whether a folder of instruments has a file of its own for a language. */
  public static boolean isIn(Path own, String code) {
    try {
      return new LanguageFolders(own).hasOwn(code);
    } catch (IOException unreadable) {
      return false; // whatever the command does with the folder tells of it
    }
  }

  /** The same where nobody asked: the system's language where there is one for it. */
  public static Spoken bySystem(Locale system, Path own) {
    if (system.getLanguage().equals(Locale.ENGLISH.getLanguage())) {
      return new Spoken(ENGLISH, List.of());
    }
    NavigableSet<String> known = known(own);
    return List.of(system.toLanguageTag(), system.getLanguage()).stream()
        .filter(known::contains)
        .findFirst()
        .map(code -> in(code, own))
        .orElse(new Spoken(ENGLISH, List.of()));
  }

  /** What a person asked for, else what was kept, else the system's. */
  public static Spoken of(Optional<String> asked, Locale system, Path own) {
    return asked
        .filter(code -> !code.isBlank())
        .map(code -> in(code, own))
        .orElseGet(() -> bySystem(system, own));
  }

  /** Codes of every language there is, English among them. */
  public static NavigableSet<String> known(Path own) {
    NavigableSet<String> codes = new TreeSet<>(List.of(Locale.ENGLISH.getLanguage()));
    try {
      codes.addAll(new LanguageFolders(own).codes());
    } catch (IOException unreadable) {
      return codes; // what cannot be listed cannot be chosen; opening the folder itself tells of it
    }
    return codes;
  }

  private static Spoken of(String code, Checked<Translation> read) {
    return read.fold(
        (translation, notes) -> new Spoken(Messages.in(translation), notes),
        problems -> {
          List<Problem> all = new ArrayList<>(problems.stream().limit(MOST).toList());
          if (problems.size() > MOST) {
            String more = String.valueOf(problems.size() - MOST);
            all.add(Problem.error("file.and-more", Where.NOWHERE, more));
          }
          if (problems.stream().noneMatch(p -> p.id().equals("language.unknown"))) {
            all.add(Problem.warning("language.not-used", Where.NOWHERE, code));
          }
          // the program goes on: nothing of it is an error
          return new Spoken(ENGLISH, all.stream().map(p -> p.as(Severity.WARNING)).toList());
        });
  }
}
