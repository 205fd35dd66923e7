package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.time.LocalDate;
import java.util.List;

/**
 * The model against a season that has been.
 *
 * @param header plant, program and settings; its dates are those of the season
 * @param outline of the plant
 * @param records name of the folder of records, without those above it
 * @param recordsHash hash of all files in it
 * @param source where draws of inputs come from; empty where there are none
 * @param series a row for each thing that records and simulation both have
 * @param periods the same period by period
 * @param moves which inputs the season would move, the farthest first; empty without draws
 * @param assumptions what the figures take for granted
 * @param cautions what in this very plant can hurt someone
 * @param warnings what is to be known of the records
 */
public record BacktestAnswer(
    Header header,
    Outline outline,
    String records,
    String recordsHash,
    String source,
    List<Series> series,
    List<Period> periods,
    List<Move> moves,
    List<Fact> assumptions,
    List<Fact> cautions,
    List<LocatedProblem> warnings)
    implements Answer {
  public BacktestAnswer {
    series = List.copyOf(series);
    periods = List.copyOf(periods);
    moves = List.copyOf(moves);
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    warnings = List.copyOf(warnings);
  }

  /** What is compared. */
  public enum Kind {
    FED,
    MADE,
    YARD,
    STOPS,
    STOP_HOURS,
    ENERGY
  }

  /** What a series says of the model; all are looked at together (Holm). */
  public enum Verdict {
    /** No significant difference, and none larger than the tolerance is left open. */
    AGREES,
    /** No significant difference, but chance alone moves it by more than the tolerance. */
    CANNOT_TELL,
    /** A significant difference within the tolerance. */
    TOO_SMALL_TO_MATTER,
    /** A significant difference that may be within the tolerance or beyond it. */
    PROBABLY_OFF,
    /** A significant difference beyond the tolerance. */
    MISSES
  }

  /**
   * One thing over the season.
   *
   * @param of crop, product or {@code machine.stop}; empty for the whole plant
   * @param unit of amounts
   * @param seen total of the records, of a yard the mean
   * @param mean the same of the replications
   * @param sd their standard deviation
   * @param off seen over mean, less 1
   * @param low95 lower end of what is left open of {@code off}
   * @param high95 its upper end
   * @param tolerance up to which a difference does not matter
   * @param chance of a total as far off, by letting every replication take the season's place;
   *     where it lies beyond them all, by Student's t
   * @param chanceTogether the same, raised so that all series hold together
   * @param crps continuous ranked probability score, mean over the periods
   * @param crpsChance chance of one as large
   * @param rankChance chance that ranks of the periods lie as far from a uniform distribution
   * @param outside share of periods outside the band from 5 to 95 %
   * @param outsideChance chance of one as large
   */
  public record Series(
      Kind kind,
      String of,
      String unit,
      double seen,
      double mean,
      double sd,
      double off,
      double low95,
      double high95,
      double tolerance,
      double chance,
      double chanceTogether,
      double crps,
      double crpsChance,
      double rankChance,
      double outside,
      double outsideChance,
      Verdict verdict) {}

  /** One period of one series. */
  public record Period(
      Kind kind,
      String of,
      String unit,
      LocalDate from,
      double seen,
      double mean,
      double p05,
      double p50,
      double p95) {}

  /**
   * How the season moves one input.
   *
   * @param was its mean over the draws, in the unit in which they are
   * @param becomes what the season makes most likely
   * @param errors the move in standard deviations of the draws
   * @param told share of the input's variance that this season takes away
   */
  public record Move(String input, double was, double becomes, double errors, double told) {}
}
