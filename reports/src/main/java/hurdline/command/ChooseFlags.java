package hurdline.command;

import hurdline.answer.ChooseTerms;
import hurdline.study.choose.ChooseAsk;
import hurdline.study.replicate.IndifferenceZone;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.RunSettings;
import hurdline.unit.Dimension;
import hurdline.unit.Quantity;
import hurdline.unit.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;

/** What is asked of very many plans, and how long. */
final class ChooseFlags {
  private static final int MOST_BUDGETS = 20;

  @CommandLine.Option(
      names = "--best",
      paramLabel = "MEASURE:BAND",
      required = true,
      description =
          "The measure of which the greatest mean is the best, and the gap to it that is small"
              + " enough, such as money.margin:'5000 USD'.")
  private String best;

  @CommandLine.Option(
      names = "--worth",
      description = "Takes the yearly cost of capital of what a plan buys off the measure.")
  private boolean worth;

  @CommandLine.Option(
      names = "--choice",
      paramLabel = "KEY=A|B|C",
      description =
          "One more choice: a key with its values, such as 'machines.mill.power=25 hp|45 hp'; or"
              + " the name of a choice of the file with those of its values that are left. May be"
              + " given several times.")
  private List<String> choices = new ArrayList<>();

  @CommandLine.Option(
      names = "--budget",
      paramLabel = "AMOUNT",
      split = ",",
      description =
          "Also the best of the plans that cost no more than this, such as 0,60000,140000. All"
              + " statements hold together.")
  private List<String> budgets = new ArrayList<>();

  @CommandLine.Option(
      names = "--at-least",
      paramLabel = "MEASURE:VALUE[:SHARE]",
      description =
          "Leaves out plans of which a measure is below this in more than the rest of the years,"
              + " such as mass.stalk.fed:'2000 ton':90%%. Default: in no year.")
  private List<String> atLeast = new ArrayList<>();

  @CommandLine.Option(
      names = "--at-most",
      paramLabel = "MEASURE:VALUE[:SHARE]",
      description = "The same for what is above this, such as yard.stalk.peak:'4000 bales':90%%.")
  private List<String> atMost = new ArrayList<>();

  @CommandLine.Option(
      names = "--procedure",
      paramLabel = "WORD",
      defaultValue = "rounds",
      description =
          "How plans are judged: rounds, all left against one leader on the same draws; or"
              + " independent, each plan in two stages on draws of its own (Rinott's procedure),"
              + " which takes far more years and goes without --budget, --each-gap, --at-least,"
              + " --at-most, --draws and doubt. Default: rounds.")
  private String procedure;

  @CommandLine.Option(
      names = "--each-gap",
      description =
          "Sets the plans left, at most 50, all against all in the end, so that each has a gap of"
              + " its own.")
  private boolean eachGap;

  @CommandLine.Option(
      names = "--years",
      paramLabel = "N",
      description =
          "Begins no round that would take more simulated years than this, of all plans together."
              + " Default: no limit.")
  private Long years;

  @CommandLine.Option(
      names = "--most",
      paramLabel = "TIME",
      description = "Ends with what is known after this time, such as 3h. Default: no limit.")
  private String most;

  @CommandLine.Option(
      names = "--replications",
      paramLabel = "N",
      defaultValue = "40",
      description =
          "Years in which the named plan and those near it are shown in the end. Default: 40.")
  private int replications;

  @CommandLine.Mixin private DrawFlags draws;

  @CommandLine.Option(
      names = "--on",
      paramLabel = "WHERE",
      description =
          "Simulates on Apache Spark: local for this machine, spark://HOST:PORT for a cluster; the"
              + " answer does not depend on it. Default: on threads, without Spark.")
  private String on;

  ChooseAsk ask() {
    Precision aim = AimReader.of(best, "--best");
    if (aim.relative()) {
      throw new CallException(
          "--best \""
              + best
              + "\" has a share for its band; expected an amount, settled before anything is"
              + " known");
    }
    if (budgets.size() > MOST_BUDGETS) {
      throw new CallException(
          "--budget names " + budgets.size() + " budgets; expected at most " + MOST_BUDGETS);
    }
    if (eachGap && !budgets.isEmpty()) {
      throw new CallException(
          "--each-gap and --budget do not go together; expected one of them at a time");
    }
    boolean independent = isIndependent();
    if (years != null && !(years >= 1)) {
      throw new CallException("--years is " + years + "; expected a whole number from 1 on");
    }
    List<ChooseTerms.Bound> bounds = new ArrayList<>();
    atLeast.forEach(text -> bounds.add(ChoiceReader.bound(text, "--at-least")));
    atMost.forEach(text -> bounds.add(ChoiceReader.bound(text, "--at-most")));
    return new ChooseAsk(
        choices.stream().map(ChoiceReader::change).toList(),
        new IndifferenceZone(aim.measure(), aim.halfWidth(), false, best),
        worth,
        bounds,
        ChoiceReader.budgets(budgets),
        eachGap,
        years == null ? 0 : years,
        independent);
  }

  private boolean isIndependent() {
    if (procedure.equals("rounds")) {
      return false;
    }
    if (!procedure.equals("independent")) {
      throw new CallException(
          "--procedure \"" + procedure + "\" is no procedure; expected rounds or independent");
    }
    String other =
        !budgets.isEmpty()
            ? "--budget"
            : eachGap
                ? "--each-gap"
                : !atLeast.isEmpty()
                    ? "--at-least"
                    : !atMost.isEmpty()
                        ? "--at-most"
                        : ""; // draws are refused with the plant's own
    if (!other.isEmpty()) {
      throw new CallException(
          "--procedure independent and "
              + other
              + " do not go together; expected one of them at a time");
    }
    return true;
  }

  Optional<String> on() {
    if (draws.nameThreads() && on != null && !on.startsWith("local")) {
      throw new CallException(
          "--threads is of this machine and --on " + on + " of others; expected one of them");
    }
    return Optional.ofNullable(on);
  }

  RunSettings effort() {
    DrawFlags.atLeast("--replications", replications, 2);
    return draws.effort(replications);
  }

  /** Seconds after which it ends; infinite without a limit. */
  double mostS() {
    if (most == null) {
      return Double.POSITIVE_INFINITY;
    }
    try {
      double seconds = Quantity.read(most, Dimension.TIME).si();
      if (seconds > 0) {
        return seconds;
      }
    } catch (QuantityException e) {
      throw new CallException(
          "--most: " + e.getMessage() + "; expected a time such as 40min or 3h");
    }
    throw new CallException(
        "--most \"" + most + "\" is no time; expected one above 0 such as 40min or 3h");
  }
}
