package faintwind.files.checklist;

import faintwind.files.Sha256;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.OwnFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A checklist with a teacher's files laid over it, of which some may be broken: those are set aside
 * until the rest holds together. Where a problem cannot be put down to one file, all of them are.
 */
final class OwnChecklist {
  private final List<Path> folders;
  private final Path shipped;
  private final Locale language;
  private final Map<Path, List<Problem>> setAside = new LinkedHashMap<>();

  OwnChecklist(List<Path> folders, Locale language) {
    this.folders = List.copyOf(folders);
    this.shipped = folders.get(folders.size() - 1);
    this.language = language;
  }

  /** Refused only where the shipped checklist itself is broken. */
  Checked<Checklist> read() throws IOException {
    Set<Path> all = ownFiles();
    while (true) {
      Checked<Checklist> read = ChecklistReading.read(folders, language, setAside.keySet());
      if (read instanceof Checked.Ok<Checklist> ok) {
        return withNotes(ok);
      }
      Set<Path> left = new LinkedHashSet<>(all);
      left.removeAll(setAside.keySet());
      if (left.isEmpty()) {
        return read;
      }
      blame(read.problems(), left);
    }
  }

  private void blame(List<Problem> problems, Set<Path> left) {
    int before = setAside.size();
    for (Path file : left) {
      List<Problem> its = problems.stream().filter(p -> speaksOf(p, name(file))).toList();
      if (!its.isEmpty()) {
        setAside.put(file, its);
      }
    }
    if (setAside.size() == before) {
      left.forEach(file -> setAside.put(file, problems));
    }
  }

  private static boolean speaksOf(Problem problem, String name) {
    boolean file = problem.where().file().filter(name::equals).isPresent();
    boolean step =
        problem.where().step().filter(id -> name.endsWith("/" + id + ".json")).isPresent();
    return file || step;
  }

  private String name(Path file) {
    for (Path folder : folders) {
      if (file.startsWith(folder)) {
        return folder.relativize(file).toString().replace('\\', '/');
      }
    }
    return file.toString();
  }

  private Set<Path> ownFiles() throws IOException {
    Set<Path> all = new LinkedHashSet<>();
    for (Path folder : folders) {
      if (!folder.equals(shipped)) {
        try (Stream<Path> files = Files.walk(folder, 2)) {
          files
              .filter(f -> Files.isRegularFile(f) && f.toString().endsWith(".json"))
              .sorted()
              .forEach(all::add);
        }
      }
    }
    return all;
  }

  private Checked<Checklist> withNotes(Checked.Ok<Checklist> ok) throws IOException {
    List<OwnFile> files = new ArrayList<>(ok.value().ownFiles());
    List<Problem> notes = new ArrayList<>(ok.notes());
    for (Map.Entry<Path, List<Problem>> broken : setAside.entrySet()) {
      String name = name(broken.getKey());
      if (!name.startsWith("lang/")) { // the record is the same in every language
        files.add(new OwnFile(name, Sha256.of(broken.getKey()), broken.getValue()));
      }
      notes.addAll(broken.getValue());
      notes.add(Problem.warning("checklist.own-file-set-aside", Where.file(name), name));
    }
    return Checked.ok(ok.value().withOwnFiles(files), notes);
  }
}
