package faintwind.job.air;

import faintwind.files.AtomicFile;
import faintwind.files.Sha256;
import faintwind.job.EnteredFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A result in a file, whole or not at all, with the hashes of what it was made from. */
public final class ResultFile {
  private ResultFile() {}

  public static void write(Path target, String text) throws IOException {
    AtomicFile.write(target, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Whether a filled table lies with the same instrument as its result, and no journal names it.
   *
   * @throws IOException where the journal cannot be read
   */
  public static boolean isNew(Path table, Path result) throws IOException {
    Optional<Path> folder = EnteredFile.folderAround(table);
    return folder.isPresent()
        && folder.equals(EnteredFile.folderAround(result))
        && !EnteredFile.isEvidence(folder.get(), table);
  }

  /**
   * SHA-256 of each file by its name without folders.
   *
   * @throws IOException where one cannot be read
   */
  public static Map<String, String> hashes(List<Path> files) throws IOException {
    Map<String, String> hashes = new TreeMap<>();
    for (Path file : files) {
      hashes.put(String.valueOf(file.getFileName()), Sha256.of(file));
    }
    return hashes;
  }
}
