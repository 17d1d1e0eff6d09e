package faintwind.files;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name that a head stands for: units in brackets are taken for those at the end of our names.
 *
 * @param name one of the names asked for, or the head as it stands
 * @param factor from the head's unit to that of the name
 */
public record HeadName(String name, double factor) {
  private static final Pattern BRACKETS = Pattern.compile("(.+?)\\s*[\\[(]\\s*(.+?)\\s*[\\])]");

  /** Units with signs that our names spell out. */
  private static final Map<String, String> WORDS =
      Map.of("°C", "C", "%", "pct", "µV", "uV", "μV", "uV", "m/s", "m_s", "mbar", "hPa");

  /** Factors to the unit of our names: {@code from>to}. */
  private static final Map<String, Double> FACTORS =
      Map.of(
          "cm>mm", 10.0,
          "m>mm", 1000.0,
          "min>s", 60.0,
          "h>s", 3600.0,
          "ms>s", 1e-3,
          "Pa>hPa", 0.01,
          "kPa>hPa", 10.0);

  /** Finds the name. */
  public static HeadName of(String head, Set<String> known) {
    Matcher parts = BRACKETS.matcher(head);
    if (known.contains(head) || !parts.matches()) {
      return new HeadName(head, 1);
    }
    String begin = parts.group(1).strip().replaceAll("[\\s_]+", "_") + "_";
    String unit = WORDS.getOrDefault(parts.group(2), parts.group(2));
    if (known.contains(begin + unit)) {
      return new HeadName(begin + unit, 1);
    }
    return FACTORS.entrySet().stream()
        .filter(factor -> factor.getKey().startsWith(unit + ">"))
        .map(factor -> named(begin, factor, known))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(new HeadName(head, 1));
  }

  private static Optional<HeadName> named(
      String begin, Map.Entry<String, Double> factor, Set<String> known) {
    String to = factor.getKey().substring(factor.getKey().indexOf('>') + 1);
    return known.contains(begin + to)
        ? Optional.of(new HeadName(begin + to, factor.getValue()))
        : Optional.empty();
  }
}
