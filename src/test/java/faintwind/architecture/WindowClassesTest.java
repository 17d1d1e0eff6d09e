package faintwind.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A list that has grown old slows the first window after a build, and nobody would notice. */
@DisplayName("The list of the window's classes (LIST=… src/bench/window.sh writes it anew)")
class WindowClassesTest {
  private static final double STILL_THERE = 0.9;

  @Test
  void nineInTenClassesOfTheProgramAreStillThere() throws IOException {
    List<String> names =
        Files.readAllLines(Path.of("src/dist/window.classes")).stream()
            .filter(line -> line.startsWith("faintwind/"))
            .toList();
    assertThat(names).hasSizeGreaterThan(1000).contains("faintwind/ui/FaintwindWindow");
    long there =
        names.stream()
            .filter(name -> Files.exists(Path.of("target/classes", name + ".class")))
            .count();
    assertThat(there).isGreaterThan((long) (STILL_THERE * names.size()));
  }
}
