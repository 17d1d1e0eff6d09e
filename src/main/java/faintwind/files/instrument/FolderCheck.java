package faintwind.files.instrument;

import faintwind.files.Sha256;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.AlterationAccepted;
import faintwind.record.Event.Attached;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.LinesLost;
import faintwind.record.Event.OwnFileNoted;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

  /** The runs table of a session at the turntable, beside its recording. */
  private static final String TABLE = "runs.csv";

  /** The key of a calibration file that holds the journal's last hash when it was made. */
  private static final Pattern RAW = Pattern.compile("(.+)\\.raw(\\.\\d+\\.gz)?");

  private static final Pattern HEAD = Pattern.compile("\"journal_head\" *: *\"([0-9a-f]{64})\"");

  private final Path folder;
  private final Map<String, Attached> entered = new LinkedHashMap<>();
  private final Map<String, Boolean> stands = new HashMap<>();
  private final Map<String, String> checklist = new HashMap<>();
  private final Map<String, AlterationAccepted> accepted = new HashMap<>();
  private final Set<String> calibrations = new HashSet<>();
  private final boolean linesLost;

  FolderCheck(Path folder, InstrumentState state) {
    this.folder = folder.normalize();
    this.linesLost = !state.standing(LinesLost.class).isEmpty();
    for (Standing<? extends Event> line : state.lines()) {
      line.event()
          .attached()
          .ifPresent(
              file -> {
                entered.put(file.file(), file);
                stands.put(file.file(), line.stands());
              });
      if (line.stands() && line.event() instanceof CalibrationMade made) {
        calibrations.add(made.file());
      }
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
        } else if (calibrations.contains(file.file())) {
          headUnknown(file, path).ifPresent(problems::add);
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

  /**
   * That a calibration holds the hash of a line which this journal never had: it is of another
   * instrument, or the journal was written anew.
   */
  private Optional<Problem> headUnknown(Attached file, Path path) throws IOException {
    Matcher head = HEAD.matcher(Files.readString(path, StandardCharsets.ISO_8859_1));
    if (!head.find() || lines().has(head.group(1))) {
      return Optional.empty();
    }
    Where where = Where.file(file.file());
    if (accepted.containsKey(file.file())) {
      return Optional.of(accepted(file.file()));
    }
    return Optional.of(
        linesLost
            ? Problem.warning("folder.head-lost", where, head.group(1))
            : Problem.error("folder.head-unknown", where, head.group(1)));
  }

  private ChainedLines lines() throws IOException {
    return ChainedLines.of(Files.readAllBytes(Journal.in(folder).file()));
  }

  private Problem accepted(String name) {
    String reason = Optional.ofNullable(accepted.get(name)).map(a -> a.reason()).orElse("");
    return Problem.warning("folder.file-accepted", Where.file(name), reason);
  }

  private Problem changed(String name, String now) {
    AlterationAccepted accept = accepted.get(name);
    return accept != null && accept.sha256().equals(now)
        ? accepted(name)
        : Problem.error("folder.file-changed", Where.file(name), name, now);
  }

  private void unknown(String name, Path file, List<Problem> problems) throws IOException {
    Where where = Where.file(name);
    String noted = checklist.get(name);
    if (OWN.contains(name) || isBesideEntered(name)) {
      return;
    }
    if (!isPlain(file)) {
      problems.add(Problem.warning("folder.no-file", where, name));
    } else if (isLeftover(file)) {
      problems.add(Problem.warning("folder.leftover", where, name));
    } else if (isOfSession(name, file)) {
      Path table = file.resolveSibling(TABLE);
      problems.add(
          Problem.warning("folder.session-left", where, folder.toString(), table.toString()));
    } else if (noted == null) {
      String id = name.startsWith("checklist/") ? "folder.own-file-new" : "folder.file-unknown";
      problems.add(Problem.warning(id, where, name));
    } else if (!Sha256.of(file).equals(noted)) {
      problems.add(Problem.warning("folder.own-file-changed", where, name));
    }
  }

  /** Whether it is the raw stream of a recording that was entered. */
  private boolean isBesideEntered(String name) {
    Matcher raw = RAW.matcher(name);
    return raw.matches() && entered.containsKey(raw.group(1) + ".csv");
  }

  /** Whether it was recorded in a session at the turntable whose table nobody kept. */
  private boolean isOfSession(String name, Path file) {
    Path table = file.resolveSibling(TABLE);
    return name.startsWith("runs/")
        && isPlain(table)
        && !entered.containsKey(folder.relativize(table).toString().replace('\\', '/'));
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
