package faintwind.job.lesson;

import faintwind.files.AtomicFile;
import faintwind.files.lesson.ClassFile;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.guide.lesson.SchoolClass.Teacher;
import faintwind.job.record.AtInstrument;
import faintwind.job.record.BeginInstrument;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Makes a class: a folder with {@code class.json}, the one design, and an instrument's folder for
 * each pair, begun by the teacher as one of a classroom.
 */
public final class MakeClass {
  private static final String STEP = "choose-use";
  private static final String DESIGN = "design.json";

  private final Clock clock;
  private final Messages words;

  public MakeClass(Clock clock, Messages words) {
    this.clock = clock;
    this.words = words;
  }

  /**
   * What is wanted.
   *
   * @param name of the class
   * @param purpose what it wants to find out
   * @param lessons their times
   * @param pairs a nickname each; empty where the number is enough
   * @param roles of a pair's members
   * @param design the one design, a file anywhere; it is copied
   * @param code the teacher's; empty where nothing is to be signed
   */
  public record Wish(
      String name,
      String purpose,
      List<Lesson> lessons,
      List<String> pairs,
      List<String> roles,
      Optional<Path> design,
      String code) {
    public Wish {
      lessons = List.copyOf(lessons);
      pairs = List.copyOf(pairs);
      roles = List.copyOf(roles);
    }
  }

  /**
   * Makes it. Where it is stopped half way, the same wish goes on: pairs that are there are kept.
   * What is refused leaves nothing behind.
   *
   * @return refused where there is a class already, the design is wrong or the code too short
   * @throws IOException where the disk or a permission fails
   */
  public Checked<SchoolClass> make(Path folder, Wish wish) throws IOException {
    Where where = Where.file(folder.toString());
    if (Files.exists(folder.resolve(ClassFile.NAME))) {
      return Checked.refused(Problem.error("class.there-already", where, folder.toString()));
    }
    if (!wish.code().isEmpty() && wish.code().length() < TeacherCode.LEAST_LETTERS) {
      return Checked.refused(
          Problem.error(
              "class.short-code", Where.NOWHERE, String.valueOf(TeacherCode.LEAST_LETTERS)));
    }
    List<Pair> pairs = new ArrayList<>();
    for (int i = 1; i <= wish.pairs().size(); i++) {
      Pair pair = new Pair(i, String.format(Locale.ROOT, "pair-%02d", i), wish.pairs().get(i - 1));
      List<Problem> problems = begin(folder, pair, wish);
      if (!problems.isEmpty()) {
        return Checked.refused(problems);
      }
      pairs.add(pair);
    }
    Optional<String> design = wish.design().map(given -> DESIGN);
    if (wish.design().isPresent()) {
      AtomicFile.write(folder.resolve(DESIGN), Files.readAllBytes(wish.design().get()));
    }
    Optional<Teacher> teacher =
        wish.code().isEmpty()
            ? Optional.empty()
            : Optional.of(TeacherCode.of(teacherName(), wish.code()));
    SchoolClass made =
        new SchoolClass(
            wish.name(), wish.purpose(), wish.lessons(), pairs, wish.roles(), design, teacher);
    ClassFile.write(folder, made);
    return Checked.ok(made);
  }

  private String teacherName() {
    return words.text("class.teacher");
  }

  /** A role a member; where no roles are given, nothing is known of how many there are. */
  private static Optional<Integer> members(Wish wish) {
    return Optional.of(wish.roles().size()).filter(roles -> roles > 1);
  }

  private List<Problem> begin(Path folder, Pair pair, Wish wish) throws IOException {
    Path instrument = folder.resolve(pair.folder());
    if (AtInstrument.is(instrument)) {
      return List.of();
    }
    String name = new ClassWords(words).label(pair);
    Checked<Path> begun =
        new BeginInstrument(clock, teacherName(), members(wish))
            .begin(instrument, Optional.of(name), wish.design());
    if (!begun.isOk()) {
      return begun.problems();
    }
    Checked<JournalEntry> answered =
        new AtInstrument(instrument, clock, teacherName())
            .work((view, enter) -> enter.answer(STEP, "group", "yes"));
    return answered.isOk() ? List.of() : answered.problems();
  }
}
