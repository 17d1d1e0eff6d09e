package faintwind.guide.checklist;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.config.MapBasedFunctionDictionary;
import com.ezylang.evalex.config.MapBasedOperatorDictionary;
import com.ezylang.evalex.config.OperatorDictionaryIfc;
import com.ezylang.evalex.data.DataAccessorIfc;
import com.ezylang.evalex.data.EvaluationValue;
import com.ezylang.evalex.operators.arithmetic.InfixDivisionOperator;
import com.ezylang.evalex.operators.arithmetic.InfixMinusOperator;
import com.ezylang.evalex.operators.arithmetic.InfixMultiplicationOperator;
import com.ezylang.evalex.operators.arithmetic.InfixPlusOperator;
import com.ezylang.evalex.operators.arithmetic.PrefixMinusOperator;
import com.ezylang.evalex.operators.booleans.InfixAndOperator;
import com.ezylang.evalex.operators.booleans.InfixGreaterEqualsOperator;
import com.ezylang.evalex.operators.booleans.InfixGreaterOperator;
import com.ezylang.evalex.operators.booleans.InfixLessEqualsOperator;
import com.ezylang.evalex.operators.booleans.InfixLessOperator;
import com.ezylang.evalex.operators.booleans.InfixOrOperator;
import com.ezylang.evalex.operators.booleans.PrefixNotOperator;
import com.ezylang.evalex.parser.ASTNode;
import com.ezylang.evalex.parser.ParseException;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A formula in a checklist: comparison ({@code < <= > >=}), arithmetic ({@code + - * /}), {@code &&
 * || !} and parentheses over named numbers. There are no functions, no assignment, no text, no
 * lists: whatever else stands there is refused when the checklist is read.
 */
public final class Condition {
  private static final ExpressionConfiguration PLAIN =
      ExpressionConfiguration.builder()
          .operatorDictionary(operators())
          .functionDictionary(new MapBasedFunctionDictionary())
          .defaultConstants(new TreeMap<>(String.CASE_INSENSITIVE_ORDER))
          .arraysAllowed(false)
          .structuresAllowed(false)
          .implicitMultiplicationAllowed(false)
          .singleQuoteStringLiteralsAllowed(false)
          .build();

  private final String text;
  private final Set<String> names;

  /** Parsed once: it is asked for every instrument of a folder, by several threads. */
  private final ASTNode tree;

  private Condition(String text, Set<String> names, ASTNode tree) {
    this.text = text;
    this.names = Set.copyOf(names);
    this.tree = tree;
  }

  /** As written. */
  public String text() {
    return text;
  }

  /** The names it uses. */
  public Set<String> names() {
    return names;
  }

  /** The condition in a text; refused with what is not understood. */
  public static Checked<Condition> parse(String text, Where where) {
    if (text.indexOf('"') >= 0) {
      return Checked.refused(Problem.error("condition.not-understood", where, text));
    }
    try {
      Expression expression = new Expression(text, PLAIN);
      expression.validate();
      return Checked.ok(
          new Condition(text, expression.getUsedVariables(), expression.getAbstractSyntaxTree()));
    } catch (ParseException e) {
      return Checked.refused(Problem.error("condition.not-understood", where, text));
    }
  }

  /** The numbers behind names. */
  interface Values {
    /** That of a name; null where it is not known. */
    @Nullable Double get(String name);
  }

  /** Whether it holds; empty where a name has no value here, or the result is no yes or no. */
  public Optional<Boolean> holds(Map<String, Double> values) {
    return holds(values::get);
  }

  /** The same of values that are in no map. */
  Optional<Boolean> holds(Values values) {
    return evaluate(values)
        .filter(EvaluationValue::isBooleanValue)
        .map(EvaluationValue::getBooleanValue);
  }

  /** Its number; empty where a name has no value here, or the result is no number. */
  public OptionalDouble number(Map<String, Double> values) {
    Optional<EvaluationValue> result = evaluate(values::get).filter(EvaluationValue::isNumberValue);
    return result.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(result.get().getNumberValue().doubleValue());
  }

  private Optional<EvaluationValue> evaluate(Values values) {
    for (String name : names) {
      if (values.get(name) == null) {
        return Optional.empty();
      }
    }
    try {
      return Optional.of(new Evaluation(text, values).evaluateSubtree(tree));
    } catch (EvaluationException e) {
      // a division by zero, or numbers joined as if they were yes and no
      return Optional.empty();
    }
  }

  /** One evaluation: asks for each value where its name stands, and only there. */
  private static final class Evaluation extends Expression implements DataAccessorIfc {
    private final Values values;

    Evaluation(String text, Values values) {
      super(text, PLAIN);
      this.values = values;
    }

    @Override
    public DataAccessorIfc getDataAccessor() {
      return this;
    }

    @Override
    public @Nullable EvaluationValue getData(String name) {
      Double value = values.get(name);
      return value == null ? null : convertValue(value);
    }

    @Override
    public void setData(String name, EvaluationValue value) {
      throw new UnsupportedOperationException("values come from outside");
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Condition condition && text.equals(condition.text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }

  private static OperatorDictionaryIfc operators() {
    MapBasedOperatorDictionary allowed = new MapBasedOperatorDictionary();
    allowed.addOperator("+", new InfixPlusOperator());
    allowed.addOperator("-", new InfixMinusOperator());
    allowed.addOperator("*", new InfixMultiplicationOperator());
    allowed.addOperator("/", new InfixDivisionOperator());
    allowed.addOperator("-", new PrefixMinusOperator());
    allowed.addOperator("<", new InfixLessOperator());
    allowed.addOperator("<=", new InfixLessEqualsOperator());
    allowed.addOperator(">", new InfixGreaterOperator());
    allowed.addOperator(">=", new InfixGreaterEqualsOperator());
    allowed.addOperator("&&", new InfixAndOperator());
    allowed.addOperator("||", new InfixOrOperator());
    allowed.addOperator("!", new PrefixNotOperator());
    return allowed;
  }
}
