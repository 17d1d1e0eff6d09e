package faintwind.files.lesson;

import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.AtomicFile;
import faintwind.files.JsonFile;
import faintwind.files.JsonForm;
import faintwind.files.SchemaCheck;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code class.json} in the folder of a class, valid against {@code class.schema.json}. */
public final class ClassFile {
  /** Its name in the class folder. */
  public static final String NAME = "class.json";

  private static final JsonForm FORM = new JsonForm(Map.of());

  private ClassFile() {}

  private record Stored(
      String format,
      String name,
      String purpose,
      List<StoredLesson> lessons,
      List<Pair> pairs,
      List<String> roles,
      Optional<String> design,
      Optional<SchoolClass.Teacher> teacher) {}

  private record StoredLesson(String at, int minutes) {}

  /**
   * Reads the class of a folder; refused with all that is wrong.
   *
   * @throws IOException where it is there and cannot be read
   */
  public static Checked<SchoolClass> read(Path folder) throws IOException {
    return JsonFile.read(folder.resolve(NAME), NAME).then(ClassFile::of);
  }

  private static Checked<SchoolClass> of(ObjectNode node) {
    List<Problem> problems =
        new ArrayList<>(SchemaCheck.of("class").problems(node, Where.file(NAME)));
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    Stored stored = FORM.read(node, Stored.class);
    List<Lesson> lessons = new ArrayList<>();
    for (StoredLesson lesson : stored.lessons()) {
      try {
        lessons.add(new Lesson(LocalDateTime.parse(lesson.at()), lesson.minutes()));
      } catch (DateTimeException noDate) {
        problems.add(Problem.error("class.no-date", Where.file(NAME), lesson.at()));
      }
    }
    lessons.sort(Comparator.comparing(Lesson::at));
    Set<Object> seen = new HashSet<>();
    for (Pair pair : stored.pairs()) {
      if (!seen.add(pair.number()) || !seen.add(pair.folder())) {
        problems.add(
            Problem.error("class.pair-twice", Where.file(NAME), String.valueOf(pair.number())));
      }
    }
    return problems.isEmpty()
        ? Checked.ok(
            new SchoolClass(
                stored.name(),
                stored.purpose(),
                lessons,
                stored.pairs(),
                stored.roles(),
                stored.design(),
                stored.teacher()))
        : Checked.refused(problems);
  }

  /** Puts the class in its file's place, whole or not at all. */
  public static void write(Path folder, SchoolClass it) throws IOException {
    List<StoredLesson> lessons =
        it.lessons().stream().map(l -> new StoredLesson(l.at().toString(), l.minutes())).toList();
    Stored stored =
        new Stored(
            "faintwind-class/1",
            it.name(),
            it.purpose(),
            lessons,
            it.pairs(),
            it.roles(),
            it.design(),
            it.teacher());
    AtomicFile.write(folder.resolve(NAME), JsonForm.text(stored).getBytes(StandardCharsets.UTF_8));
  }
}
