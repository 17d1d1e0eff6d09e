package faintwind.job.step;

import faintwind.guide.Today;
import faintwind.guide.Today.Bench;
import faintwind.guide.Today.Item;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.StepClock;
import faintwind.job.PaperFile;
import faintwind.job.bench.BenchFolder;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/** What fits into the time there is, in words: for window, terminal and paper. */
public final class TodayText {
  private static final String STYLE =
      ".tick { display: inline-block; width: 3mm; height: 3mm; border: 1px solid #000000;"
          + " margin: 0 2mm 0 0; }\n";

  private final Clock clock;
  private final Messages messages;

  public TodayText(Clock clock, Messages messages) {
    this.clock = clock;
    this.messages = messages;
  }

  /**
   * Plans a time for one instrument, or for all in a folder of instruments.
   *
   * @return lines; refused where there is none that can be read
   * @throws IOException where something that is there cannot be read
   */
  public Checked<List<String>> lines(Path folder, int minutes) throws IOException {
    return plan(folder, minutes).map(today -> lines(today, minutes));
  }

  /** The same on paper. */
  public Checked<Path> write(Path folder, int minutes, Path target) throws IOException {
    Checked<Today> plan = plan(folder, minutes);
    if (plan instanceof Checked.Ok<Today> ok) {
      write(ok.value(), minutes, target);
    }
    return plan.map(today -> target);
  }

  private Checked<Today> plan(Path folder, int minutes) throws IOException {
    OffsetDateTime now = OffsetDateTime.now(clock);
    List<Bench> benches = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Path one : instruments(folder)) {
      Checked<InstrumentView> opened = InstrumentView.begun(one, messages.locale());
      problems.addAll(opened.problems());
      if (opened instanceof Checked.Ok<InstrumentView> ok) {
        bench(ok.value(), now).ifPresent(benches::add);
      }
    }
    return benches.isEmpty()
        ? Checked.refused(
            problems.isEmpty()
                ? Problem.error("today.no-instrument", Where.NOWHERE, folder.toString())
                : problems.get(0))
        : Checked.ok(Today.of(benches, minutes), problems);
  }

  private static List<Path> instruments(Path folder) throws IOException {
    return !Files.isDirectory(folder) || BenchFolder.isInstrument(folder)
        ? List.of(folder)
        : BenchFolder.instruments(folder);
  }

  /** An instrument to work on; a folder of rehearsals is none. */
  public static Optional<Bench> bench(InstrumentView view, OffsetDateTime now) {
    String name = view.state().name().orElseGet(() -> String.valueOf(view.path().getFileName()));
    return view.state().rehearsal()
        ? Optional.empty()
        : Optional.of(new Bench(name, view.checklist(), view.progress(now)));
  }

  /** Everything, a line each. */
  public List<String> lines(Today today, int minutes) {
    List<String> lines = new ArrayList<>();
    lines.add(title(today, minutes));
    lines.addAll(steps(today));
    lines.addAll(layOut(today));
    lines.addAll(running(today));
    return lines;
  }

  /** What fits, in a sentence. */
  public String title(Today today, int minutes) {
    if (!today.items().isEmpty()) {
      return messages.text("today.title", minutes, today.items().size(), today.minutes());
    }
    return today
        .next()
        .map(item -> messages.text("today.none", minutes, said(item)))
        .orElseGet(() -> messages.text("today.nothing"));
  }

  /** The steps in their order. */
  public List<String> steps(Today today) {
    return today.items().stream().map(this::said).toList();
  }

  private String said(Item item) {
    return messages.text(
        "today.step", item.bench().name(), item.step().step().title(), item.minutes());
  }

  /** Tools, then parts. */
  public List<String> layOut(Today today) {
    List<String> lines = new ArrayList<>();
    list("today.tools", today.tools()).ifPresent(lines::add);
    list("today.parts", today.parts()).ifPresent(lines::add);
    return lines;
  }

  private Optional<String> list(String key, SortedSet<String> things) {
    return things.isEmpty()
        ? Optional.empty()
        : Optional.of(messages.text(key, String.join(", ", things)));
  }

  /** What goes on by itself. */
  public List<String> running(Today today) {
    return today.running().stream().map(this::running).toList();
  }

  private String running(Item item) {
    String what = item.step().step().asks().clock().map(Step.ClockSpec::label).orElse("");
    return item.step()
        .clock()
        .filter(c -> c.stand() == StepClock.Stand.RUNNING)
        .map(
            c ->
                messages.text(
                    "today.runs",
                    item.bench().name(),
                    what,
                    DateText.near(messages, c.end(), OffsetDateTime.now(clock))))
        .orElseGet(() -> messages.text("today.starts", item.bench().name(), what));
  }

  /**
   * Puts it on paper, with a box to tick before each step.
   *
   * @param target {@code .pdf} gives PDF, anything else HTML
   * @throws IOException where the disk or a permission fails
   */
  public void write(Today today, int minutes, Path target) throws IOException {
    String day = DateText.day(messages, OffsetDateTime.now(clock));
    Page page = new Page(new LogWords(messages), messages.text("today.page", day), "", STYLE);
    PaperFile.write(target, page.html(html -> body(html, today, minutes, day)));
  }

  private void body(Html html, Today today, int minutes, String day) {
    html.element("h1", messages.text("today.page", day));
    html.element("p", title(today, minutes));
    steps(today).forEach(line -> tick(html, line));
    SortedSet<String> things = today.tools();
    things.addAll(today.parts());
    if (!things.isEmpty()) {
      html.element("h2", messages.text("today.lay-out"));
      things.forEach(line -> tick(html, line));
    }
    if (!today.running().isEmpty()) {
      html.element("h2", messages.text("today.running"));
      running(today).forEach(line -> html.element("p", line));
    }
  }

  private static void tick(Html html, String line) {
    html.raw("<p><span class=\"tick\"></span>" + Html.escaped(line) + "</p>");
  }
}
