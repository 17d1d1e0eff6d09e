package faintwind.command.bench;

import faintwind.command.StandardOptions;
import faintwind.job.PaperFile;
import faintwind.job.air.ResultFile;
import faintwind.job.bench.BenchFolder;
import faintwind.job.bench.BenchPage;
import faintwind.job.bench.BenchRow;
import faintwind.job.bench.BenchText;
import faintwind.job.bench.ReadBench;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind list FOLDER}: every instrument of a folder, those that need somebody first. */
@Command(name = "list")
public final class ListCommand implements Callable<Integer> {
  private final Terminal terminal;
  private final Clock clock = Clock.system(ZoneId.systemDefault());

  @Parameters(paramLabel = "FOLDER", descriptionKey = "faintwind.list.folder")
  private Path folder = Path.of("");

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  @Option(names = "--csv", paramLabel = "FILE", descriptionKey = "faintwind.list.csv")
  private @Nullable Path csv;

  @Option(names = "--html", paramLabel = "FILE", descriptionKey = "faintwind.list.html")
  private @Nullable Path html;

  @Option(names = "--archived", descriptionKey = "faintwind.list.archived")
  private boolean archived;

  @Mixin private StandardOptions common = new StandardOptions();

  public ListCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Problem> misuse = new ArrayList<>();
    for (Path target : Stream.of(csv, html).flatMap(Stream::ofNullable).toList()) {
      common.output(target).trouble(List.of(folder)).ifPresent(misuse::add);
    }
    if (csv != null && html != null && csv.toAbsolutePath().equals(html.toAbsolutePath())) {
      misuse.add(Problem.error("usage.one-target", Where.file(csv.toString()), "--csv, --html"));
    }
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    if (BenchFolder.isInstrument(folder)) {
      String one = folder.toString();
      return terminal.misuse(Problem.error("bench-list.is-one", Where.file(one), one));
    }
    Messages spoken = json && html == null ? Terminal.forPrograms() : terminal.messages();
    List<BenchRow> all = rows(spoken);
    if (all.isEmpty()) {
      return terminal.refuse(
          List.of(Problem.error("bench-list.none", Where.file(folder.toString()), "")));
    }
    List<BenchRow> rows = wanted(all);
    List<BenchRow> told = forPrograms(spoken, rows);
    BenchText text = new BenchText(terminal.messages());
    if (json) {
      terminal.out().print(text.json(folder, told));
    } else {
      text.lines(rows).forEach(terminal.out()::println);
      if (!archived && rows.size() < all.size()) {
        terminal.say("bench-list.archived", all.size() - rows.size());
      }
    }
    terminal.out().flush();
    if (csv != null) {
      ResultFile.write(csv, text.csv(told));
      terminal.tell("air.written", csv.toString());
    }
    if (html != null) {
      String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
      PaperFile.write(html, BenchPage.of(name, rows, terminal.messages()));
      terminal.tell("air.written", html.toString());
    }
    return ExitCode.DONE.number();
  }

  private List<BenchRow> wanted(List<BenchRow> all) {
    return all.stream()
        .filter(row -> (row.need().kind() == BenchRow.Kind.ARCHIVED) == archived)
        .toList();
  }

  private List<BenchRow> rows(Messages words) throws IOException {
    return new ReadBench(words).rows(folder, OffsetDateTime.now(clock));
  }

  /** The rows for another program, in its own words: those at hand where they are in them. */
  private List<BenchRow> forPrograms(Messages spoken, List<BenchRow> rows) throws IOException {
    if (!json && csv == null) {
      return List.of();
    }
    Messages words = Terminal.forPrograms();
    return spoken.locale().equals(words.locale()) ? rows : wanted(rows(words));
  }
}
