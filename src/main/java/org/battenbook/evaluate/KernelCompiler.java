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
 * Compiles nodes into kernels, which work out a whole chunk of rows at once. Where a node has none
 * (a text, a selection, a total that depends on the row), the formula runs row by row.
 */
final class KernelCompiler {
  private KernelCompiler() {}

  /** The kernel of a node; absent where the node or one of its parts has none. */
  static @Nullable ColumnKernel compile(FormulaNode node) {
    if (node instanceof ConstantNode constant) {
      return constant(constant.value);
    }
    if (node instanceof ReadNode read) {
      return read(read);
    }
    if (node instanceof ThroughNode through) {
      return through(through);
    }
    if (node instanceof ApplyNode apply) {
      return apply(apply);
    }
    if (node instanceof ChoiceNode choice) {
      return choice(choice);
    }
    if (node instanceof CallNode function) {
      return function(function);
    }
    if (node instanceof ArgumentNode argument) {
      return frame -> frame.arguments().get(argument.index);
    }
    if (node instanceof InheritedNode inherited && inherited.replaced != null) {
      return compile(inherited.replaced);
    }
    if (node instanceof AggregateNode total && !total.dependsOnRow) {
      return frame -> RepeatedLane.of(frame.reading().total(total), frame.rows());
    }
    return node instanceof FirstRowNode
        ? frame -> BitLane.of(frame.rows(), row -> frame.firstRow() + row == 0)
        : null;
  }

  private static @Nullable ColumnKernel constant(Value value) {
    return frame -> RepeatedLane.of(value, frame.rows());
  }

  private static @Nullable ColumnKernel read(ReadNode read) {
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

  private static @Nullable ColumnKernel through(ThroughNode through) {
    ColumnKernel rows = compile(through.row);
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

  private static @Nullable ColumnKernel apply(ApplyNode apply) {
    LaneKernel kernel = apply.operation.lanes();
    List<ColumnKernel> operands = compileAll(apply.operands);
    if (kernel == null || operands == null) {
      return null;
    }
    return frame -> {
      List<Lane> values = runAll(operands, frame);
      return values == null ? null : kernel.apply(values);
    };
  }

  /** The lanes of all; absent where one has none. */
  private static @Nullable List<Lane> runAll(List<ColumnKernel> kernels, ChunkFrame frame) {
    List<Lane> values = new ArrayList<>(kernels.size());
    for (ColumnKernel kernel : kernels) {
      Lane value = kernel.run(frame);
      if (value == null) {
        return null;
      }
      values.add(value);
    }
    return values;
  }

  /**
   * Where rows take different branches, both are worked out. A fault in one leaves it to the rows.
   */
  private static @Nullable ColumnKernel choice(ChoiceNode choice) {
    ColumnKernel condition = compile(choice.condition);
    ColumnKernel then = compile(choice.then);
    ColumnKernel otherwise = compile(choice.otherwise);
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

  private static @Nullable ColumnKernel function(CallNode function) {
    List<ColumnKernel> arguments = compileAll(function.arguments);
    ColumnKernel body = compile(function.body);
    if (arguments == null || body == null) {
      return null;
    }
    return frame -> {
      List<Lane> values = runAll(arguments, frame);
      return values == null ? null : body.run(frame.calling(values));
    };
  }

  private static @Nullable List<ColumnKernel> compileAll(List<FormulaNode> nodes) {
    List<ColumnKernel> compiled = new ArrayList<>(nodes.size());
    for (FormulaNode node : nodes) {
      ColumnKernel lanes = compile(node);
      if (lanes == null) {
        return null;
      }
      compiled.add(lanes);
    }
    return compiled;
  }
}
