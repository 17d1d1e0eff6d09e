package faintwind.command.air;

import faintwind.job.air.AirSource;
import faintwind.job.air.ResultFile;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event.FileRole;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Mixin;

/**
 * What a table of places or points comes to once it is filled in: the options of such a command,
 * and its work from the speeds to the result that is shown, written and entered.
 */
final class FilledTable {
  @Mixin private SourceOptions source = new SourceOptions();

  @Mixin private SourceOptions.Stays stays = new SourceOptions.Stays();

  @Mixin private ResultOptions result = new ResultOptions();

  /** A kind of table. */
  interface Kind<T> {
    FileRole role();

    /** Works it out; {@code settle_s} where a person says how long to wait at each place. */
    Checked<T> work(Path table, AirSource from, Optional<Double> settle_s) throws IOException;

    /** For another program, with the hashes of the files it was made from. */
    String json(T done, Map<String, String> inputs);

    List<String> lines(T done, Messages words);

    /** Whether it can be read and still is not what was asked for. */
    boolean isBeyondLimit(T done);
  }

  /** Does the work; the exit code. */
  <T> int run(Path table, Kind<T> kind, Terminal terminal) throws IOException {
    List<Path> inputs = new ArrayList<>(List.of(table));
    stays.speeds().ifPresent(inputs::add);
    source.calibration().ifPresent(inputs::add);
    List<Problem> misuse = new ArrayList<>(source.misuse(Optional.of(stays)));
    misuse.addAll(result.misuse(inputs));
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    Checked<T> done = work(table, kind);
    List<Problem> shut = result.shut();
    if (!(done instanceof Checked.Ok<T> ok) || !shut.isEmpty()) {
      List<Problem> all = new ArrayList<>(done.problems());
      all.addAll(shut);
      return terminal.refuse(all);
    }
    terminal.report(ok.notes());
    String text = kind.json(ok.value(), ResultFile.hashes(inputs));
    if (result.json()) {
      terminal.out().print(text);
    } else {
      kind.lines(ok.value(), terminal.messages()).forEach(terminal.out()::println);
    }
    terminal.out().flush();
    List<Problem> notEntered = result.keep(text, kind.role(), table, terminal);
    if (!notEntered.isEmpty()) {
      return terminal.refuse(notEntered);
    }
    return (kind.isBeyondLimit(ok.value()) ? ExitCode.LIMIT : ExitCode.DONE).number();
  }

  /** Opens the speeds and does the work on them; notes of both are kept. */
  private <T> Checked<T> work(Path table, Kind<T> kind) throws IOException {
    Checked<AirSource> opened = source.open(stays.speeds());
    if (!(opened instanceof Checked.Ok<AirSource> ok)) {
      return Checked.refused(opened.problems());
    }
    Checked<T> done = kind.work(table, ok.value(), stays.settle_s());
    return done.then(value -> Checked.ok(value, ok.notes()));
  }
}
