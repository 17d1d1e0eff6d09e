package faintwind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.Main;
import faintwind.message.Messages;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a command says and a full disk does not take is not called done. */
class LostOutputTest {
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String failure, String arguments) {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException(failure);
          }
        };
    Terminal terminal =
        Terminal.of(new ByteArrayInputStream(new byte[0]), full, err, Messages.of(Locale.ENGLISH));
    return Main.run(terminal, arguments.split(" "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"list demo-projects", "list --json demo-projects", "check demo-projects/cellar"})
  void aFullDiskEndsWithOne(String arguments) {
    assertThat(run("No space left on device", arguments)).isEqualTo(1);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("disk").doesNotContain("Exception");
  }

  @ParameterizedTest
  @ValueSource(strings = {"list demo-projects", "check demo-projects/cellar"})
  void aReaderWhoWantsNoMoreIsNoFailure(String arguments) {
    assertThat(run("Broken pipe", arguments)).isZero();
    assertThat(err.toString(StandardCharsets.UTF_8)).doesNotContain("error");
  }
}
