package faintwind.files.design;

import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.part.BatteryType;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Coat;
import faintwind.physics.part.Label;
import faintwind.physics.part.LoggerProfile;
import faintwind.physics.part.Metal;
import faintwind.physics.part.ResistorStyle;
import faintwind.physics.part.ThermocoupleType;
import faintwind.physics.part.Wire;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Looks up a design's parts and gathers everything that is wrong or assumed on the way. */
final class DesignParts {
  private final Catalogue catalogue;
  private final Where where;
  private final List<Problem> problems = new ArrayList<>();
  private final List<String> assumed = new ArrayList<>();

  DesignParts(Catalogue catalogue, Where where) {
    this.catalogue = catalogue;
    this.where = where;
  }

  Where where() {
    return where;
  }

  void assume(String key, String value) {
    assumed.add(key + " = " + value);
  }

  void refuse(Problem problem) {
    problems.add(problem);
  }

  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** One note that names every value assumed; none where all was given. */
  List<Problem> notes() {
    return assumed.isEmpty()
        ? List.of()
        : List.of(Problem.warning("design.assumed", where, String.join(", ", assumed)));
  }

  Optional<Metal> metal(DesignKeys keys, String id) {
    return required(
        catalogue.metal(id), keys.where("metal"), id, ids(catalogue.metals(), Metal::label));
  }

  Optional<Coat> coat(DesignKeys keys, String id) {
    return required(
        catalogue.coat(id), keys.where("coat"), id, ids(catalogue.coats(), Coat::label));
  }

  Optional<Wire> wire(String key, DesignKeys keys, String id) {
    return required(catalogue.wire(id), keys.where(key), id, ids(catalogue.wires(), Wire::label));
  }

  Optional<ThermocoupleType> thermocouple(DesignKeys keys, String letter) {
    String known = String.join(", ", catalogue.thermocoupleTable().letters());
    return required(catalogue.thermocouple(letter), keys.where("thermocouple"), letter, known);
  }

  Optional<ResistorStyle> resistor(DesignKeys keys, String id) {
    String known = ids(catalogue.resistors(), ResistorStyle::label);
    return required(catalogue.resistor(id), keys.where("resistor"), id, known);
  }

  Optional<LoggerProfile> logger(DesignKeys keys, String id) {
    String known = ids(catalogue.loggers(), LoggerProfile::label);
    return required(catalogue.logger(id), keys.where("logger"), id, known);
  }

  Optional<BatteryType> battery(DesignKeys keys, String id) {
    String known = ids(catalogue.batteries(), BatteryType::label);
    return required(catalogue.battery(id), keys.where("battery"), id, known);
  }

  private <T> Optional<T> required(Optional<T> part, Where place, String id, String known) {
    if (part.isEmpty()) {
      refuse(Problem.error("design.unknown-part", place, id, known));
    }
    return part;
  }

  private static <T> String ids(List<T> parts, Function<T, Label> label) {
    return parts.stream().map(p -> label.apply(p).id()).collect(Collectors.joining(", "));
  }
}
