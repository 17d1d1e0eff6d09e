package faintwind.physics.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Everything that a design can be made of, as read from data files. */
public record Catalogue(
    List<Metal> metals,
    List<Coat> coats,
    List<Wire> wires,
    List<ThermocoupleType> thermocouples,
    List<ResistorStyle> resistors,
    List<LoggerProfile> loggers,
    List<BatteryType> batteries) {

  public Catalogue {
    metals = List.copyOf(metals);
    coats = List.copyOf(coats);
    wires = List.copyOf(wires);
    thermocouples = List.copyOf(thermocouples);
    resistors = List.copyOf(resistors);
    loggers = List.copyOf(loggers);
    batteries = List.copyOf(batteries);
  }

  public Optional<Metal> metal(String id) {
    return find(metals, Metal::label, id);
  }

  public Optional<Coat> coat(String id) {
    return find(coats, Coat::label, id);
  }

  public Optional<Wire> wire(String id) {
    return find(wires, Wire::label, id);
  }

  /** A thermocouple type by its letter. */
  public Optional<ThermocoupleType> thermocouple(String letter) {
    return find(thermocouples, ThermocoupleType::label, letter.strip().toLowerCase(Locale.ROOT));
  }

  public Optional<ResistorStyle> resistor(String id) {
    return find(resistors, ResistorStyle::label, id);
  }

  public Optional<LoggerProfile> logger(String id) {
    return find(loggers, LoggerProfile::label, id);
  }

  public Optional<BatteryType> battery(String id) {
    return find(batteries, BatteryType::label, id);
  }

  private static <T> Optional<T> find(List<T> parts, Function<T, Label> label, String id) {
    return parts.stream().filter(p -> label.apply(p).id().equals(id)).findFirst();
  }
}
