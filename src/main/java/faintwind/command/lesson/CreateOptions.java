package faintwind.command.lesson;

import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.job.lesson.MakeClass;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What a class is made of, on the command line. */
final class CreateOptions {
  private static final int MOST_PAIRS = 100;
  private static final int MOST_min = 600;

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
  private String code = "";

  Path folder() {
    return folder;
  }

  /** What is wanted; refused with every time that is none. */
  Checked<MakeClass.Wish> wish() {
    List<Problem> problems = new ArrayList<>();
    if (pairs < 1 || pairs > MOST_PAIRS) {
      problems.add(
          Problem.error(
              "class.bad-number",
              Where.NOWHERE,
              String.valueOf(pairs),
              String.valueOf(MOST_PAIRS)));
    }
    List<Lesson> times = new ArrayList<>();
    for (String text : lessons) {
      lesson(text)
          .ifPresentOrElse(
              times::add,
              () -> problems.add(Problem.error("class.bad-lesson", Where.NOWHERE, text)));
    }
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    List<String> called = new ArrayList<>();
    for (int i = 0; i < pairs; i++) {
      called.add(i < nicknames.size() ? nicknames.get(i) : "");
    }
    Path last = folder.toAbsolutePath().normalize().getFileName();
    String title = name == null ? String.valueOf(last) : name;
    return Checked.ok(
        new MakeClass.Wish(
            title, purpose, times, called, roles, Optional.ofNullable(design), code));
  }

  private static Optional<Lesson> lesson(String text) {
    String[] parts = text.split("/", -1);
    try {
      int minutes = parts.length == 2 ? Integer.parseInt(parts[1]) : 0;
      return minutes > 0 && minutes <= MOST_min
          ? Optional.of(new Lesson(LocalDateTime.parse(parts[0]), minutes))
          : Optional.empty();
    } catch (DateTimeException | NumberFormatException none) {
      return Optional.empty();
    }
  }
}
