package faintwind.physics.choice;

import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Where;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.LoggerProfile;
import java.util.Map;

/** A design with some fields changed, and what follows from that. */
public final class DesignEdit {
  /** Id of a logger that a person describes. */
  public static final String OWN = LoggerProfile.own("").id();

  private final Design design;
  private final Map<String, String> texts;

  private DesignEdit(Design design) {
    this.design = design;
    this.texts = DesignField.texts(design);
  }

  /**
   * The design with other texts; refused with everything that is wrong with it then.
   *
   * @param changes in order; an empty text takes the usual value
   */
  public static Checked<Design> with(
      Design design, Map<DesignField, String> changes, Catalogue parts, Where where) {
    DesignEdit edit = new DesignEdit(design);
    changes.forEach(edit::say);
    return DesignTexts.design(edit.texts, parts, where)
        .fold((changed, assumed) -> Checked.ok(changed), Checked::refused);
  }

  /** Power wanted, W, or what the resistor chosen takes. */
  public static double power_W(Design design) {
    double volts = design.supply().voltage_V().nominal();
    return design
        .heater()
        .wanted_W()
        .orElse(volts * volts / design.heater().resistance_ohm().nominal());
  }

  private void say(DesignField field, String text) {
    put(field, text);
    switch (field) {
      // another metal takes its own bare surface, unless one is given afterwards
      case METAL -> {
        without(DesignField.COAT);
        PartFields.PLATING.forEach(this::without);
      }
      case COAT -> PartFields.PLATING.forEach(this::without);
      // inches or millimetres, never both
      case DIAMETER -> without(DesignField.DIAMETER_IN, DesignField.REFERENCE_DEPTH);
      case DIAMETER_IN -> without(DesignField.DIAMETER, DesignField.REFERENCE_DEPTH);
      case REFERENCE_DEPTH -> without(DesignField.REFERENCE_BORE);
      case REFERENCE_BORE -> without(DesignField.REFERENCE_DEPTH);
      case POWER -> without(DesignField.RESISTANCE);
      case RESISTANCE -> without(DesignField.POWER);
      // the nearest value of the other series, for the same power
      case SERIES -> {
        if (!texts.containsKey(DesignField.POWER.field().id())) {
          put(DesignField.POWER, Field.plain(power_W(design)));
        }
        without(DesignField.RESISTANCE);
      }
      case REGULATOR ->
          without(DesignField.DROPOUT, DesignField.OWN_CURRENT, DesignField.EFFICIENCY);
      // without a cable its length means nothing
      case CABLE -> {
        if (text.isEmpty()) {
          without(DesignField.CABLE_LENGTH);
        }
      }
      case LOGGER -> logger(text);
      case ALTITUDE -> without(DesignField.PRESSURE);
      default -> {}
    }
  }

  /** One's own begins with the numbers of the logger before it. */
  private void logger(String id) {
    PartFields.OWN_LOGGER.forEach(this::without);
    if (id.equals(OWN)) {
      without(DesignField.LOGGER);
      LoggerProfile before = design.sense().logger();
      LoggerProfile own =
          new LoggerProfile(
              LoggerProfile.own(before.label().name()),
              before.low_V(),
              before.high_V(),
              before.bits(),
              before.noise_V(),
              before.offset_V());
      PartFields.OWN_LOGGER.forEach(f -> put(f, f.of(design.with(design.sense().with(own)))));
    }
  }

  private void put(DesignField field, String text) {
    if (text.isBlank()) {
      without(field);
    } else {
      texts.put(field.field().id(), text);
    }
  }

  private void without(DesignField... fields) {
    for (DesignField each : fields) {
      texts.remove(each.field().id());
    }
  }
}
