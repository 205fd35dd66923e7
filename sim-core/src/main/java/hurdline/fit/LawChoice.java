package hurdline.fit;

import hurdline.fit.GoodnessOfFit.Window;
import hurdline.fit.Observations.Seen;
import hurdline.random.RandomStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which law is taken for amounts, by how many ended and Akaike's criterion, and whether it fits.
 *
 * <p>With few the exponential is kept, since a criterion then names the right law in 18 to 77 % of
 * samples (20 amounts, 300 samples of each law, {@code FitCoverageProofTest}); within 2 of the best
 * a fixed order decides and all within 2 are told.
 */
final class LawChoice {
  static final int THIN = 5;
  static final int FEW = 20;
  private static final int OBSERVED_FROM = 30;
  private static final double ALIKE = 2;
  private static final double REJECTED = 0.01;

  private static final List<Law> ORDER_EVERY =
      List.of(Law.EXPONENTIAL, Law.WEIBULL, Law.GAMMA, Law.LOGNORMAL);
  private static final List<Law> ORDER_LASTS =
      List.of(Law.EXPONENTIAL, Law.LOGNORMAL, Law.GAMMA, Law.WEIBULL);

  /** A law that was tried; p is NaN where its fit was not tested. */
  record Candidate(LawFit fit, double a2, double p) {}

  /**
   * @param taken what is taken
   * @param tried all laws that could be fitted, the one that is taken first
   * @param notes what is to be known of the choice
   */
  record Chosen(Taken taken, List<Candidate> tried, List<String> notes) {
    Chosen {
      tried = List.copyOf(tried);
      notes = List.copyOf(notes);
    }
  }

  private final Observations seen;
  private final Window window;
  private final RandomStream stream;
  private final double low;
  private final List<String> notes = new ArrayList<>();

  /**
   * @param low from which amount on they were seen
   */
  LawChoice(Observations seen, Window window, double low, RandomStream stream) {
    this.seen = seen;
    this.window = window;
    this.low = low;
    this.stream = stream;
  }

  /** For the amounts between stops. */
  Chosen every() {
    Optional<Chosen> planned = planned();
    if (planned.isPresent()) {
      return planned.get();
    }
    if (seen.ended() == 0) {
      String why = "no stop ended: at 95 % its mean is more than a third of all that was counted";
      return new Chosen(new Taken.Left(why), List.of(), List.of());
    }
    if (seen.ended() < THIN) {
      notes.add("thin: fewer than " + THIN + " stops");
      return tested(fits(List.of(Law.EXPONENTIAL)));
    }
    if (seen.ended() < FEW) {
      notes.add(
          "few: fewer than " + FEW + " stops, so exponential unless Weibull is clearly better");
      return tested(ordered(fits(List.of(Law.EXPONENTIAL, Law.WEIBULL))));
    }
    return tested(ordered(fits(ORDER_EVERY)));
  }

  /** For the lengths of repairs. */
  Chosen lasts() {
    Optional<Chosen> planned = planned();
    if (planned.isPresent()) {
      return planned.get();
    }
    if (seen.ended() < 2) {
      return new Chosen(new Taken.Left("fewer than 2 whose length is known"), List.of(), List.of());
    }
    if (seen.ended() < THIN) {
      notes.add("thin: fewer than " + THIN + ", taken as they were seen");
      return new Chosen(asSeen(), List.of(), notes);
    }
    List<LawFit> fits = ordered(fits(ORDER_LASTS));
    if (fits.isEmpty()) {
      return new Chosen(
          asSeen(), List.of(), List.of("all of one length, or no law has a likeliest form"));
    }
    Chosen chosen = tested(fits);
    return chosen.tried().get(0).p() < REJECTED ? orAsSeen(chosen) : chosen;
  }

  /**
   * Amounts themselves where every law is rejected, there are enough of them and hardly any is cut
   * short.
   */
  private Chosen orAsSeen(Chosen chosen) {
    long going = seen.all().stream().filter(Seen::isGoing).count();
    if (seen.ended() < OBSERVED_FROM || going * 10 > seen.count()) {
      return chosen;
    }
    List<Candidate> tried = new ArrayList<>(List.of(chosen.tried().get(0)));
    for (Candidate other : chosen.tried().subList(1, chosen.tried().size())) {
      Candidate tested = test(other.fit());
      tried.add(tested);
      if (tested.p() >= REJECTED) {
        tried.add(0, tried.remove(tried.size() - 1));
        return new Chosen(new Taken.OfLaw(tested.fit()), tried, chosen.notes());
      }
    }
    notes.add("no law fits, so the amounts themselves are taken");
    return new Chosen(asSeen(), tried, notes);
  }

  private Taken asSeen() {
    return new Taken.AsSeen(
        seen.all().stream()
            .filter(one -> !one.isGoing())
            .map(one -> (one.low() + one.high()) / 2)
            .sorted()
            .toList());
  }

  /** An amount that three quarters of at least five keep to within 3 % is a plan and no chance. */
  private Optional<Chosen> planned() {
    List<Double> whole =
        seen.all().stream()
            .filter(one -> !one.isGoing() && one.high() - one.low() <= 0.06 * one.high())
            .map(one -> (one.low() + one.high()) / 2)
            .sorted()
            .toList();
    if (whole.size() < THIN || whole.size() < seen.ended()) {
      return Optional.empty();
    }
    double middle = (whole.get((whole.size() - 1) / 2) + whole.get(whole.size() / 2)) / 2;
    double[] near =
        whole.stream()
            .mapToDouble(Double::doubleValue)
            .filter(x -> Math.abs(x - middle) <= 0.03 * middle)
            .toArray();
    if (near.length * 4 < 3 * whole.size()) {
      return Optional.empty();
    }
    double spread =
        Math.sqrt(
                java.util.Arrays.stream(near).map(x -> (x - middle) * (x - middle)).sum()
                    / (near.length - 1))
            / middle;
    // The standard error of a median is 1.2533 times that of a mean where the amounts are normal.
    double error = 1.2533 * spread / Math.sqrt(near.length);
    return Optional.of(
        new Chosen(
            new Taken.Fixed(middle, error),
            List.of(),
            List.of(
                "a plan: " + near.length + " of " + whole.size() + " within 3 % of the middle")));
  }

  private List<LawFit> fits(List<Law> laws) {
    return laws.stream()
        .map(law -> MaximumLikelihood.fit(law, seen, low))
        .flatMap(Optional::stream)
        .toList();
  }

  /**
   * Best first: of those within 2 of the least criterion the first of the order, then by the
   * criterion.
   */
  private List<LawFit> ordered(List<LawFit> inOrder) {
    double least = inOrder.stream().mapToDouble(LawFit::aicc).min().orElse(0);
    List<LawFit> near = inOrder.stream().filter(fit -> fit.aicc() <= least + ALIKE).toList();
    List<LawFit> order = new ArrayList<>(inOrder);
    order.sort(
        Comparator.comparing((LawFit fit) -> near.isEmpty() || fit != near.get(0))
            .thenComparingDouble(LawFit::aicc));
    if (near.size() > 1) {
      notes.add(
          "no significant difference between "
              + String.join(", ", near.stream().map(fit -> fit.law().word()).toList()));
    }
    return order;
  }

  private Chosen tested(List<LawFit> fits) {
    if (fits.isEmpty()) {
      return new Chosen(new Taken.Left("no law has a likeliest form"), List.of(), notes);
    }
    List<Candidate> tried = new ArrayList<>(List.of(test(fits.get(0))));
    fits.subList(1, fits.size())
        .forEach(fit -> tried.add(new Candidate(fit, AndersonDarling.of(fit, seen), Double.NaN)));
    return new Chosen(new Taken.OfLaw(fits.get(0)), tried, notes);
  }

  private Candidate test(LawFit fit) {
    if (seen.ended() < THIN) {
      return new Candidate(fit, AndersonDarling.of(fit, seen), Double.NaN);
    }
    GoodnessOfFit fits = GoodnessOfFit.of(fit, seen, window, stream);
    return new Candidate(fit, fits.a2(), fits.p());
  }
}
