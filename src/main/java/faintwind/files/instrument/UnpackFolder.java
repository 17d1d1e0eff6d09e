package faintwind.files.instrument;

import faintwind.files.AtomicFile;
import faintwind.files.Sha256;
import faintwind.files.instrument.PackedFile.Manifest;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Unpacks a sealed archive into a folder of its own. Everything is compared with the manifest
 * before a single name of the target is taken: refused are names that lead elsewhere, files that
 * the manifest does not list, that are missing, larger than they say, packed beyond reason or not
 * what they were, and a journal whose head is another. Only plain files are made, never links.
 */
public final class UnpackFolder {
  /** Most files, bytes of one archive, bytes of its manifest, and bytes out for one byte in. */
  private static final int MOST_FILES = 20_000;

  private static final long MOST_BYTES = 4L << 30;
  private static final long MOST_MANIFEST_BYTES = 16L << 20;
  private static final long MOST_RATIO = 250;
  private static final long SMALL_BYTES = 1L << 20;

  private static final Pattern PLAIN = Pattern.compile("[^/\\\\:*?\"<>|\\p{Cntrl}]+");

  private final Path archive;
  private final Where where;

  private UnpackFolder(Path archive) {
    this.archive = archive;
    this.where = Where.file(String.valueOf(archive.getFileName()));
  }

  /**
   * What was unpacked.
   *
   * @param folder where it lies for now, a hidden folder beside its later place
   * @param instrument its name
   * @param head hash of its journal's last line
   */
  public record Unpacked(Path folder, String instrument, String head) {}

  /**
   * Unpacks into a new hidden folder.
   *
   * @param into the folder of instruments
   * @throws IOException where the disk or a permission fails; then nothing stays
   */
  public static Checked<Unpacked> read(Path archive, Path into) throws IOException {
    return new UnpackFolder(archive).read(into);
  }

  private Checked<Unpacked> read(Path into) throws IOException {
    try (ZipFile zip = new ZipFile(archive.toFile())) {
      Optional<Manifest> manifest = manifest(zip);
      if (manifest.isEmpty()) {
        return refused("unpack.no-manifest", "");
      }
      List<Problem> problems = listed(zip, manifest.get());
      if (!problems.isEmpty()) {
        return Checked.refused(problems);
      }
      Path folder = Files.createDirectory(into.resolve(".unpack-" + UUID.randomUUID()));
      boolean whole = false;
      try {
        for (PackedFile file : manifest.get().files()) {
          write(zip, file, folder).ifPresent(problems::add);
        }
        if (problems.isEmpty()) {
          journal(folder, manifest.get()).ifPresent(problems::add);
        }
        whole = problems.isEmpty();
      } finally {
        if (!whole) {
          delete(folder);
        }
      }
      return whole
          ? Checked.ok(new Unpacked(folder, manifest.get().instrument(), manifest.get().head()))
          : Checked.refused(problems);
    } catch (ZipException | EOFException e) {
      return refused("unpack.no-archive", String.valueOf(e.getMessage()));
    }
  }

  private Optional<Manifest> manifest(ZipFile zip) throws IOException {
    ZipEntry entry = zip.getEntry(Manifest.NAME);
    if (entry == null || entry.getSize() > MOST_MANIFEST_BYTES) {
      return Optional.empty();
    }
    try (InputStream in = zip.getInputStream(entry)) {
      return Manifest.of(in.readNBytes((int) MOST_MANIFEST_BYTES));
    }
  }

  /** What the manifest and the archive's own list say, before anything is unpacked. */
  private List<Problem> listed(ZipFile zip, Manifest manifest) {
    List<Problem> problems = new ArrayList<>();
    Set<String> names = new HashSet<>();
    Set<String> listed = new HashSet<>();
    long bytes = 0;
    for (PackedFile file : manifest.files()) {
      ZipEntry entry = zip.getEntry(file.inArchive());
      if (!isPlain(file.name())) {
        problems.add(problem("unpack.name", file.name()));
      } else if (!names.add(file.name().toLowerCase(Locale.ROOT))) {
        problems.add(problem("unpack.name-twice", file.name()));
      } else if (entry == null) {
        problems.add(problem("unpack.missing", file.name()));
      } else if (file.bytes() < 0 || isPackedBeyondReason(entry, file)) {
        problems.add(problem("unpack.ratio", file.name(), String.valueOf(MOST_RATIO)));
      }
      listed.add(file.inArchive());
      bytes += Math.max(0, file.bytes());
    }
    if (bytes > MOST_BYTES || manifest.files().size() > MOST_FILES) {
      problems.add(
          problem("unpack.too-large", String.valueOf(bytes), String.valueOf(MOST_BYTES >> 30)));
    }
    zip.stream()
        .map(ZipEntry::getName)
        .filter(name -> !name.equals(Manifest.NAME) && !listed.contains(name))
        .forEach(name -> problems.add(problem("unpack.not-listed", name)));
    return problems;
  }

  private static boolean isPackedBeyondReason(ZipEntry entry, PackedFile file) {
    return file.bytes() > SMALL_BYTES
        && file.bytes() > MOST_RATIO * Math.max(1, entry.getCompressedSize());
  }

  /** Names of plain files below the folder, which mean the same on every system. */
  private static boolean isPlain(String name) {
    for (String part : name.split("/", -1)) {
      boolean plain = PLAIN.matcher(part).matches();
      if (!plain || part.equals(".") || part.equals("..") || part.endsWith(" ")) {
        return false;
      }
    }
    return name.length() <= 1000 && !name.equals(FolderCheck.LOCK);
  }

  private Optional<Problem> write(ZipFile zip, PackedFile file, Path folder) throws IOException {
    Path target = folder.resolve(file.name()).normalize();
    if (!target.startsWith(folder)) {
      return Optional.of(problem("unpack.name", file.name()));
    }
    Files.createDirectories(AtomicFile.folderOf(target));
    try (InputStream in = zip.getInputStream(zip.getEntry(file.inArchive()));
        OutputStream out = Files.newOutputStream(target)) {
      byte[] piece = new byte[1 << 16];
      long bytes = 0;
      for (int n = in.read(piece); n >= 0; n = in.read(piece)) {
        bytes += n;
        if (bytes > file.bytes()) {
          return Optional.of(problem("unpack.altered", file.name()));
        }
        out.write(piece, 0, n);
      }
    }
    return Sha256.of(target).equals(file.sha256())
        ? Optional.empty()
        : Optional.of(problem("unpack.altered", file.name()));
  }

  private Optional<Problem> journal(Path folder, Manifest manifest) throws IOException {
    Journal journal = Journal.in(folder);
    if (!Files.isRegularFile(journal.file())) {
      return Optional.of(problem("unpack.missing", "journal.jsonl"));
    }
    return journal.content().head().equals(manifest.head())
        ? Optional.empty()
        : Optional.of(problem("unpack.head", manifest.head()));
  }

  private Problem problem(String id, String found, String... details) {
    return Problem.error(id, where, found, details);
  }

  private <T> Checked<T> refused(String id, String found) {
    return Checked.refused(problem(id, found));
  }

  /** Puts what was unpacked in its place, in one step. */
  public static void place(Unpacked unpacked, Path target) throws IOException {
    Files.move(unpacked.folder(), target, StandardCopyOption.ATOMIC_MOVE);
    AtomicFile.syncFolder(AtomicFile.folderOf(target));
  }

  /** Takes away what was unpacked and has no place. */
  public static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
