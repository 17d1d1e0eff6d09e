package faintwind.job.lesson;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.lesson.ClassFile;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.guide.lesson.SchoolClass.Teacher;
import faintwind.job.record.AtInstrument;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Gives a class a new code by the old one, or a first one where it has none. Where the old one is
 * forgotten, the teacher takes the key {@code teacher} out of {@code class.json} by hand.
 */
public final class NewCode {
  private final Path folder;
  private final Messages words;

  public NewCode(Path folder, Messages words) {
    this.folder = folder;
    this.words = words;
  }

  /**
   * Sets it.
   *
   * @param old the code until now; empty where there is none
   * @return the name that the teacher's entries have; refused where a code is wrong
   * @throws IOException where the disk or a permission fails
   */
  public Checked<String> set(String old, String code) throws IOException {
    Optional<Problem> trouble = ClassRules.neededCode(code);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    Checked<SchoolClass> read = ClassFile.read(folder);
    if (!(read instanceof Checked.Ok<SchoolClass> ok)) {
      return Checked.refused(read.problems());
    }
    SchoolClass it = ok.value();
    if (it.teacher().isPresent() && !TeacherCode.fits(it.teacher().get(), old)) {
      return Checked.refused(Problem.error("class.wrong-code", Where.NOWHERE, ""));
    }
    String name = it.teacher().isPresent() ? it.teacher().get().name() : teacher(it);
    Optional<Teacher> teacher = Optional.of(TeacherCode.of(name, code));
    ClassFile.write(
        folder,
        new SchoolClass(
            it.name(), it.purpose(), it.lessons(), it.pairs(), it.roles(), it.design(), teacher));
    return Checked.ok(name);
  }

  /** The teacher whom the pairs' journals know. */
  private String teacher(SchoolClass it) throws IOException {
    for (Pair pair : it.pairs()) {
      Path instrument = folder.resolve(pair.folder());
      if (AtInstrument.is(instrument)) {
        Optional<String> known = new InstrumentFolder(instrument).open().state().teacher();
        if (known.isPresent()) {
          return known.get();
        }
      }
    }
    return words.text("class.teacher");
  }
}
