package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;
import org.battenbook.column.BitLane;
import org.battenbook.column.IndexLane;
import org.battenbook.column.Lane;
import org.battenbook.column.Lookup;
import org.battenbook.column.NumberLane;
import org.battenbook.column.Relation;
import org.battenbook.number.Rounding;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Turns plans into lane plans. A plan that has none (a text, a selection, a total that depends on
 * the row) leaves the formula to go row by row.
 */
final class LaneCompiler {
  private static final Map<String, BinaryOperator<NumberLane>> ARITHMETIC =
      Map.of(
          "+", NumberLane::plus,
          "-", NumberLane::minus,
          "*", NumberLane::times,
          "/", NumberLane::dividedBy,
          "min", NumberLane::least,
          "max", NumberLane::greatest);
  private static final Map<String, UnaryOperator<NumberLane>> SIGNS =
      Map.of("negate", NumberLane::negate, "abs", NumberLane::abs);
  private static final Map<String, Rounding> ROUNDINGS =
      Map.of(
          "rounded up", Rounding.UP,
          "rounded down", Rounding.DOWN,
          "rounded", Rounding.NEAREST,
          "rounded evenly", Rounding.EVENLY);
  private static final Map<String, Relation> RELATIONS =
      Map.of(
          "=", Relation.EQUAL,
          "<>", Relation.UNEQUAL,
          "<", Relation.LESS,
          "<=", Relation.AT_MOST,
          ">", Relation.GREATER,
          ">=", Relation.AT_LEAST);
  private static final Map<String, BinaryOperator<BitLane>> CONNECTIVES =
      Map.of("and", BitLane::and, "or", BitLane::or);

  private LaneCompiler() {}

  /** The lane plan of a plan; absent where it, or a part of it, has none. */
  static @Nullable LanePlan compile(Plan plan) {
    if (plan instanceof ConstantPlan constant) {
      return constant(constant.value);
    }
    if (plan instanceof ReadPlan read) {
      return read(read);
    }
    if (plan instanceof ThroughPlan through) {
      return through(through);
    }
    if (plan instanceof ApplyPlan apply) {
      return apply(apply);
    }
    if (plan instanceof ChoicePlan choice) {
      return choice(choice);
    }
    if (plan instanceof FunctionPlan function) {
      return function(function);
    }
    if (plan instanceof ArgumentPlan argument) {
      return frame -> frame.arguments().get(argument.index);
    }
    if (plan instanceof InheritedPlan inherited && inherited.replaced != null) {
      return compile(inherited.replaced);
    }
    if (plan instanceof AggregatePlan total && !total.dependsOnRow) {
      return frame -> lane(frame.reading().total(total), frame.rows());
    }
    return plan instanceof FirstRowPlan
        ? frame -> BitLane.of(frame.rows(), row -> frame.firstRow() + row == 0)
        : null;
  }

  private static @Nullable LanePlan constant(Value value) {
    return frame -> lane(value, frame.rows());
  }

  /** The same value in every row; absent where no lane holds it. */
  private static @Nullable Lane lane(Value value, int rows) {
    if (value instanceof Value.Amount amount) {
      return NumberLane.constant(amount.quantity().number(), rows);
    }
    if (value instanceof Value.YesNo yesNo) {
      return BitLane.constant(rows, yesNo.yes());
    }
    if (value instanceof Value.Row row) {
      int[] indices = new int[rows];
      Arrays.fill(indices, row.row());
      return new IndexLane(indices);
    }
    return null;
  }

  private static @Nullable LanePlan read(ReadPlan read) {
    int place = read.slot.number();
    return switch (read.from) {
      case LINE -> frame -> lane(frame.reading().line(place), frame.rows());
      case SAME_ROW -> frame -> laneOf(frame.reading().chunk(place, frame.chunk()));
      case ROW_ABOVE, OUTER_ROW -> null;
    };
  }

  private static @Nullable Lane laneOf(ColumnValues.Chunk chunk) {
    return chunk instanceof LaneChunk lane ? lane.lane() : null;
  }

  private static @Nullable LanePlan through(ThroughPlan through) {
    LanePlan rows = compile(through.row);
    int place = through.column.number();
    if (rows == null) {
      return null;
    }
    return frame -> {
      Lane at = rows.run(frame);
      Lookup read = frame.reading().lookup(place);
      return at == null || read == null ? null : read.at((IndexLane) at);
    };
  }

  private static @Nullable LanePlan apply(ApplyPlan apply) {
    String name = apply.operation.name();
    List<LanePlan> operands = compileAll(apply.operands);
    if (operands == null) {
      return null;
    }
    if (SIGNS.containsKey(name)) {
      UnaryOperator<NumberLane> sign = SIGNS.get(name);
      LanePlan operand = operands.get(0);
      return frame -> operand.run(frame) instanceof NumberLane n ? sign.apply(n) : null;
    }
    if (name.equals("±")) {
      LanePlan operand = operands.get(0);
      return frame -> operand.run(frame) instanceof NumberLane off ? notNegative(off) : null;
    }
    if (name.equals("not")) {
      LanePlan operand = operands.get(0);
      return frame -> operand.run(frame) instanceof BitLane bits ? bits.not() : null;
    }
    if (name.equals("^")) {
      return power(apply, operands.get(0));
    }
    return folded(name, operands);
  }

  /** The lane itself, unless a tolerance in it is at fault. */
  private static @Nullable Lane notNegative(NumberLane lane) {
    return lane.negativeRows().isAny() ? null : lane;
  }

  /** Operators on two or more operands, from left to right. */
  private static @Nullable LanePlan folded(String name, List<LanePlan> operands) {
    BinaryOperator<Lane> two = onTwo(name);
    if (two == null) {
      return null;
    }
    return frame -> {
      Lane result = operands.get(0).run(frame);
      for (int i = 1; i < operands.size() && result != null; i++) {
        Lane next = operands.get(i).run(frame);
        result = next == null ? null : two.apply(result, next);
      }
      return result;
    };
  }

  private static @Nullable BinaryOperator<@Nullable Lane> onTwo(String name) {
    BinaryOperator<NumberLane> arithmetic = ARITHMETIC.get(name);
    if (arithmetic != null) {
      return (a, b) ->
          a instanceof NumberLane x && b instanceof NumberLane y ? arithmetic.apply(x, y) : null;
    }
    Rounding rounding = ROUNDINGS.get(name);
    if (rounding != null) {
      return (a, b) ->
          a instanceof NumberLane x && b instanceof NumberLane y ? x.rounded(rounding, y) : null;
    }
    Relation relation = RELATIONS.get(name);
    if (relation != null) {
      return (a, b) -> related(a, relation, b);
    }
    BinaryOperator<BitLane> connective = CONNECTIVES.get(name);
    return connective == null
        ? null
        : (a, b) ->
            a instanceof BitLane x && b instanceof BitLane y ? connective.apply(x, y) : null;
  }

  private static @Nullable Lane related(@Nullable Lane a, Relation relation, @Nullable Lane b) {
    if (a instanceof NumberLane x && b instanceof NumberLane y) {
      return x.is(relation, y);
    }
    if (a instanceof IndexLane x && b instanceof IndexLane y) {
      BitLane same = x.equalTo(y);
      return relation == Relation.EQUAL ? same : same.not();
    }
    return null;
  }

  private static @Nullable LanePlan power(ApplyPlan apply, LanePlan base) {
    boolean whole =
        apply.operands.get(1) instanceof ConstantPlan constant
            && constant.value instanceof Value.Amount amount
            && amount.quantity().number().signum() > 0;
    if (!whole) {
      return null;
    }
    Value.Amount exponent = (Value.Amount) ((ConstantPlan) apply.operands.get(1)).value;
    int times = (int) exponent.quantity().number().toDouble();
    return frame -> {
      Lane lane = base.run(frame);
      Lane result = lane;
      for (int i = 1; i < times && result instanceof NumberLane product; i++) {
        result = lane instanceof NumberLane factor ? product.times(factor) : null;
      }
      return result;
    };
  }

  /** Both branches are worked out where the rows differ; one at fault leaves it to the plan. */
  private static @Nullable LanePlan choice(ChoicePlan choice) {
    LanePlan condition = compile(choice.condition);
    LanePlan then = compile(choice.then);
    LanePlan otherwise = compile(choice.otherwise);
    if (condition == null || then == null || otherwise == null) {
      return null;
    }
    return frame -> {
      if (!(condition.run(frame) instanceof BitLane decided)) {
        return null;
      }
      if (decided.isAll()) {
        return then.run(frame);
      }
      if (!decided.isAny()) {
        return otherwise.run(frame);
      }
      return either(decided, then.run(frame), otherwise.run(frame));
    };
  }

  /** From one lane where the bits say yes, from the other where they say no. */
  static @Nullable Lane either(BitLane decided, @Nullable Lane yes, @Nullable Lane no) {
    if (yes instanceof NumberLane x && no instanceof NumberLane y) {
      return x.orElse(decided, y);
    }
    if (yes instanceof IndexLane x && no instanceof IndexLane y) {
      return x.orElse(decided, y);
    }
    return yes instanceof BitLane x && no instanceof BitLane y
        ? x.and(decided).or(y.and(decided.not()))
        : null;
  }

  private static @Nullable LanePlan function(FunctionPlan function) {
    List<LanePlan> arguments = compileAll(function.arguments);
    LanePlan body = compile(function.body);
    if (arguments == null || body == null) {
      return null;
    }
    return frame -> {
      List<Lane> values = new ArrayList<>(arguments.size());
      for (LanePlan argument : arguments) {
        Lane value = argument.run(frame);
        if (value == null) {
          return null;
        }
        values.add(value);
      }
      return body.run(frame.calling(values));
    };
  }

  private static @Nullable List<LanePlan> compileAll(List<Plan> plans) {
    List<LanePlan> compiled = new ArrayList<>(plans.size());
    for (Plan plan : plans) {
      LanePlan lanes = compile(plan);
      if (lanes == null) {
        return null;
      }
      compiled.add(lanes);
    }
    return compiled;
  }
}
