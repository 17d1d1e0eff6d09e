package faintwind.ui;

import faintwind.physics.design.DesignSheet;
import java.util.Optional;

/** What the window needs of designs: their sheets, and one line that describes each. */
public interface Designs {

  /** The sheet of a design file's text; empty where it cannot be worked out. */
  Optional<DesignSheet> sheetOf(String json);

  /** Such as "copper 12.7 mm, bare"; empty where the text is no design. */
  Optional<String> describe(String json);

  /** No designs are understood. */
  Designs NONE =
      new Designs() {
        @Override
        public Optional<DesignSheet> sheetOf(String json) {
          return Optional.empty();
        }

        @Override
        public Optional<String> describe(String json) {
          return Optional.empty();
        }
      };
}
