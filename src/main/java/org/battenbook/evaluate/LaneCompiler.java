package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.column.BitLane;
import org.battenbook.column.IndexLane;
import org.battenbook.column.Lane;
import org.battenbook.column.Lookup;
import org.battenbook.column.NumberLane;
import org.battenbook.operation.LaneKernel;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Turns plans into lane plans. A plan that has none (a text, a selection, a total that depends on
 * the row) leaves the formula to go row by row.
 */
final class LaneCompiler {
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
      return frame -> RepeatedLane.of(frame.reading().total(total), frame.rows());
    }
    return plan instanceof FirstRowPlan
        ? frame -> BitLane.of(frame.rows(), row -> frame.firstRow() + row == 0)
        : null;
  }

  private static @Nullable LanePlan constant(Value value) {
    return frame -> RepeatedLane.of(value, frame.rows());
  }

  private static @Nullable LanePlan read(ReadPlan read) {
    int place = read.slot.number();
    return switch (read.from) {
      case LINE -> frame -> RepeatedLane.of(frame.reading().line(place), frame.rows());
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
    LaneKernel kernel = apply.operation.lanes();
    List<LanePlan> operands = compileAll(apply.operands);
    if (kernel == null || operands == null) {
      return null;
    }
    return frame -> {
      List<Lane> values = runAll(operands, frame);
      return values == null ? null : kernel.apply(values);
    };
  }

  /** The lanes of all; absent where one has none. */
  private static @Nullable List<Lane> runAll(List<LanePlan> plans, ChunkFrame frame) {
    List<Lane> values = new ArrayList<>(plans.size());
    for (LanePlan plan : plans) {
      Lane value = plan.run(frame);
      if (value == null) {
        return null;
      }
      values.add(value);
    }
    return values;
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
      List<Lane> values = runAll(arguments, frame);
      return values == null ? null : body.run(frame.calling(values));
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
