package faintwind.job.design;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.physics.advice.Prices;
import faintwind.physics.advice.Substitution;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import faintwind.physics.sheet.DesignSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads a design and works out everything that follows from it. */
public final class Size {
  private Size() {}

  /**
   * A design with its sheet.
   *
   * @param design the design
   * @param sheet what follows
   * @param prices of its parts, as typed
   */
  public record Sized(Design design, DesignSheet sheet, Prices prices) {
    /** A design whose prices do not matter. */
    public Sized(Design design, DesignSheet sheet) {
      this(design, sheet, Prices.NONE);
    }
  }

  /**
   * Sizes a design with the parts that ship with the program.
   *
   * @param design the design file
   * @return design and sheet, with a note of what was assumed; or every problem of the file
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Sized> run(Path design) throws IOException {
    return run(design, Optional.empty());
  }

  /**
   * Sizes a design with the parts that ship with the program and those of a folder.
   *
   * @param design the design file
   * @param ownParts folder with {@code metals/}, {@code wires/} … of the user's own
   */
  public static Checked<Sized> run(Path design, Optional<Path> ownParts) throws IOException {
    Checked<Catalogue> parts = Library.read(ownParts);
    if (!(parts instanceof Checked.Ok<Catalogue> catalogue)) {
      return Checked.refused(parts.problems());
    }
    Checked<Design> read = DesignFile.read(design, catalogue.value());
    if (!read.isOk()) {
      return Checked.refused(read.problems());
    }
    Prices prices = DesignFile.prices(design);
    return read.map(d -> new Sized(d, DesignSheet.of(d), prices));
  }

  /** Two or three other designs for the same wish, from the parts that ship with the program. */
  public static List<Suggestion> suggestions(Design design) throws IOException {
    return DesignAdvice.suggestions(design, Library.shipped());
  }

  /** What the usual substitutions would change. */
  public static List<Substitution> substitutions(Design design) throws IOException {
    return Substitution.of(design, Library.shipped());
  }
}
