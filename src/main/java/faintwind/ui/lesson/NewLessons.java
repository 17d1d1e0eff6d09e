package faintwind.ui.lesson;

import faintwind.guide.lesson.Repeat;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.job.lesson.ClassPart;
import faintwind.job.lesson.ClassRules;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The lessons of a class that is being made: many at once, then each by itself. */
final class NewLessons {
  private final Messages words;
  private final TypedBox first;
  private final TypedBox minutes;
  private final TypedBox count;
  private final ObjectProperty<Repeat> repeat = new SimpleObjectProperty<>(Repeat.WEEKLY);
  private final ObservableList<Row> rows = FXCollections.observableArrayList();

  /** One lesson, as typed. */
  record Row(TypedBox at, TypedBox minutes) {
    boolean isRefused() {
      return at.isRefused() || minutes.isRefused();
    }

    void judge() {
      at.judge();
      minutes.judge();
    }
  }

  NewLessons(Messages words) {
    this.words = words;
    first = new TypedBox(words, text -> text.isBlank() ? Checked.ok("") : begin(text));
    minutes = number(ClassRules.MINUTES).with("45");
    count = number(ClassRules.LESSONS).with("6");
  }

  private TypedBox number(Field field) {
    return new TypedBox(
        words, text -> ClassRules.whole(field, text, ClassPart.LESSONS).map(number -> ""));
  }

  /** A day that was typed in another form is said in the usual one. */
  private Checked<String> begin(String text) {
    return ClassRules.begin(text, words)
        .map(at -> DateText.minute(words, at))
        .map(said -> said.equals(text.strip()) ? "" : said);
  }

  TypedBox first() {
    return first;
  }

  TypedBox minutes() {
    return minutes;
  }

  TypedBox count() {
    return count;
  }

  ObjectProperty<Repeat> repeat() {
    return repeat;
  }

  ObservableList<Row> rows() {
    return rows;
  }

  /** Adds the lessons that are asked for; where something of it is wrong, says so and adds none. */
  void add() {
    Checked<Lesson> lesson = ClassRules.lesson(first.text(), minutes.text(), words);
    Checked<Integer> many = ClassRules.whole(ClassRules.LESSONS, count.text(), ClassPart.LESSONS);
    Stream.of(first, minutes, count).forEach(TypedBox::judge);
    if (first.text().isBlank()) {
      first.refuse(lesson.problems());
    }
    if (lesson instanceof Checked.Ok<Lesson> from && many instanceof Checked.Ok<Integer> number) {
      List<Row> all = new ArrayList<>(rows);
      repeat.get().lessons(from.value(), number.value()).forEach(one -> all.add(row(one)));
      first.with("").judge();
      rows.setAll(inOrder(all));
      judge();
    }
  }

  private Row row(Lesson lesson) {
    return new Row(
        new TypedBox(words, this::begin).with(DateText.minute(words, lesson.at())),
        number(ClassRules.MINUTES).with(String.valueOf(lesson.minutes())));
  }

  /** Rows in the order of time; those that are not understood stay where they are, at the end. */
  private List<Row> inOrder(List<Row> all) {
    List<Row> understood = all.stream().filter(row -> lesson(row).isOk()).toList();
    List<Row> ordered = new ArrayList<>();
    ClassRules.inOrder(understood.stream().map(this::read).toList())
        .forEach(
            lesson ->
                understood.stream()
                    .filter(row -> read(row).equals(lesson) && !ordered.contains(row))
                    .findFirst()
                    .ifPresent(ordered::add));
    all.stream().filter(row -> !ordered.contains(row)).forEach(ordered::add);
    return ordered;
  }

  private Checked<Lesson> lesson(Row row) {
    return ClassRules.lesson(row.at().text(), row.minutes().text(), words);
  }

  private Lesson read(Row row) {
    return lesson(row)
        .fold(
            (lesson, notes) -> lesson,
            problems -> {
              throw new IllegalStateException(problems.toString());
            });
  }

  void remove(Row row) {
    rows.remove(row);
    judge();
  }

  /** Judges every row, and whether two of them meet. */
  void judge() {
    rows.forEach(Row::judge);
    List<Row> understood = rows.stream().filter(row -> lesson(row).isOk()).toList();
    for (Row row : understood) {
      List<Lesson> before =
          understood.subList(0, understood.indexOf(row)).stream().map(this::read).toList();
      List<Problem> meet = meets(before, read(row));
      if (!meet.isEmpty()) {
        row.at().refuse(meet);
      }
    }
  }

  private List<Problem> meets(List<Lesson> before, Lesson lesson) {
    return before.stream()
        .flatMap(other -> ClassRules.lessons(List.of(other, lesson), words).stream())
        .limit(1)
        .toList();
  }

  /** Judges everything before the class is made: what was typed and not added is not forgotten. */
  void judgeAll() {
    judge();
    first.judge();
    if (!first.text().isBlank()) {
      first.refuse(List.of(Problem.error("class.not-added", Where.NOWHERE, "")));
    }
  }

  /** The lessons, where none is refused. */
  List<Lesson> read() {
    return rows.stream().map(this::read).toList();
  }

  /** All boxes, in the order of the form. */
  List<TypedBox> boxes() {
    return Stream.concat(
            Stream.of(first), rows.stream().flatMap(row -> Stream.of(row.at(), row.minutes())))
        .toList();
  }
}
