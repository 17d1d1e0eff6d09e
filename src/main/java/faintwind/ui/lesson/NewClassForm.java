package faintwind.ui.lesson;

import faintwind.job.lesson.ClassPart;
import faintwind.job.lesson.ClassRules;
import faintwind.job.lesson.MakeClass;
import faintwind.job.record.Workplace;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.ui.frame.Desk;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a class is to be made of, box by box, judged by the rules of the command line. */
final class NewClassForm {
  private final Messages words;
  private final Path into;
  private final TypedBox name;
  private final TypedBox purpose;
  private final TypedBox pairs;
  private final TypedBox nicknames;
  private final TypedBox roles;
  private final TypedBox code;
  private final TypedBox again;
  private final TypedBox folder;
  private final NewLessons lessons;
  private final NewDesign design;

  /**
   * An empty form.
   *
   * @param into the folder of instruments in which the class is put, where nothing else is said
   */
  NewClassForm(Desk desk, Path into) {
    words = desk.words();
    this.into = into;
    name = box(text -> judged(ClassRules.name(text), ""));
    purpose = box(text -> Checked.ok(""));
    pairs = box(text -> pairs(text).map(number -> ""));
    nicknames = box(this::nicknames);
    roles = box(this::roles).with(words.text("class.new.roles-usual"));
    code = box(text -> judged(ClassRules.code(text), ""));
    again = box(this::again);
    folder =
        box(text -> folder(text).map(path -> words.text("class.new.folder-is", path.toString())));
    lessons = new NewLessons(words);
    design = new NewDesign(desk);
    name.typed().addListener((property, was, now) -> named(was, now));
  }

  private interface Judging {
    Checked<String> of(String typed);
  }

  private TypedBox box(Judging judging) {
    return new TypedBox(words, judging::of);
  }

  private static Checked<String> judged(Optional<Problem> trouble, String understood) {
    return trouble.map(Checked::<String>refused).orElseGet(() -> Checked.ok(understood));
  }

  /** The folder is called as the class, until somebody calls it otherwise. */
  private void named(String was, String now) {
    if (folder.text().equals(Workplace.folderName(was))) {
      folder.with(Workplace.folderName(now)).judgeOnLeaving();
    }
  }

  private static Checked<Integer> pairs(String typed) {
    return ClassRules.whole(ClassRules.PAIRS, typed, ClassPart.PAIRS);
  }

  private static List<String> listed(String typed) {
    return typed.isBlank()
        ? List.of()
        : Arrays.stream(typed.split(",", -1)).map(String::strip).toList();
  }

  private Checked<String> nicknames(String typed) {
    List<String> all = listed(typed);
    return pairs(pairs.text())
        .fold(
            (count, notes) -> ClassRules.called(all, count),
            noNumber -> Checked.ok(all)) // which is said at its own box
        .map(called -> all.isEmpty() ? "" : labels(called));
  }

  private String labels(List<String> called) {
    return IntStream.range(0, called.size())
        .mapToObj(
            i ->
                called.get(i).isEmpty()
                    ? words.text("class.pair", i + 1)
                    : words.text("class.pair-nickname", i + 1, called.get(i)))
        .collect(Collectors.joining("; "));
  }

  private Checked<String> roles(String typed) {
    List<String> all = listed(typed);
    return judged(
        ClassRules.roles(all),
        all.isEmpty() ? words.text("class.new.roles-none") : String.join("; ", all));
  }

  private Checked<String> again(String typed) {
    return typed.equals(code.text())
        ? Checked.ok("")
        : Checked.refused(Problem.error("class.codes-differ", Where.NOWHERE, ""));
  }

  private Checked<Path> folder(String typed) {
    String text = typed.strip();
    try {
      return text.isEmpty()
          ? Checked.refused(Problem.error("class.folder-none", Where.NOWHERE, ""))
          : Checked.ok(into.resolve(text).toAbsolutePath().normalize());
    } catch (InvalidPathException notHere) {
      return Checked.refused(Problem.error("class.folder-bad", Where.NOWHERE, text));
    }
  }

  /** What is typed again hangs on what is typed before it. */
  void leave(TypedBox box) {
    box.judgeOnLeaving();
    if (box == pairs) {
      nicknames.judgeOnLeaving();
    } else if (box == code && !again.text().isEmpty()) {
      again.judge();
    }
  }

  /** Judges everything. */
  void judge() {
    boxes().forEach(TypedBox::judge);
    lessons.judgeAll();
  }

  private List<TypedBox> boxes() {
    return List.of(name, purpose, pairs, nicknames, roles, code, again, folder);
  }

  /** How many things are not right, as far as they were judged. */
  long refused() {
    return Stream.concat(boxes().stream(), lessons.boxes().stream())
            .filter(TypedBox::isRefused)
            .count()
        + (design.said().get().refused() ? 1 : 0);
  }

  /** Whether nothing of it was filled in. */
  boolean isEmpty() {
    return (name.text() + pairs.text() + purpose.text()).isBlank();
  }

  /** Where the class is to be; only where nothing is refused. */
  Path target() {
    return read(folder(folder.text()));
  }

  /** What is wished for; only where nothing is refused. */
  MakeClass.Wish wish() {
    return new MakeClass.Wish(
        name.text().strip(),
        purpose.text().strip(),
        lessons.read(),
        read(ClassRules.called(listed(nicknames.text()), read(pairs(pairs.text())))),
        listed(roles.text()),
        design.from(),
        code.text());
  }

  private static <T> T read(Checked<T> judged) {
    return judged.fold(
        (value, notes) -> value,
        problems -> {
          throw new IllegalStateException(problems.toString());
        });
  }

  /** What the disk knows better is said beside the box that it is about. */
  void refuse(Problem problem) {
    switch (ClassPart.of(problem)
        .orElse(design.from().isPresent() ? ClassPart.DESIGN : ClassPart.FOLDER)) {
      case NAME -> name.refuse(List.of(problem));
      case PAIRS -> pairs.refuse(List.of(problem));
      case NICKNAMES -> nicknames.refuse(List.of(problem));
      case LESSONS -> lessons.first().refuse(List.of(problem));
      case ROLES -> roles.refuse(List.of(problem));
      case CODE -> code.refuse(List.of(problem));
      case FOLDER -> folder.refuse(List.of(problem));
      case DESIGN -> design.refuse(words.line(problem));
    }
  }

  TypedBox name() {
    return name;
  }

  TypedBox purpose() {
    return purpose;
  }

  TypedBox pairs() {
    return pairs;
  }

  TypedBox nicknames() {
    return nicknames;
  }

  TypedBox roles() {
    return roles;
  }

  TypedBox code() {
    return code;
  }

  TypedBox again() {
    return again;
  }

  TypedBox folder() {
    return folder;
  }

  NewLessons lessons() {
    return lessons;
  }

  NewDesign design() {
    return design;
  }
}
