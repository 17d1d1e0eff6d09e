package faintwind.ui.turntable;

import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedSession;
import faintwind.job.turntable.PlanText;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.stream.IntStream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.layout.VBox;

/** Which part of a kept plan is turned now: staircase or separate runs, and which lesson. */
final class PlanPart extends VBox {
  private final ObjectProperty<Plan> form;
  private final ObjectProperty<Integer> lesson = new SimpleObjectProperty<>(1);

  PlanPart(Desk desk, PlannedSession planned) {
    form = new SimpleObjectProperty<>(planned.choice().staircase());
    getStyleClass().add("data-body");
    VBox lessons = Boxes.column("data-body");
    PlanText said = new PlanText(desk.words());
    if (planned.choice().separate().isPresent()) {
      getChildren()
          .add(
              Fields.named(
                  "turntable.live.form",
                  Fields.choice("live-form", planned.choice().plans(), said::sum, form),
                  desk.words()));
    } else {
      getChildren().add(Words.label(said.sum(planned.choice().staircase()), "tell"));
    }
    getChildren().add(lessons);
    form.addListener((property, was, now) -> fill(lessons, desk));
    fill(lessons, desk);
  }

  private void fill(VBox lessons, Desk desk) {
    lesson.set(1);
    lessons.getChildren().clear();
    int count = form.get().lessons();
    if (count > 1) {
      List<Integer> all = IntStream.rangeClosed(1, count).boxed().toList();
      lessons
          .getChildren()
          .addAll(
              Fields.named(
                  "turntable.live.lesson",
                  Fields.choice(
                      "live-lesson",
                      all,
                      number -> desk.text("turntable.live.lesson-of", number, count),
                      lesson),
                  desk.words()),
              Words.label(desk.text("turntable.live.lesson-how"), "fine", "soft"));
    }
  }

  /** What is turned now. */
  Plan plan() {
    return form.get().lessons() > 1 ? form.get().lesson(lesson.get()) : form.get();
  }

  /** Which lesson, from 1. */
  int lesson() {
    return lesson.get();
  }
}
