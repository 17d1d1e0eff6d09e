package faintwind.ui.air;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.air.SummaryTable;
import faintwind.ui.Quiet;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SummaryModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init")
  private Quiet quiet;

  @SuppressWarnings("NullAway.Init")
  private SummaryModel model;

  private boolean answers = true;

  @BeforeEach
  void open() {
    quiet = new Quiet(folder);
    model =
        new SummaryModel(
            quiet.desk().words(),
            quiet.desk().background(),
            name -> answers ? Optional.of(folder.resolve(name)) : Optional.empty(),
            new AirOnPaper(Optional.empty()));
  }

  private Path speeds() throws IOException {
    StringBuilder text = new StringBuilder("# start: 2026-09-19T18:30:00+02:00\n");
    text.append("time_s,signal_uV,speed_m_s,u95_m_s,flag\n");
    for (int t = 0; t < 7200; t += 5) {
      text.append(String.format(Locale.ROOT, "%d,1000,%.5f,0.01,%n", t, 0.1 + t / 36_000.0));
    }
    return Files.writeString(folder.resolve("day.csv"), text);
  }

  @Test
  void figuresAreShownAndSavedWhereAPersonSays() throws IOException, InterruptedException {
    assertThat(model.next().get().mark()).isEqualTo(Mark.READY);
    model.open(speeds());
    quiet.answer();
    assertThat(model.view().get().summary().orElseThrow().overall(quiet.desk().words()))
        .anyMatch(line -> line.startsWith("Mean: 0.200 ± 0.010 m/s"));
    assertThat(model.view().get().summary().orElseThrow().hours(quiet.desk().words())).hasSize(3);
    model.save(SummaryModel.Saved.CSV);
    quiet.answer();
    assertThat(Files.readString(folder.resolve("day-summary.csv")))
        .isEqualTo(SummaryTable.of(model.view().get().summary().orElseThrow()));
    assertThat(model.next().get().sentence()).contains("day-summary.csv");
    model.save(SummaryModel.Saved.SVG);
    quiet.answer();
    assertThat(Files.readString(folder.resolve("day-summary.svg"))).startsWith("<?xml");
    model.save(SummaryModel.Saved.PNG);
    quiet.answer();
    assertThat(ImageIO.read(folder.resolve("day-summary.png").toFile()).getWidth())
        .isGreaterThan(1000);
  }

  @Test
  void whoSaysNoPlaceSavesNothing() throws IOException, InterruptedException {
    model.open(speeds());
    quiet.answer();
    answers = false;
    model.save(SummaryModel.Saved.CSV);
    assertThat(quiet.unanswered()).isZero();
    assertThat(folder.resolve("day-summary.csv")).doesNotExist();
    assertThat(model.next().get().act()).map(Act::id).contains("summary-csv");
  }

  @Test
  void aLimitThatIsTypedIsCountedBy() throws IOException, InterruptedException {
    model.open(speeds());
    quiet.answer();
    model.limit().set("0,2");
    quiet.answer();
    assertThat(model.view().get().summary().orElseThrow().overall(quiet.desk().words()))
        .anyMatch(line -> line.startsWith("Above 0.200 m/s: 49.9 % of the time"));
    model.limit().set("300");
    assertThat(model.view().get().problems()).anyMatch(p -> p.contains("outside its range"));
  }

  @Test
  void aLogThatIsNotConvertedIsRefused() throws IOException, InterruptedException {
    model.open(Files.writeString(folder.resolve("raw.csv"), "time_s,delta_K\n0,20\n"));
    quiet.answer();
    assertThat(model.next().get().mark()).isEqualTo(Mark.BLOCKED);
    assertThat(model.view().get().problems()).anyMatch(p -> p.contains("not a converted log"));
  }
}
