package faintwind.job;

import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Optional;

/**
 * Where a job may write.
 *
 * @param path the file
 * @param existing what to do where a file stands there already
 */
public record OutputPath(Path path, Existing existing) {

  /** What to do with a file that is in the way. */
  public enum Existing {
    KEEP,
    REPLACE
  }

  /**
   * Why nothing may be written there, if so: a file stands there, it is a folder, one of the
   * inputs, or what an instrument's record rests on.
   */
  public Optional<Problem> trouble(Collection<Path> inputs) throws IOException {
    Optional<Problem> occupied = occupied(inputs);
    Optional<Path> around =
        occupied.isEmpty() && Files.exists(path)
            ? EnteredFile.folderAround(path)
            : Optional.empty();
    return around.isPresent() && EnteredFile.isEvidence(around.get(), path)
        ? Optional.of(Problem.error("output.entered", Where.file(path.toString()), path.toString()))
        : occupied;
  }

  /** The same without a look at the record of an instrument around it. */
  public Optional<Problem> occupied(Collection<Path> inputs) throws IOException {
    Where where = Where.file(path.toString());
    if (Files.isDirectory(path)) {
      return Optional.of(Problem.error("output.is-folder", where, path.toString()));
    }
    if (!Files.exists(path)) {
      return Optional.empty();
    }
    for (Path input : inputs) {
      if (Files.exists(input) && Files.isSameFile(path, input)) {
        return Optional.of(Problem.error("output.is-input", where, path.toString()));
      }
    }
    return existing == Existing.KEEP
        ? Optional.of(Problem.error("output.exists", where, path.toString()))
        : Optional.empty();
  }
}
