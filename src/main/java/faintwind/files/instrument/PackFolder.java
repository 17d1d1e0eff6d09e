package faintwind.files.instrument;

import faintwind.files.AtomicFile;
import faintwind.files.Sha256;
import faintwind.files.instrument.PackedFile.Manifest;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs an instrument's folder into one sealed file: a ZIP archive that begins with a manifest. */
public final class PackFolder {
  private PackFolder() {}

  /**
   * Packs every plain file of the folder, but no link, no lock and no leftover of a save.
   *
   * @param target the archive, which appears whole or not at all
   * @return hash of the journal's last line, as the manifest holds it
   * @throws IOException where something cannot be read or written
   */
  public static String write(Path folder, Path target) throws IOException {
    InstrumentState state = new InstrumentFolder(folder).open().state();
    String head = state.head();
    String name = state.name().orElse("");
    List<PackedFile> files = new ArrayList<>();
    for (Path file : plainFiles(folder)) {
      String relative = folder.relativize(file).toString().replace('\\', '/');
      files.add(new PackedFile(relative, Files.size(file), Sha256.of(file)));
    }
    try (AtomicFile archive = AtomicFile.begin(target)) {
      ZipOutputStream zip = new ZipOutputStream(archive.stream());
      zip.putNextEntry(new ZipEntry(Manifest.NAME));
      zip.write(new Manifest(name, head, files).sealed());
      zip.closeEntry();
      for (PackedFile file : files) {
        zip.putNextEntry(new ZipEntry(file.inArchive()));
        Files.copy(folder.resolve(file.name()), zip);
        zip.closeEntry();
      }
      zip.finish();
      archive.commit();
    }
    return head;
  }

  private static List<Path> plainFiles(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
          .filter(file -> !folder.relativize(file).toString().equals(FolderCheck.LOCK))
          .filter(file -> !FolderCheck.isLeftover(file))
          .sorted()
          .toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
