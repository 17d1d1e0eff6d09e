package faintwind.job.record;

import faintwind.files.asset.MeterFiles;
import faintwind.files.checklist.ChecklistFiles;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Meters;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The checklists and meters that ship with the program, read once for many instruments. What lies
 * in an instrument's folder or around it is read each time: a teacher may change it meanwhile.
 */
public final class KeptGuides {
  private final Map<String, Checklist> shipped = new ConcurrentHashMap<>();
  private final Map<String, Meters> meters = new ConcurrentHashMap<>();

  /**
   * The checklist that guides an instrument.
   *
   * @throws IOException where something that is there cannot be read
   */
  Checked<Checklist> checklist(Path instrument, String name) throws IOException {
    if (has(instrument, "checklist")) {
      return ChecklistFiles.forInstrument(instrument, name, "en");
    }
    Checklist known = shipped.get(name);
    if (known != null) {
      return Checked.ok(known);
    }
    Checked<Checklist> read = ChecklistFiles.forInstrument(instrument, name, "en");
    if (read instanceof Checked.Ok<Checklist> ok && ok.notes().isEmpty()) {
      shipped.put(name, ok.value());
    }
    return read;
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

  private static boolean has(Path instrument, String part) {
    return ChecklistFiles.ownFolders(instrument).stream()
        .anyMatch(folder -> Files.exists(folder.resolve(part)));
  }
}
