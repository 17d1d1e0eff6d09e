package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ReadmePicturesTest {
  private static final Pattern PICTURE = Pattern.compile("docs/screenshots/[\\w.-]+\\.png");

  @Test
  void everyPictureThatTheReadmeNamesIsThere() throws IOException {
    Path readme = Path.of("README.md");
    List<String> missing = new ArrayList<>();
    int named = 0;
    Matcher matcher = PICTURE.matcher(Files.readString(readme));
    while (matcher.find()) {
      named++;
      if (!Files.isRegularFile(Path.of(matcher.group()))) {
        missing.add(matcher.group());
      }
    }
    assertThat(missing).isEmpty();
    assertThat(named).as("pictures that the README shows").isPositive();
  }
}
