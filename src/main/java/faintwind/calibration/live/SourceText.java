package faintwind.calibration.live;

import faintwind.calibration.live.SourceAddress.From;
import faintwind.calibration.live.SourceAddress.Parity;
import faintwind.calibration.live.SourceAddress.Sender;
import faintwind.calibration.run.SignalUnit;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the spelling of a source: {@code KIND:PLACE?key=value&key=value}. For one use. */
public final class SourceText {
  private static final Pattern SPELLING =
      Pattern.compile("([a-z]+):(.*?)(?:\\?((?:[a-z0-9_]+=[^&?=]*)(?:&[a-z0-9_]+=[^&?=]*)*))?");
  private static final String KINDS = "serial:, tcp:, udp:, file:, raw:, typed:, virtual:";

  private final String text;
  private final Map<String, String> options = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  private SourceText(String text) {
    this.text = text;
  }

  /** The address, or everything that is wrong with its spelling. */
  public static Checked<SourceAddress> read(String text) {
    return new SourceText(text).address();
  }

  private Checked<SourceAddress> address() {
    Matcher m = SPELLING.matcher(text);
    if (!m.matches()) {
      return Checked.refused(error("source.unknown", text, KINDS));
    }
    String place = m.group(2);
    options(m.group(3) == null ? "" : m.group(3));
    SourceAddress address =
        switch (m.group(1)) {
          case "serial" -> serial(place);
          case "tcp" -> tcp(place);
          case "udp" -> udp(place);
          case "file" -> file(place);
          case "raw" -> raw(place);
          case "typed" -> typed(place);
          case "virtual" -> virtual(place);
          default -> {
            problems.add(error("source.unknown", text, KINDS));
            yield new SourceAddress.Raw(text);
          }
        };
    return problems.isEmpty() ? Checked.ok(address) : Checked.refused(problems);
  }

  private void options(String query) {
    for (String pair : query.isEmpty() ? List.<String>of() : List.of(query.split("&", -1))) {
      int at = pair.indexOf('=');
      options.put(pair.substring(0, at), pair.substring(at + 1));
    }
  }

  private SourceAddress serial(String port) {
    allow("baud", "bits", "parity", "stop");
    needed(port, "serial:/dev/ttyUSB0");
    int baud = whole("baud", 9600, 50, 4_000_000);
    int bits = whole("bits", 8, 5, 8);
    int stop = whole("stop", 1, 1, 2);
    return new SourceAddress.Serial(port, baud, bits, word("parity", Parity.NONE), stop);
  }

  private SourceAddress tcp(String place) {
    allow();
    int colon = place.lastIndexOf(':');
    String host = colon < 0 ? place : place.substring(0, colon);
    needed(host, "tcp:192.0.2.7:5000");
    return new SourceAddress.Tcp(host, port(colon < 0 ? "" : place.substring(colon + 1)));
  }

  private SourceAddress udp(String place) {
    allow("sender");
    int colon = place.lastIndexOf(':');
    String address = place.substring(0, Math.max(0, colon));
    int port = port(place.substring(colon + 1));
    return new SourceAddress.Udp(address, port, word("sender", Sender.PORT));
  }

  private SourceAddress file(String path) {
    allow("from");
    needed(path, "file:log.csv");
    return new SourceAddress.GrowingFile(path, word("from", From.START));
  }

  private SourceAddress raw(String path) {
    allow();
    needed(path, "raw:log.raw");
    return new SourceAddress.Raw(path);
  }

  private SourceAddress typed(String place) {
    allow("every_s", "unit");
    nothing(place, "typed:?every_s=30&unit=mV");
    double every_s = number("every_s", 30, 1, 3600);
    String unit = options.getOrDefault("unit", "mV");
    for (SignalUnit known : SignalUnit.values()) {
      if (unit.equals(known.column().substring(known.column().indexOf('_') + 1))) {
        return new SourceAddress.Typed(every_s, known);
      }
    }
    problems.add(error("source.word", unit, "unit", "K, V, mV, uV, counts"));
    return new SourceAddress.Typed(every_s, SignalUnit.SIGNAL_MV);
  }

  private SourceAddress virtual(String place) {
    allow("seed", "pace", "speed_m_s");
    nothing(place, "virtual:?seed=7&pace=1");
    long seed = whole("seed", 1, 0, Integer.MAX_VALUE);
    double pace = number("pace", 1, 0.1, 1e6);
    return new SourceAddress.Virtual(seed, pace, number("speed_m_s", 0, 0, 10));
  }

  private void allow(String... keys) {
    Set<String> known = Set.of(keys);
    for (String key : options.keySet()) {
      if (!known.contains(key)) {
        String all = keys.length == 0 ? "–" : String.join(", ", keys);
        problems.add(error("source.option", key, all));
      }
    }
  }

  private void needed(String place, String example) {
    if (place.isBlank()) {
      problems.add(error("source.place-missing", text, example));
    }
  }

  private void nothing(String place, String example) {
    if (!place.isBlank()) {
      problems.add(error("source.place-idle", place, example));
    }
  }

  private int port(String found) {
    if (found.matches("\\d{1,5}")) {
      int port = Integer.parseInt(found);
      if (port >= 1 && port <= 65_535) {
        return port;
      }
    }
    problems.add(error("source.port", found));
    return 1;
  }

  private int whole(String key, int usual, int low, int high) {
    String found = options.getOrDefault(key, String.valueOf(usual));
    if (found.matches("\\d{1,10}")) {
      long value = Long.parseLong(found);
      if (value >= low && value <= high) {
        return (int) value;
      }
    }
    problems.add(error("source.number", found, key, low + " … " + high));
    return usual;
  }

  private double number(String key, double usual, double low, double high) {
    String found = options.getOrDefault(key, String.valueOf(usual));
    if (found.matches("\\d{1,9}(\\.\\d{0,9})?")) {
      double value = Double.parseDouble(found);
      if (value >= low && value <= high) {
        return value;
      }
    }
    problems.add(error("source.number", found, key, low + " … " + high));
    return usual;
  }

  private <E extends Enum<E>> E word(String key, E usual) {
    String found = options.getOrDefault(key, lower(usual));
    List<String> all = new ArrayList<>();
    for (E one : usual.getDeclaringClass().getEnumConstants()) {
      if (lower(one).equals(found)) {
        return one;
      }
      all.add(lower(one));
    }
    problems.add(error("source.word", found, key, String.join(", ", all)));
    return usual;
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }

  private static Problem error(String id, String found, String... details) {
    return Problem.error(id, Where.NOWHERE, found, details);
  }
}
