package faintwind.job.lesson;

import faintwind.files.AtomicFile;
import faintwind.files.lesson.ClassFile;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.guide.lesson.SchoolClass.Teacher;
import faintwind.job.JobWatch;
import faintwind.job.record.AtInstrument;
import faintwind.job.record.BeginInstrument;
import faintwind.job.record.Enter;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.DesignChosen;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes a class: a folder with {@code class.json}, the one design, and an instrument's folder for
 * each pair, begun by the teacher as one of a classroom.
 */
public final class MakeClass {
  private static final String STEP = "choose-use";
  private static final String QUESTION = "group";
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
   * @param design the one design: a file anywhere, which is copied, or the folder of an instrument
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

  /** The same as {@link #make(Path, Wish, JobWatch)}, which nobody watches. */
  public Checked<SchoolClass> make(Path folder, Wish wish) throws IOException {
    return make(folder, wish, JobWatch.NOBODY);
  }

  /**
   * Makes it. Where it is stopped half way, the same wish goes on: pairs that are there are kept.
   * What is refused leaves nothing behind.
   *
   * @return refused where there is a class already, or something of the wish is wrong
   * @throws IOException where the disk or a permission fails
   */
  public Checked<SchoolClass> make(Path folder, Wish wish, JobWatch watch) throws IOException {
    List<Problem> problems = new ArrayList<>(problems(wish));
    trouble(folder).ifPresent(problems::add);
    List<Pair> pairs = PairPlaces.pairs(wish.pairs());
    problems.addAll(PairPlaces.taken(folder, pairs, teacherName()));
    Optional<String> design = Optional.empty();
    if (wish.design().isPresent()) {
      Checked<String> read = OneDesign.text(wish.design().get());
      design = read.fold((text, notes) -> Optional.of(text), refused -> Optional.empty());
      problems.addAll(read.isOk() ? List.of() : read.problems());
    }
    return problems.isEmpty() ? make(folder, wish, design, watch) : Checked.refused(problems);
  }

  /** What is odd about a class that was made: lessons far away, folders that no pair has. */
  private List<Problem> notes(Path folder, SchoolClass made) throws IOException {
    List<Problem> notes = new ArrayList<>(ClassRules.far(made.lessons(), clock, words));
    notes.addAll(PairPlaces.left(folder, made.pairs()));
    return notes;
  }

  /** All that is wrong with a wish by itself, whatever is on the disk. */
  private List<Problem> problems(Wish wish) {
    List<Problem> problems = new ArrayList<>();
    ClassRules.name(wish.name()).ifPresent(problems::add);
    String pairs = String.valueOf(wish.pairs().size());
    problems.addAll(ClassRules.whole(ClassRules.PAIRS, pairs, ClassPart.PAIRS).problems());
    problems.addAll(ClassRules.called(wish.pairs(), wish.pairs().size()).problems());
    problems.addAll(ClassRules.lessons(wish.lessons(), words));
    ClassRules.roles(wish.roles()).ifPresent(problems::add);
    ClassRules.code(wish.code()).ifPresent(problems::add);
    return problems;
  }

  /** Why no class can be made in a folder; empty where one can. */
  private static Optional<Problem> trouble(Path folder) {
    Where where = ClassPart.FOLDER.where();
    if (Files.exists(folder.resolve(ClassFile.NAME))) {
      return Optional.of(Problem.error("class.there-already", where, folder.toString()));
    }
    return AtInstrument.is(folder)
        ? Optional.of(Problem.error("class.in-instrument", where, folder.toString()))
        : Optional.empty();
  }

  private Checked<SchoolClass> make(Path folder, Wish wish, Optional<String> design, JobWatch watch)
      throws IOException {
    List<Pair> pairs = PairPlaces.pairs(wish.pairs());
    int all = pairs.size();
    for (Pair pair : pairs) {
      int before = pair.number() - 1;
      watch.progress("class-pairs", before, all);
      if (watch.cancelled()) {
        String done = String.valueOf(before);
        Where where = ClassPart.FOLDER.where();
        return Checked.refused(Problem.error("class.half-made", where, done, String.valueOf(all)));
      }
      List<Problem> problems = begin(folder, pair, wish, design);
      if (!problems.isEmpty()) {
        return Checked.refused(problems);
      }
    }
    if (design.isPresent()) {
      AtomicFile.write(folder.resolve(DESIGN), design.get().getBytes(StandardCharsets.UTF_8));
    }
    Optional<Teacher> teacher =
        wish.code().isEmpty()
            ? Optional.empty()
            : Optional.of(TeacherCode.of(teacherName(), wish.code()));
    SchoolClass made =
        new SchoolClass(
            wish.name(),
            wish.purpose(),
            ClassRules.inOrder(wish.lessons()),
            pairs,
            wish.roles(),
            design.map(text -> DESIGN),
            teacher);
    ClassFile.write(folder, made);
    return Checked.ok(made, notes(folder, made));
  }

  private String teacherName() {
    return words.text("class.teacher");
  }

  /** A role a member; where no roles are given, nothing is known of how many there are. */
  private static Optional<Integer> members(Wish wish) {
    return Optional.of(wish.roles().size()).filter(roles -> roles > 1);
  }

  /** Begins a pair's instrument, or goes on where it was stopped before. */
  private List<Problem> begin(Path folder, Pair pair, Wish wish, Optional<String> design)
      throws IOException {
    Path instrument = folder.resolve(pair.folder());
    if (!AtInstrument.is(instrument)) {
      String name = new ClassWords(words).label(pair);
      Checked<Path> begun =
          new BeginInstrument(clock, teacherName(), members(wish))
              .begin(instrument, Optional.of(name), Optional.empty());
      if (!begun.isOk()) {
        return begun.problems();
      }
    }
    Checked<Boolean> done =
        new AtInstrument(instrument, clock, teacherName())
            .work((view, enter) -> complete(view.state(), enter, design));
    return done.isOk() ? List.of() : done.problems();
  }

  private static Checked<Boolean> complete(
      InstrumentState state, Enter enter, Optional<String> design) throws IOException {
    List<Problem> problems = new ArrayList<>();
    if (design.isPresent() && state.designJson().isEmpty()) {
      DesignChosen first = new DesignChosen(design.get(), "first design");
      problems.addAll(refusal(enter.plain(Optional.empty(), first)));
    }
    if (state.answer(STEP, QUESTION).isEmpty()) {
      problems.addAll(refusal(enter.answer(STEP, QUESTION, "yes")));
    }
    return problems.isEmpty() ? Checked.ok(true) : Checked.refused(problems);
  }

  private static List<Problem> refusal(Checked<JournalEntry> entered) {
    return entered.isOk() ? List.of() : entered.problems();
  }
}
