package hurdline.fit;

import hurdline.fit.LawChoice.Candidate;
import java.util.List;

/**
 * A figure that varies, as the records have it.
 *
 * @param key path in the plant file
 * @param unit of the amounts
 * @param taken what is taken for it
 * @param seen the amounts; nothing was seen where it is null
 * @param candidates laws that were tried, the taken one first
 * @param errorShare standard error of the mean over the mean; NaN where it is not known
 * @param notes what is to be known of it
 */
public record AmountFit(
    String key,
    AmountUnit unit,
    Taken taken,
    Observations seen,
    List<Candidate> candidates,
    double errorShare,
    List<String> notes) {
  public AmountFit {
    candidates = List.copyOf(candidates);
    notes = List.copyOf(notes);
  }

  /** The unit of amounts within the program. */
  public enum AmountUnit {
    SECONDS,
    KILOGRAMS
  }

  public int ended() {
    return seen == null ? 0 : seen.ended();
  }

  public int count() {
    return seen == null ? 0 : seen.count();
  }

  /** Mean of what will be drawn, in the unit of the amounts; NaN where the file's figure stays. */
  public double meanInUnit() {
    return taken.distribution().map(hurdline.random.Distribution::mean).orElse(Double.NaN);
  }

  /**
   * Share of draws from the fitted law at least as far as what was seen; NaN where that was not
   * tested.
   */
  public double goodnessP() {
    return taken instanceof Taken.OfLaw && !candidates.isEmpty()
        ? candidates.get(0).p()
        : Double.NaN;
  }

  /** Whether it fits, in a word or two. */
  public String verdict() {
    if (taken instanceof Taken.Left) {
      return "the file's stays";
    }
    if (taken instanceof Taken.Fixed) {
      return "a plan";
    }
    if (taken instanceof Taken.AsSeen) {
      return "as seen";
    }
    double p = goodnessP();
    return Double.isNaN(p) ? "too few to test" : new GoodnessOfFit(0, p, 0).verdict().word();
  }
}
