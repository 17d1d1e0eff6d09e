package faintwind.job.design;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.physics.advice.Substitution;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.choice.DesignField;
import faintwind.physics.design.Design;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a design and works out everything that follows from it. */
public final class Size {
  private Size() {}

  /**
   * Sizes a design with the parts that ship with the program.
   *
   * @param design the design file
   * @return design and sheet, with a note of what was assumed; or every problem of the file
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Sized> run(Path design) throws IOException {
    return run(design, Optional.empty(), Map.of());
  }

  /**
   * Sizes a design with the parts that ship with the program and those of a folder.
   *
   * @param design the design file
   * @param ownParts folder with {@code metals/}, {@code wires/} … of the user's own
   * @param changes fields to say otherwise than the file, in order
   */
  public static Checked<Sized> run(
      Path design, Optional<Path> ownParts, Map<DesignField, String> changes) throws IOException {
    Checked<DesignWork> opened = DesignWork.open(ownParts);
    if (!(opened instanceof Checked.Ok<DesignWork> work)) {
      return Checked.refused(opened.problems());
    }
    return DesignFile.stored(design, work.value().parts())
        .map(Sized::of)
        .then(s -> changes.isEmpty() ? Checked.ok(s) : work.value().with(s, changes));
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
