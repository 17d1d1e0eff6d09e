package faintwind.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
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

  private static final WindowPlace.Area FIRST = new WindowPlace.Area(0, 0, 1366, 740);
  private static final WindowPlace.Area SECOND = new WindowPlace.Area(1366, 0, 1920, 1040);

  @Test
  void windowOfAScreenThatIsGoneIsPulledToTheFirst() {
    WindowPlace place = new WindowPlace(1500, 100, 1600, 900, false);
    assertThat(place.on(List.of(FIRST, SECOND))).isEqualTo(place);
    assertThat(place.on(List.of(FIRST))).isEqualTo(new WindowPlace(0, 0, 1366, 740, false));
  }

  @Test
  void windowWhoseTitleIsOutOfSightIsPulledIn() {
    assertThat(new WindowPlace(200, -300, 800, 600, false).on(List.of(FIRST)))
        .isEqualTo(new WindowPlace(200, 0, 800, 600, false));
    assertThat(new WindowPlace(-760, 50, 800, 600, false).on(List.of(FIRST)))
        .isEqualTo(new WindowPlace(0, 50, 800, 600, false));
    WindowPlace acrossBoth = new WindowPlace(1000, 20, 900, 600, false);
    assertThat(acrossBoth.on(List.of(FIRST, SECOND))).isEqualTo(acrossBoth);
  }
}
