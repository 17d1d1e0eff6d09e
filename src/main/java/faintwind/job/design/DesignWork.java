package faintwind.job.design;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.message.Where;
import faintwind.physics.choice.DesignEdit;
import faintwind.physics.choice.DesignField;
import faintwind.physics.part.Catalogue;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Works on a design before anything is bought: changes a choice, says what follows. */
public final class DesignWork {
  /** Where nothing was decided yet: half-inch copper at a quarter of a watt. */
  private static final String START =
      """
      {
        "format": "faintwind-design/1",
        "name": "new",
        "ball": {"metal": "copper", "diameter_mm": 12.7},
        "heater": {"wanted_power_W": 0.25, "tolerance_pct": 1},
        "supply": {"voltage_V": 5, "tolerance_pct": 2},
        "sense": {"thermocouple": "T", "awg": 36, "logger": "logger-24bit-256mV"}
      }
      """;

  private final Catalogue parts;

  private DesignWork(Catalogue parts) {
    this.parts = parts;
  }

  /**
   * Reads the parts that ship with the program and those of a folder.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<DesignWork> open(Optional<Path> ownParts) throws IOException {
    return Library.read(ownParts).map(DesignWork::new);
  }

  /** What a design can be made of. */
  public Catalogue parts() {
    return parts;
  }

  /** Where nothing was decided yet. */
  public Checked<Sized> start() throws IOException {
    return read(START);
  }

  /** A design on record, by the text of its file. */
  public Checked<Sized> read(String text) throws IOException {
    return DesignFile.stored(text, parts).map(Sized::of);
  }

  /** The design with some fields said otherwise; refused with everything that is wrong with it. */
  public Checked<Sized> with(Sized from, Map<DesignField, String> changes) {
    return DesignEdit.with(from.design(), changes, parts, Where.NOWHERE)
        .map(design -> Sized.of(from.stored().with(design)));
  }
}
