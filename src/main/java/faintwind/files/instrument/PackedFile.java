package faintwind.files.instrument;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.JsonFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A file as an archive's manifest lists it.
 *
 * @param name relative to the instrument's folder, with slashes
 * @param bytes its size
 * @param sha256 of its bytes
 */
record PackedFile(String name, long bytes, String sha256) {
  private static final String PREFIX = "files/";

  /** Its name in the archive. */
  String inArchive() {
    return PREFIX + name;
  }

  /**
   * The first entry of an archive: whose it is, the head of its journal, and every file with size
   * and hash; sealed as the summary is.
   *
   * @param instrument its name
   * @param head hash of the journal's last line
   * @param files all but the manifest itself
   */
  record Manifest(String instrument, String head, List<PackedFile> files) {
    static final String NAME = "manifest.json";
    static final String FORMAT = "faintwind-archive/1";

    Manifest {
      files = List.copyOf(files);
    }

    byte[] sealed() {
      ObjectNode node = JsonFile.object("{}");
      node.put("format", FORMAT).put("instrument", instrument).put("head", head);
      var list = node.putArray("files");
      for (PackedFile file : files) {
        list.addObject()
            .put("file", file.name())
            .put("bytes", file.bytes())
            .put("sha256", file.sha256());
      }
      return Seal.sealed(node).getBytes(StandardCharsets.UTF_8);
    }

    /** The manifest in these bytes; empty where they are none, or not what was written. */
    static Optional<Manifest> of(byte[] bytes) {
      if (!Seal.holds(new String(bytes, StandardCharsets.ISO_8859_1))) {
        return Optional.empty();
      }
      JsonNode node = JsonFile.object(new String(bytes, StandardCharsets.UTF_8));
      List<PackedFile> files = new ArrayList<>();
      for (JsonNode file : node.path("files")) {
        files.add(
            new PackedFile(
                file.path("file").asText(),
                file.path("bytes").asLong(-1),
                file.path("sha256").asText()));
      }
      return node.path("format").asText().equals(FORMAT)
          ? Optional.of(
              new Manifest(node.path("instrument").asText(), node.path("head").asText(), files))
          : Optional.empty();
    }
  }
}
