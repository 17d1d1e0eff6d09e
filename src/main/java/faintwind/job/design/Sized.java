package faintwind.job.design;

import faintwind.files.design.DesignFile;
import faintwind.physics.advice.Prices;
import faintwind.physics.design.Design;
import faintwind.physics.sheet.DesignSheet;

/**
 * A design with its sheet.
 *
 * @param stored the design, and what its file holds beside it
 * @param sheet what follows
 */
public record Sized(DesignFile.Stored stored, DesignSheet sheet) {
  static Sized of(DesignFile.Stored stored) {
    return new Sized(stored, DesignSheet.of(stored.design()));
  }

  public Design design() {
    return stored.design();
  }

  public Prices prices() {
    return stored.prices();
  }

  /** The text of its file. */
  public String text() {
    return stored.text();
  }

  /** The same under another name, with another note. */
  Sized named(DesignFile.Head head) {
    return new Sized(stored.named(head), sheet.named(head.name()));
  }

  /** The same with other prices. */
  public Sized with(Prices prices) {
    return new Sized(stored.with(prices), sheet);
  }

  /** Another design whose sheet is known, with the same prices. */
  public Sized with(Design design, DesignSheet follows) {
    return new Sized(stored.with(design), follows);
  }
}
