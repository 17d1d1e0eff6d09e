package faintwind.ui;

import faintwind.ui.frame.FileQuestion;
import java.nio.file.Path;
import java.util.Optional;

/** Answers every question for a file with the one that was set last. */
final class ChosenFiles implements FileQuestion {
  private Optional<Path> chosen = Optional.empty();

  void choose(Path file) {
    chosen = Optional.of(file);
  }

  @Override
  public Optional<Path> open(String title, String kind, String... patterns) {
    return chosen;
  }

  @Override
  public Optional<Path> save(String title, String suggestedName) {
    return chosen;
  }
}
