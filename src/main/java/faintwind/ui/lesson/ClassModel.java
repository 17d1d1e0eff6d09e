package faintwind.ui.lesson;

import faintwind.job.PaperFile;
import faintwind.job.lesson.ClassLook;
import faintwind.job.lesson.ClassPage;
import faintwind.job.lesson.ClassReport;
import faintwind.job.lesson.ClassText;
import faintwind.job.lesson.LookAtClass;
import faintwind.job.lesson.PairLook;
import faintwind.job.lesson.PairPrint;
import faintwind.job.lesson.SignOff;
import faintwind.job.lesson.ToSign;
import faintwind.message.Checked;
import faintwind.ui.frame.DataModel;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Place;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A class as the teacher's window shows it; looked at again as often as somebody asks. */
public final class ClassModel extends DataModel<Optional<ClassLook>> {
  private static final int MOST_min = 600;

  private final Desk desk;
  private final Path folder;
  private final LookAtClass looking;
  private final ClassText text;
  private final StringProperty minutes = new SimpleStringProperty("");
  private final StringProperty code = new SimpleStringProperty("");
  private final StringProperty because = new SimpleStringProperty("");
  private boolean looks;
  private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");
  private boolean ofSigning;

  public ClassModel(Desk desk, Path folder) {
    super(desk.words(), Optional.empty());
    this.desk = desk;
    this.folder = folder;
    looking = new LookAtClass(folder, desk.words());
    text = new ClassText(desk.words());
    say(Next.say(Mark.DOING, text("class.reading")));
  }

  /** Reads what changed, in the background. */
  public void look() {
    if (looks) {
      return; // a shared folder may answer late
    }
    looks = true;
    desk.background()
        .runQuietly(
            watch -> looking.look(OffsetDateTime.now(desk.clock())),
            found -> {
              looks = false;
              show(found);
            },
            broke -> {
              looks = false;
              say(Next.say(Mark.BLOCKED, DiskWords.say(broke, words())));
            });
  }

  private void show(Checked<ClassLook> found) {
    if (!(found instanceof Checked.Ok<ClassLook> ok)) {
      String why = String.join(" ", lines(found.problems()));
      say(Next.say(Mark.BLOCKED, why));
      return;
    }
    put(Optional.of(ok.value()));
    Act report = new Act("class-report", text("class.write-report"), this::report);
    Act back = new Act("class-back", text("window.home.back"), this::back);
    if (ok.value().trouble().isPresent()) {
      say(Next.say(Mark.BLOCKED, text("class.all-gone", ok.value().trouble().get()), report));
      return;
    }
    say(now(ok.value(), report).withOther(back));
  }

  /** Who is stuck, else who waits for a signature. */
  Next now(ClassLook look, Act report) {
    List<PairLook> stuck =
        look.pairs().stream()
            .filter(ClassText::isStuck)
            .filter(pair -> pair.pair().number() > 0) // another instrument is nobody who waits
            .toList();
    if (!stuck.isEmpty()) {
      return Next.say(Mark.ATTENTION, text("class.stuck", called(stuck)), report);
    }
    Set<Integer> waiting = toSign(look).stream().map(ToSign::pair).collect(Collectors.toSet());
    List<PairLook> unsigned =
        look.pairs().stream().filter(pair -> waiting.contains(pair.pair().number())).toList();
    return unsigned.isEmpty()
        ? Next.say(Mark.DONE, text("class.nobody-stuck"), report)
        : Next.say(Mark.ATTENTION, text("class.unsigned", called(unsigned)), report);
  }

  private String called(List<PairLook> pairs) {
    return pairs.stream().map(pair -> text.label(pair, true)).collect(Collectors.joining(", "));
  }

  /** From the projector to the board, from the board to all instruments. */
  private void back() {
    if (desk.look().projector().get()) {
      desk.look().projector().set(false);
    } else {
      desk.go().accept(Place.HOME);
    }
  }

  Path folder() {
    return folder;
  }

  ClassText said() {
    return text;
  }

  /** How long the lesson is, as typed; empty for the one of the class. */
  StringProperty minutes() {
    return minutes;
  }

  /** What fits into that time, a line a pair. */
  List<String> fits(ClassLook look) {
    return text.fits(look, time(look));
  }

  private int time(ClassLook look) {
    String typed = minutes.get().strip();
    int time = typed.matches("\\d{1,3}") ? Integer.parseInt(typed) : look.minutes();
    return Math.max(1, Math.min(MOST_min, time));
  }

  /** What waits for the teacher. */
  List<ToSign> toSign(ClassLook look) {
    return ToSign.of(look, words());
  }

  StringProperty code() {
    return code;
  }

  StringProperty because() {
    return because;
  }

  /** What came of the last thing that was asked for. */
  ReadOnlyStringProperty remark() {
    return remark.getReadOnlyProperty();
  }

  /** Whether that was to sign something, which is told beside the code. */
  boolean isRemarkOfSigning() {
    return ofSigning;
  }

  private void signing(String came) {
    ofSigning = true;
    remark.set(came);
  }

  private void printing(String came) {
    ofSigning = false;
    remark.set(came);
  }

  /** Signs by the code that was typed; the code is forgotten at once. */
  void sign(ToSign one) {
    SignOff.Signed signed =
        new SignOff.Signed(one.pair(), one.step(), Optional.of(one.what()), because.get());
    String typed = code.get();
    code.set("");
    desk.background()
        .entry(
            watch -> new SignOff(folder, desk.clock(), words()).sign(signed, typed),
            done -> {
              signing(
                  done.isOk()
                      ? text("class.was-signed")
                      : String.join(" ", lines(done.problems())));
              look();
            },
            broke -> signing(DiskWords.say(broke, words())));
  }

  /** Writes what the class found out, where a person says. */
  void report() {
    paper("class.report.file", new ClassReport(words())::of);
  }

  /** Prints labels for the boxes of the pairs. */
  void labels() {
    paper("class.labels.file", new ClassPage(words())::labels);
  }

  /** Prints all that each pair needs for the time there is, a file a pair. */
  void sheets() {
    Optional<ClassLook> look = view().get();
    String name = text("class.sheets.file");
    Optional<Path> target = look.flatMap(l -> desk.files().save(name, name + ".pdf"));
    target.ifPresent(
        file ->
            desk.background()
                .runQuietly(
                    watch ->
                        new PairPrint(desk.clock(), words())
                            .writeAll(look.orElseThrow(), time(look.orElseThrow()), file),
                    done ->
                        printing(
                            done.fold(
                                (all, notes) -> written(all),
                                problems -> String.join(" ", lines(problems)))),
                    broke -> printing(failed(file, broke))));
  }

  private String written(List<Path> all) {
    Path first = all.get(0).toAbsolutePath();
    String folder = String.valueOf(first.getParent());
    return text("class.sheets-written", all.size(), folder, first.getFileName());
  }

  private interface Paper {
    String of(ClassLook look) throws IOException;
  }

  private void paper(String name, Paper paper) {
    Optional<ClassLook> look = view().get();
    Optional<Path> target = look.flatMap(l -> desk.files().save(text(name), text(name) + ".pdf"));
    target.ifPresent(
        file ->
            desk.background()
                .runQuietly(
                    watch -> {
                      PaperFile.write(file, paper.of(look.orElseThrow()));
                      return file;
                    },
                    written -> desk.files().show(written),
                    broke -> printing(failed(file, broke))));
  }
}
