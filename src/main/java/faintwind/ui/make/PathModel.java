package faintwind.ui.make;

import faintwind.guide.Agenda;
import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Stage;
import faintwind.message.Messages;
import faintwind.ui.instrument.ClockWords;
import faintwind.ui.instrument.StepMarks;
import faintwind.ui.part.Mark;
import java.util.ArrayList;
import java.util.List;

/** The path of an instrument: its stages, and the steps of the one that is open. */
public final class PathModel {
  private static final int MOST_NOW = 4;

  private final Messages words;

  /**
   * A stage.
   *
   * @param title as shown
   * @param mark its state
   * @param word state in a word; empty where the mark alone says it
   * @param note small second line, such as "not needed"
   * @param first id of the step that a click opens
   * @param steps empty unless the stage is open
   */
  public record StageLine(
      String title, Mark mark, String word, String note, String first, List<StepLine> steps) {
    public StageLine {
      steps = List.copyOf(steps);
    }

    public boolean isOpen() {
      return !steps.isEmpty();
    }
  }

  /**
   * A step of the open stage.
   *
   * @param id step id
   * @param title as shown
   * @param mark its state
   * @param word state in a word; empty where the mark alone says it
   * @param here whether it is the one on the sheet
   */
  public record StepLine(String id, String title, Mark mark, String word, boolean here) {}

  /**
   * What can be done now, or waits for a clock.
   *
   * @param id step that a click opens; empty for a line that only tells
   * @param text the step's title, or words
   * @param detail small words after it; may be empty
   * @param mark its state
   */
  public record OrderLine(String id, String text, String detail, Mark mark) {}

  public PathModel(Messages words) {
    this.words = words;
  }

  /** The lines, in physical order. */
  public List<StageLine> lines(Checklist checklist, Progress progress, String here) {
    return checklist.stages().stream().map(stage -> stage(stage, progress, here)).toList();
  }

  /** What can be done now, what waits for which clock, and how many steps wait for these. */
  public List<OrderLine> order(Checklist checklist, Progress progress) {
    Agenda agenda = Agenda.of(checklist, progress);
    List<OrderLine> lines = new ArrayList<>();
    agenda.now().stream().limit(MOST_NOW).forEach(step -> lines.add(orderLine(step, "")));
    for (StepProgress step : agenda.waiting()) {
      String left = step.clock().map(clock -> new ClockWords(words).left(clock)).orElse("");
      lines.add(orderLine(step, words.text("window.order.waits", left)));
    }
    int later = agenda.later().size() + Math.max(0, agenda.now().size() - MOST_NOW);
    if (later > 0) {
      lines.add(new OrderLine("", words.text("window.order.later", later), "", Mark.READY));
    }
    return lines;
  }

  private static OrderLine orderLine(StepProgress step, String detail) {
    return new OrderLine(step.step().id(), step.step().title(), detail, StepMarks.of(step));
  }

  private StageLine stage(Stage stage, Progress progress, String here) {
    List<StepProgress> steps = StepMarks.steps(stage, progress);
    boolean open = steps.stream().anyMatch(s -> s.step().id().equals(here));
    Mark mark = StepMarks.of(stage, progress);
    String first =
        steps.stream()
            .filter(s -> !s.state().settled())
            .findFirst()
            .or(() -> steps.stream().findFirst())
            .map(s -> s.step().id())
            .orElse("");
    return new StageLine(
        stage.title(),
        mark,
        said(mark),
        StepMarks.notNeeded(stage, progress) ? words.text("window.path.not-needed") : "",
        first,
        open ? steps.stream().map(s -> step(s, here)).toList() : List.of());
  }

  private StepLine step(StepProgress step, String here) {
    String id = step.step().id();
    Mark mark = StepMarks.of(step);
    return new StepLine(id, step.step().title(), mark, said(mark), id.equals(here));
  }

  /** Ready and done need no word beside the mark; the open step is where one looks anyway. */
  private String said(Mark mark) {
    return switch (mark) {
      case READY, DONE, DOING -> "";
      case WAITING, ATTENTION, BLOCKED, CORRECTED, REHEARSAL ->
          words.text("window.path." + mark.styleClass());
    };
  }
}
