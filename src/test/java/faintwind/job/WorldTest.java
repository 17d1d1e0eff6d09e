package faintwind.job;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class WorldTest {
  static Stream<Arguments> failures() {
    return Stream.of(
        Arguments.of(new NoSuchFileException("/a/b"), "/a/b: There is no such file or folder."),
        Arguments.of(new AccessDeniedException("/a/b"), "/a/b: Permission to use it is missing."),
        Arguments.of(new NotDirectoryException("/a"), "/a: There is no such folder."),
        Arguments.of(
            new FileSystemException("/a/b", null, "Read-only file system"),
            "/a/b: The disk can only be read."),
        Arguments.of(
            new FileSystemException("/a/b", null, "No space left on device"),
            "/a/b: The disk is full."),
        Arguments.of(new IOException("No space left on device"), "The disk is full."),
        Arguments.of(new IOException("Input/output error"), "Input/output error."));
  }

  @ParameterizedTest
  @MethodSource("failures")
  void failureOfTheWorldIsToldInWords(IOException failure, String start) {
    assertThat(Messages.of(Locale.ENGLISH).line(World.problem(failure))).startsWith(start);
  }
}
