package faintwind.demo;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.Step.ClockSpec;
import faintwind.job.design.KeptDesigns;
import faintwind.job.design.Sized;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.KeptGuides;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Walks a made-up builder through the checklist; every entry goes through the same job. */
final class DemoWalk {
  private final Path folder;
  private final KeptDesigns designs;
  private final KeptGuides guides = new KeptGuides(Locale.ENGLISH);
  private Enter.Person person;
  private OffsetDateTime now;
  private int ids;

  DemoWalk(Path folder, OffsetDateTime start) throws IOException {
    this.folder = folder;
    this.designs = KeptDesigns.withShippedParts();
    this.now = start;
    this.person =
        new Enter.Person("Made-up builder", () -> String.format(Locale.ROOT, "e%04d", ++ids));
  }

  /** From here on somebody else enters. */
  void by(String name) {
    person = Enter.Person.named(name);
  }

  void until(OffsetDateTime time) {
    now = time;
  }

  void begin(String name) throws IOException {
    Enter.begin(folder, new Event.InstrumentCreated(name, true), clock(), person);
  }

  void wait(Duration time) {
    now = now.plus(time);
  }

  OffsetDateTime now() {
    return now;
  }

  Clock clock() {
    return Clock.fixed(now.toInstant(), now.getOffset());
  }

  InstrumentView view() throws IOException {
    return ok(InstrumentView.open(folder, this::sheet, guides));
  }

  /** Two minutes later, an entry. */
  Enter enter() throws IOException {
    return enter(view());
  }

  private Enter enter(InstrumentView view) {
    wait(Duration.ofMinutes(2));
    return new Enter(view, clock(), person);
  }

  JournalEntry plain(Event event) throws IOException {
    return ok(enter().plain(Optional.empty(), event));
  }

  /** Opens a step, reads its cautions one by one, and starts its clock where that comes first. */
  Step begun(String id) throws IOException {
    InstrumentView view = view();
    Step step = view.checklist().step(id).orElseThrow();
    ok(enter(view).open(id));
    for (Caution caution : step.cautions()) {
      for (int member = 0; member < view.state().members(); member++) {
        ok(enter(view).acknowledge(id, caution.id()));
      }
    }
    if (clock(step).filter(clock -> !clock.afterReadings()).isPresent()) {
      ok(enter().startClock(id));
    }
    return step;
  }

  /** The whole step, its readings as typed and its questions as answered. */
  void done(String id, Map<String, String> typed, Map<String, String> answers) throws IOException {
    Step step = begun(id);
    Optional<ClockSpec> clock = clock(step);
    boolean soft = clock.filter(ClockSpec::afterReadings).isPresent();
    if (clock.isPresent() && !soft) {
      wait(Duration.ofHours(id.equals("warm-up-run") || id.equals("jar-check") ? 1 : 26));
    }
    InstrumentView view = view();
    for (Map.Entry<String, String> answer : answers.entrySet()) {
      ok(enter(view).answer(id, answer.getKey(), answer.getValue()));
    }
    for (Reading reading : step.asks().readings()) {
      boolean byOthers = reading.names().stream().anyMatch(name -> name.startsWith("reading_"));
      ok((byOthers ? enter() : enter(view)).reading(id, reading.id(), typed.get(reading.id())));
    }
    if (soft) {
      ok(enter().startClock(id));
      wait(Duration.ofHours(26));
    }
    if (step.asks().photo().isPresent()) {
      ok(enter().photo(id, DemoPicture.of(step.asks().photo().get()), "made up"));
    }
    ok(enter().finish(id));
  }

  /** Its clock, where the design needs it: paint dries, bare copper does not. */
  private Optional<ClockSpec> clock(Step step) throws IOException {
    InstrumentView view = view();
    Map<String, Double> values = view.situation(now).values(view.checklist());
    return step.asks().clock().filter(spec -> spec.runs(values));
  }

  /** The step as far as it goes; it is finished where its readings allow it. */
  void tried(String id, Map<String, String> typed) throws IOException {
    Step step = begun(id);
    wait(Duration.ofHours(1));
    for (Reading reading : step.asks().readings()) {
      ok(enter().reading(id, reading.id(), typed.get(reading.id())));
    }
    enter().finish(id);
  }

  <T> T ok(Checked<T> checked) {
    if (checked instanceof Checked.Ok<T> ok) {
      return ok.value();
    }
    Messages words = Messages.of(Locale.ENGLISH);
    List<String> lines = checked.problems().stream().map(words::line).toList();
    throw new IllegalStateException(folder + " at " + now + ": " + lines);
  }

  private Optional<DesignSheet> sheet(String json) {
    try {
      return designs.sized(json).map(Sized::sheet);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
