package faintwind.terminal;

import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A number of the command line. A decimal comma counts as a decimal point; a number with both, such
 * as one with thousands marks, is none.
 */
public final class DecimalValue implements ITypeConverter<Double> {
  private static final Pattern COMMA = Pattern.compile("[-+]?\\d*,\\d+([eE][-+]?\\d+)?");

  @Override
  public Double convert(String value) {
    try {
      return Double.valueOf(COMMA.matcher(value).matches() ? value.replace(',', '.') : value);
    } catch (NumberFormatException e) {
      throw new TypeConversionException("'" + value + "' is not a number");
    }
  }
}
