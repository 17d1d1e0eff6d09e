package faintwind.command.lesson;

import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.job.lesson.ClassPart;
import faintwind.job.lesson.ClassRules;
import faintwind.job.lesson.MakeClass;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What a class is made of, on the command line. */
final class CreateOptions {
  @Parameters(index = "0", paramLabel = "FOLDER", descriptionKey = "faintwind.class.folder")
  private Path folder = Path.of("");

  @Option(names = "--name", paramLabel = "NAME", descriptionKey = "faintwind.class.name")
  private @Nullable String name;

  @Option(names = "--purpose", paramLabel = "TEXT", descriptionKey = "faintwind.class.purpose")
  private String purpose = "";

  @Option(
      names = "--pairs",
      required = true,
      paramLabel = "N",
      descriptionKey = "faintwind.class.pairs")
  private int pairs;

  @Option(names = "--nickname", paramLabel = "WORD", descriptionKey = "faintwind.class.nickname")
  private List<String> nicknames = List.of();

  @Option(names = "--design", paramLabel = "DESIGN.json", descriptionKey = "faintwind.class.design")
  private @Nullable Path design;

  @Option(
      names = "--lesson",
      paramLabel = "TIME/MINUTES",
      descriptionKey = "faintwind.class.lessons")
  private List<String> lessons = List.of();

  @Option(names = "--role", paramLabel = "TEXT", descriptionKey = "faintwind.class.role")
  private List<String> roles = List.of();

  @Option(names = "--code", paramLabel = "CODE", descriptionKey = "faintwind.class.code")
  private @Nullable String code;

  Path folder() {
    return folder;
  }

  /** What is wanted; refused with all that is not understood. */
  Checked<MakeClass.Wish> wish(Messages words) {
    List<Problem> problems = new ArrayList<>();
    Checked<List<String>> called =
        ClassRules.whole(ClassRules.PAIRS, String.valueOf(pairs), ClassPart.PAIRS)
            .then(count -> ClassRules.called(nicknames, count));
    problems.addAll(called.problems());
    List<Lesson> times = new ArrayList<>();
    for (String text : lessons) {
      Checked<Lesson> read = lesson(text, words);
      problems.addAll(read.problems());
      read.map(times::add);
    }
    Optional.ofNullable(code)
        .filter(String::isEmpty) // which would be a class without one
        .flatMap(ClassRules::neededCode)
        .ifPresent(problems::add);
    String signing = code == null ? "" : code;
    Path last = folder.toAbsolutePath().normalize().getFileName();
    String title = name == null ? String.valueOf(last) : name;
    return problems.isEmpty()
        ? called.map(
            each ->
                new MakeClass.Wish(
                    title, purpose, times, each, roles, Optional.ofNullable(design), signing))
        : Checked.refused(problems);
  }

  private static Checked<Lesson> lesson(String text, Messages words) {
    String[] parts = text.split("/", -1);
    return parts.length == 2
        ? ClassRules.lesson(parts[0], parts[1], words)
        : Checked.refused(Problem.error("class.bad-lesson", Where.NOWHERE, text));
  }
}
