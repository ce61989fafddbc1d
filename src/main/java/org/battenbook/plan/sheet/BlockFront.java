package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.plan.sheet.Sheet.Direction;

/**
 * The blocks that one choice of pieces can be joined to, those alone that no other is within: each
 * wider than the one before, and lower.
 */
final class BlockFront {
  final PackedCounts pieces;
  final List<Block> blocks = new ArrayList<>();

  BlockFront(PackedCounts pieces) {
    this.pieces = pieces;
  }

  /** What its pieces cover. */
  long area() {
    return blocks.get(0).area;
  }

  /** Whether a block of these sides would be none that another is within. */
  boolean misses(long across, long down) {
    for (Block block : blocks) {
      if (block.across > across) {
        return true;
      }
      if (block.down <= down) {
        return false;
      }
    }
    return true;
  }

  /** Adds a block that is missed. */
  void add(Block block) {
    blocks.removeIf(other -> block.across <= other.across && block.down <= other.down);
    int at = 0;
    while (at < blocks.size() && blocks.get(at).across < block.across) {
      at++;
    }
    blocks.add(at, block);
  }

  /** Two blocks, and the cut that would part them. */
  interface Pairs {
    void join(Direction cut, Block first, Block second);
  }

  /** Goes over the pairs that can make blocks of a front: at each height the narrowest of both. */
  void eachPair(BlockFront that, Pairs pairs) {
    int i = 0;
    int j = 0;
    while (i < blocks.size() && j < that.blocks.size()) {
      long order = blocks.get(i).down - that.blocks.get(j).down;
      pairs.join(Direction.DOWN, blocks.get(i), that.blocks.get(j));
      i += order >= 0 ? 1 : 0;
      j += order <= 0 ? 1 : 0;
    }
    i = blocks.size() - 1;
    j = that.blocks.size() - 1;
    while (i >= 0 && j >= 0) {
      long order = blocks.get(i).across - that.blocks.get(j).across;
      pairs.join(Direction.ACROSS, blocks.get(i), that.blocks.get(j));
      i -= order >= 0 ? 1 : 0;
      j -= order <= 0 ? 1 : 0;
    }
  }
}
