package faintwind.job.record;

import faintwind.files.JsonForm;
import faintwind.guide.Agenda;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.StepClock;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.message.Messages;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What can be done now on an instrument, what waits for which clock, and what waits for what. */
public final class OrderText {
  private final Clock clock;
  private final Messages messages;

  public OrderText(Clock clock, Messages messages) {
    this.clock = clock;
    this.messages = messages;
  }

  /**
   * One line a step, under three heads.
   *
   * @return refused where the folder has no journal or its checklist cannot be read
   * @throws IOException where something that is there cannot be read
   */
  public Checked<List<String>> lines(Path folder) throws IOException {
    Checked<InstrumentView> opened = InstrumentView.begun(folder, messages.locale());
    if (!(opened instanceof Checked.Ok<InstrumentView> ok)) {
      return Checked.refused(opened.problems());
    }
    InstrumentView view = ok.value();
    OffsetDateTime now = OffsetDateTime.now(clock);
    Agenda agenda = Agenda.of(view.checklist(), view.progress(now));
    return Checked.ok(lines(agenda, view.situation(now)), view.problems());
  }

  /** The same for another program. */
  public Checked<String> json(Path folder) throws IOException {
    return InstrumentView.begun(folder, messages.locale())
        .map(
            view -> {
              OffsetDateTime now = OffsetDateTime.now(clock);
              Agenda agenda = Agenda.of(view.checklist(), view.progress(now));
              return JsonForm.text(told(agenda, view.situation(now)));
            });
  }

  private record Told(String format, List<Now> now, List<Waiting> waiting, List<Later> later) {}

  private record Now(String step, String title) {}

  private record Waiting(String step, String title, String text, Optional<String> until) {}

  private record Later(String step, String title, List<String> until, String text) {}

  private Told told(Agenda agenda, Situation situation) {
    return new Told(
        "faintwind-steps/1",
        agenda.now().stream().map(s -> new Now(s.step().id(), s.step().title())).toList(),
        agenda.waiting().stream()
            .map(
                s ->
                    new Waiting(
                        s.step().id(),
                        s.step().title(),
                        waiting(s, situation),
                        s.clock().map(StepClock::end).map(String::valueOf)))
            .toList(),
        agenda.later().stream()
            .map(
                l ->
                    new Later(
                        l.step().step().id(),
                        l.step().step().title(),
                        l.until().stream().map(u -> u.step().id()).toList(),
                        later(l)))
            .toList());
  }

  private List<String> lines(Agenda agenda, Situation situation) {
    List<String> lines = new ArrayList<>();
    head(lines, "order.now", agenda.now().isEmpty());
    for (StepProgress step : agenda.now()) {
      lines.add(messages.text("order.step", step.step().title(), step.step().id()));
    }
    head(lines, "order.waiting", agenda.waiting().isEmpty());
    for (StepProgress step : agenda.waiting()) {
      lines.add(waiting(step, situation));
    }
    head(lines, "order.later", agenda.later().isEmpty());
    for (Agenda.Later later : agenda.later()) {
      lines.add(later(later));
    }
    return lines;
  }

  private void head(List<String> lines, String key, boolean empty) {
    lines.add(messages.text(key));
    if (empty) {
      lines.add(messages.text("order.nothing"));
    }
  }

  private String waiting(StepProgress step, Situation situation) {
    String what =
        step.step()
            .asks()
            .clock()
            .map(Step.ClockSpec::label)
            .map(label -> situation.fill(label, messages))
            .orElse("");
    String end =
        step.clock().map(StepClock::end).map(at -> DateText.zoned(messages, at)).orElse("");
    return messages.text("order.clock", step.step().title(), step.step().id(), what, end);
  }

  private String later(Agenda.Later later) {
    String title = later.step().step().title();
    String id = later.step().step().id();
    if (later.until().contains(later.step())) {
      return messages.text("order.stops", title, id);
    }
    String until = later.until().stream().map(s -> s.step().id()).collect(Collectors.joining(", "));
    return messages.text("order.until", title, id, until);
  }
}
