package hurdline.spark;

import java.io.Serializable;
import java.util.List;

/**
 * What a task came to.
 *
 * @param machine that did it, with its Java, for a message
 * @param digest of the check year there
 * @param years simulated in the task; those of the check where it has no blocks
 * @param seconds that they took, on one core
 * @param blocks of {@link BlockBytes}
 */
record TaskResult(String machine, String digest, int years, double seconds, List<byte[]> blocks)
    implements Serializable {}
