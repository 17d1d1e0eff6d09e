package faintwind.job.lesson;

import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Classroom;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What a class may be made of. The command line and the window judge by this alone. */
public final class ClassRules {
  /** How many pairs a class can have. */
  public static final Field PAIRS = Field.whole("class.pairs", 1, 30).needed();

  /** How long a lesson is. */
  public static final Field MINUTES = Field.whole("class.lesson-min", 1, 600).needed();

  /** How many lessons are written down at once. */
  public static final Field LESSONS = Field.whole("class.lesson-count", 1, 60).needed();

  private static final int YEARS_AHEAD = 5;

  private ClassRules() {}

  /** A whole number as it was typed. */
  public static Checked<Integer> whole(Field field, String typed, ClassPart part) {
    String text = typed.strip();
    return field
        .trouble(text, part.where())
        .map(Checked::<Integer>refused)
        .orElseGet(() -> Checked.ok((int) Double.parseDouble(text)));
  }

  /** When a lesson begins, as it was typed. */
  public static Checked<LocalDateTime> begin(String typed, Messages words) {
    Optional<LocalDateTime> read = DateText.read(words, typed);
    return read.isPresent()
        ? Checked.ok(read.get())
        : Checked.refused(Problem.error("class.no-day", ClassPart.LESSONS.where(), typed.strip()));
  }

  /** A lesson by what was typed of it. */
  public static Checked<Lesson> lesson(String at, String minutes, Messages words) {
    return begin(at, words)
        .then(
            begins ->
                whole(MINUTES, minutes, ClassPart.LESSONS).map(long_ -> new Lesson(begins, long_)));
  }

  /** What each pair is called: its nickname, or nothing. */
  public static Checked<List<String>> called(List<String> nicknames, int pairs) {
    if (nicknames.size() > pairs) {
      return Checked.refused(
          Problem.error(
              "class.more-nicknames",
              ClassPart.NICKNAMES.where(),
              String.valueOf(nicknames.size()),
              String.valueOf(pairs)));
    }
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < nicknames.size(); i++) {
      String name = nicknames.get(i);
      if (name.codePoints().anyMatch(Character::isISOControl)) {
        problems.add(nickname("class.nickname-control", name.replaceAll("\\p{Cntrl}", "�")));
      } else if (!name.isBlank()
          && nicknames.subList(0, i).stream().anyMatch(one -> Classroom.isSame(one, name))) {
        problems.add(nickname("class.nickname-twice", name.strip()));
      }
    }
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    List<String> called = new ArrayList<>(nicknames);
    while (called.size() < pairs) {
      called.add("");
    }
    return Checked.ok(called);
  }

  private static Problem nickname(String id, String name) {
    return Problem.error(id, ClassPart.NICKNAMES.where(), name);
  }

  /** What is wrong with the name of a class. */
  public static Optional<Problem> name(String typed) {
    return typed.isBlank()
        ? Optional.of(Problem.error("class.no-name", ClassPart.NAME.where(), ""))
        : Optional.empty();
  }

  /** What is wrong with the roles in a pair. */
  public static Optional<Problem> roles(List<String> roles) {
    return roles.stream().anyMatch(String::isBlank)
        ? Optional.of(Problem.error("class.empty-role", ClassPart.ROLES.where(), ""))
        : Optional.empty();
  }

  /** What is wrong with the teacher's code; an empty one signs nothing. */
  public static Optional<Problem> code(String code) {
    return code.isEmpty() ? Optional.empty() : neededCode(code);
  }

  /** What is wrong with a code that is to sign; spaces at its ends are no letters of it. */
  public static Optional<Problem> neededCode(String code) {
    return code.strip().length() < TeacherCode.LEAST_LETTERS
        ? Optional.of(
            Problem.error(
                "class.short-code",
                ClassPart.CODE.where(),
                String.valueOf(TeacherCode.LEAST_LETTERS)))
        : Optional.empty();
  }

  /** What is wrong with lessons: one begins before another ends. */
  public static List<Problem> lessons(List<Lesson> lessons, Messages words) {
    List<Lesson> ordered = inOrder(lessons);
    List<Problem> problems = new ArrayList<>();
    for (int i = 1; i < ordered.size(); i++) {
      if (ordered.get(i).at().isBefore(ordered.get(i - 1).end())) {
        problems.add(
            Problem.error(
                "class.lessons-meet",
                ClassPart.LESSONS.where(),
                DateText.minute(words, ordered.get(i).at()),
                DateText.minute(words, ordered.get(i - 1).end())));
      }
    }
    return problems;
  }

  /** Lessons so far away that the year may be a slip; they can be meant. Own choice. */
  public static List<Problem> far(List<Lesson> lessons, Clock clock, Messages words) {
    LocalDateTime now = LocalDateTime.now(clock);
    return lessons.stream()
        .map(Lesson::at)
        .filter(at -> at.isBefore(now.minusYears(1)) || at.isAfter(now.plusYears(YEARS_AHEAD)))
        .map(
            at ->
                Problem.warning(
                    "class.lesson-far", ClassPart.LESSONS.where(), DateText.minute(words, at)))
        .toList();
  }

  /** Lessons in the order of time. */
  public static List<Lesson> inOrder(List<Lesson> lessons) {
    return lessons.stream().sorted(Comparator.comparing(Lesson::at)).toList();
  }
}
