package faintwind.job.design;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignEdit;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.physics.advice.Prices;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignChange;
import faintwind.physics.part.Catalogue;
import faintwind.physics.sheet.DesignSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Works on a design before anything is bought: changes a choice, says what follows. */
public final class DesignWork {
  /** Where nothing was decided yet: half-inch copper at a quarter of a watt. */
  public static final String START =
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
   * A design that could be read, its text, and what follows.
   *
   * @param text the design file
   * @param sized what it says, what follows, and the prices typed
   */
  public record Worked(String text, Size.Sized sized) {
    public Design design() {
      return sized.design();
    }

    public DesignSheet sheet() {
      return sized.sheet();
    }
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

  /** A design that nobody typed, such as a suggestion, as the text of its file. */
  public static String text(Design design, Prices prices) {
    return DesignFile.text(design, prices);
  }

  /** The design with some choices changed; refused with everything that is wrong with it. */
  public Checked<Worked> with(String text, List<DesignChange> changes) throws IOException {
    Checked<String> changed = DesignEdit.apply(text, changes);
    if (!(changed instanceof Checked.Ok<String> ok)) {
      return Checked.refused(changed.problems());
    }
    Prices prices = DesignFile.prices(ok.value());
    return DesignFile.parse(ok.value(), parts)
        .map(d -> new Worked(ok.value(), new Size.Sized(d, DesignSheet.of(d), prices)));
  }
}
