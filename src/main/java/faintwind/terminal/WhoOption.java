package faintwind.terminal;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The name that stands with the entries of a command. */
public final class WhoOption {
  @Option(names = "--who", paramLabel = "NAME", converter = OneLine.class, descriptionKey = "who")
  private String who = System.getProperty("user.name", "");

  public String name() {
    return who;
  }

  /** A name of the command line: one line, without characters that a terminal obeys. */
  static final class OneLine implements ITypeConverter<String> {
    @Override
    public String convert(String value) {
      if (value.chars().anyMatch(c -> Character.isISOControl(c) && c != '\t')) {
        throw new TypeConversionException("'" + value + "' is not one line");
      }
      return value;
    }
  }
}
