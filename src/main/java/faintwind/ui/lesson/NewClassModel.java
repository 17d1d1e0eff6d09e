package faintwind.ui.lesson;

import faintwind.guide.lesson.SchoolClass;
import faintwind.job.lesson.MakeClass;
import faintwind.message.Checked;
import faintwind.ui.frame.DataModel;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Place;
import faintwind.ui.instrument.Workspace;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** A class that is being made. What it shows is whether it is being written just now. */
public final class NewClassModel extends DataModel<Boolean> {
  private final Desk desk;
  private final Consumer<Path> toBoard;
  private final NewClassForm form;
  private Runnable toFirstRefused = () -> {};
  private boolean tried;
  private boolean isMade;
  private boolean isLeft;

  /**
   * A form.
   *
   * @param workspace the folder of instruments in which the class is put, where nothing else is
   *     said
   * @param toBoard shows the board of the class that was made
   */
  public NewClassModel(Desk desk, Workspace workspace, Consumer<Path> toBoard) {
    super(desk.words(), false);
    this.desk = desk;
    this.toBoard = toBoard;
    form = new NewClassForm(desk, workspace.folder());
    form.name().typed().addListener((property, was, now) -> showNext());
    form.design().said().addListener((property, was, now) -> showNext());
    showNext();
    form.design().look(workspace);
  }

  NewClassForm form() {
    return form;
  }

  /** Told when something was refused, with the boxes marked. */
  void whenRefused(Runnable show) {
    toFirstRefused = show;
  }

  /** The screen is gone: what is still being made opens no board any more. */
  void left() {
    isLeft = true;
  }

  /** What would be lost or left half made if the form were left now. */
  Optional<String> unsaved() {
    if (isMade || form.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(text(view().get() ? "class.new.unsaved-making" : "class.new.unsaved"));
  }

  /** Judges a box that somebody goes on from, and those that hang on it. */
  void leave(TypedBox box) {
    form.leave(box);
    showNext();
  }

  /** The same of a lesson: it may meet another one now. */
  void leaveLessons() {
    form.lessons().judge();
    showNext();
  }

  void addLessons() {
    form.lessons().add();
    showNext();
  }

  void removeLesson(NewLessons.Row row) {
    form.lessons().remove(row);
    showNext();
  }

  private void showNext() {
    Act back =
        new Act("class-new-back", text("window.home.back"), () -> desk.go().accept(Place.HOME));
    Act make = new Act("class-new-make", text("class.new.make"), this::make);
    long wrong = form.refused();
    if (form.name().text().isBlank()) {
      say(Next.say(Mark.READY, text("class.new.next-name")).withOther(back));
    } else if (tried && wrong > 0) {
      say(Next.say(Mark.ATTENTION, text("class.new.next-wrong", wrong), make).withOther(back));
    } else {
      say(Next.say(Mark.READY, text("class.new.next"), make).withOther(back));
    }
  }

  /** Makes the class where all is right; else says beside each box what is expected. */
  void make() {
    if (view().get()) {
      return; // asked once more while it is made
    }
    tried = true;
    form.judge();
    showNext();
    if (form.refused() > 0) {
      toFirstRefused.run();
      return;
    }
    Path target = form.target();
    MakeClass.Wish wish = form.wish();
    put(true);
    say(Next.say(Mark.DOING, text("class.new.making")));
    desk.background()
        .run(
            watch -> new MakeClass(desk.clock(), words()).make(target, wish, watch),
            made -> made(target, made),
            this::broke);
  }

  private void made(Path target, Checked<SchoolClass> made) {
    put(false);
    if (made.isOk()) {
      isMade = true;
      if (!isLeft) {
        toBoard.accept(target);
      }
      return;
    }
    made.problems().forEach(form::refuse);
    showNext();
    toFirstRefused.run();
  }

  private void broke(IOException world) {
    put(false);
    showNext();
    say(
        Next.say(
            Mark.BLOCKED,
            text("class.new.next-failed", DiskWords.say(world, words())),
            new Act("class-new-make", text("class.new.make"), this::make)));
  }
}
