package faintwind.ui;

import java.nio.file.Path;

/** The folder of instruments that the window shows. */
final class Workspace {
  private final Path folder;

  Workspace(Path folder) {
    this.folder = folder;
  }

  String name() {
    Path last = folder.getFileName();
    return last == null ? folder.toString() : last.toString();
  }

  boolean allMadeUp() {
    return false;
  }
}
