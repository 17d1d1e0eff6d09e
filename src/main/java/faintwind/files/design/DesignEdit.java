package faintwind.files.design;

import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.JsonFile;
import faintwind.message.Checked;
import faintwind.physics.design.DesignChange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Changes single keys of a design file's text and leaves all others as they stand. */
public final class DesignEdit {
  private DesignEdit() {}

  /**
   * The changed text; refused where the text is no JSON object.
   *
   * @param text of a design file
   * @param changes in order
   */
  public static Checked<String> apply(String text, List<DesignChange> changes) throws IOException {
    return JsonFile.parse(text.getBytes(StandardCharsets.UTF_8), "design")
        .map(
            root -> {
              changes.forEach(change -> set(root, change));
              return root.toPrettyString() + "\n";
            });
  }

  private static void set(ObjectNode root, DesignChange change) {
    ObjectNode group = root.withObjectProperty(change.group());
    if (change.text().isPresent()) {
      group.put(change.key(), change.text().get());
    } else if (change.number().isPresent()) {
      group.put(change.key(), change.number().getAsDouble());
    } else {
      group.remove(change.key());
    }
  }
}
