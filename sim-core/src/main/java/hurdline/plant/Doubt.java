package hurdline.plant;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How well a value of the file is known, as somebody judged it: about 19 in 20 that the true one
 * lies between value/(1 + s) and value·(1 + s).
 *
 * @param key path of the value; {@code *} is every name
 * @param giveOrTake s, above 0
 */
public record Doubt(String key, double giveOrTake) {
  private static final double Z = 1.96;
  private static final MathContext DIGITS = new MathContext(6);

  public Doubt {
    Check.above0("giveOrTake", giveOrTake);
  }

  /**
   * A drawn factor as a change has it, {@code x1.0432}: lognormal, (1 + s)^(z/1.96).
   *
   * @param z standard normal
   */
  public String factor(double z) {
    double factor = Math.exp(Math.log1p(giveOrTake) * z / Z);
    return "x" + new BigDecimal(factor).round(DIGITS).toPlainString();
  }
}
