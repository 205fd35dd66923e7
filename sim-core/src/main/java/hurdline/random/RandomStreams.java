package hurdline.random;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import org.apache.commons.rng.simple.RandomSource;

/**
 * The streams of one study, each of its own by (seed, replication, name of the source of chance).
 *
 * <p>A stream's state is the SHA-256 digest of its key, which fills the 256 bits of the generator
 * XoShiRo256++ exactly. So a source has the same numbers whatever other sources there are and in
 * whatever order they are asked for, and two keys that differ in one character have nothing in
 * common.
 */
public final class RandomStreams {
  private final long seed;

  public RandomStreams(long seed) {
    this.seed = seed;
  }

  /**
   * The stream of one source in one replication, from its first number.
   *
   * @param replication any number; studies count from 1
   * @param source name of the source of chance, not empty
   */
  public RandomStream of(int replication, String source) {
    if (source.isEmpty()) {
      throw new IllegalArgumentException(
          "source is empty; expected the name of a source of chance");
    }
    ByteBuffer digest = digest(replication, source);
    long[] state = {digest.getLong(), digest.getLong(), digest.getLong(), digest.getLong()};
    return new RandomStream(RandomSource.XO_SHI_RO_256_PP.create(state));
  }

  /**
   * Streams that have nothing in common with these, nor with those of another number.
   *
   * @param number of what is simulated on draws of its own
   */
  public RandomStreams apart(int number) {
    return new RandomStreams(digest(number, "apart").getLong());
  }

  private ByteBuffer digest(int number, String name) {
    byte[] text = name.getBytes(StandardCharsets.UTF_8);
    ByteBuffer key = ByteBuffer.allocate(Long.BYTES + Integer.BYTES + text.length);
    key.putLong(seed).putInt(number).put(text);
    return ByteBuffer.wrap(sha256().digest(key.array()));
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException(
          "SHA-256 is missing; expected it in every Java platform", missing);
    }
  }
}
