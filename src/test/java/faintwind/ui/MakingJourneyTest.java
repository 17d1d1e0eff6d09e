package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.files.Sha256;
import faintwind.files.SidewaysPhoto;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Standing;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javafx.geometry.VerticalDirection;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Photos by file, paste and drop; cards; steps on paper: as a person at the bench does it. */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class MakingJourneyTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path parent;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) throws IOException {
    journey = Journey.of(hands, parent).asked();
  }

  @AfterEach
  void close() {
    journey.close();
  }

  private void open(String step) throws IOException {
    Cellar.begin("Rind 2").design().before(step).open(step).cautions(step).into(parent, "rind-2");
    journey.open();
    journey.openInstrument("rind-2");
  }

  private List<PhotoAdded> photos(String step) {
    return journey.state("rind-2").standing(PhotoAdded.class, step).stream()
        .map(Standing::event)
        .toList();
  }

  private Path picture(String name, int colour) throws IOException {
    BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
    image.setRGB(3, 3, colour);
    Path file = parent.resolve(name);
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  private static Node see(FxRobot robot, String id) {
    Node node = robot.lookup(id).query();
    for (int i = 0; i < 40 && node.localToScene(0, 0).getY() > 600; i++) {
      robot.moveTo("#step-aside");
      robot.scroll(5, VerticalDirection.DOWN);
    }
    return node;
  }

  @Test
  void aPhotoByFileIsKeptWithItsHashAndShownSmall(FxRobot robot) throws IOException {
    open("drill-heated");
    Path photo = picture("bore.png", 0x336699);
    journey.choose(photo);
    journey.fire("#photo-add");
    Waiting.until(() -> photos("drill-heated").size() == 1);
    PhotoAdded kept = photos("drill-heated").get(0);
    assertThat(kept.sha256()).isEqualTo(Sha256.of(photo));
    assertThat(parent.resolve("rind-2").resolve(kept.file())).hasSameBinaryContentAs(photo);
    Waiting.until(() -> journey.there("#photo-kept-1"));
  }

  /** Stored 60 by 40 with a note that its right side was up: seen 40 by 60. */
  @Test
  void aPhotoTakenSidewaysStandsUpright(FxRobot robot) throws IOException {
    open("drill-heated");
    Path photo = SidewaysPhoto.write(parent.resolve("bore.jpg"), 6);
    journey.choose(photo);
    journey.fire("#photo-add");
    Waiting.until(() -> journey.there("#photo-kept-1"));
    Node seen = robot.lookup("#photo-kept-1").query();
    Waiting.until(() -> seen.getLayoutBounds().getHeight() > 0);
    assertThat(seen.getLayoutBounds().getHeight() / seen.getLayoutBounds().getWidth())
        .isCloseTo(1.5, within(0.05));
    assertThat(parent.resolve("rind-2").resolve(photos("drill-heated").get(0).file()))
        .hasSameBinaryContentAs(photo);
  }

  @Test
  void aPhotoThatIsCutShortIsRefusedInWordsAndNothingIsKept(FxRobot robot) throws IOException {
    open("drill-heated");
    Path photo = picture("bore.png", 0x336699);
    Files.write(photo, Arrays.copyOf(Files.readAllBytes(photo), 60));
    journey.choose(photo);
    journey.fire("#photo-add");
    Waiting.until(
        () ->
            robot.lookup(".label").queryAllAs(Label.class).stream()
                .anyMatch(label -> label.getText().contains("cut short")));
    assertThat(photos("drill-heated")).isEmpty();
    assertThat(parent.resolve("rind-2/photos")).isEmptyDirectory();
  }

  @Test
  void aPastedPictureIsKept(FxRobot robot) throws IOException {
    open("mount-pair");
    WritableImage image = new WritableImage(30, 20);
    image.getPixelWriter().setColor(2, 2, Color.TEAL);
    robot.interact(
        () -> {
          ClipboardContent content = new ClipboardContent();
          content.putImage(image);
          Clipboard.getSystemClipboard().setContent(content);
        });
    journey.press(KeyCode.CONTROL, KeyCode.V);
    Waiting.until(() -> photos("mount-pair").size() == 1);
    assertThat(photos("mount-pair").get(0).caption()).isEqualTo("pasted picture");
  }

  @Test
  void aDroppedFileIsKept(FxRobot robot) throws IOException {
    open("mount-pair");
    Path photo = picture("dropped.png", 0x884422);
    Label source = new Label("drag me");
    source.setId("drag-source");
    source.setOnDragDetected(
        event -> {
          ClipboardContent content = new ClipboardContent();
          content.putFiles(List.of(photo.toFile()));
          source.startDragAndDrop(TransferMode.COPY).setContent(content);
          event.consume();
        });
    robot.interact(
        () -> robot.lookup("#step-sheet").queryAs(VBox.class).getChildren().add(0, source));
    robot.drag("#drag-source").dropTo("#step-title");
    Waiting.until(() -> photos("mount-pair").size() == 1);
    assertThat(photos("mount-pair").get(0).sha256()).isEqualTo(Sha256.of(photo));
  }

  @Test
  void controlPPutsTheStepOnPaperAndSaysWhereItIs(FxRobot robot) throws IOException {
    open("drill-heated");
    journey.press(KeyCode.CONTROL, KeyCode.P);
    Path page = parent.resolve("rind-2/reports/steps/drill-heated.pdf");
    Waiting.until(() -> journey.there("#note"));
    assertThat(page).isNotEmptyFile();
    assertThat(robot.lookup("#note").query().getAccessibleText()).contains(page.toString());
  }

  @Test
  void aWholeStageIsPrintedFromTheMargin(FxRobot robot) throws IOException {
    open("drill-heated");
    Node print = see(robot, "#stage-print");
    robot.interact(() -> ((Hyperlink) print).fire());
    Waiting.until(() -> journey.there("#note"));
    assertThat(parent.resolve("rind-2/reports/steps/02-make.pdf")).isNotEmptyFile();
  }

  @Test
  void theDrillingCardStandsBesideTheStepAndExplainsItself(FxRobot robot) throws IOException {
    open("drill-heated");
    assertThat(robot.lookup("#step-card").tryQuery()).isPresent();
    robot.interact(() -> ((Hyperlink) robot.lookup("#card-why-4").query()).fire());
    Waiting.until(() -> journey.there("#note"));
    assertThat(robot.lookup("#note").query().getAccessibleText()).contains("v/(π·d)");
  }

  @Test
  void thePathTellsWhatCanBeDoneNowAndLeadsThere(FxRobot robot) throws IOException {
    open("coat-parts");
    assertThat(robot.lookup("#order-coat-parts").tryQuery()).isPresent();
    journey.fire("#start-clock");
    Waiting.until(
        () ->
            robot.lookup("#path-order .label").queryAllAs(Label.class).stream()
                .anyMatch(label -> label.getText().contains("a clock runs")));
  }
}
