package faintwind.job.design;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import faintwind.physics.sheet.DesignSheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Designs as the journal keeps them, worked out once each: opening a folder again after every entry
 * asks for the same ones. Not safe for two threads.
 */
public final class KeptDesigns {
  private static final int MOST = 64;

  private final Catalogue catalogue;
  private final Map<String, Optional<Sized>> known = new LinkedHashMap<>();

  /** By the design without its name: a class makes one under twelve names. */
  private final Map<Design, DesignSheet> sheets = new LinkedHashMap<>();

  private KeptDesigns(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * With the parts that ship with the program.
   *
   * @throws IOException where the program's own files cannot be read
   */
  public static KeptDesigns withShippedParts() throws IOException {
    Checked<Catalogue> parts = Library.read(Optional.empty());
    if (parts instanceof Checked.Ok<Catalogue> catalogue) {
      return new KeptDesigns(catalogue.value());
    }
    throw new IOException(parts.problems().toString());
  }

  /** A design with its sheet; empty where the text is no design that can be worked out. */
  public Optional<Sized> sized(String json) throws IOException {
    Optional<Sized> before = known.get(json);
    if (before != null) {
      return before;
    }
    Optional<Sized> sized =
        DesignFile.stored(json, catalogue)
            .fold((stored, notes) -> Optional.of(sized(stored)), problems -> Optional.empty());
    if (known.size() >= MOST) {
      known.clear();
    }
    known.put(json, sized);
    return sized;
  }

  private Sized sized(DesignFile.Stored stored) {
    Design design = stored.design();
    if (sheets.size() >= MOST) {
      sheets.clear();
    }
    DesignSheet sheet = sheets.computeIfAbsent(design.named(""), DesignSheet::of);
    return new Sized(stored, sheet.named(design.name()));
  }

  /** The sheet of a design; empty where the text is no design that can be worked out. */
  public Optional<DesignSheet> sheet(String json) {
    try {
      return sized(json).map(Sized::sheet);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Such as "copper 12.7 mm, bare". */
  public static String describe(Design design) {
    BallDesign ball = design.ball();
    double diameter_mm = NumberText.convert(ball.diameter_m().nominal(), "m", "mm");
    String plain = String.valueOf(Math.round(diameter_mm * 10) / 10.0);
    return ball.metal().label().name() + " " + plain + " mm, " + ball.coat().label().name();
  }
}
