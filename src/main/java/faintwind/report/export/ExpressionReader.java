package faintwind.report.export;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a typed formula by descent: sums of products of powers. For one formula. */
final class ExpressionReader {
  private static final Pattern TOKEN =
      Pattern.compile("\\s*(\\d+\\.?\\d*(?:e[+-]?\\d+)?|[A-Za-z_]\\w*|[-+*/^(),])");

  private final List<String> tokens = new ArrayList<>();
  private int at;

  private ExpressionReader(String formula) {
    Matcher matcher = TOKEN.matcher(formula);
    int end = 0;
    while (matcher.lookingAt()) {
      tokens.add(matcher.group(1));
      end = matcher.end();
      matcher.region(end, formula.length());
    }
    if (!formula.substring(end).isBlank()) {
      throw new IllegalArgumentException("formula = " + formula + ", not understood at " + end);
    }
  }

  static Expression read(String formula) {
    ExpressionReader reader = new ExpressionReader(formula);
    Expression sum = reader.sum();
    if (reader.at < reader.tokens.size()) {
      throw new IllegalArgumentException("formula = " + formula + ", more than one");
    }
    return sum;
  }

  private Expression sum() {
    Expression left = product();
    while (is("+") || is("-")) {
      String word = tokens.get(at++);
      left = new Expression(word, List.of(left, product()));
    }
    return left;
  }

  private Expression product() {
    Expression left = signed();
    while (is("*") || is("/")) {
      String word = tokens.get(at++);
      left = new Expression(word, List.of(left, signed()));
    }
    return left;
  }

  private Expression signed() {
    if (is("-")) {
      at++;
      return new Expression("neg", List.of(signed()));
    }
    return power();
  }

  private Expression power() {
    Expression base = atom();
    if (is("^")) {
      at++;
      return new Expression("^", List.of(base, signed()));
    }
    return base;
  }

  private Expression atom() {
    String word = tokens.get(at++);
    if (word.equals("(")) {
      Expression inside = sum();
      at++;
      return inside;
    }
    if (!is("(")) {
      return new Expression(word, List.of());
    }
    List<Expression> parts = new ArrayList<>();
    do {
      at++;
      parts.add(sum());
    } while (is(","));
    at++;
    return new Expression(word, parts);
  }

  private boolean is(String word) {
    return at < tokens.size() && tokens.get(at).equals(word);
  }
}
