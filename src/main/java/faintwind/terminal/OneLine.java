package faintwind.terminal;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A name of the command line: one line, without characters that a terminal obeys. */
public final class OneLine implements ITypeConverter<String> {
  @Override
  public String convert(String value) {
    if (value.chars().anyMatch(c -> Character.isISOControl(c) && c != '\t')) {
      throw new TypeConversionException("'" + value + "' is not one line");
    }
    return value;
  }
}
