package faintwind.job;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class StageWordsTest {
  private static final Pattern TOLD = Pattern.compile("progress\\(\\s*\"([a-z-]+)\"");

  @Test
  void everyStageThatAJobTellsHasWords() throws IOException {
    List<String> missing = new ArrayList<>();
    Messages words = Messages.of(Locale.ENGLISH);
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/faintwind/job"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        Matcher told = TOLD.matcher(Files.readString(file));
        while (told.find()) {
          if (!words.bundle().containsKey("stage." + told.group(1))) {
            missing.add(told.group(1));
          }
        }
      }
    }
    assertThat(missing).isEmpty();
  }
}
