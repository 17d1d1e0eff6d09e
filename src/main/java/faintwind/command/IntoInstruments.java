package faintwind.command;

import faintwind.command.record.InstrumentOptions;
import faintwind.job.EnteredFile;
import faintwind.job.record.AtInstrument;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.Event.FileRole;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Files that a command writes into folders of instruments: each is entered there, in a name. */
public final class IntoInstruments {
  private final String who;

  public IntoInstruments(String who) {
    this.who = who;
  }

  /** Why nothing could be entered of what would be written; to be asked before it is written. */
  public List<Problem> trouble(Collection<Path> targets) throws IOException {
    List<Problem> problems = new ArrayList<>();
    Set<Path> folders = new HashSet<>();
    for (Path target : targets) {
      Optional<Path> folder = EnteredFile.folderAround(target);
      if (folder.isPresent() && folders.add(folder.get())) {
        problems.addAll(at(folder.get()).trouble());
      }
    }
    return problems;
  }

  /**
   * Enters what was written, each file in the folder it lies in.
   *
   * @return what kept something from being entered
   */
  public List<Problem> enter(Map<Path, FileRole> written) throws IOException {
    Map<Path, Map<Path, FileRole>> byFolder = new LinkedHashMap<>();
    written.forEach(
        (file, role) ->
            EnteredFile.folderAround(file)
                .ifPresent(
                    folder ->
                        byFolder
                            .computeIfAbsent(folder, f -> new LinkedHashMap<>())
                            .put(file, role)));
    List<Problem> problems = new ArrayList<>();
    for (Map.Entry<Path, Map<Path, FileRole>> folder : byFolder.entrySet()) {
      Checked<JournalEntry> entered = at(folder.getKey()).enter(folder.getValue());
      problems.addAll(entered.isOk() ? List.of() : entered.problems());
    }
    return problems;
  }

  private AtInstrument at(Path folder) {
    return new AtInstrument(folder, InstrumentOptions.clock(), who);
  }
}
