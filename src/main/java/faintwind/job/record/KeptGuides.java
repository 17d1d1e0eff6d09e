package faintwind.job.record;

import faintwind.calibration.bench.JarCheck;
import faintwind.files.FolderPrint;
import faintwind.files.JsonFile;
import faintwind.files.Sha256;
import faintwind.files.asset.MeterFiles;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.calibration.CalibrationGlance;
import faintwind.files.calibration.CalibrationGlance.Range;
import faintwind.files.checklist.ChecklistFiles;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Meters;
import faintwind.message.Checked;
import faintwind.physics.sheet.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The checklists and meters that ship with the program, read once for many instruments, and what
 * was worked out from calibrations whose bytes have not changed. A teacher's own checklist is read
 * again as soon as a file of it changes.
 */
public final class KeptGuides {
  private final Locale language;
  private final Map<String, Checklist> shipped = new ConcurrentHashMap<>();
  private final Map<String, Meters> meters = new ConcurrentHashMap<>();
  private final Map<String, Checked<Checklist>> own = new ConcurrentHashMap<>();
  private final Map<Path, Jar> jars = new ConcurrentHashMap<>();

  /** Guides in a language. */
  public KeptGuides(Locale language) {
    this.language = language;
  }

  /** What a calibration of these very bytes shows at rest, and over which speeds. */
  private record Jar(String sha256, List<Outcome> outcomes, Optional<Range> range) {}

  /**
   * The checklist that guides an instrument.
   *
   * @throws IOException where something that is there cannot be read
   */
  Checked<Checklist> checklist(Path instrument, String name) throws IOException {
    if (has(instrument, "checklist")) {
      return own(instrument, name);
    }
    Checklist known = shipped.get(name);
    return known == null ? shipped(instrument, name) : Checked.ok(known);
  }

  /** By one thread, while others wait for it. */
  private synchronized Checked<Checklist> shipped(Path instrument, String name) throws IOException {
    Checklist known = shipped.get(name);
    if (known != null) {
      return Checked.ok(known);
    }
    Checked<Checklist> read = ChecklistFiles.forInstrument(instrument, name, language);
    if (read instanceof Checked.Ok<Checklist> ok && ok.notes().isEmpty()) {
      shipped.put(name, ok.value());
    }
    return read;
  }

  private Checked<Checklist> own(Path instrument, String name) throws IOException {
    StringBuilder key = new StringBuilder(name);
    for (Path folder : ChecklistFiles.ownFolders(instrument)) {
      Path part = folder.resolve("checklist");
      if (Files.isDirectory(part)) {
        key.append('\n').append(part).append('\n').append(FolderPrint.of(part));
      }
    }
    Checked<Checklist> known = own.get(key.toString());
    if (known == null) {
      known = ChecklistFiles.forInstrument(instrument, name, language);
      own.put(key.toString(), known);
    }
    return known;
  }

  /**
   * The classes of meters that an instrument knows.
   *
   * @throws IOException where something that is there cannot be read
   */
  Checked<Meters> meters(Path instrument) throws IOException {
    List<Path> own = ChecklistFiles.ownFolders(instrument);
    if (has(instrument, "meters")) {
      return MeterFiles.read(own);
    }
    Meters known = meters.get(MeterFiles.USUAL);
    if (known != null) {
      return Checked.ok(known);
    }
    Checked<Meters> read = MeterFiles.read(own);
    if (read instanceof Checked.Ok<Meters> ok) {
      meters.put(MeterFiles.USUAL, ok.value());
    }
    return read;
  }

  /**
   * What the calibration in a file shows at rest in a jar; nothing where it cannot be read. The
   * file is read each time: only where its bytes are the same, they are not worked out again. Bytes
   * that are those that were entered were checked before that; others are checked here.
   *
   * @param entered hash with which the journal entered it; empty where it did not
   * @throws IOException where it is there and cannot be read
   */
  List<Outcome> jar(Path file, Optional<String> entered) throws IOException {
    if (!Files.isRegularFile(file)) {
      return List.of();
    }
    Checked<byte[]> read = JsonFile.bytes(file, file.toString());
    if (!(read instanceof Checked.Ok<byte[]> ok)) {
      jars.remove(file);
      return List.of();
    }
    String sha256 = Sha256.of(ok.value());
    Jar known = jars.get(file);
    if (known == null || !known.sha256().equals(sha256)) {
      known = jar(ok.value(), sha256, file.toString(), entered.filter(sha256::equals).isPresent());
      jars.put(file, known);
    }
    return known.outcomes();
  }

  private static Jar jar(byte[] bytes, String sha256, String name, boolean checked)
      throws IOException {
    Optional<CalibrationGlance> glance = checked ? CalibrationGlance.of(bytes) : Optional.empty();
    if (glance.isPresent()) {
      CalibrationGlance seen = glance.get();
      return new Jar(sha256, JarCheck.of(seen.formula(), seen.signal()), seen.range());
    }
    List<Outcome> outcomes =
        CalibrationFile.parse(bytes, name)
            .fold((calibration, notes) -> JarCheck.of(calibration), problems -> List.of());
    return new Jar(sha256, outcomes, CalibrationGlance.range(bytes));
  }

  /** Over which speeds the calibration in a file holds, as it was read last. */
  public Optional<Range> range(Path file) {
    Jar known = jars.get(file);
    return known == null ? CalibrationGlance.range(file) : known.range();
  }

  private static boolean has(Path instrument, String part) {
    return ChecklistFiles.ownFolders(instrument).stream()
        .anyMatch(folder -> Files.exists(folder.resolve(part)));
  }
}
