package faintwind.fuzz;

import faintwind.calibration.beat.BeatTrack;
import faintwind.calibration.plan.Beat;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.PackFolder;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;

/** A sound file for every reader, small, and what has to lie beside it. */
final class Seeds {
  private static final Path EXAMPLES = Path.of("assets/examples");
  private static final Path AWKWARD = Path.of("src/test/resources/awkward");
  private static final String TABLE =
      "# noted\nrun,file,from_s,to_s,kind,radius_mm,u_radius_mm,turns,turns_time_s,u_turns_time_s,"
          + "first_click_s,spin_start_s,spin_stop_s,air_C,pressure_hPa,rh_pct,thermocouple,"
          + "direction,note\nwarm,a.csv,0,20,still,,,,,,,,,19.6,1002,48,T,,\n"
          + "one,a.csv,20,59,spin,300,1,5,20.5,0.1,22,21,50,19.6,1002,48,T,cw,\"a, b\"\n";

  private final Path folder;

  Seeds(Path folder) throws IOException {
    this.folder = folder;
    Files.createDirectories(folder.resolve("own/02-make"));
    StringBuilder rows = new StringBuilder("# start: 2026-03-01T10:00:00+01:00\ntime_s,delta_K\n");
    for (int i = 0; i < 60; i++) {
      rows.append(i).append(",30.").append(i % 10).append('\n');
    }
    Files.writeString(folder.resolve("a.csv"), rows);
  }

  /** An instrument's folder, for those that read one. */
  private void begin() throws IOException {
    InstrumentFolder instrument = new InstrumentFolder(folder);
    for (int i = 0; i < 4; i++) {
      instrument.append(List.of(entry("e" + i, i == 0 ? created() : note("seen " + i))));
    }
  }

  private static Event created() {
    return new Event.InstrumentCreated("Rind", false);
  }

  private static Event note(String text) {
    return new Event.NoteWritten(text);
  }

  private static JournalEntry entry(String id, Event event) {
    OffsetDateTime at = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
    return new JournalEntry(id, at, "Made-up builder", Optional.empty(), event);
  }

  byte[] of(Reader reader) throws IOException {
    if (Set.of(Reader.JOURNAL, Reader.INSTRUMENT, Reader.ARCHIVE).contains(reader)) {
      begin();
    }
    return switch (reader) {
      case RUNS_TABLE, RUNS_ANYWHERE, CHECK_TABLE -> bytes(TABLE);
      case RUN_FILE, LOG, FIRST_LINES -> Files.readAllBytes(EXAMPLES.resolve("log.csv"));
      case FOREIGN_LOG ->
          Files.readAllBytes(Path.of("assets/profiles/date-and-time-tabs.sample.csv"));
      case SHEET_XLSX -> Files.readAllBytes(AWKWARD.resolve("sheet.xlsx"));
      case SHEET_ODS -> Files.readAllBytes(AWKWARD.resolve("sheet.ods"));
      case CHAIN ->
          bytes("{\"input\":\"voltage\",\"type\":\"T\",\"gain\":100,\"offset\":0.01,\"bits\":16}");
      case CALIBRATION ->
          Files.readAllBytes(Path.of("demo-projects/cellar/calibrations/2026-09-13.json"));
      case DESIGN, CHECK_DESIGN -> Files.readAllBytes(EXAMPLES.resolve("design.json"));
      case PLAN -> plan();
      case PROFILE -> Files.readAllBytes(EXAMPLES.resolve("profile.json"));
      case JOURNAL -> Files.readAllBytes(folder.resolve("journal.jsonl"));
      case INSTRUMENT -> Files.readAllBytes(folder.resolve("instrument.json"));
      case CHECKLIST ->
          Files.readAllBytes(Path.of("checklists/standard/02-make/drill-heated.json"));
      case WAV -> sound();
      case POINTS -> Files.readAllBytes(EXAMPLES.resolve("points.csv"));
      case PLACES -> Files.readAllBytes(EXAMPLES.resolve("places.csv"));
      case SPEEDS -> speeds();
      case PNG -> picture("png");
      case JPEG -> picture("jpg");
      case ARCHIVE -> archive();
    };
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The whole file that the page of the format shows. */
  private static byte[] plan() throws IOException {
    String page = Files.readString(Path.of("docs/formats/plan.md"));
    int from = page.indexOf("```json") + 7;
    return bytes(page.substring(from, page.indexOf("```", from)));
  }

  private static byte[] speeds() throws IOException {
    Path whole = Path.of("demo-projects/cellar/logs/speeds-north-shelf-day.csv");
    return bytes(Files.readString(whole).lines().limit(40).collect(Collectors.joining("\n")));
  }

  private static byte[] sound() throws IOException {
    float[] samples = new BeatTrack(new Beat(180, 1), 8000, 0).samples(0, 16_000);
    byte[] bytes = new byte[samples.length];
    for (int i = 0; i < samples.length; i++) {
      bytes[i] = (byte) (128 + 100 * samples[i]);
    }
    AudioFormat format = new AudioFormat(8000, 8, 1, false, false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (AudioInputStream in =
        new AudioInputStream(new ByteArrayInputStream(bytes), format, bytes.length)) {
      AudioSystem.write(in, AudioFileFormat.Type.WAVE, out);
    }
    return out.toByteArray();
  }

  private static byte[] picture(String format) throws IOException {
    BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 40 * 30; i++) {
      image.setRGB(i % 40, i / 40, i * 7919);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, format, bytes);
    return bytes.toByteArray();
  }

  private byte[] archive() throws IOException {
    Path target = folder.resolve("made.zip");
    PackFolder.write(folder, target);
    byte[] bytes = Files.readAllBytes(target);
    Files.delete(target);
    return bytes;
  }
}
