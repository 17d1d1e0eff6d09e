package faintwind.ui.work;

import faintwind.job.World;
import faintwind.message.Messages;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;

/** Says in words what the disk refused. */
public final class DiskWords {
  private DiskWords() {}

  public static String say(IOException broke, Messages words) {
    if (broke instanceof NoSuchFileException) {
      return words.text("window.file.missing");
    }
    if (broke instanceof AccessDeniedException) {
      return words.text("window.file.denied");
    }
    return words.sentence(World.problem(broke));
  }
}
