package faintwind.ui.home;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.home.HomeModel.Mode;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.part.Mark;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HomeModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final List<Standpoint> opened = new ArrayList<>();
  private final StringProperty who = new SimpleStringProperty("Ida");

  private HomeModel read(Quiet quiet) throws InterruptedException {
    HomeModel home = new HomeModel(quiet.desk(), quiet.workspace(), who, opened::add);
    home.read();
    quiet.answer();
    return home;
  }

  @Test
  void anEmptyFolderIsAFirstRun() throws Exception {
    HomeModel home = read(new Quiet(folder));
    assertThat(home.mode().get()).isEqualTo(Mode.FIRST_RUN);
    assertThat(home.next().get().act())
        .hasValueSatisfying(a -> assertThat(a.id()).isEqualTo("start-parts"));
  }

  @Test
  void demoLivesInItsOwnFolderAndOneOfItIsOpened() throws Exception {
    Quiet quiet = new Quiet(folder);
    HomeModel home = read(quiet);
    home.openDemo();
    quiet.answer();
    assertThat(opened).hasSize(1);
    assertThat(opened.get(0).view().path()).isEqualTo(folder.resolve("Demo (made up)/cellar"));
    assertThat(quiet.workspace().read(folders -> {}).isEmpty()).isTrue();
  }

  /** Five hundred of them take seconds; nobody waits for the last to open the first. */
  @Test
  void manyAreNamedAtOnceAndOneCanBeOpenedBeforeAllAreRead() throws Exception {
    for (int i = 10; i < 40; i++) {
      Cellar.begin("Rind " + i).into(folder, "rind-" + i);
    }
    Quiet quiet = new Quiet(folder);
    HomeModel home = read(quiet);
    assertThat(home.mode().get()).isEqualTo(Mode.LIST);
    assertThat(names(home)).hasSize(30).startsWith("rind-10", "rind-11");
    assertThat(home.next().get().act()).isEmpty();
    quiet.answer();
    assertThat(names(home)).hasSize(30).startsWith("Rind 10");
    assertThat(home.next().get().act()).isPresent();

    HomeModel again = read(quiet);
    again.open(folder.resolve("rind-17"));
    quiet.answer();
    quiet.answer();
    assertThat(opened)
        .singleElement()
        .satisfies(s -> assertThat(s.view().state().name()).hasValue("Rind 17"));
  }

  @Test
  void anInstrumentIsBegunOnlyWithItsNameAndAPersons() throws Exception {
    Quiet quiet = new Quiet(folder);
    HomeModel home = read(quiet);
    home.beginNaming();
    who.set("");
    home.newName().set("Rind 1");
    assertThat(home.next().get().act()).isEmpty();
    home.begin();
    assertThat(folder).isEmptyDirectory();

    who.set("Ida");
    assertThat(home.next().get().act()).isPresent();
    home.begin();
    quiet.answer();
    assertThat(opened)
        .singleElement()
        .satisfies(s -> assertThat(s.view().state().name()).hasValue("Rind 1"));
    assertThat(folder.resolve("rind-1/journal.jsonl")).exists();
  }

  @Test
  void whereNothingIsFoundItIsSaidHowAllAreSeenAgain() throws Exception {
    Cellar.begin("Attic").design().into(folder, "a");
    HomeModel home = read(new Quiet(folder));
    home.find("Loft");
    assertThat(home.next().get().sentence()).isEqualTo("No instrument here says \"loft\".");
    assertThat(home.next().get().detail()).startsWith("Empty the box");
  }

  @Test
  void anEmptyArchiveSaysHowInstrumentsGetThere() throws Exception {
    Cellar.begin("Attic").design().into(folder, "a");
    HomeModel home = read(new Quiet(folder));
    home.filter(HomeFilter.ARCHIVED);
    assertThat(home.next().get().sentence()).isEqualTo("The archive is empty.");
    assertThat(home.next().get().detail()).startsWith("Tick instruments in the list");
  }

  /** A number never stands alone, nor where somebody typed it bare. */
  @Test
  void whatIsDoubtfulIsToldWithItsUnit() throws Exception {
    Cellar.begin("Attic")
        .design()
        .before("heater-alone")
        .open("heater-alone")
        .type("heater-alone", "heater-alone", "104")
        .into(folder, "a");
    HomeModel home = read(new Quiet(folder));
    assertThat(home.view().get().lines().get(0).state().note())
        .isEqualTo("Resistor, leg to leg: 104\u00a0Ω is doubtful.");
  }

  @Test
  void whoNeedsSomebodyComesFirstUntilSortedByName() throws Exception {
    Cellar.begin("Attic").design().into(folder, "a");
    Cellar.begin("Zinc door").design().before("glue-heater").open("glue-heater").into(folder, "z");
    HomeModel home = read(new Quiet(folder));
    List<String> byNeed = names(home);
    home.toggleOrder();
    assertThat(names(home)).containsExactly("Attic", "Zinc door");
    home.toggleOrder();
    assertThat(names(home)).isEqualTo(byNeed);
    assertThat(home.next().get().sentence()).contains(byNeed.get(0));
  }

  @Test
  void whatIsArchivedLeavesTheListAndComesBack() throws Exception {
    Path attic = Cellar.begin("Attic").design().into(folder, "a");
    Cellar.begin("Zinc door").design().into(folder, "z");
    Quiet quiet = new Quiet(folder);
    HomeModel home = read(quiet);
    home.picked().pick(attic, true);
    home.archive();
    quiet.answer();
    quiet.answer();
    assertThat(home.picked().remark().get()).isEmpty();
    assertThat(names(home)).containsExactly("Zinc door");
    home.filter(HomeFilter.ARCHIVED);
    assertThat(names(home)).containsExactly("Attic");
    home.picked().pick(attic, true);
    home.archive();
    quiet.answer();
    quiet.answer();
    assertThat(names(home)).isEmpty();
    home.filter(HomeFilter.ALL);
    assertThat(names(home)).containsExactlyInAnyOrder("Attic", "Zinc door");
  }

  @Test
  void theNextLineOpensTheFirstRow() throws Exception {
    Path attic = Cellar.begin("Attic").design().into(folder, "a");
    HomeModel home = read(new Quiet(folder));
    home.next().get().act().orElseThrow().run().run();
    assertThat(opened).singleElement().satisfies(s -> assertThat(s.view().path()).isEqualTo(attic));
  }

  @Test
  void aFolderThatCannotBeReadIsSaidAndTheOthersStand() throws Exception {
    Cellar.begin("Attic").into(folder, "a");
    Path broken = Files.createDirectories(folder.resolve("b"));
    Files.writeString(broken.resolve("journal.jsonl"), "no journal\n");
    HomeModel home = read(new Quiet(folder));
    assertThat(names(home)).contains("Attic");
    assertThat(home.mode().get()).isEqualTo(Mode.LIST);
  }

  @Test
  void theFolderItselfThatIsNoFolderIsAFirstRun() throws Exception {
    Path file = Files.writeString(folder.resolve("x"), "");
    HomeModel home = read(new Quiet(file));
    assertThat(home.mode().get()).isEqualTo(Mode.FIRST_RUN);
    assertThat(home.next().get().mark()).isEqualTo(Mark.READY);
  }

  @Test
  void theButtonOpensTheRowThatHasTheFocus() throws Exception {
    Cellar.begin("Attic").design().into(folder, "a");
    Cellar.begin("Zinc door").design().before("glue-heater").open("glue-heater").into(folder, "z");
    Quiet quiet = new Quiet(folder);
    HomeModel home = read(quiet);
    assertThat(home.next().get().sentence()).startsWith("Zinc door: ");
    home.select(folder.resolve("a"));
    assertThat(home.next().get().sentence()).startsWith("Attic: ");
    home.next().get().act().orElseThrow().run().run();
    assertThat(opened)
        .singleElement()
        .satisfies(s -> assertThat(s.view().state().name()).hasValue("Attic"));
  }

  @Test
  void aClockThatRunsShowsItsTimeBesideWhatCanBeDone() throws Exception {
    Cellar.begin("Attic")
        .design()
        .before("coat-parts")
        .open("coat-parts")
        .cautions("coat-parts")
        .clock("coat-parts", 24 * 3600, 21 * 60)
        .into(folder, "a");
    HomeModel home = read(new Quiet(folder));
    assertThat(home.view().get().lines().get(0).next().detail())
        .isEqualTo("A clock runs meanwhile: 3 h to go.");
    home.filter(HomeFilter.CLOCK_RUNS);
    assertThat(names(home)).containsExactly("Attic");
  }

  @Test
  void whatFitsIntoTheTimeIsPlannedOverAllInstrumentsAndOpensThem() throws Exception {
    Cellar.begin("Attic").into(folder, "a");
    Cellar.begin("Zinc door").design().before("coat-parts").open("coat-parts").into(folder, "z");
    Quiet quiet = new Quiet(folder);
    HomeModel home = read(quiet);
    home.today().typed().set("45");
    home.today().ask();
    TodayModel.Plan plan = home.today().plan().get().orElseThrow();
    assertThat(plan.title()).startsWith("In 45 minutes: ");
    assertThat(plan.steps().get(0).text())
        .isEqualTo("Zinc door: Coat junctions and leads, about 20 min");
    assertThat(plan.steps().stream().map(TodayModel.Line::text))
        .anyMatch(text -> text.startsWith("Attic: "));
    assertThat(String.join("\n", plan.more()))
        .contains("Tools: ", "fine brush", "Zinc door: The first coat dries");
    TodayModel.opening(plan.steps().get(0), home::open).run();
    assertThat(opened).hasSize(1);

    home.today().typed().set("an hour");
    home.today().ask();
    assertThat(home.today().plan().get()).isEmpty();
    assertThat(home.today().remark().get()).isEqualTo("Type whole minutes, up to 600.");
  }

  private static List<String> names(HomeModel home) {
    return home.view().get().lines().stream().map(HomeView.Line::name).toList();
  }
}
