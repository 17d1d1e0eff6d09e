package faintwind.calibration.draft;

import faintwind.calibration.profile.Meaning;
import faintwind.calibration.profile.ValueUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What the words over a column say it means: English words, and those of some neighbours, with the
 * unit beside them. What fits nothing is left to the person.
 */
final class HeadWords {
  private static final Pattern TIME =
      Pattern.compile("t|.*(time|zeit|elapsed|temps|tiempo|tempo|sec|millis|micros|datum|date).*");
  private static final Pattern HEATED =
      Pattern.compile(".*(heated|hot|heiß|heiss|beheizt|chaud).*");
  private static final Pattern REFERENCE =
      Pattern.compile(".*(ref|cold ball|unheated|kalt|froid).*");
  private static final Pattern TERMINAL =
      Pattern.compile(".*(terminal|junction|cjc|klemme|borne).*");
  private static final Pattern SUPPLY =
      Pattern.compile(".*(suppl|batt|versorg|heater|heiz|power|alim|speis|akku).*");
  private static final Pattern SIGNAL =
      Pattern.compile(".*(signal|delta|diff|dt|Δ|sensor|volt|spann|tension|adc|raw|count).*");

  private HeadWords() {}

  static boolean isTime(List<String> heads) {
    return heads.stream().findFirst().filter(h -> TIME.matcher(plain(h)).matches()).isPresent();
  }

  /** The meaning of a column of numbers; empty where it cannot be told. */
  static Optional<Meaning> meaning(List<String> heads, Optional<ValueUnit> unit) {
    String words = heads.isEmpty() ? "" : plain(heads.get(0));
    if (unit.isEmpty()) {
      return SIGNAL.matcher(words).matches() ? Optional.of(Meaning.SIGNAL) : Optional.empty();
    }
    return switch (unit.get().dimension()) {
      case PRESSURE -> Optional.of(Meaning.PRESSURE);
      case SHARE -> Optional.of(Meaning.HUMIDITY);
      case COUNTS -> Optional.of(Meaning.SIGNAL);
      case VOLTAGE ->
          Optional.of(SUPPLY.matcher(words).matches() ? Meaning.SUPPLY : Meaning.SIGNAL);
      case TEMPERATURE -> Optional.of(temperature(words, unit.get()));
    };
  }

  private static Meaning temperature(String words, ValueUnit unit) {
    if (HEATED.matcher(words).matches()) {
      return Meaning.HEATED;
    }
    if (REFERENCE.matcher(words).matches()) {
      return Meaning.REFERENCE;
    }
    if (TERMINAL.matcher(words).matches()) {
      return Meaning.TERMINAL;
    }
    return unit == ValueUnit.KELVIN ? Meaning.SIGNAL : Meaning.AIR;
  }

  private static String plain(String head) {
    String bare = head.replaceAll("[\\[(].*[\\])]", " ").replace('_', ' ');
    return bare.strip().toLowerCase(Locale.ROOT);
  }
}
