package faintwind.command;

import faintwind.job.design.DesignAdvice;
import faintwind.job.design.PartsList;
import faintwind.job.design.SheetText;
import faintwind.job.design.Size;
import faintwind.job.design.Sized;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.choice.DesignField;
import faintwind.physics.choice.DesignTexts;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind size DESIGN.json [--json] [--suggest] [--substitutes] [--parts PARTS.csv]}. */
@Command(name = "size")
public final class SizeCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "DESIGN.json", descriptionKey = "faintwind.size.design")
  private Path design = Path.of("");

  @Option(names = "--json", descriptionKey = "faintwind.size.json")
  private boolean json;

  @Option(names = "--suggest", descriptionKey = "faintwind.size.suggest")
  private boolean suggest;

  @Option(names = "--substitutes", descriptionKey = "faintwind.size.substitutes")
  private boolean substitutes;

  @Option(names = "--parts", paramLabel = "PARTS", descriptionKey = "faintwind.size.parts")
  private @Nullable Path parts;

  @Option(names = "--instruments", paramLabel = "N", descriptionKey = "faintwind.size.instruments")
  private int instruments = 1;

  @Option(names = "--set", paramLabel = "FIELD=VALUE", descriptionKey = "faintwind.size.set")
  private Map<String, String> changes = Map.of();

  @Mixin private StandardOptions common = new StandardOptions();

  public SizeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Problem> misuse = misuse();
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    Map<DesignField, String> said = new LinkedHashMap<>();
    changes.forEach((id, text) -> said.put(DesignField.named(id).orElseThrow(), text));
    Checked<Sized> sized = Size.run(design, Optional.empty(), said);
    if (!(sized instanceof Checked.Ok<Sized> ok)) {
      return terminal.refuse(sized.problems());
    }
    terminal.report(ok.notes());
    if (json) {
      terminal.out().print(SheetText.json(ok.value(), Terminal.forPrograms()));
    } else {
      SheetText.lines(ok.value(), terminal.messages()).forEach(terminal.out()::println);
    }
    advise(ok.value());
    terminal.out().flush();
    if (parts != null) {
      PartsList list = new PartsList(ok.value(), instruments, terminal.messages());
      list.write(parts);
      terminal.report(list.strangePrices());
    }
    terminal.report(ok.value().sheet().reasons());
    return ok.value().sheet().stops() ? ExitCode.LIMIT.number() : ExitCode.DONE.number();
  }

  private void advise(Sized sized) throws IOException {
    if (suggest) {
      List<Suggestion> others = Size.suggestions(sized.design());
      say(DesignAdvice.lines(sized.sheet(), others, terminal.messages()));
    }
    if (substitutes) {
      say(DesignAdvice.lines(Size.substitutions(sized.design()), terminal.messages()));
    }
  }

  private void say(List<String> lines) {
    terminal.out().println();
    lines.forEach(terminal.out()::println);
  }

  private List<Problem> misuse() throws IOException {
    List<Problem> problems = new ArrayList<>();
    if (json && (suggest || substitutes)) {
      problems.add(Problem.error("usage.size-json", Where.NOWHERE, "--json"));
    }
    PartsList.INSTRUMENTS
        .trouble(String.valueOf(instruments), Where.NOWHERE.atColumn("--instruments"))
        .ifPresent(problems::add);
    for (String id : changes.keySet()) {
      if (DesignField.named(id).isEmpty()) {
        problems.add(Problem.error("usage.no-field", Where.NOWHERE.atColumn("--set"), id));
      }
    }
    problems.addAll(DesignTexts.problems(changes));
    if (parts != null) {
      common.output(parts).trouble(List.of(design)).ifPresent(problems::add);
    }
    return problems;
  }
}
