package faintwind.files.asset;

import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.Sha256;
import faintwind.files.ShippedFolder;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.part.Catalogue;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads metals, coats, wires, thermocouples, resistors, loggers and batteries: one JSON file a
 * thing, in a folder named after its kind, valid against the schema of its kind. The shipped folder
 * is read first, then the user's: a file of the same id replaces, and a note says so with its hash.
 */
public final class Library {
  private final Map<String, ObjectNode> things = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private final List<Problem> notes = new ArrayList<>();

  private Library() {}

  private enum Origin {
    SHIPPED,
    OWN
  }

  /**
   * What ships with the program.
   *
   * @throws IOException where the program's own files cannot be read
   */
  public static Catalogue shipped() throws IOException {
    return read(Optional.empty())
        .fold(
            (catalogue, notes) -> catalogue,
            problems -> {
              throw new IllegalStateException("shipped assets: " + problems);
            });
  }

  /**
   * The shipped things and those of a folder of the user's own.
   *
   * @param userFolder holds {@code metals/}, {@code wires/} … as {@code assets/} does
   * @return everything, with a note for each thing replaced or added; or all problems of all files
   * @throws IOException where a file cannot be read
   */
  public static Checked<Catalogue> read(Optional<Path> userFolder) throws IOException {
    Library library = new Library();
    ShippedFolder.with("assets", folder -> library.take(folder, Origin.SHIPPED));
    if (userFolder.isPresent()) {
      library.take(userFolder.get(), Origin.OWN);
    }
    return library.problems.isEmpty()
        ? Checked.ok(library.catalogue(), library.notes)
        : Checked.refused(library.problems);
  }

  private Library take(Path folder, Origin origin) throws IOException {
    for (AssetKind kind : AssetKind.values()) {
      AssetFolder.each(
          folder,
          kind.folder(),
          kind.schema(),
          (file, name, read) -> {
            Checked<ObjectNode> thing = read.then(node -> ruled(kind, node, name));
            if (thing instanceof Checked.Ok<ObjectNode> ok) {
              boolean replaced = things.put(name, ok.value()) != null;
              if (origin == Origin.OWN) {
                String id = replaced ? "asset.replaced" : "asset.added";
                notes.add(Problem.warning(id, Where.file(name), Sha256.of(file)));
              }
            } else {
              problems.addAll(thing.problems());
            }
          });
    }
    return this;
  }

  private static Checked<ObjectNode> ruled(AssetKind kind, ObjectNode node, String name) {
    Where where = Where.file(name);
    List<Problem> problems = kind.contradictions(node, where);
    String id = node.get("id").asText();
    if (!name.endsWith("/" + id + ".json")) {
      problems.add(Problem.error("asset.id-is-not-file-name", where.atColumn("id"), id, name));
    }
    return problems.isEmpty() ? Checked.ok(node) : Checked.refused(problems);
  }

  private <T> List<T> all(AssetKind kind, Function<ObjectNode, T> reading) {
    return things.entrySet().stream()
        .filter(e -> e.getKey().startsWith(kind.folder() + "/"))
        .map(e -> reading.apply(e.getValue()))
        .toList();
  }

  private Catalogue catalogue() {
    return new Catalogue(
        all(AssetKind.METAL, AssetJson::metal),
        all(AssetKind.COAT, AssetJson::coat),
        all(AssetKind.WIRE, AssetJson::wire),
        all(AssetKind.THERMOCOUPLE, AssetJson::thermocouple),
        all(AssetKind.RESISTOR, AssetJson::resistor),
        all(AssetKind.LOGGER, AssetJson::logger),
        all(AssetKind.BATTERY, AssetJson::battery));
  }
}
