package faintwind.job.turntable;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.plan.ArmSetup;
import faintwind.calibration.plan.DataWay;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlanWish;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Uncertain;
import faintwind.job.JobWatch;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.physics.Interval;
import faintwind.record.Event;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanTurntableTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path tmp;

  private static PlannedSession planned() {
    PlanRequest request =
        PlanRequest.of(
            new ArmSetup(List.of(Uncertain.of(0.6, 0.001)), DataWay.of(DataWay.Kind.WIRELESS)),
            new PlanWish(
                0.1,
                2.5,
                PlanWish.Beats.usual(),
                PlanWish.Directions.BOTH_WAYS,
                PlanWish.Time.free()),
            new Response(Interval.share(520, 0.1), Interval.share(190, 0.1), 32, 0.01, 1));
    return value(PlanTurntable.plan(request, JobWatch.NOBODY));
  }

  private static <T> T value(Checked<T> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private InstrumentView view() throws IOException {
    return value(InstrumentView.open(tmp.resolve("rind"), design -> Optional.empty()));
  }

  @Test
  void planKeptLastIsTheOneThatIsFound() throws IOException {
    Path folder = tmp.resolve("rind");
    Enter.Person ida = Enter.Person.named("Ida");
    Enter.begin(folder, new Event.InstrumentCreated("Rind", true), Clock.systemUTC(), ida);
    assertThat(value(PlanTurntable.kept(folder, view().state()))).isEmpty();
    PlannedSession planned = planned();
    for (int i = 0; i < 2; i++) {
      value(PlanTurntable.keep(folder, planned, new Enter(view(), Clock.systemUTC(), ida)));
    }
    assertThat(folder.resolve("plans/plan-2.json")).exists();
    PlannedSession kept = value(PlanTurntable.kept(folder, view().state())).orElseThrow();
    assertThat(PlanTurntable.text(kept)).isEqualTo(PlanTurntable.text(planned));
  }

  @Test
  void demoTellsItsTimeConstantsFromTheCalibrationInForce() throws IOException {
    Response response =
        value(
            PlanTurntable.response(
                Path.of("demo-projects/cellar"), OffsetDateTime.parse("2026-11-25T12:00:00Z")));
    assertThat(response.still_s().nominal()).isBetween(200.0, 800.0);
    assertThat(response.breeze_s().nominal()).isLessThan(response.still_s().nominal());
  }

  @Test
  void sheetHasARowForEachStepAndComesAsPdf() throws IOException {
    PlannedSession planned = planned();
    Messages words = Messages.of(Locale.ENGLISH);
    Path html = tmp.resolve("sheet.html");
    Path pdf = tmp.resolve("sheet.pdf");
    PlanTurntable.writeSheet(planned, Plan.Form.STAIRCASE, html, "Rind <1>", words);
    PlanTurntable.writeSheet(planned, Plan.Form.STAIRCASE, pdf, "Rind <1>", words);
    String text = Files.readString(html);
    assertThat(text).contains("Run sheet, Rind &lt;1&gt;").doesNotContain("Rind <1>");
    String steps = text.substring(text.indexOf("<table class=\"run\">"));
    assertThat(steps.substring(0, steps.indexOf("</table>")).split("<tr>", -1))
        .hasSize(planned.choice().staircase().steps().size() + 2); // before the head, the head
    assertThat(new String(Files.readAllBytes(pdf), 0, 5, StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
  }
}
