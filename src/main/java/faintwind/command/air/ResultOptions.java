package faintwind.command.air;

import faintwind.command.IntoInstruments;
import faintwind.command.StandardOptions;
import faintwind.job.air.ResultFile;
import faintwind.message.Problem;
import faintwind.record.Event.FileRole;
import faintwind.terminal.Terminal;
import faintwind.terminal.WhoOption;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where a result goes: to the screen as lines or JSON, and into a file that a journal enters. */
final class ResultOptions {
  @Option(names = "--out", paramLabel = "FILE", descriptionKey = "air.out")
  private @Nullable Path out;

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  @Mixin private WhoOption who = new WhoOption();

  @Mixin private StandardOptions common = new StandardOptions();

  boolean json() {
    return json;
  }

  /** Why nothing may be written there, if so: the command line is wrong. */
  List<Problem> misuse(Collection<Path> inputs) throws IOException {
    List<Problem> problems = new ArrayList<>();
    if (out != null) {
      common.output(out).trouble(inputs).ifPresent(problems::add);
    }
    return problems;
  }

  /** Why nothing may be entered, if so. */
  List<Problem> shut() throws IOException {
    return new IntoInstruments(who.name()).trouble(Optional.ofNullable(out).stream().toList());
  }

  /**
   * Writes the result where it was asked for; where it lies with an instrument, enters it, and the
   * table it was made from if that is new there.
   */
  List<Problem> keep(String text, FileRole role, Path table, Terminal terminal) throws IOException {
    if (out == null) {
      return List.of();
    }
    ResultFile.write(out, text);
    terminal.tell("air.written", out.toString());
    Map<Path, FileRole> files = new LinkedHashMap<>();
    if (ResultFile.isNew(table, out)) {
      files.put(table, role);
    }
    files.put(out, role);
    return new IntoInstruments(who.name()).enter(files);
  }
}
