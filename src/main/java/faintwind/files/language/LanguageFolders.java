package faintwind.files.language;

import faintwind.files.ShippedFolder;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.ProgramTexts;
import faintwind.message.Translation;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The languages of the program: a file {@code lang/CODE.json} beside a person's instruments, or
 * among the files of the program; the person's own first.
 *
 * @param own folder of the person's instruments; need not be there
 */
public record LanguageFolders(Path own) {
  private static final String FOLDER = "lang";
  private static final Pattern CODE = Pattern.compile("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*");

  /**
   * Codes of the languages there are besides English, in alphabetical order.
   *
   * @throws IOException where a folder cannot be listed
   */
  public NavigableSet<String> codes() throws IOException {
    NavigableSet<String> codes = new TreeSet<>(codes(own.resolve(FOLDER)));
    codes.addAll(ShippedFolder.with("assets", assets -> codes(assets.resolve(FOLDER))));
    return codes;
  }

  private static List<String> codes(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .map(LanguageFile::code)
          .filter(code -> CODE.matcher(code).matches())
          .toList();
    }
  }

  /**
   * The code of the file for a language, in whichever letters it was asked for (RFC 5646, 2.1.1);
   * that of the language alone where there is none for its region (RFC 4647, 3.4).
   */
  public Optional<String> known(String asked) throws IOException {
    return nearest(asked, codes());
  }

  /** Whether the person's own folder has a file for a language. */
  public boolean hasOwn(String asked) throws IOException {
    return nearest(asked, codes(own.resolve(FOLDER))).isPresent();
  }

  private static Optional<String> nearest(String asked, Collection<String> codes) {
    String wanted = asked;
    while (!wanted.isEmpty()) {
      String code = wanted;
      Optional<String> found = codes.stream().filter(code::equalsIgnoreCase).findFirst();
      if (found.isPresent()) {
        return found;
      }
      wanted = wanted.substring(0, Math.max(0, wanted.lastIndexOf('-')));
    }
    return Optional.empty();
  }

  /**
   * The texts of the program in a language.
   *
   * @return refused where there is no such language, or its file cannot be used; all reasons
   * @throws IOException where a file that is there cannot be read
   */
  public Checked<Translation> read(String asked) throws IOException {
    Optional<String> there = known(asked);
    if (there.isEmpty()) {
      String known = String.join(", ", codes());
      String looked = own.resolve(FOLDER).toString();
      return Checked.refused(
          Problem.error("language.unknown", Where.NOWHERE, asked, known, looked));
    }
    String code = there.get();
    Path file = own.resolve(FOLDER).resolve(code + ".json");
    if (Files.exists(file)) {
      return read(file, file.toString());
    }
    String shipped = FOLDER + "/" + code + ".json";
    return ShippedFolder.with("assets", assets -> read(assets.resolve(shipped), shipped));
  }

  private static Checked<Translation> read(Path file, String name) throws IOException {
    return LanguageFile.read(file, name)
        .then(
            translation -> {
              List<Problem> problems = ProgramTexts.problems(translation, name);
              return problems.isEmpty() ? Checked.ok(translation) : Checked.refused(problems);
            });
  }
}
