package faintwind.architecture;

import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInAnyPackage;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The plan of the house and of each room: docs/architecture.puml is the drawing and the test. Its
 * first drawing is of the whole, each further one of the packages of one room.
 */
class PackagesTest {
  private static final int MOST_TYPES = 25;
  private static final Pattern DRAWING =
      Pattern.compile("@startuml (\\w+)\n(.*?)@enduml", Pattern.DOTALL);
  private static final Pattern COMPONENT = Pattern.compile("\\[\\w+] (<<.*>>) as (\\w+)");
  private static final Pattern ARROW = Pattern.compile("(?m)^(\\w+) --> (\\w+)$");

  private static JavaClasses classes;
  private static Map<String, String> drawings;

  @TempDir Path folder;

  @BeforeAll
  static void read() throws IOException {
    classes =
        new ClassFileImporter()
            .withImportOption(new DoNotIncludeTests())
            .importPackages("faintwind");
    drawings =
        DRAWING
            .matcher(Files.readString(Path.of("docs/architecture.puml")))
            .results()
            .collect(Collectors.toMap(m -> m.group(1), MatchResult::group));
    assertThat(drawings).containsKey("whole").hasSizeGreaterThan(5);
  }

  @TestFactory
  Stream<DynamicTest> everyDependencyIsAnArrow() {
    return drawings.entrySet().stream()
        .map(
            drawing ->
                DynamicTest.dynamicTest(
                    drawing.getKey(), () -> adheres(drawing.getKey(), drawing.getValue())));
  }

  private void adheres(String name, String drawing) throws IOException {
    Path file = Files.writeString(folder.resolve(name + ".puml"), drawing);
    String[] packages = packages(drawing);
    ArchRuleDefinition.classes()
        .that()
        .resideInAnyPackage(packages)
        .should(adhereToPlantUmlDiagram(file, considering(packages)))
        .because("whoever looks for something in a room finds it where the drawing says")
        .check(classes);
  }

  private static PlantUmlArchCondition.Configuration considering(String[] packages) {
    return consideringOnlyDependenciesInAnyPackage(
        packages[0], Arrays.copyOfRange(packages, 1, packages.length));
  }

  @Test
  void everyPackageIsDrawn() {
    Set<String> drawn = new TreeSet<>();
    drawings.values().forEach(drawing -> drawn.addAll(List.of(packages(drawing))));
    assertThat(typesByPackage().keySet())
        .allMatch(p -> drawn.contains(p) || drawn.contains(p + ".."));
  }

  @TestFactory
  Stream<DynamicTest> everyArrowHoldsCode() {
    return drawings.entrySet().stream()
        .map(
            drawing ->
                DynamicTest.dynamicTest(
                    drawing.getKey(), () -> assertThat(emptyArrows(drawing.getValue())).isEmpty()));
  }

  private static List<String> emptyArrows(String drawing) {
    Map<String, DescribedPredicate<JavaClass>> components = new HashMap<>();
    COMPONENT
        .matcher(drawing)
        .results()
        .forEach(m -> components.put(m.group(2), inside(m.group(1))));
    return ARROW
        .matcher(drawing)
        .results()
        .filter(m -> isEmpty(components.get(m.group(1)), components.get(m.group(2))))
        .map(MatchResult::group)
        .toList();
  }

  private static boolean isEmpty(
      DescribedPredicate<JavaClass> from, DescribedPredicate<JavaClass> to) {
    return classes.that(from).stream()
        .flatMap(c -> c.getDirectDependenciesFromSelf().stream())
        .noneMatch(d -> to.test(d.getTargetClass()));
  }

  private static DescribedPredicate<JavaClass> inside(String stereotypes) {
    return JavaClass.Predicates.resideInAnyPackage(packages(stereotypes));
  }

  private static String[] packages(String text) {
    return Pattern.compile("<<([\\w.]+)>>")
        .matcher(text)
        .results()
        .map(m -> m.group(1))
        .toArray(String[]::new);
  }

  @Test
  void noPackageHoldsMoreThanOneCanKeepInMind() {
    assertThat(typesByPackage())
        .allSatisfy((name, types) -> assertThat(types).as(name).isLessThanOrEqualTo(MOST_TYPES));
  }

  /** The few knots that stay, each with its reason. */
  private static final Map<String, String> KNOTS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(
                  "Empirical PhysicsShaped ResponseModel",
                  "a sealed interface names the records that may be it"),
              Map.entry(
                  "FilteredSpeed SmoothedSpeed SpeedEstimator",
                  "a sealed interface names the classes that may be it")));

  @Test
  void knotsOfClassesAreThoseWithAReason() {
    Set<String> found = new TreeSet<>();
    Map<JavaClass, Set<JavaClass>> uses = usesInsideAPackage();
    for (JavaClass one : uses.keySet()) {
      Set<JavaClass> knot =
          reached(one, uses).stream()
              .filter(other -> reached(other, uses).contains(one))
              .collect(Collectors.toSet());
      if (knot.size() > 1) {
        found.add(
            knot.stream().map(JavaClass::getSimpleName).sorted().collect(Collectors.joining(" ")));
      }
    }
    assertThat(found).isEqualTo(KNOTS.keySet());
  }

  private static Set<JavaClass> reached(JavaClass from, Map<JavaClass, Set<JavaClass>> uses) {
    Set<JavaClass> reached = new HashSet<>();
    ArrayDeque<JavaClass> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      for (JavaClass next : uses.getOrDefault(open.pop(), Set.of())) {
        if (reached.add(next)) {
          open.push(next);
        }
      }
    }
    return reached;
  }

  private static Map<JavaClass, Set<JavaClass>> usesInsideAPackage() {
    Map<JavaClass, Set<JavaClass>> uses = new HashMap<>();
    for (JavaClass from : classes) {
      for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
        JavaClass a = outermost(from);
        JavaClass b = outermost(dependency.getTargetClass());
        if (!a.equals(b) && a.getPackageName().equals(b.getPackageName())) {
          uses.computeIfAbsent(a, c -> new HashSet<>()).add(b);
        }
      }
    }
    return uses;
  }

  private static JavaClass outermost(JavaClass type) {
    JavaClass component = type.getBaseComponentType();
    return component.getEnclosingClass().map(PackagesTest::outermost).orElse(component);
  }

  private static Map<String, Integer> typesByPackage() {
    Map<String, Integer> types = new TreeMap<>();
    classes.stream()
        .filter(c -> c.isTopLevelClass() && !c.getSimpleName().equals("package-info"))
        .forEach(c -> types.merge(c.getPackageName(), 1, Integer::sum));
    return types;
  }
}
