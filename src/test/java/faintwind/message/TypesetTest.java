package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypesetTest {
  /** A tilde stands for a space at which no line ends. */
  @ParameterizedTest
  @CsvSource({
    "'below 1 Ω.', 'below 1~Ω.'",
    "'a warm place of about 40 °C, in no oven', 'a warm place of about 40~°C, in no oven'",
    "'2.7 ± 0.6 % of 1.2 m/s', '2.7 ±~0.6~% of 1.2~m/s'",
    "'in 5 min to 20 MΩ or more', 'in 5~min to 20~MΩ or more'",
    "-1.826, −1.826",
    "'En -0.51; worst -1.0 %', 'En −0.51; worst −1.0~%'",
    "'exp[(-4.96945) + 2]', 'exp[(−4.96945) + 2]'"
  })
  void aNumberStaysWithItsUnitAndAMinusIsOne(String text, String set) {
    assertThat(Typeset.of(text)).isEqualTo(set.replace('~', '\u00a0'));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-09-13.json",
        "calibrations/-3.json",
        "1.2e-05",
        "K^-1.139",
        "5 in a row, 3 days",
        "UTC-05",
        "--minutes 40",
        "9 runs, 7 of them",
        "step 4 Check the metre"
      })
  void whatOnlyLooksLikeOneIsLeft(String text) {
    assertThat(Typeset.of(text)).isEqualTo(text);
  }

  /** In a Java of its own as it were: whatever ran before has the table loaded. */
  @Test
  void wordsWithoutANumberNeedNoTableOfUnits() throws Exception {
    try (Fresh classes = new Fresh()) {
      Class<?> typeset = classes.loadClass(Typeset.class.getName());
      assertThat(typeset.getMethod("of", String.class).invoke(null, "- Look, ± and K"))
          .isEqualTo("- Look, ± and K");
      assertThat(classes.loaded).contains(Typeset.class.getName());
      assertThat(classes.loaded).doesNotContain(UnitSymbols.class.getName());
      typeset.getMethod("of", String.class).invoke(null, "7 K");
      assertThat(classes.loaded).contains(UnitSymbols.class.getName());
    }
  }

  /** Loads everything anew but the JDK's own, and remembers what. */
  private static final class Fresh extends URLClassLoader {
    final List<String> loaded = new ArrayList<>();

    Fresh() throws Exception {
      super(path(), ClassLoader.getPlatformClassLoader());
    }

    private static URL[] path() throws Exception {
      List<URL> all = new ArrayList<>();
      for (String entry :
          System.getProperty("java.class.path").split(Pattern.quote(File.pathSeparator), -1)) {
        all.add(Path.of(entry).toUri().toURL());
      }
      return all.toArray(new URL[0]);
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      loaded.add(name);
      return super.findClass(name);
    }
  }
}
