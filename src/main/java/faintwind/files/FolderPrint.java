package faintwind.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;

/**
 * Whether anything in a folder changed: name, size and time of every file, and the bytes of the
 * summary, which hold the hash of the journal's last line. Reads nothing else.
 */
public final class FolderPrint {
  private static final String SUMMARY = "instrument.json";
  private static final String LOCK = "writer.lock";

  private FolderPrint() {}

  /**
   * The print of a folder; that of nothing where it is not there.
   *
   * @throws IOException where the folder vanished meanwhile or a permission fails
   */
  public static String of(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    if (Files.isDirectory(folder)) {
      Files.walkFileTree(
          folder,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes found) {
              String name = folder.relativize(file).toString();
              if (!name.equals(LOCK)) {
                files.put(name, found.size() + " " + found.lastModifiedTime());
              }
              return FileVisitResult.CONTINUE;
            }
          });
    }
    Path summary = folder.resolve(SUMMARY);
    if (files.containsKey(SUMMARY) && Files.isRegularFile(summary)) {
      files.put(SUMMARY, Files.readString(summary, StandardCharsets.ISO_8859_1));
    }
    return Sha256.of(files.toString().getBytes(StandardCharsets.UTF_8));
  }
}
