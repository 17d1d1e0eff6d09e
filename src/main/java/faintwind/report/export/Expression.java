package faintwind.report.export;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/**
 * A typed formula as a tree.
 *
 * @param word a number, a name, an operator ({@code + - * / ^}, {@code neg}) or a function
 * @param parts what an operator or a function is applied to; empty for numbers and names
 */
record Expression(String word, List<Expression> parts) {
  Expression {
    parts = List.copyOf(parts);
  }

  static Expression number(double value) {
    return new Expression(Double.toString(value), List.of());
  }

  boolean isNumber() {
    return parts.isEmpty() && (Character.isDigit(word.charAt(0)) || word.startsWith("-"));
  }

  double value() {
    return Double.parseDouble(word);
  }

  /** Every name in it. */
  Set<String> names() {
    Set<String> names = new TreeSet<>();
    if (parts.isEmpty() && !isNumber()) {
      names.add(word);
    }
    parts.forEach(part -> names.addAll(part.names()));
    return names;
  }

  /** The same with these names as numbers, and worked out as far as that goes. */
  Expression with(Map<String, Double> known) {
    if (parts.isEmpty()) {
      Double value = known.get(word);
      return value == null ? this : number(value);
    }
    List<Expression> worked = parts.stream().map(part -> part.with(known)).toList();
    if (worked.stream().allMatch(Expression::isNumber)) {
      return number(apply(worked.stream().mapToDouble(Expression::value).toArray()));
    }
    boolean gone =
        word.equals("*") && worked.stream().anyMatch(part -> part.isNumber() && part.value() == 0);
    return gone ? number(0) : new Expression(word, worked);
  }

  /** The same with other words for its names. */
  Expression renamed(UnaryOperator<String> names) {
    if (parts.isEmpty()) {
      return isNumber() ? this : new Expression(names.apply(word), parts);
    }
    return new Expression(word, parts.stream().map(part -> part.renamed(names)).toList());
  }

  /** Its value, each operation's result rounded. */
  double value(Map<String, Double> known, DoubleUnaryOperator rounded) {
    if (parts.isEmpty()) {
      Double value = known.get(word);
      return rounded.applyAsDouble(value == null ? Double.parseDouble(word) : value);
    }
    double[] values = parts.stream().mapToDouble(part -> part.value(known, rounded)).toArray();
    return rounded.applyAsDouble(apply(values));
  }

  private double apply(double[] x) {
    return switch (word) {
      case "+" -> x[0] + x[1];
      case "-" -> x[0] - x[1];
      case "*" -> x[0] * x[1];
      case "/" -> x[0] / x[1];
      case "^" -> Math.pow(x[0], x[1]);
      case "neg" -> -x[0];
      case "exp" -> Math.exp(x[0]);
      case "ln" -> Math.log(x[0]);
      case "max" -> Math.max(x[0], x[1]);
      default -> throw new IllegalArgumentException("function = " + word + ", not known");
    };
  }
}
