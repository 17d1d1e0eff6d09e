package faintwind.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Methods that no code of the program uses. What is left stands here with its reason: most are
 * there for tests alone.
 */
class UnusedMembersTest {
  private static final Map<String, List<String>> LEFT =
      Map.of(
          "the virtual world without its faults, and what it knows of itself",
              List.of(
                  "VirtualBuild.in",
                  "VirtualBuild.noiseless",
                  "VirtualBuild.on",
                  "VirtualBuild.readBy",
                  "VirtualHeat.held_J",
                  "VirtualHeat.lost_J",
                  "VirtualHeat.supplied_J",
                  "VirtualInstrument.throughAir_m"),
          "what a person types and sees, without a window",
              List.of(
                  "FaintwindWindow.screen",
                  "PictureWords.pattern",
                  "PlaceRow.from",
                  "PlaceRow.speed",
                  "PlaceRow.to",
                  "PlaceRow.u95",
                  "Row.isRefused",
                  "Row.start",
                  "KeyRows.names",
                  "Row.stop",
                  "Row.time",
                  "StepScreen.openStep",
                  "StepScreen.stepId",
                  "TurnBeat.seen"),
          "an equation that is held to its source",
              List.of(
                  "HeatBalance.delta_K",
                  "HeatBalance.timeConstant_s",
                  "LeadWire.free_W_K",
                  "Optimum.residualDeviation",
                  "Ranged.inside",
                  "Thermocouple.delta_K",
                  "TypedFormula.speed_m_s"),
          "a value, a plan, a fit or a command in one line",
              List.of(
                  "Amount.exact",
                  "Beats.usual",
                  "Choice.only",
                  "DataWay.cable",
                  "DataWay.of",
                  "FitToRuns.fit",
                  "Heating.heater",
                  "InstrumentState.replay",
                  "Main.run",
                  "Opening.round",
                  "PlanRequest.of",
                  "SpeedEstimator.smoothing",
                  "Time.free"),
          "a file from a text, or a part of what was read",
              List.of(
                  "BenchWalk.atFirst",
                  "Checklist.stepOfReading",
                  "ChecklistFiles.shipped",
                  "Comparison.likeliest",
                  "DesignFile.text",
                  "DesignSheet.quantity",
                  "Doubts.of",
                  "Gate.toBegin",
                  "Journal.read",
                  "LiveGuide.course",
                  "LogSample.air",
                  "LogSample.supply_V",
                  "OutcomeId.ids",
                  "PlanFile.parse",
                  "ProfileFile.parse"),
          "nothing: to go with the next change of the filter",
              List.of("HeatState.bead_K", "WindJumps.isEmpty"));

  @Test
  void everyMethodIsUsedByTheProgramOrHasAReason() {
    JavaClasses program =
        new ClassFileImporter()
            .withImportOption(new DoNotIncludeTests())
            .importPackages("faintwind");
    Set<String> unused =
        program.stream()
            .flatMap(type -> type.getMethods().stream())
            .filter(UnusedMembersTest::isUnused)
            .map(method -> method.getOwner().getSimpleName() + "." + method.getName())
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> known = LEFT.values().stream().flatMap(List::stream).collect(Collectors.toSet());
    assertThat(unused).containsExactlyInAnyOrderElementsOf(known);
  }

  private static boolean isUnused(JavaMethod method) {
    return isWritten(method)
        && method.getAccessesToSelf().stream().allMatch(by -> by.getOwner().equals(method))
        && !isAnswered(method);
  }

  /** By a person; neither by the compiler nor for a library that calls it by its annotation. */
  private static boolean isWritten(JavaMethod method) {
    String name = method.getName();
    boolean made =
        method.getModifiers().contains(JavaModifier.SYNTHETIC)
            || name.contains("$")
            || (method.getOwner().isEnum() && (name.equals("values") || name.equals("valueOf")))
            || name.equals("main");
    boolean called =
        method.getAnnotations().stream()
            .anyMatch(a -> !a.getRawType().getSimpleName().equals("Nullable"));
    boolean component =
        method.getOwner().isRecord()
            && method.getRawParameterTypes().isEmpty()
            && method.getOwner().tryGetField(name).isPresent();
    return !made && !called && !component;
  }

  /** Whether somebody may call it by the name it has in a type above. */
  private static boolean isAnswered(JavaMethod method) {
    JavaClass owner = method.getOwner();
    return Stream.concat(
            owner.getAllRawSuperclasses().stream(), owner.getAllRawInterfaces().stream())
        .flatMap(UnusedMembersTest::methods)
        .anyMatch(
            above ->
                above.equals(signature(method.getName(), method.getRawParameterTypes().size())));
  }

  private static Stream<String> methods(JavaClass type) {
    if (type.getPackageName().startsWith("faintwind")) {
      return type.getMethods().stream()
          .map(m -> signature(m.getName(), m.getRawParameterTypes().size()));
    }
    Class<?> loaded = type.reflect();
    return Stream.concat(
            Arrays.stream(loaded.getMethods()), Arrays.stream(loaded.getDeclaredMethods()))
        .map(m -> signature(m.getName(), m.getParameterCount()));
  }

  private static String signature(String name, int parameters) {
    return name + "/" + parameters;
  }
}
