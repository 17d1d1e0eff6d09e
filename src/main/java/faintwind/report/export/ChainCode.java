package faintwind.report.export;

import faintwind.calibration.response.Relation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/**
 * Those formulas of a chain that a result needs, in order, with the calibration's numbers put in.
 *
 * @param inputs names that are given
 * @param target the result's name
 */
record ChainCode(List<String> inputs, String target, List<Line> lines) {
  /** Newton's method from these starts is as good as a float after five rounds. */
  private static final int ROUNDS = 5;

  ChainCode {
    inputs = List.copyOf(inputs);
    lines = List.copyOf(lines);
  }

  /**
   * A formula, and where one that improves itself starts.
   *
   * @param name what it gives
   */
  record Line(String name, Expression formula, Optional<Expression> start) {}

  static ChainCode of(
      List<Relation> chain, List<String> inputs, String target, Map<String, Double> known) {
    Set<String> needed = new HashSet<>(Set.of(target));
    List<Line> lines = new ArrayList<>();
    for (int i = chain.size() - 1; i >= 0; i--) {
      Relation relation = chain.get(i);
      if (needed.contains(relation.name()) && !inputs.contains(relation.name())) {
        Expression formula = ExpressionReader.read(relation.formula()).with(known);
        Optional<Expression> start =
            relation.start().map(text -> ExpressionReader.read(text).with(known));
        needed.addAll(formula.names());
        start.ifPresent(expression -> needed.addAll(expression.names()));
        lines.add(0, new Line(relation.name(), formula, start));
      }
    }
    return new ChainCode(inputs, target, lines);
  }

  /** As a function of C with a name. */
  String c(String name) {
    StringBuilder code = new StringBuilder("static float ").append(name).append('(');
    code.append(String.join(", ", inputs.stream().map(input -> "float " + input).toList()));
    code.append(") {\n");
    lines.forEach(line -> code.append(cLine(line)));
    if (used().size() < inputs.size()) {
      inputs.stream()
          .filter(input -> !used().contains(input))
          .forEach(input -> code.append("  (void)").append(input).append(";\n"));
    }
    return code.append("  return ").append(target).append(";\n}\n").toString();
  }

  private Set<String> used() {
    Set<String> used = new HashSet<>();
    for (Line line : lines) {
      used.addAll(line.formula().names());
      line.start().ifPresent(start -> used.addAll(start.names()));
    }
    return used;
  }

  private static String cLine(Line line) {
    String once = line.name() + " = " + Language.C.write(line.formula()) + ";\n";
    if (line.start().isEmpty()) {
      return "  float " + once;
    }
    return "  float "
        + line.name()
        + " = "
        + Language.C.write(line.start().get())
        + ";\n  for (int i = 0; i < "
        + ROUNDS
        + "; i++)\n    "
        + once;
  }

  /** As a function of MicroPython with a name. */
  String python(String name) {
    StringBuilder code = new StringBuilder("def ").append(name).append('(');
    code.append(String.join(", ", inputs)).append("):\n");
    for (Line line : lines) {
      String once = line.name() + " = " + Language.MICROPYTHON.write(line.formula()) + "\n";
      line.start()
          .ifPresent(
              start ->
                  code.append("    ")
                      .append(line.name())
                      .append(" = ")
                      .append(Language.MICROPYTHON.write(start))
                      .append("\n    for _ in range(")
                      .append(ROUNDS)
                      .append("):\n    "));
      code.append("    ").append(once);
    }
    return code.append("    return ").append(target).append("\n").toString();
  }

  /** The result in double precision, for values of the inputs in order. */
  double value(double... values) {
    return work(values, x -> x);
  }

  /** The result with every intermediate number rounded to a float. */
  double floatValue(double... values) {
    return work(values, x -> (float) x);
  }

  private double work(double[] values, DoubleUnaryOperator rounded) {
    Map<String, Double> known = new HashMap<>();
    for (int i = 0; i < values.length; i++) {
      known.put(inputs.get(i), rounded.applyAsDouble(values[i]));
    }
    for (Line line : lines) {
      line.start().ifPresent(s -> known.put(line.name(), s.value(known, rounded)));
      for (int i = 0; i < (line.start().isPresent() ? ROUNDS : 1); i++) {
        known.put(line.name(), line.formula().value(known, rounded));
      }
    }
    Double result = known.get(target);
    return result == null ? Double.NaN : result;
  }
}
