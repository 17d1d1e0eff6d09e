package faintwind.files.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalChain.Input;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** A chain as it stands in a file that agrees with the schema. */
public final class ChainJson {
  private ChainJson() {}

  public static ObjectNode of(SignalChain chain) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("input", ChainFile.word(chain.input()));
    chain.thermocouple().ifPresent(type -> json.put("type", type));
    chain.gain().ifPresent(gain -> json.put("gain", gain));
    chain.offset().ifPresent(offset -> json.put("offset", offset));
    json.put("sign", chain.sign());
    chain.resolution().range().ifPresent(range -> json.put("range", range));
    chain.resolution().bits().ifPresent(bits -> json.put("bits", bits));
    chain.resolution().noise().ifPresent(noise -> json.put("noise", noise));
    return json;
  }

  public static SignalChain chain(JsonNode json) {
    String word = json.path("input").asText();
    Input input =
        Arrays.stream(Input.values())
            .filter(i -> ChainFile.word(i).equals(word))
            .findFirst()
            .orElseThrow();
    OptionalInt bits =
        json.hasNonNull("bits") ? OptionalInt.of(json.get("bits").intValue()) : OptionalInt.empty();
    SignalChain.Resolution resolution =
        new SignalChain.Resolution(number(json, "range"), bits, number(json, "noise"));
    return new SignalChain(
        input,
        text(json, "type"),
        number(json, "gain"),
        number(json, "offset"),
        json.path("sign").intValue(),
        resolution);
  }

  public static OptionalDouble number(JsonNode json, String key) {
    return json.hasNonNull(key)
        ? OptionalDouble.of(json.get(key).doubleValue())
        : OptionalDouble.empty();
  }

  public static Optional<String> text(JsonNode json, String key) {
    return json.hasNonNull(key) ? Optional.of(json.get(key).asText()) : Optional.empty();
  }
}
