package faintwind;

import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import faintwind.ui.FaintwindApp;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** {@code faintwind} without a command: opens the window. */
@Command(
    name = "faintwind",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
final class FaintwindCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Option(
      names = AskedLanguage.INSTRUMENTS,
      paramLabel = "FOLDER",
      descriptionKey = "faintwind.instruments")
  private Path instruments = AskedLanguage.usualFolder();

  /** A desktop starts the program with nothing after it where no file was opened. */
  @Option(
      names = AskedLanguage.OPEN,
      paramLabel = "CALIBRATION",
      arity = "0..1",
      descriptionKey = "faintwind.open")
  private @Nullable Path calibration;

  /** Read before the rest of the command line; it stands here for the help. */
  @Option(
      names = AskedLanguage.LANGUAGE,
      paramLabel = "CODE",
      scope = ScopeType.INHERIT,
      descriptionKey = "faintwind.language")
  private @Nullable String language;

  FaintwindCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return FaintwindApp.open(
            instruments, Optional.ofNullable(calibration), Optional.ofNullable(language))
        .map(
            problem -> {
              terminal.report(List.of(problem));
              return ExitCode.WORLD.number();
            })
        .orElse(ExitCode.DONE.number());
  }
}
