package faintwind.files.run;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.SignalChain;
import faintwind.files.asset.ProfileFile;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whoever adds a profile adds a sample of its lines and what they mean; no code is touched. */
class ShippedProfilesTest {
  private static final Path FOLDER = Path.of("assets/profiles");

  static List<Path> profiles() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  static List<Path> sampled() throws IOException {
    return profiles().stream().filter(f -> Files.exists(beside(f, "sample"))).toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("profiles")
  void profileIsReadAndWrittenUnchanged(Path file) throws IOException {
    ImportProfile profile = read(file);
    assertThat(file.getFileName().toString()).isEqualTo(profile.id() + ".json");
    assertThat(ProfileFile.parse(ProfileFile.text(profile), "again"))
        .isEqualTo(Checked.ok(profile));
    assertThat(Files.readString(file)).contains("Own invention");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sampled")
  void sampleConvertsToTheExpectedFile(Path file) throws IOException {
    String made = converted(file);
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(beside(file, "expected"), made);
    }
    assertThat(made).isEqualTo(Files.readString(beside(file, "expected")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sampled")
  void expectedFileReadsLikeTheSample(Path file) throws IOException {
    Recording sample =
        value(
            RunFile.readForeign(
                beside(file, "sample"), "sample", SignalChain.Input.VOLTAGE, read(file)));
    Recording expected =
        value(RunFile.read(beside(file, "expected"), "expected", SignalChain.Input.VOLTAGE));
    assertThat(sample.unit()).isEqualTo(expected.unit());
    assertThat(sample.start()).isEqualTo(expected.start());
    assertThat(sample.signal().times_s()).isEqualTo(expected.signal().times_s());
    assertThat(sample.signal().values()).isEqualTo(expected.signal().values());
  }

  private static String converted(Path file) throws IOException {
    try (LogReader reader =
        value(
            LogReader.openForeign(
                Files.newInputStream(beside(file, "sample")),
                "sample",
                SignalChain.Input.VOLTAGE,
                read(file)))) {
      StringBuilder text = new StringBuilder();
      reader.columns().start().ifPresent(s -> text.append("# start: ").append(s).append('\n'));
      text.append(String.join(",", reader.columns().names())).append('\n');
      for (Optional<LogRow> row = reader.next(); row.isPresent(); row = reader.next()) {
        text.append(row.get().text()).append('\n');
      }
      return text.toString();
    }
  }

  private static ImportProfile read(Path file) throws IOException {
    return value(ProfileFile.read(file, file.toString()));
  }

  private static Path beside(Path profile, String what) {
    String name = profile.getFileName().toString().replace(".json", "");
    return profile.resolveSibling(name + "." + what + ".csv");
  }

  private static <T> T value(Checked<T> checked) {
    return checked.fold(
        (ok, notes) -> ok,
        problems -> {
          throw new AssertionError(problems);
        });
  }
}
