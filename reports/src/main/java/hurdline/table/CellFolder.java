package hurdline.table;

import hurdline.answer.SimulatedCell;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The finished cells of a grid that is not whole yet. */
public final class CellFolder {
  private static final String NAME = "cells";

  private final PartFolder<SimulatedCell> parts;

  public CellFolder(AnswerFolder answer) {
    parts = new PartFolder<>(answer, NAME, SimulatedCell.class);
  }

  /** The folder of cells within that of an answer. */
  public static String name() {
    return NAME;
  }

  /** Begins a grid. */
  public void begin(List<String> settings) throws IOException {
    parts.begin(settings);
  }

  /** A cell that was finished before; none where its file is not whole. */
  public Optional<SimulatedCell> read(int cell) throws IOException {
    return parts.read(name(cell)).filter(found -> found.cell() == cell);
  }

  public void write(SimulatedCell cell) throws IOException {
    parts.write(name(cell.cell()), cell);
  }

  /** How many cells are there. */
  public int count() throws IOException {
    return parts.count();
  }

  /** Takes all away, once the answer is written. */
  public void clear() throws IOException {
    parts.clear();
  }

  /** Cells count from 1 in their names. */
  private static String name(int cell) {
    return "cell-" + (cell + 1);
  }
}
