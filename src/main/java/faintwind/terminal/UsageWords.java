package faintwind.terminal;

import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in the program's own words what is wrong with a command line. */
public final class UsageWords {
  private UsageWords() {}

  public static Problem problem(ParameterException failure) {
    if (failure instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched);
    }
    if (failure instanceof MissingParameterException missing) {
      Optional<String> unknown =
          failure.getCommandLine().getUnmatchedArguments().stream()
              .filter(word -> word.startsWith("-"))
              .findFirst();
      if (unknown.isPresent()) {
        return Problem.error("usage.option-unknown", Where.NOWHERE, unknown.get());
      }
      List<String> names = missing.getMissing().stream().map(UsageWords::name).toList();
      return Problem.error("usage.missing", Where.NOWHERE, String.join(", ", names));
    }
    ArgSpec argument = failure.getArgSpec();
    if (failure instanceof OverwrittenOptionException && argument != null) {
      return Problem.error("usage.twice", Where.NOWHERE, name(argument));
    }
    String value = failure.getValue() == null ? "" : failure.getValue();
    if (argument != null && argument.type().isEnum()) {
      String known =
          Arrays.stream(argument.type().getEnumConstants())
              .map(each -> String.valueOf(each).toLowerCase(Locale.ROOT))
              .collect(Collectors.joining(", "));
      return Problem.error("usage.choice", Where.NOWHERE, value, name(argument), known);
    }
    if (argument != null) {
      return Problem.error("usage.value", Where.NOWHERE, value, name(argument));
    }
    return Problem.error("usage.other", Where.NOWHERE, String.valueOf(failure.getMessage()));
  }

  private static Problem unmatched(UnmatchedArgumentException failure) {
    String word = failure.getUnmatched().isEmpty() ? "" : failure.getUnmatched().get(0);
    CommandLine command = failure.getCommandLine();
    boolean atRoot = command.getParent() == null;
    if (atRoot && !word.startsWith("-")) {
      String known = String.join(", ", command.getSubcommands().keySet());
      return Problem.error("usage.command-unknown", Where.NOWHERE, word, known);
    }
    return word.startsWith("-")
        ? Problem.error("usage.option-unknown", Where.NOWHERE, word)
        : Problem.error("usage.too-many", Where.NOWHERE, word);
  }

  private static String name(ArgSpec argument) {
    return argument.isOption()
        ? ((CommandLine.Model.OptionSpec) argument).longestName()
        : argument.paramLabel();
  }
}
