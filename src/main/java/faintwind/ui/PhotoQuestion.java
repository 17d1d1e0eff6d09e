package faintwind.ui;

import java.nio.file.Path;

/** Asks for a photo of a step and keeps it in the instrument's folder. */
final class PhotoQuestion {
  private final Desk desk;
  private final OpenInstrument instrument;

  PhotoQuestion(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    this.instrument = instrument;
  }

  void ask(String step) {
    desk.files()
        .open(
            desk.words().text("window.step.choose-photo"),
            desk.words().text("window.step.photo-files"),
            "*.jpg",
            "*.jpeg",
            "*.png")
        .ifPresent(file -> keep(step, file));
  }

  /** Keeps a photo with a step; what is no picture is refused in words. */
  void keep(String step, Path file) {
    String caption = String.valueOf(file.getFileName());
    instrument.enter(enter -> enter.photo(step, file, caption));
  }
}
