package faintwind.job;

import faintwind.files.run.OwnedFile;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;
import java.util.Optional;

/** Turns a failure of the world outside (disk, permission, port) into one problem. */
public final class World {
  private World() {}

  /** What failed, in words a person can act on. */
  public static Problem problem(IOException failure) {
    String message = Optional.ofNullable(failure.getMessage()).orElse("");
    String name = failure.getClass().getSimpleName();
    if (failure instanceof FileSystemException file) {
      String path = Optional.ofNullable(file.getFile()).orElse("");
      String reason = Optional.ofNullable(file.getReason()).orElse(name);
      Where where = path.isEmpty() ? Where.NOWHERE : Where.file(path);
      String other = Optional.ofNullable(file.getOtherFile()).orElse("");
      return Problem.error(id(file, reason), where, path, reason, other);
    }
    String reason = message.isEmpty() ? name : message;
    return Problem.error(byReason(reason), Where.NOWHERE, reason, reason);
  }

  private static String id(FileSystemException failure, String reason) {
    if (failure instanceof OwnedFile.TakenException) {
      return "world.taken";
    }
    if (failure instanceof OwnedFile.LostException) {
      return "world.lost";
    }
    if (failure instanceof NoSuchFileException) {
      return "world.missing";
    }
    if (failure instanceof AccessDeniedException) {
      return "world.no-permission";
    }
    if (failure instanceof NotDirectoryException) {
      return "world.no-folder";
    }
    if (failure instanceof FileAlreadyExistsException) {
      return "world.in-the-way";
    }
    return byReason(reason);
  }

  private static String byReason(String reason) {
    String lower = reason.toLowerCase(Locale.ROOT);
    if (lower.contains("no space left") || lower.contains("not enough space")) {
      return "world.disk-full";
    }
    return lower.contains("read-only") ? "world.read-only" : "world.other";
  }
}
