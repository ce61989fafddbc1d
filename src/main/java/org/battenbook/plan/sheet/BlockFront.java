package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.plan.sheet.Sheet.Direction;

/**
 * The Pareto front of the blocks that can be made from one choice of pieces: no block fits inside
 * another. They are sorted, so that each block is wider and lower than the one before it.
 */
final class BlockFront {
  final PackedCounts pieces;
  final List<Block> blocks = new ArrayList<>();

  BlockFront(PackedCounts pieces) {
    this.pieces = pieces;
  }

  /** The total area of its pieces. */
  long area() {
    return blocks.get(0).area;
  }

  /** Whether no block of this front fits inside a block with these sides. */
  boolean lacks(long across, long down) {
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

  /** Adds a block that this front {@link #lacks}, and removes the blocks that it fits inside. */
  void add(Block block) {
    blocks.removeIf(other -> block.across <= other.across && block.down <= other.down);
    int at = 0;
    while (at < blocks.size() && blocks.get(at).across < block.across) {
      at++;
    }
    blocks.add(at, block);
  }

  /** Receives pairs of blocks. */
  interface Pairs {
    /** Receives two blocks, and the cut that would separate them if they were joined. */
    void join(Direction cut, Block first, Block second);
  }

  /**
   * Visits the pairs that can make a block of the joint front: for each height the narrowest block
   * of both, then for each width the lowest of both. This is the merge of two shape functions from
   * L. Stockmeyer, "Optimal orientations of cells in slicing floorplan designs" (1983).
   */
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
