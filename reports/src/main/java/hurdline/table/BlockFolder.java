package hurdline.table;

import hurdline.answer.SimulatedBlock;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The finished blocks of a choice among plans that is not whole yet. */
public final class BlockFolder {
  private static final String NAME = "blocks";

  private final PartFolder<SimulatedBlock> parts;

  public BlockFolder(AnswerFolder answer) {
    parts = new PartFolder<>(answer, NAME, SimulatedBlock.class);
  }

  /** The folder of blocks within that of an answer. */
  public static String name() {
    return NAME;
  }

  /** Begins a choice. */
  public void begin(List<String> settings) throws IOException {
    parts.begin(settings);
  }

  /** A block that was finished before; none where its file is not whole. */
  public Optional<SimulatedBlock> read(int stage, int number) throws IOException {
    return parts
        .read(name(stage, number))
        .filter(found -> found.stage() == stage && found.number() == number);
  }

  public void write(SimulatedBlock block) throws IOException {
    parts.write(name(block.stage(), block.number()), block);
  }

  /** How many blocks are there. */
  public int count() throws IOException {
    return parts.count();
  }

  /** Takes all away, once the answer is written. */
  public void clear() throws IOException {
    parts.clear();
  }

  /** Stages and blocks count from 1 in their names. */
  private static String name(int stage, int number) {
    return "stage-" + (stage + 1) + "-block-" + (number + 1);
  }
}
