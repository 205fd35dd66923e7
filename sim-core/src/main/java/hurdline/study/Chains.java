package hurdline.study;

import hurdline.chance.Streams;
import hurdline.work.LeftOver;
import hurdline.work.Outcome;
import hurdline.work.Replication;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/**
 * Lives of a plant whose years follow each other, each opening with the crop that the one before left.
 *
 * <p>Chain k begins with the chance of the replication that comes after k − 1 strides, so the same years of two plants are pairs,
 * however long the chains of either are.
 * The first year opens as the file says. A year that opens as a replication played alone and leaves nothing, or has none
 * behind it, is that replication and is not played again.
 */
final class Chains {
  private final Stage stage;
  private final int years;
  private final int stride;
  private final int chains;
  private final Optional<Figures> alone;
  private final boolean startsEmpty;
  private final double[][] anew; // null where a year is the replication played alone
  private final AtomicInteger next = new AtomicInteger();
  private volatile List<Outcome.Column> columns;

  /**
   * @param years of each chain
   * @param stride replications from the first year of a chain to that of the next; no fewer than its years
   * @param alone the replications, each played alone, as far as they have been
   */
  Chains(Stage stage, int years, int stride, int chains, Optional<Figures> alone) {
    this.stage = stage;
    this.years = years;
    this.stride = stride;
    this.chains = chains;
    this.alone = alone;
    startsEmpty =
        stage.plant().deliveries().stream()
            .allMatch(of -> stage.plant().yard().onHand().getOrDefault(of.crop(), 0) == 0);
    anew = new double[chains * years][];
  }

  /** Years of all chains. */
  int years() {
    return anew.length;
  }

  /** How many of them had to be played. */
  int playedAnew() {
    int played = 0;
    for (double[] year : anew) {
      played += year == null ? 0 : 1;
    }
    return played;
  }

  /** All years in the order of the chains; empty if stop was asked for before they were whole. */
  Optional<Figures> play(Effort effort, Runnable done, BooleanSupplier stop) {
    AtomicInteger whole = new AtomicInteger();
    try (Workers workers = new Workers(Math.min(effort.threads(), chains), "chains of years")) {
      workers.work(
          worker -> {
            Replication replication = stage.replication();
            Streams streams = new Streams(effort.seed());
            for (int chain = next.getAndIncrement(); chain < chains; chain = next.getAndIncrement()) {
              if (!follow(chain, replication, streams, done, stop)) {
                return;
              }
              whole.incrementAndGet();
            }
          });
    }
    return whole.get() < chains ? Optional.empty() : Optional.of(figures());
  }

  private boolean follow(
      int chain, Replication replication, Streams streams, Runnable done, BooleanSupplier stop) {
    LeftOver opening = null;
    for (int year = 0; year < years; year++) {
      if (stop.getAsBoolean()) {
        return false;
      }
      int one = chain * stride + year;
      if (isKnown(one, year, opening)) {
        opening = LeftOver.NONE;
      } else {
        Outcome outcome = replication.run(streams, one + 1, opening, null);
        columns = outcome.columns();
        anew[chain * years + year] = outcome.values();
        opening = replication.leftOver();
      }
      synchronized (this) {
        done.run();
      }
    }
    return true;
  }

  private boolean isKnown(int one, int year, LeftOver opening) {
    boolean opensAlike = opening == null || startsEmpty && opening.isEmpty();
    return opensAlike
        && alone.filter(known -> one < known.count()).isPresent()
        && (year == years - 1 || alone.get().balesLeft(one) == 0);
  }

  private Figures figures() {
    Figures figures = new Figures();
    for (int at = 0; at < anew.length; at++) {
      if (anew[at] == null) {
        Figures known = alone.orElseThrow();
        figures.add(known.columns(), known.row(at / years * stride + at % years));
      } else {
        figures.add(columns, anew[at]);
      }
    }
    return figures;
  }
}
