package faintwind.command.record;

import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.job.step.EnterInStep;
import faintwind.job.step.StepText;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.JournalEntry;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind step FOLDER STEP}: what a step says, asks and misses; with one of the options an
 * entry in it, by the rules of the window.
 */
@Command(name = "step")
public final class StepCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private InstrumentOptions at = new InstrumentOptions();

  @Parameters(index = "1", paramLabel = "STEP", descriptionKey = "faintwind.step.step")
  private String step = "";

  @Option(names = "--open", descriptionKey = "faintwind.step.open")
  private boolean open;

  @Option(names = "--read", paramLabel = "CAUTION", descriptionKey = "faintwind.step.read")
  private @Nullable String caution;

  @Option(
      names = "--answer",
      paramLabel = "QUESTION=CHOICE",
      descriptionKey = "faintwind.step.answer")
  private @Nullable String answer;

  @Option(names = "--start-clock", descriptionKey = "faintwind.step.start-clock")
  private boolean startClock;

  @Option(names = "--tin-hours", paramLabel = "HOURS", descriptionKey = "faintwind.step.tin-hours")
  private @Nullable Double own_h;

  @Option(names = "--time-is-right", descriptionKey = "faintwind.step.time-is-right")
  private boolean timeIsRight;

  @Option(names = "--waive", paramLabel = "WHAT", descriptionKey = "faintwind.step.waive")
  private @Nullable String waived;

  @Option(names = "--because", paramLabel = "REASON", descriptionKey = "faintwind.step.because")
  private String because = "";

  @Option(names = "--finish", descriptionKey = "faintwind.step.finish")
  private boolean finish;

  public StepCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<String> kinds = kinds();
    if (kinds.size() > 1) {
      String given = String.join(", ", kinds);
      return terminal.misuse(Problem.error("note.too-many", Where.NOWHERE, given));
    }
    if (answer != null && answer.indexOf('=') < 1) {
      return terminal.misuse(Problem.error("step.no-choice", Where.NOWHERE, answer));
    }
    return kinds.isEmpty() ? show() : enter();
  }

  private int show() throws IOException {
    Checked<List<String>> lines =
        new StepText(InstrumentOptions.clock(), terminal.messages()).lines(at.folder(), step);
    return terminal.end(lines, all -> all.forEach(terminal.out()::println));
  }

  private int enter() throws IOException {
    Checked<JournalEntry> entered = at.instrument(terminal).work(this::enter);
    return terminal.end(entered, it -> terminal.say("note.entered", it.id()));
  }

  private Checked<JournalEntry> enter(InstrumentView view, Enter enter) throws IOException {
    if (caution != null) {
      return enter.acknowledge(step, caution);
    } else if (answer != null) {
      int to = answer.indexOf('=');
      return new EnterInStep(view, enter, terminal.messages())
          .answer(step, answer.substring(0, to), answer.substring(to + 1));
    } else if (waived != null) {
      return enter.waive(step, waived, because.strip());
    } else if (own_h != null) {
      return enter.startClock(step, own_h);
    } else if (startClock) {
      return enter.startClock(step);
    } else if (timeIsRight) {
      return enter.confirmTime(step);
    }
    return open ? enter.open(step) : enter.finish(step);
  }

  private List<String> kinds() {
    return Stream.of(
            open ? "--open" : null,
            caution == null ? null : "--read",
            answer == null ? null : "--answer",
            startClock || own_h != null ? "--start-clock" : null,
            timeIsRight ? "--time-is-right" : null,
            waived == null ? null : "--waive",
            finish ? "--finish" : null)
        .filter(Objects::nonNull)
        .toList();
  }
}
