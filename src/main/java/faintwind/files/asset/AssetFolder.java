package faintwind.files.asset;

import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.JsonFile;
import faintwind.files.SchemaCheck;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A folder of one kind of things: one JSON file each, valid against the schema of the kind. */
final class AssetFolder {
  private AssetFolder() {}

  /** Takes one thing, or what is wrong with its file. */
  @FunctionalInterface
  interface Taking {
    void take(Path file, String name, Checked<ObjectNode> thing) throws IOException;
  }

  /** Reads every file in the order of their names; a folder that is not there holds nothing. */
  static void each(Path parent, String folder, String schema, Taking taking) throws IOException {
    Path here = parent.resolve(folder);
    if (!Files.isDirectory(here)) {
      return;
    }
    List<Path> files;
    try (Stream<Path> all = Files.list(here)) {
      files = all.filter(f -> f.getFileName().toString().endsWith(".json")).sorted().toList();
    }
    SchemaCheck check = SchemaCheck.of(schema);
    for (Path file : files) {
      String name = folder + "/" + file.getFileName();
      taking.take(file, name, JsonFile.read(file, name).then(node -> valid(node, check, name)));
    }
  }

  private static Checked<ObjectNode> valid(ObjectNode node, SchemaCheck check, String name) {
    List<Problem> problems = check.problems(node, Where.file(name));
    return problems.isEmpty() ? Checked.ok(node) : Checked.refused(problems);
  }
}
