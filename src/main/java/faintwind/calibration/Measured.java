package faintwind.calibration;

import faintwind.message.Field;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * When, where and with what the runs of a calibration were measured. It counts from the end of the
 * measurement on.
 *
 * @param first when the first recording began
 * @param last when the last one ended
 * @param basis who says so
 * @param by what else is known
 */
public record Measured(OffsetDateTime first, OffsetDateTime last, Basis basis, Map<By, String> by) {

  /** Who says when it was. */
  public enum Basis {
    /** The recordings carry their start. */
    RECORDINGS,
    /** A person said the day. */
    STATED;

    /** The word in files and bundle keys. */
    public String word() {
      return Field.word(this);
    }
  }

  /** What a person or the record may add. */
  public enum By {
    OPERATOR,
    PLACE,
    ARM,
    METER,
    LOGGER;

    /** The word in files and bundle keys. */
    public String word() {
      return Field.word(this);
    }
  }

  public Measured {
    if (last.isBefore(first)) {
      throw new IllegalArgumentException("last = " + last + ", before first = " + first);
    }
    Map<By, String> ordered = new EnumMap<>(By.class);
    by.forEach(
        (which, text) -> {
          if (!text.isBlank()) {
            ordered.put(which, text.strip());
          }
        });
    by = Collections.unmodifiableMap(ordered);
  }

  /** What is known of one circumstance. */
  public Optional<String> by(By which) {
    return Optional.ofNullable(by.get(which));
  }
}
