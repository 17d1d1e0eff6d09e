package faintwind.physics;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The thermocouple types that are known, by letter; the shell reads it and hands it to the core.
 */
public record ThermocoupleTable(List<Thermocouple> types) {

  public ThermocoupleTable {
    types = types.stream().sorted(Comparator.comparing(Thermocouple::letter)).toList();
  }

  /** The type of a letter, upper or lower case; empty where it is not known. */
  public Optional<Thermocouple> type(String letter) {
    return types.stream().filter(t -> t.letter().equalsIgnoreCase(letter.strip())).findFirst();
  }

  /** The letters that are known, in order. */
  public List<String> letters() {
    return types.stream().map(Thermocouple::letter).toList();
  }
}
