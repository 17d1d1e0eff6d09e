package faintwind.files.asset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.ShippedFolder;
import faintwind.guide.checklist.MeterClass;
import faintwind.guide.checklist.MeterRange;
import faintwind.guide.checklist.Meters;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads classes of meters: one JSON file each in {@code meters/}, valid against {@code
 * meter.schema.json}. The shipped folder is read first, then those laid over it: the same id
 * replaces.
 */
public final class MeterFiles {
  /** The class that counts where none was chosen. */
  public static final String USUAL = "simple-2000-counts";

  private static final double PERCENT = 0.01;

  private final Map<String, MeterClass> classes = new LinkedHashMap<>();
  private final List<Problem> notes = new ArrayList<>();

  private MeterFiles() {}

  /**
   * The shipped classes with those of other folders, each of which may hold a folder {@code
   * meters}.
   *
   * @return always a value; a file that is broken is left out and told in the notes
   * @throws IOException where a file cannot be read
   */
  public static Checked<Meters> read(List<Path> ownFolders) throws IOException {
    MeterFiles files = new MeterFiles();
    ShippedFolder.with("assets", files::take);
    for (Path folder : ownFolders) {
      files.take(folder);
    }
    return Checked.ok(new Meters(List.copyOf(files.classes.values()), USUAL), files.notes);
  }

  private MeterFiles take(Path parent) throws IOException {
    AssetFolder.each(
        parent,
        "meters",
        "meter",
        (file, name, read) -> {
          notes.addAll(read.problems());
          if (read instanceof Checked.Ok<ObjectNode> ok) {
            MeterClass meter = meter(ok.value());
            classes.put(meter.id(), meter);
          }
        });
    return this;
  }

  private static MeterClass meter(ObjectNode node) {
    List<MeterRange> ranges = new ArrayList<>();
    ranges(node, "resistance", "ohm", "Ω", ranges);
    ranges(node, "voltage", "V", "V", ranges);
    ranges(node, "current", "A", "A", ranges);
    return new MeterClass(
        node.path("id").asText(),
        node.path("name").asText(),
        node.path("over_range").asText(),
        node.path("picks_range").asBoolean(),
        ranges,
        AssetJson.texts(node.path("sources")));
  }

  private static void ranges(
      ObjectNode node, String key, String suffix, String unit, List<MeterRange> to) {
    for (JsonNode range : node.path(key)) {
      to.add(
          new MeterRange(
              unit,
              range.path("to_" + suffix).asDouble(),
              range.path("step_" + suffix).asDouble(),
              range.path("reading_pct").asDouble() * PERCENT,
              range.path("counts").asDouble()));
    }
  }
}
