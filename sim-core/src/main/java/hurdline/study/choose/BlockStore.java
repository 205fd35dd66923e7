package hurdline.study.choose;

import hurdline.answer.SimulatedBlock;
import java.util.Optional;

/** Keeps finished blocks, so that a choosing that was stopped can go on. */
public interface BlockStore {

  /** A block that was finished before. */
  Optional<SimulatedBlock> kept(int stage, int number);

  /** Keeps a finished block; never called of two at once. */
  void keep(SimulatedBlock block);
}
