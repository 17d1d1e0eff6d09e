package faintwind.ui.listen;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineReader;
import faintwind.job.formula.Profiles;
import faintwind.message.Checked;
import faintwind.ui.ScreenStage;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Theme;
import faintwind.ui.listen.SourceChoiceModel.Kind;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.css.CssParser;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class ListenPaneTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  static Path folder;

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private ScreenStage window;

  @SuppressWarnings("NullAway.Init")
  private SourceChoiceModel choice;

  @SuppressWarnings("NullAway.Init")
  private ListenModel model;

  private final List<Path> files = new ArrayList<>();
  private final List<ImportProfile> kept = new ArrayList<>();

  @Start
  void start(Stage stage) throws IOException {
    window = new ScreenStage(stage);
    choice =
        new SourceChoiceModel(
            window.words, window.background, List.of(Kind.values()), Profiles.shipped());
    Path recordings = Files.createTempDirectory(folder, "recordings");
    model = new ListenModel(window.words, Platform::runLater, recordings);
    model.whenOver(files::add);
    VBox sheet = new VBox(new ListenPane(window.desk, model, choice, Optional::empty, kept::add));
    sheet.getStyleClass().addAll("sheet", "data-sheet");
    window.show(
        DataScreen.of(
            window.desk,
            sheet,
            new ReadOnlyObjectWrapper<>(Next.say(Mark.READY, "Choose a source"))));
  }

  private static void serve(ServerSocket server, String lines) {
    Thread logger =
        new Thread(
            () -> {
              try (Socket peer = server.accept()) {
                OutputStream out = peer.getOutputStream();
                out.write(lines.getBytes(StandardCharsets.UTF_8));
                out.flush();
                // until the window hangs up
                peer.getInputStream().read();
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    logger.setDaemon(true);
    logger.start();
  }

  private static String rows(int count) {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < count; i++) {
      lines.append(i).append(";1,20").append(i % 10).append('\n');
    }
    return lines.toString();
  }

  private void fire(FxRobot robot, String id) {
    robot.interact(() -> robot.lookup(id).queryAs(Button.class).fire());
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void aLookAtTheLinesLeadsToAProfileAndARecording(FxRobot robot) throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      serve(server, rows(60));
      robot.interact(() -> choice.kind().set(Kind.TCP));
      robot.clickOn("#source-host").write("127.0.0.1");
      robot.interact(() -> choice.number().set("" + server.getLocalPort()));
      robot.clickOn("#source-look");
      WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !choice.seen().get().lines().isEmpty());
      WaitForAsyncUtils.waitForFxEvents();
      robot.interact(() -> window.picture("listen-look"));
      ImportModel preview =
          new ImportModel(
              window.words, "logger", choice.seen().get().lines(), LineReader.Begin.STREAM);
      preview.delimiter().set(';');
      preview.decimalMark().set(',');
      preview.headerLines().set("0");
      assertThat(preview.view().get().fits()).isTrue();
      robot.interact(() -> choice.use(preview.view().get().profile().orElseThrow()));
      serve(server, rows(300));
      fire(robot, "#listen-begin");
      WaitForAsyncUtils.waitFor(
          20, TimeUnit.SECONDS, () -> model.view().get().sentence().contains("rows in the file: "));
      robot.interact(() -> window.picture("listen-on"));
      fire(robot, "#listen-stop");
      WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !files.isEmpty());
    }
    List<String> lines = Files.readAllLines(files.get(0));
    assertThat(lines.get(2)).isEqualTo("time_s,signal_mV,gap");
    // the first line may have lost its front
    assertThat(lines.get(3)).isEqualTo("1,1.201,");
    assertThat(model.view().get().stage()).isEqualTo(ListenModel.Stage.OVER);
  }

  @Test
  void readingsAreAskedForAndTypedByKeyboardAlone(FxRobot robot) throws Exception {
    robot.interact(() -> choice.kind().set(Kind.TYPED));
    robot.interact(() -> choice.every().set("1"));
    fire(robot, "#listen-begin");
    WaitForAsyncUtils.waitFor(
        20, TimeUnit.SECONDS, () -> model.view().get().asked().contains("Reading 1"));
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("1,25\n");
    WaitForAsyncUtils.waitFor(
        20, TimeUnit.SECONDS, () -> model.view().get().sentence().startsWith("1.25"));
    robot.interact(() -> window.picture("listen-typed"));
    fire(robot, "#listen-stop");
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !files.isEmpty());
    assertThat(Files.readAllLines(files.get(0)).get(3)).matches("\\d+,1\\.25,");
  }

  @Test
  void whatIsMissingIsSaidAndNothingBegins(FxRobot robot) {
    robot.interact(() -> choice.kind().set(Kind.TCP));
    fire(robot, "#listen-begin");
    assertThat(robot.lookup("#listen-problems").queryAs(VBox.class).getChildren()).hasSize(1);
    assertThat(model.view().get().stage()).isEqualTo(ListenModel.Stage.IDLE);
  }

  /** A colour that no style gives would be said in the terminal at each look. */
  @Test
  void everyColourOfASearchableChoiceIsGiven(FxRobot robot) {
    robot.interact(() -> CssParser.errorsProperty().clear());
    robot.interact(() -> choice.kind().set(Kind.SERIAL));
    ComboBox<?> meaning = robot.lookup("#source-profile").queryAs(ComboBox.class);
    robot.interact(meaning::requestFocus);
    robot.interact(meaning::show);
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.theme(Theme.DARK));
    robot.interact(() -> window.picture("listen-searching"));
    robot.interact(meaning::hide);
    assertThat(CssParser.errorsProperty()).isEmpty();
  }

  @Test
  void eachKindIsSpelledAsTheCommandLineTakesIt(FxRobot robot) {
    robot.interact(this::spellEachKind);
  }

  private void spellEachKind() {
    choice.port().set("/dev/ttyUSB0");
    choice.host().set("192.0.2.7");
    choice.file().set("log.csv");
    List<String> spelled = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      choice.kind().set(kind);
      Checked<SourceAddress> read = SourceText.read(choice.text());
      assertThat(read.problems()).isEmpty();
      spelled.add(choice.text());
    }
    choice.kind().set(Kind.UDP);
    choice.here().set("0.0.0.0");
    assertThat(choice.text()).isEqualTo("udp:0.0.0.0:5000");
    assertThat(spelled)
        .containsExactly(
            "serial:/dev/ttyUSB0?baud=9600",
            "tcp:192.0.2.7:5000",
            "udp:5000",
            "file:log.csv",
            "typed:?every_s=30&unit=mV");
  }
}
