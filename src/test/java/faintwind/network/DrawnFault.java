package faintwind.network;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One faulty build of {@code opponent/build-faults.json}: its readings by ours, its judgement. */
record DrawnFault(JsonNode node) {
  /** Their checks and places in the words of our readings. */
  private static final Map<String, String> OURS = ours();

  /** What a sound build gives after ten minutes of heating, mV: so they say. */
  private static final double SOUND_mV = 0.98;

  private static Map<String, String> ours() {
    Map<String, String> ours = new HashMap<>();
    String all =
        """
        0|tip|tip=meter-tips
        1|heater lead A|heater lead B=heater-alone
        3|heater lead A|heated ball=lead-a-ball
        3|heater lead B|heated ball=lead-b-ball
        3|heater lead A|heater lead B=lead-to-lead
        4|loop end +|loop end -=loop
        4|loop end +|heated ball=loop-heated-ball
        4|loop end +|reference ball=loop-reference-ball
        4|loop end +|heater lead A=loop-heater
        4|heated ball|reference ball=ball-ball
        4b|heater lead A|heated ball=lead-a-ball-again
        4b|heater lead B|heated ball=lead-b-ball-again
        4b|heater lead A|heater lead B=lead-to-lead-again
        5a|cable near end heater A|cable far end heater A=cable-heater-plus
        5a|cable near end heater B|cable far end heater B=cable-heater-minus
        5a|cable near end signal +|cable far end signal +=cable-signal-plus
        5a|cable near end signal -|cable far end signal -=cable-signal-minus
        5a|cable far end heater A|cable far end heater B=cable-heater-pair
        5a|cable far end signal +|cable far end signal -=cable-signal-pair
        5a|cable far end heater A|cable far end signal +=cable-heater-signal
        5b|cable far end heater A|cable far end heater B=joined-heater-pair
        5b|cable far end signal +|cable far end signal -=joined-signal-pair
        5b|cable far end heater A|heated ball=joined-heater-ball
        5b|cable far end signal +|heated ball=joined-signal-heated
        5b|cable far end signal +|reference ball=joined-signal-reference
        5b|cable far end heater A|cable far end signal +=joined-heater-signal
        """;
    all.lines().map(line -> line.split("=", -1)).forEach(pair -> ours.put(pair[0], pair[1]));
    return ours;
  }

  String id() {
    return node.path("id").asText();
  }

  String title() {
    return node.path("title").asText();
  }

  List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    node.path(key).forEach(text -> texts.add(text.asText()));
    return texts;
  }

  /** What is typed, by reading of ours, as one of their meters shows it. */
  Map<String, String> typed(String meter, double rise_mV) {
    Map<String, String> typed = new HashMap<>();
    for (JsonNode reading : node.path("readings")) {
      String check = reading.path("check").asText().split(" ", -1)[0];
      boolean first =
          !reading
              .path("check")
              .asText()
              .matches(
                  ".*(again,|again on|again after \\d|"
                      + "again after alcohol|polarity|joint moved).*");
      JsonNode between = reading.path("between");
      String place = check + "|" + between.path(0).asText() + "|" + between.path(1).asText();
      if (first && OURS.containsKey(place)) {
        shown(reading.path(meter)).ifPresent(text -> typed.put(OURS.get(place), text));
      }
      if (check.equals("6") && reading.has("open_V")) {
        supply(reading, typed);
      }
      if (check.equals("7")) {
        typed.put("zero-signal", zero(reading));
      }
      if (check.equals("8") && reading.path("signal_mV").isNumber()) {
        double share = reading.path("signal_mV").asDouble() / SOUND_mV;
        typed.put("sense-change", share * rise_mV + " mV");
      }
    }
    return typed;
  }

  /** A meter switched by hand shows on a range; one that picks its own is named to the program. */
  private static Optional<String> shown(JsonNode display) {
    if (display.path("shown").isNumber()) {
      String unit = display.path("unit").asText();
      String symbol = unit.equals("Mohm") ? "MΩ" : unit.equals("kohm") ? "kΩ" : "Ω";
      return Optional.of(display.path("shown").asText() + " " + symbol);
    }
    String range = display.path("range").asText();
    return display.path("shown").asText().equals("OL")
        ? Optional.of("OL " + range.replace("M", " MΩ").replaceAll("^(\\d+)$", "$1 Ω"))
        : Optional.empty();
  }

  /** The voltage is measured without the meter for current in the lead; the note says it then. */
  private static void supply(JsonNode reading, Map<String, String> typed) {
    boolean without = reading.path("note").asText().contains("5.01 V at the balls");
    typed.put("supply-open", reading.path("open_V").asText() + " V");
    typed.put("supply-volts", without ? "5.01 V" : reading.path("at_the_balls_V").asText() + " V");
    typed.put("supply-current", reading.path("current_mA").asText() + " mA");
  }

  /** One build's input shows a temperature; it is typed into the field for mV as it shows. */
  private static String zero(JsonNode reading) {
    if (reading.path("signal_mV").isNumber()) {
      return reading.path("signal_mV").asText() + " mV";
    }
    return reading.path("note").asText().contains("24.1 C") ? "24.1" : "0.004 mV";
  }
}
