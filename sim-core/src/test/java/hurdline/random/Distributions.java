package hurdline.random;

import java.util.List;

/** The one list of distributions; every contract test runs over all of it. */
final class Distributions {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private Distributions() {}

  /**
   * @param outside name of the file of outside values, or empty where the answer is plain by hand
   */
  record Case(String name, Distribution distribution, String outside) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Case> all() {
    return List.of(
        checked("normal", Normal.of(1050, 70)),
        checked("normal-cut", new Normal(1050, 70, 700, 1100)),
        checked("normal-far-out", new Normal(0, 1, 6, NEVER)),
        checked("lognormal", Lognormal.of(18, 10)),
        checked("lognormal-cut", new Lognormal(18, 10, 8, NEVER)),
        checked("exponential", Exponential.of(9)),
        checked("exponential-cut", new Exponential(9, 2, 20)),
        checked("weibull", Weibull.of(1.5, 90)),
        checked("weibull-cut", new Weibull(0.75, 90, 10, 200)),
        checked("gamma", Gamma.of(30, 12)),
        checked("gamma-of-small-shape", Gamma.of(10, 14)),
        checked("gamma-cut", new Gamma(30, 12, 25, 60)),
        checked("uniform", new Uniform(2, 7)),
        checked("triangular", new Triangular(2, 3, 6)),
        checked("beta", new Beta(0.3, 0.1, 0, 1)),
        checked("beta-of-a-range", new Beta(30, 5, 10, 80)),
        plain("fixed", new Constant(12.5)),
        plain("normal without spread", Normal.of(5, 0)),
        plain("lognormal without spread", Lognormal.of(5, 0)),
        plain("gamma without spread", Gamma.of(5, 0)),
        plain("beta without spread", new Beta(5, 0, 0, 10)),
        plain("gamma of hardly any spread", Gamma.of(10, 1e-6)),
        plain("gamma just wide enough for its own curve", Gamma.of(10, 0.011)),
        plain("beta of hardly any spread", new Beta(0.5, 1e-7, 0, 1)),
        plain("beta that is nearly two points", new Beta(0.4, 0.48, 0, 1)),
        plain("weibull far out in its tail", new Weibull(2, 1, 30, NEVER)),
        plain("weibull of great shape", Weibull.of(1000, 1)),
        plain("uniform of one amount", new Uniform(3, 3)),
        plain("triangular of one amount", new Triangular(3, 3, 3)),
        plain("triangular that only falls", new Triangular(2, 2, 6)),
        plain("triangular that only rises", new Triangular(2, 6, 6)),
        plain("observed", Empirical.of(6, 31, 4)));
  }

  private static Case checked(String name, Distribution distribution) {
    return new Case(name, distribution, "chance-" + name);
  }

  private static Case plain(String name, Distribution distribution) {
    return new Case(name, distribution, "");
  }
}
