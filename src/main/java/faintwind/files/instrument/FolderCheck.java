package faintwind.files.instrument;

import faintwind.files.Sha256;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.AlterationAccepted;
import faintwind.record.Event.Attached;
import faintwind.record.Event.OwnFileNoted;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Compares the files of an instrument's folder with those that the journal entered. The last entry
 * of a file counts; one that was struck through is known, and missed by nobody.
 */
final class FolderCheck {
  /** Held by the window that writes; its content is of the moment and stands for nothing. */
  static final String LOCK = "writer.lock";

  /** What the folder keeps of its own; no line names it. */
  static final Set<String> OWN = Set.of("journal.jsonl", Seal.FILE, LOCK);

  private final Path folder;
  private final Map<String, Attached> entered = new LinkedHashMap<>();
  private final Map<String, Boolean> stands = new HashMap<>();
  private final Map<String, String> checklist = new HashMap<>();
  private final Map<String, AlterationAccepted> accepted = new HashMap<>();

  FolderCheck(Path folder, InstrumentState state) {
    this.folder = folder.normalize();
    for (Standing<? extends Event> line : state.lines()) {
      line.event()
          .attached()
          .ifPresent(
              file -> {
                entered.put(file.file(), file);
                stands.put(file.file(), line.stands());
              });
      if (line.event() instanceof OwnFileNoted noted) {
        checklist.put("checklist/" + noted.file(), noted.sha256());
      }
      if (line.stands() && line.event() instanceof AlterationAccepted accept) {
        accepted.put(accept.place(), accept);
      }
    }
  }

  /** Files that the journal names and that are not there, without reading any. */
  List<Problem> missing() {
    List<Problem> problems = new ArrayList<>();
    for (String name : entered.keySet()) {
      Path file = folder.resolve(name).normalize();
      if (!file.startsWith(folder)) {
        problems.add(Problem.error("folder.file-outside", Where.file("journal.jsonl"), name));
      } else if (!isPlain(file) && stands.getOrDefault(name, true)) {
        problems.add(Problem.error("folder.file-missing", Where.file(name), name));
      }
    }
    return problems;
  }

  /** Files that are not the ones that were entered, and files that nobody entered. */
  List<Problem> altered() throws IOException {
    List<Problem> problems = new ArrayList<>();
    for (Attached file : entered.values()) {
      Path path = folder.resolve(file.file()).normalize();
      if (path.startsWith(folder) && isPlain(path)) {
        String now = Sha256.of(path);
        if (!now.equals(file.sha256())) {
          problems.add(changed(file.file(), now));
        }
      }
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.sorted().toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        if (!Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS) && !entered.containsKey(name)) {
          unknown(name, file, problems);
        }
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return problems;
  }

  private Problem changed(String name, String now) {
    AlterationAccepted accept = accepted.get(name);
    return accept != null && accept.sha256().equals(now)
        ? Problem.warning("folder.file-accepted", Where.file(name), accept.reason())
        : Problem.error("folder.file-changed", Where.file(name), name, now);
  }

  private void unknown(String name, Path file, List<Problem> problems) throws IOException {
    Where where = Where.file(name);
    String noted = checklist.get(name);
    if (OWN.contains(name)) {
      return;
    }
    if (!isPlain(file)) {
      problems.add(Problem.warning("folder.no-file", where, name));
    } else if (isLeftover(file)) {
      problems.add(Problem.warning("folder.leftover", where, name));
    } else if (noted == null) {
      String id = name.startsWith("checklist/") ? "folder.own-file-new" : "folder.file-unknown";
      problems.add(Problem.warning(id, where, name));
    } else if (!Sha256.of(file).equals(noted)) {
      problems.add(Problem.warning("folder.own-file-changed", where, name));
    }
  }

  /** Whether it is what a save that was cut off left behind. */
  static boolean isLeftover(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.startsWith(".") && name.endsWith(".part");
  }

  private static boolean isPlain(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }
}
