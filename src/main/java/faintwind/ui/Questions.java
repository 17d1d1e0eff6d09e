package faintwind.ui;

import faintwind.ui.frame.Desk;
import faintwind.ui.frame.NextLine;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Running;
import java.util.List;
import java.util.Optional;

/** What the window itself asks, in the place of the Next line. */
final class Questions {
  private final Desk desk;
  private final NextLine nextLine;

  Questions(Desk desk, NextLine nextLine) {
    this.desk = desk;
    this.nextLine = nextLine;
  }

  private void restoreNext() {
    nextLine.asked();
  }

  /** What waits to be written is in memory: it can go to another place, or wait on. */
  void offerAnotherPlace(OpenInstrument opened, boolean stranded) {
    if (!stranded) {
      restoreNext();
      return;
    }
    Act elsewhere =
        new Act(
            "keep-elsewhere",
            desk.text("window.elsewhere.act"),
            () ->
                desk.files()
                    .save(
                        desk.text("window.elsewhere.act"),
                        String.valueOf(opened.folder().getFileName()))
                    .ifPresent(
                        place -> {
                          opened.keepElsewhere(place);
                          restoreNext();
                        }));
    Act wait = new Act("keep-waiting", desk.text("window.elsewhere.wait"), this::restoreNext);
    nextLine.ask(
        new Next(
            Mark.BLOCKED,
            desk.text("window.elsewhere.ask"),
            opened.trouble().get(),
            Optional.empty(),
            List.of(elsewhere, wait)));
  }

  /** Asks whether a long job should stop. */
  void askToStop(Running running) {
    Act stop =
        new Act(
            "work-stop",
            desk.text("window.work.stop"),
            () -> {
              running.cancel();
              restoreNext();
            });
    Act on = new Act("work-go-on", desk.text("window.work.go-on"), this::restoreNext);
    nextLine.askAboutWork(
        new Next(
            Mark.DOING, desk.text("window.work.ask"), "", Optional.empty(), List.of(stop, on)));
  }

  /** What is not kept is not dropped without a word: one question after the other. */
  void askEach(List<Unsaved> all, Runnable leave) {
    if (all.isEmpty()) {
      leave.run();
    } else {
      askFirst(all.get(0), () -> askEach(all.subList(1, all.size()), leave));
    }
  }

  private void askFirst(Unsaved unsaved, Runnable leave) {
    Optional<Act> keep =
        unsaved
            .keep()
            .map(
                act ->
                    new Act(
                        "unsaved-keep",
                        act.label(),
                        () -> {
                          restoreNext();
                          act.run().run();
                          leave.run();
                        }));
    Act drop =
        new Act(
            "unsaved-drop",
            unsaved.drop(),
            () -> {
              restoreNext();
              leave.run();
            });
    Act stay = new Act("unsaved-stay", desk.text("window.unsaved.stay"), this::restoreNext);
    nextLine.ask(new Next(Mark.ATTENTION, unsaved.question(), "", keep, List.of(drop, stay)));
    nextLine.focusTarget().requestFocus();
  }
}
