package faintwind.report.export;

import java.util.List;
import java.util.stream.Collectors;

/** A language that a formula is written in. */
enum Language {
  C {
    @Override
    String number(double value) {
      return Float.toString((float) value).replace("E", "e") + "f";
    }

    @Override
    String function(String word, List<String> parts) {
      return switch (word) {
        case "square", "cube" -> "fw_" + word + "(" + parts.get(0) + ")";
        case "sqrt" -> "sqrtf(" + parts.get(0) + ")";
        case "^" -> "fw_pow(" + String.join(", ", parts) + ")";
        case "exp" -> "expf(" + parts.get(0) + ")";
        case "ln" -> "logf(" + parts.get(0) + ")";
        default -> "fw_max(" + String.join(", ", parts) + ")";
      };
    }
  },
  MICROPYTHON {
    @Override
    String number(double value) {
      return Double.toString(value).replace("E", "e");
    }

    @Override
    String function(String word, List<String> parts) {
      return switch (word) {
        case "square", "cube" -> word + "(" + parts.get(0) + ")";
        case "sqrt" -> "math.sqrt(" + parts.get(0) + ")";
        case "^" -> "power(" + String.join(", ", parts) + ")";
        case "exp" -> "math.exp(" + parts.get(0) + ")";
        case "ln" -> "math.log(" + parts.get(0) + ")";
        default -> "max(" + String.join(", ", parts) + ")";
      };
    }
  },
  SHEET {
    @Override
    String number(double value) {
      return Double.toString(value);
    }

    @Override
    String function(String word, List<String> parts) {
      return switch (word) {
        case "square" -> "POWER(" + parts.get(0) + ",2)";
        case "cube" -> "POWER(" + parts.get(0) + ",3)";
        case "sqrt" -> "SQRT(" + parts.get(0) + ")";
        case "^" -> "POWER(" + String.join(",", parts) + ")";
        case "exp" -> "EXP(" + parts.get(0) + ")";
        case "ln" -> "LN(" + parts.get(0) + ")";
        default -> "MAX(" + String.join(",", parts) + ")";
      };
    }
  };

  abstract String number(double value);

  abstract String function(String word, List<String> parts);

  /** Whole powers hold for what is below zero too, and need no library. */
  private String power(Expression exponent, List<String> parts) {
    double value = exponent.isNumber() ? exponent.value() : 0;
    String word = value == 2 ? "square" : value == 3 ? "cube" : value == 0.5 ? "sqrt" : "^";
    return function(word, parts);
  }

  /** A formula in this language; every operator's own parentheses are written. */
  String write(Expression formula) {
    if (formula.isNumber()) {
      String number = number(formula.value());
      return number.startsWith("-") ? "(" + number + ")" : number;
    }
    List<String> parts = formula.parts().stream().map(this::write).collect(Collectors.toList());
    return switch (formula.word()) {
      case "+", "-", "*", "/" ->
          "(" + parts.get(0) + " " + formula.word() + " " + parts.get(1) + ")";
      case "neg" -> "(-" + parts.get(0) + ")";
      case "^" -> power(formula.parts().get(1), parts);
      default -> parts.isEmpty() ? formula.word() : function(formula.word(), parts);
    };
  }
}
