package faintwind.job.lesson;

import faintwind.files.lesson.ClassFile;
import faintwind.guide.InForceGate;
import faintwind.guide.Waivers;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.guide.lesson.SchoolClass.Teacher;
import faintwind.job.record.AtInstrument;
import faintwind.job.record.Enter;
import faintwind.job.record.PutInForce;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.NoteWritten;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/**
 * The teacher signs something of a pair by the code: a doubtful reading that may count, a
 * calibration that counts though it does not meet the build, or that a step was looked at. The
 * entry says that it was signed by the code.
 */
public final class SignOff {
  private static final String STRIKE = "strike:";

  private final Path folder;
  private final Clock clock;
  private final Messages words;

  public SignOff(Path folder, Clock clock, Messages words) {
    this.folder = folder;
    this.clock = clock;
    this.words = words;
  }

  /**
   * What is signed.
   *
   * @param pair its number
   * @param step of which
   * @param what a reading, clock or {@code photo} that is waived, or {@code build-agreement:} and a
   *     calibration that is put in force, or {@code strike:} and an entry that is taken back; empty
   *     where the step was looked at
   * @param because why
   */
  public record Signed(int pair, String step, Optional<String> what, String because) {}

  /**
   * Signs.
   *
   * @return refused where the code is wrong, the pair unknown, or the rules of waivers say no
   * @throws IOException where the disk or a permission fails
   */
  public Checked<JournalEntry> sign(Signed signed, String code) throws IOException {
    List<Problem> problems = reason(signed);
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    String reason = words.text("class.signed", signed.because());
    return at(
        signed.pair(),
        code,
        (view, enter) -> {
          if (view.checklist().step(signed.step()).isEmpty()) {
            return Checked.refused(
                Problem.error("enter.unknown-step", Where.NOWHERE, signed.step()));
          }
          String what = signed.what().orElse("");
          if (what.startsWith(InForceGate.EXPLAINED)) {
            String file = what.substring(InForceGate.EXPLAINED.length());
            return new PutInForce(view, enter).explained(file, reason);
          }
          if (what.startsWith(STRIKE)) {
            return enter.correct(what.substring(STRIKE.length()), reason, Optional.empty());
          }
          return what.isEmpty()
              ? enter.plain(Optional.of(signed.step()), new NoteWritten(reason))
              : enter.waive(signed.step(), what, reason);
        });
  }

  /** What is wrong with the reason by itself: what the program adds to it is none. */
  private static List<Problem> reason(Signed signed) {
    if (signed.because().isBlank()) {
      return List.of(Problem.error("enter.no-reason", Where.NOWHERE, ""));
    }
    return signed.what().isEmpty() || Waivers.isReason(signed.because())
        ? List.of()
        : List.of(
            Problem.error(
                "waiver.no-reason", Where.NOWHERE, signed.because(), signed.what().get()));
  }

  private Checked<JournalEntry> at(int number, String code, AtInstrument.Work<JournalEntry> work)
      throws IOException {
    Checked<SchoolClass> read = ClassFile.read(folder);
    if (!(read instanceof Checked.Ok<SchoolClass> ok)) {
      return Checked.refused(read.problems());
    }
    Optional<Teacher> teacher = ok.value().teacher();
    if (teacher.isEmpty()) {
      return Checked.refused(Problem.error("class.no-code", Where.file(ClassFile.NAME), ""));
    }
    if (!TeacherCode.fits(teacher.get(), code)) {
      return Checked.refused(Problem.error("class.wrong-code", Where.NOWHERE, ""));
    }
    Optional<Pair> pair = ok.value().pairs().stream().filter(p -> p.number() == number).findFirst();
    if (pair.isEmpty()) {
      return Checked.refused(
          Problem.error("class.unknown-pair", Where.file(ClassFile.NAME), String.valueOf(number)));
    }
    Enter.Person person =
        new Enter.Person(teacher.get().name(), Enter.Person.named("").ids(), true);
    return new AtInstrument(folder.resolve(pair.get().folder()), clock, person).work(work);
  }
}
