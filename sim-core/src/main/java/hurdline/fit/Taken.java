package hurdline.fit;

import hurdline.random.Constant;
import hurdline.random.Distribution;
import hurdline.random.Empirical;
import java.util.List;
import java.util.Optional;

/** What is taken for a figure. */
public sealed interface Taken {

  /** As the engine draws it; nothing where the plant file's own figure stays. */
  Optional<Distribution> distribution();

  /** Standard error of the mean over the mean; NaN where the plant file's own figure stays. */
  double meanErrorShare();

  /** A law with its parameters. */
  record OfLaw(LawFit fit) implements Taken {
    @Override
    public double meanErrorShare() {
      return fit.meanErrorShare();
    }

    @Override
    public Optional<Distribution> distribution() {
      return Optional.of(fit.distribution());
    }
  }

  /**
   * The same every time.
   *
   * @param errorShare standard error over the amount
   */
  record Fixed(double amount, double errorShare) implements Taken {
    @Override
    public double meanErrorShare() {
      return errorShare;
    }

    @Override
    public Optional<Distribution> distribution() {
      return Optional.of(new Constant(amount));
    }
  }

  /** The amounts themselves, where no law fits them. */
  record AsSeen(List<Double> amounts) implements Taken {
    public AsSeen {
      amounts = List.copyOf(amounts);
    }

    @Override
    public double meanErrorShare() {
      int n = amounts.size();
      double mean = amounts.stream().mapToDouble(Double::doubleValue).sum() / n;
      double squares = amounts.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
      return Math.sqrt(squares / (n - 1.0) / n) / mean;
    }

    @Override
    public Optional<Distribution> distribution() {
      return Optional.of(new Empirical(amounts));
    }
  }

  /** The plant file's own figure stays. */
  record Left(String why) implements Taken {
    @Override
    public double meanErrorShare() {
      return Double.NaN;
    }

    @Override
    public Optional<Distribution> distribution() {
      return Optional.empty();
    }
  }
}
