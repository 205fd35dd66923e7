package hurdline.study.grid;

import hurdline.answer.SimulatedCell;
import java.util.Optional;

/** Keeps the finished cells of a grid, so that one which was stopped can go on. */
public interface CellStore {

  /** A cell that was finished before. */
  Optional<SimulatedCell> kept(int cell);

  /** Keeps a finished cell; never called of two at once. */
  void keep(SimulatedCell cell);
}
