package faintwind.command;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The help of a command as a page of section 1 in the language of man, groff_man(7). */
final class ManPage {
  private ManPage() {}

  static String of(CommandSpec spec) {
    String name = spec.qualifiedName("-");
    List<String> words = List.of(spec.usageMessage().description());
    Help help = new Help(spec, Help.defaultColorScheme(Ansi.OFF));
    StringBuilder page = new StringBuilder();
    page.append(".TH ").append(name.toUpperCase(Locale.ROOT)).append(" 1\n");
    String first = words.isEmpty() ? name : words.get(0);
    page.append(".SH NAME\n").append(safe(name)).append(" \\- ").append(safe(first)).append('\n');
    page.append(".SH SYNOPSIS\n").append(safe(help.synopsis(0).strip())).append('\n');
    if (words.size() > 1) {
      page.append(".SH DESCRIPTION\n");
      words.subList(1, words.size()).forEach(line -> page.append(safe(line)).append("\n.PP\n"));
    }
    page.append(".SH OPTIONS\n");
    for (PositionalParamSpec parameter : spec.positionalParameters()) {
      entry(page, parameter.paramLabel(), parameter.description());
    }
    for (OptionSpec option : spec.options()) {
      String names = String.join(", ", option.names());
      boolean plain = option.arity().max() == 0;
      entry(page, plain ? names : names + " " + option.paramLabel(), option.description());
    }
    if (!spec.subcommands().isEmpty()) {
      page.append(".SH COMMANDS\n");
      spec.subcommands()
          .forEach(
              (word, line) ->
                  entry(page, word, line.getCommandSpec().usageMessage().description()));
    }
    return page.toString();
  }

  private static void entry(StringBuilder page, String name, String[] description) {
    String words = Arrays.stream(description).map(ManPage::safe).collect(Collectors.joining(" "));
    page.append(".TP\n\\fB").append(safe(name)).append("\\fR\n").append(words).append('\n');
  }

  /** A line in which man sees nothing of its own. */
  private static String safe(String text) {
    String line = text.replace("\\", "\\e").replace("-", "\\-").replace("\n", "\n\\&");
    return line.startsWith(".") || line.startsWith("'") ? "\\&" + line : line;
  }
}
