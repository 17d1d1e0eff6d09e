package faintwind.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WindowPlaceTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void placeComesBackAsItWasKept() throws IOException {
    WindowPlace place = new WindowPlace(-1200, 40, 1100, 760.5, false);
    place.write(folder);
    assertThat(WindowPlace.read(folder)).contains(place);
  }

  @Test
  void whatIsNoPlaceCountsAsNone() throws IOException {
    assertThat(WindowPlace.read(folder)).isEmpty();
    for (String nonsense : new String[] {"", "left=x", "left=1\ntop=1\nwidth=NaN\nheight=3"}) {
      Files.writeString(folder.resolve("window-place.properties"), nonsense);
      assertThat(WindowPlace.read(folder)).as(nonsense).isEmpty();
    }
  }

  @Test
  void crashReportNamesTheFaultAndTheProgram() throws IOException {
    OffsetDateTime now = OffsetDateTime.parse("2026-11-21T14:30:00Z");
    Path kept = CrashReport.keep(folder, "9.9", now, new IllegalStateException("no such row"));
    assertThat(kept.getFileName()).hasToString("crash-2026-11-21-143000.txt");
    assertThat(Files.readString(kept)).contains("Faintwind 9.9").contains("no such row");
  }
}
