package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What in a class is the teacher's alone, and what is refused with its reason. */
class ClassGuardTest {
  private static final Path DESIGN = Path.of("assets/examples/design.json");
  private static final String REASON = "checked it on another meter";

  @TempDir Path temp;
  private final Shell shell = new Shell();
  private Path folder = Path.of("");
  private Path pair = Path.of("");

  @BeforeEach
  void make() {
    folder = temp.resolve("class");
    pair = folder.resolve("pair-01");
    int made =
        shell.run(
            "class",
            "create",
            folder,
            "--pairs",
            2,
            "--code",
            "4711",
            "--design",
            DESIGN,
            "--role",
            "builds",
            "--role",
            "writes");
    assertThat(made).as(shell.said()).isZero();
  }

  private int sign(String code, String step, String... what) {
    Object[] all = new Object[8 + what.length];
    Object[] start = {"class", "sign", folder, 1, step};
    Object[] end = {"--because", REASON, "--code=" + code};
    System.arraycopy(start, 0, all, 0, start.length);
    System.arraycopy(what, 0, all, start.length, what.length);
    System.arraycopy(end, 0, all, start.length + what.length, end.length);
    return shell.run(all);
  }

  private String entry(String what) throws IOException {
    Pattern id = Pattern.compile("\"id\":\"([^\"]+)\".*" + Pattern.quote(what));
    Matcher found = id.matcher("");
    for (String line : Files.readAllLines(pair.resolve("journal.jsonl"))) {
      if (found.reset(line).find()) {
        return found.group(1);
      }
    }
    throw new AssertionError(what);
  }

  private void changeClass(String from, String to) throws IOException {
    Path file = folder.resolve("class.json");
    String text = Files.readString(file);
    assertThat(text).contains(from);
    Files.writeString(file, text.replace(from, to));
  }

  @Test
  void nothingIsSignedForAStepThatIsNotThereOrWithoutAReason() throws IOException {
    long before = Files.size(pair.resolve("journal.jsonl"));
    assertThat(sign("4711", "nostep")).isEqualTo(3);
    assertThat(shell.said()).contains("There is no step nostep");
    Object[] blank = {
      "class", "sign", folder, 1, "check-parts", "--because", " ", "--code", "4711"
    };
    assertThat(shell.run(blank)).isEqualTo(3);
    assertThat(shell.said()).contains("No reason was given");
    Object[] short_ = {
      "class", "sign", folder, 1, "check-parts", "diameter-a", "--because", "x", "--code", "4711"
    };
    assertThat(shell.run(short_)).isEqualTo(3);
    assertThat(shell.said()).contains("at least two words");
    assertThat(Files.size(pair.resolve("journal.jsonl"))).isEqualTo(before);
  }

  @Test
  void aNewCodeIsChosenByTheOldOneOrWhereThereIsNone() throws IOException {
    assertThat(shell.run("class", "code", folder, "--new", "9876")).isEqualTo(3);
    assertThat(shell.said()).contains("not the teacher's", "take the key teacher");
    assertThat(shell.run("class", "code", folder, "--code", "4711", "--new", "   9")).isEqualTo(3);
    assertThat(shell.run("class", "code", folder, "--code", "4711", "--new", "9876")).isZero();
    assertThat(sign("4711", "check-parts")).isEqualTo(3);
    assertThat(sign("9876", "check-parts")).as(shell.said()).isZero();

    Path file = folder.resolve("class.json");
    String without = Files.readString(file).replaceAll(",\\s*\"teacher\" : \\{[^}]*\\}", "");
    Files.writeString(file, without);
    assertThat(sign("9876", "check-parts")).isEqualTo(3);
    assertThat(shell.said()).contains("class code FOLDER --new CODE");
    assertThat(shell.run("class", "code", folder, "--new", "abcd")).as(shell.said()).isZero();
    assertThat(sign("abcd", "check-parts")).as(shell.said()).isZero();
  }

  @Test
  void aCodeOfNothingOrOfSpacesIsRefused() {
    for (String code : new String[] {"", "    ", " 47 "}) {
      Path other = temp.resolve("other");
      assertThat(shell.run("class", "create", other, "--pairs", 1, "--code=" + code)).isIn(2, 3);
      assertThat(shell.said()).contains("The code is too short", "At least 4 characters");
      assertThat(other).doesNotExist();
    }
  }

  @Test
  void aLessonOfNoMinutesAndAPairThatIsNotThereAreRefused() {
    for (int minutes : new int[] {0, -5, 601}) {
      assertThat(shell.run("class", "lesson", folder, "--minutes=" + minutes)).isEqualTo(2);
      assertThat(shell.said()).contains("from 1 to 600");
    }
    for (int number : new int[] {99, 0}) {
      assertThat(shell.run("class", "lesson", folder, "--pair", number)).isEqualTo(3);
      assertThat(shell.said()).contains("There is no pair " + number);
    }
    assertThat(shell.run("class", "lesson", folder, "--minutes", 30, "--pair", 2)).isZero();
    assertThat(shell.said())
        .contains("What fits into 30 minutes:", "Pair 2: ")
        .doesNotContain("Pair 1: ");
  }

  @Test
  void theStepsOfAClassArePrintedIntoAFolder() throws IOException {
    Path out = temp.resolve("paper");
    Object[] print = {"steps", folder, "--out", out, "--step", "choose-use"};
    assertThat(shell.run(print)).as(shell.said()).isZero();
    assertThat(Files.readString(out.resolve("pair-02.html"))).contains("Pair 2");
    assertThat(out.resolve("pair-01.html")).exists();
    assertThat(shell.run(print)).as("none is written over").isEqualTo(2);
    Path file = Files.writeString(temp.resolve("a.html"), "mine");
    assertThat(shell.run("steps", folder, "--out", file)).isEqualTo(2);
    assertThat(shell.said()).contains("holds several instruments");
    assertThat(file).hasContent("mine");
  }

  @Test
  void whereTheFileOfTheClassIsBrokenNobodyEntersAsTheTeacher() throws IOException {
    changeClass("\"rounds\" : 200000", "\"rounds\" : 0");
    assertThat(shell.run("note", pair, "looked at it", "--who", "teacher")).isEqualTo(3);
    assertThat(shell.said()).contains("the file of the class cannot be used", "class show");
    assertThat(shell.run("note", pair, "weighed", "--who", "Ada")).as(shell.said()).isZero();
    Files.writeString(folder.resolve("class.json"), "{\"format\":");
    assertThat(shell.run("note", pair, "looked at it", "--who", "Teacher")).isEqualTo(3);
  }

  private int correct(String entry, String who) {
    return shell.run("correct", pair, entry, "--because", "it was a slip", "--who", who);
  }

  @Test
  void whatTheTeacherSignedIsTakenBackWithTheCodeAlone() throws IOException {
    assertThat(correct(entry("\"what\":\"instrument\""), "Ada")).isEqualTo(3);
    assertThat(shell.said()).contains("cannot be struck through", "Begin another folder");
    assertThat(sign("4711", "check-parts")).as(shell.said()).isZero();
    String signed = entry("signed by the teacher");
    assertThat(correct(signed, "Ada")).isEqualTo(3);
    assertThat(shell.said()).contains("is the teacher's", "strike:" + signed);
    assertThat(correct(signed, " TEACHER")).isEqualTo(3);
    assertThat(sign("0000", "check-parts", "strike:" + signed)).isEqualTo(3);
    assertThat(sign("4711", "check-parts", "strike:" + signed)).as(shell.said()).isZero();
    assertThat(Files.readString(pair.resolve("journal.jsonl"))).contains("\"what\":\"correction\"");
  }
}
