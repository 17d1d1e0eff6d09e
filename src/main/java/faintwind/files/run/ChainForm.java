package faintwind.files.run;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import faintwind.calibration.run.SignalChain;
import java.util.Map;
import java.util.Optional;

/** The keys of a chain, in its own file and in a calibration. */
public interface ChainForm {
  /** The types it speaks of. */
  Map<Class<?>, Class<?>> TYPES =
      Map.of(SignalChain.class, ChainForm.class, SignalChain.Input.class, Input.class);

  @JsonProperty("type")
  Optional<String> thermocouple();

  @JsonUnwrapped
  SignalChain.Resolution resolution();

  /** The word that stands for an input in the file. */
  enum Input {
    @JsonProperty("voltage")
    VOLTAGE,
    @JsonProperty("difference_K")
    DIFFERENCE_K,
    @JsonProperty("compensated_C")
    COMPENSATED_C
  }
}
