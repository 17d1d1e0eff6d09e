package faintwind.files.calibration;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import faintwind.calibration.Measured;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** When and with what the runs were measured, with the keys of the file. */
record StoredMeasured(
    String first,
    String last,
    String basis,
    Optional<String> operator,
    Optional<String> place,
    Optional<String> arm,
    @JsonUnwrapped StoredTools tools) {

  record StoredTools(Optional<String> meter, Optional<String> logger) {}

  static StoredMeasured of(Measured m) {
    return new StoredMeasured(
        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(m.first()),
        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(m.last()),
        m.basis().word(),
        m.by(Measured.By.OPERATOR),
        m.by(Measured.By.PLACE),
        m.by(Measured.By.ARM),
        new StoredTools(m.by(Measured.By.METER), m.by(Measured.By.LOGGER)));
  }

  Measured toModel() {
    Map<Measured.By, String> by = new EnumMap<>(Measured.By.class);
    operator.ifPresent(text -> by.put(Measured.By.OPERATOR, text));
    place.ifPresent(text -> by.put(Measured.By.PLACE, text));
    arm.ifPresent(text -> by.put(Measured.By.ARM, text));
    tools.meter().ifPresent(text -> by.put(Measured.By.METER, text));
    tools.logger().ifPresent(text -> by.put(Measured.By.LOGGER, text));
    Measured.Basis known =
        basis.equals(Measured.Basis.STATED.word())
            ? Measured.Basis.STATED
            : Measured.Basis.RECORDINGS;
    return new Measured(OffsetDateTime.parse(first), OffsetDateTime.parse(last), known, by);
  }
}
