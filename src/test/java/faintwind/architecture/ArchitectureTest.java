package faintwind.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaModifier.FINAL;
import static com.tngtech.archunit.core.domain.JavaModifier.STATIC;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import faintwind.job.CrashReport;
import faintwind.job.formula.KeepFormula;
import faintwind.job.formula.TypedDay;
import faintwind.message.Messages;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.text.SimpleDateFormat;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Formatter;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Scanner;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

@AnalyzeClasses(packages = "faintwind", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  private static final Pattern NO_CODE =
      Pattern.compile(
          "(?s)/\\*.*?\\*/|\"\"\".*?\"\"\"|(?-s)\"(\\\\.|[^\"\\\\\n"
              + "])*\"|//.*|(?m)^(import|package) .*");

  private static final Pattern FULL_NAME =
      Pattern.compile(
          "(?<![\\w.])(javax?|javafx|faintwind|org|com)\\.[a-z]\\w*(\\.[a-z]\\w*)*\\.[A-Z]\\w*");

  private static final String[] CORE = {
    "faintwind.message..",
    "faintwind.physics..",
    "faintwind.calibration..",
    "faintwind.record..",
    "faintwind.guide.."
  };

  @ArchTest
  static final ArchRule coreIsPure =
      noClasses()
          .that()
          .resideInAnyPackage(CORE)
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                  "java.io..",
                  "java.nio..",
                  "java.net..",
                  "java.util.concurrent..",
                  "javafx..",
                  "com.fasterxml.."))
          .because(
              "physics and statistics are pure functions: bytes, threads and windows are outside");

  @ArchTest
  static final ArchRule coreHasNoClock =
      noClasses()
          .that()
          .resideInAnyPackage(CORE)
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(Instant.class, "now")
          .orShould()
          .callMethod(OffsetDateTime.class, "now")
          .orShould()
          .callConstructor(Random.class)
          .orShould()
          .callMethod(Math.class, "random")
          .because("time and seed arrive as arguments, so that every result can be had again");

  @ArchTest
  static final ArchRule datesArePutIntoWordsInOnePlace =
      noClasses()
          .that()
          .resideInAnyPackage(
              "faintwind.ui..",
              "faintwind.report..",
              "faintwind.command..",
              "faintwind.terminal..",
              "faintwind.guide..",
              "faintwind.job..")
          .and()
          .doNotBelongToAnyOf(TypedDay.class, CrashReport.class, KeepFormula.class)
          .should()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.time.format.DateTimeFormatter")
          .because("DateText says days to people; the three read a day or name a file by it");

  @ArchTest
  static final ArchRule javafxOnlyInUi =
      noClasses()
          .that()
          .resideOutsideOfPackage("faintwind.ui..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx..", "org.controlsfx..", "atlantafx..")
          .because("everything but the window works without a display");

  @ArchTest
  static final ArchRule connectionsOnlyInDevice =
      noClasses()
          .that()
          .resideOutsideOfPackage("faintwind.device")
          .should()
          .dependOnClassesThat()
          .haveNameMatching(
              "java\\.net\\.(.*Socket.*|.*URLConnection|Inet.*|http\\..*)"
                  + "|java\\.nio\\.channels\\..*(Socket|Datagram).*")
          .orShould()
          .callMethod(URL.class, "openStream")
          .orShould()
          .callMethod(URL.class, "openConnection")
          .because("nothing is opened that nobody asked for, the window included");

  @ArchTest
  static final ArchRule jacksonAndCsvOnlyInFiles =
      noClasses()
          .that()
          .resideOutsideOfPackage("faintwind.files..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.fasterxml..", "de.siegmar..", "com.networknt..")
          .because("one package knows the bytes of a format");

  @ArchTest
  static final ArchRule drawingLibrariesOnlyInReport =
      noClasses()
          .that()
          .resideOutsideOfPackage("faintwind.report..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.openhtmltopdf..", "org.apache.pdfbox..")
          .because("one drawing code serves the window and the report");

  @ArchTest
  static final ArchRule workbooksOnlyWhereTheyAreReadAndWritten =
      noClasses()
          .that()
          .resideOutsideOfPackages("faintwind.report.export", "faintwind.files.table")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.poi..")
          .because("a workbook is one of the forms of an exported formula and of a table");

  @ArchTest
  static final ArchRule serialOnlyInDevice =
      noClasses()
          .that()
          .resideOutsideOfPackage("faintwind.device..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.fazecast..")
          .because("a source of samples is an interface to all others");

  @ArchTest
  static final ArchRule picocliOnlyInTheRoot =
      noClasses()
          .that()
          .resideOutsideOfPackages("faintwind", "faintwind.command..", "faintwind.terminal")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..")
          .because("the command line is a thin skin over the jobs");

  @ArchTest
  static final ArchRule standardStreamsOnlyAtTheTerminal =
      noClasses()
          .that()
          .resideOutsideOfPackages("faintwind", "faintwind.terminal")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .accessField(System.class, "in")
          .because("a job is used by the window too");

  @ArchTest
  static final ArchRule noMutableStatic =
      fields()
          .that()
          .areDeclaredInClassesThat()
          .resideInAPackage("faintwind..")
          .and()
          .areStatic()
          .should(beFinal())
          .because("state that anyone can change cannot be reasoned about");

  /** Whatever writes or reads by the system's language where nothing says which. */
  @ArchTest
  static final ArchRule numbersAreWrittenInALanguageThatIsSaid =
      noClasses()
          .that()
          .resideInAPackage("faintwind..")
          .should()
          .callMethod(String.class, "format", String.class, Object[].class)
          .orShould()
          .callMethod(String.class, "formatted", Object[].class)
          .orShould()
          .callMethod(String.class, "toLowerCase")
          .orShould()
          .callMethod(String.class, "toUpperCase")
          .orShould()
          .callMethod(PrintStream.class, "printf", String.class, Object[].class)
          .orShould()
          .callMethod(PrintStream.class, "format", String.class, Object[].class)
          .orShould()
          .callMethod(NumberFormat.class, "getInstance")
          .orShould()
          .callMethod(NumberFormat.class, "getNumberInstance")
          .orShould()
          .callMethod(NumberFormat.class, "getIntegerInstance")
          .orShould()
          .callMethod(NumberFormat.class, "getPercentInstance")
          .orShould()
          .callMethod(DecimalFormatSymbols.class, "getInstance")
          .orShould()
          .callMethod(DateTimeFormatter.class, "ofPattern", String.class)
          .orShould()
          .callMethod(DateTimeFormatterBuilder.class, "toFormatter")
          .orShould()
          .callMethod(MessageFormat.class, "format", String.class, Object[].class)
          .orShould()
          .callConstructor(DecimalFormat.class)
          .orShould()
          .callConstructor(DecimalFormat.class, String.class)
          .orShould()
          .callConstructor(MessageFormat.class, String.class)
          .orShould()
          .callConstructor(SimpleDateFormat.class, String.class)
          .orShould()
          .callConstructor(Formatter.class)
          .orShould()
          .callConstructor(Scanner.class, InputStream.class)
          .because("English text with the digits of the system's language is neither");

  @ArchTest
  static final ArchRule theSystemsLanguageIsAskedAtTheStartOnly =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName("faintwind.Main")
          .and()
          .doNotHaveFullyQualifiedName("faintwind.ui.FaintwindApp")
          .should()
          .callMethod(Locale.class, "getDefault")
          .because("the words carry their language with them");

  @ArchTest
  static final ArchRule filesForProgramsAreTheSameInEveryLanguage =
      noClasses()
          .that()
          .resideInAnyPackage("faintwind.files..", "faintwind.calibration..", "faintwind.device..")
          .and()
          .doNotHaveFullyQualifiedName("faintwind.files.calibration.StoredCalibration")
          .and()
          .doNotHaveFullyQualifiedName("faintwind.files.calibration.StoredEvidence")
          .and()
          .doNotHaveFullyQualifiedName("faintwind.files.design.SheetJson")
          .should()
          .dependOnClassesThat()
          .areAssignableTo(Messages.class)
          .because(
              "nothing a program reads is translated: a calibration has English words, and of a"
                  + " design sheet only the names for people follow the language");

  @ArchTest
  static final ArchRule namesSayWhatAThingIs =
      noClasses()
          .that()
          .resideInAPackage("faintwind..")
          .should()
          .haveNameMatching(".*(Manager|Helper|Helpers|Util|Utils|Service|Impl|Base)")
          .because("a name that fits everything says nothing");

  private static ArchCondition<JavaField> beFinal() {
    return new ArchCondition<>("be final") {
      @Override
      public void check(JavaField field, ConditionEvents events) {
        boolean ok = field.getModifiers().contains(FINAL) || !field.getModifiers().contains(STATIC);
        events.add(new SimpleConditionEvent(field, ok, field.getFullName() + " is not final"));
      }
    };
  }

  @Test
  void noSourceFileIsLongerThan400Lines() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      List<String> tooLong =
          files
              .filter(f -> f.toString().endsWith(".java"))
              .filter(f -> lines(f) > 400)
              .map(Path::toString)
              .toList();
      assertThat(tooLong).isEmpty();
    }
  }

  /** Where a name is written out in full in the code. */
  @Test
  void namesAreImported() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      List<String> writtenOut =
          files
              .filter(f -> f.toString().endsWith(".java"))
              .flatMap(ArchitectureTest::writtenOut)
              .toList();
      assertThat(writtenOut).isEmpty();
    }
  }

  private static Stream<String> writtenOut(Path file) {
    String code = NO_CODE.matcher(text(file)).replaceAll("");
    return FULL_NAME.matcher(code).results().map(found -> file + ": " + found.group());
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void everyPackageIsNullMarked() throws IOException {
    try (Stream<Path> folders = Files.walk(Path.of("src/main/java/faintwind"))) {
      List<Path> unmarked =
          folders.filter(ArchitectureTest::holdsCode).filter(f -> !isNullMarked(f)).toList();
      assertThat(unmarked).isEmpty();
    }
  }

  private static boolean holdsCode(Path folder) {
    try (Stream<Path> inside = Files.isDirectory(folder) ? Files.list(folder) : Stream.empty()) {
      return inside.anyMatch(f -> f.toString().endsWith(".java"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean isNullMarked(Path folder) {
    try {
      Path info = folder.resolve("package-info.java");
      return Files.exists(info) && Files.readString(info).contains("@NullMarked");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static long lines(Path file) {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.count();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
