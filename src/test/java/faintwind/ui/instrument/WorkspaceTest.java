package faintwind.ui.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.demo.CopyDemo;
import faintwind.ui.Cellar;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkspaceTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final Clock clock = Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC);

  @Test
  void madeUpDemoOpensWhole() throws IOException {
    assertThat(CopyDemo.into(folder)).hasSize(3);
    Workspace.Found found = new Workspace(folder, clock, Locale.ENGLISH).read(folders -> {});
    assertThat(found.broken()).isEmpty();
    assertThat(found.instruments())
        .hasSize(3)
        .allMatch(listed -> listed.standpoint().view().state().madeUp())
        .allMatch(listed -> listed.standpoint().view().writable());
  }

  @Test
  void missingFolderHasNoInstruments() throws IOException {
    assertThat(
            new Workspace(folder.resolve("none"), clock, Locale.ENGLISH)
                .read(folders -> {})
                .instruments())
        .isEmpty();
  }

  @Test
  void twoInstrumentsOfOneNameGetFoldersOfTheirOwn() throws IOException {
    Workspace workspace = new Workspace(folder, clock, Locale.ENGLISH);
    Path first = workspace.begin("Rind 2, by the door", "Ida").view().path();
    Path second = workspace.begin("Rind 2, by the door", "Ida").view().path();
    assertThat(first).hasFileName("rind-2-by-the-door");
    assertThat(second).hasFileName("rind-2-by-the-door-2");
  }
}
