package hurdline.study.season;

import hurdline.answer.ChangeoverRow;
import hurdline.answer.SeasonAnswer.Entry;
import hurdline.compiled.ChangeoverHours;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.SeasonEntry.Campaign;
import hurdline.simulation.CompiledPlant;
import hurdline.statistics.PairedDifference;
import hurdline.study.PlantOutline;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What each changeover costs: the plan simulated once more without it, the campaign before it
 * running on through its days. Where that makes no plant without problems it is not asked.
 */
final class ChangeoverWorth {
  private final List<Season.Planned> plans;
  private final List<Variant> variants = new ArrayList<>();

  private record Variant(int plan, Entry changeover, CompiledPlant stage) {}

  ChangeoverWorth(List<Season.Planned> plans) {
    this.plans = plans;
    for (int at = 0; at < plans.size(); at++) {
      for (ChangeoverHours hours : plans.get(at).stage().roster().changeovers()) {
        if (hours.fromS() < hours.toS()) {
          add(at, hours);
        }
      }
    }
  }

  private void add(int at, ChangeoverHours hours) {
    Season.Planned plan = plans.get(at);
    Plant plant = plan.stage().plant();
    Entry entry = new SeasonEntries(plan.stage()).entry(hours);
    List<Change> changes = new ArrayList<>(plan.changes());
    changes.add(new Change.Value("season." + hours.entry() + ".changeover", "0 d"));
    if (plant.season().get(hours.entry() - 1) instanceof Campaign) {
      changes.add(new Change.Value("season." + (hours.entry() - 1) + ".to", entry.to().toString()));
    }
    try {
      Plant without = plan.source().variants().with(changes.toArray(Change[]::new));
      variants.add(new Variant(at, entry, plan.stage().changedTo(without)));
    } catch (ProblemsException notAllowed) {
      return;
    }
  }

  /** How many plants there are besides the plans. */
  int count() {
    return variants.size();
  }

  /** Rows of those that could be simulated whole before a stop was asked for. */
  List<ChangeoverRow> simulate(ReplicationBudget simulations, List<ReplicationResults> figures) {
    int replications = figures.get(0).count();
    List<ChangeoverRow> rows = new ArrayList<>();
    for (Variant variant : variants) {
      ReplicationResults with = figures.get(variant.plan());
      Optional<ReplicationResults> without =
          with.has(Measure.MONEY_MARGIN.of())
              ? simulations.whole(variant.stage(), replications)
              : Optional.empty();
      without.ifPresent(of -> rows.add(row(variant, with, of)));
    }
    return rows;
  }

  private ChangeoverRow row(Variant variant, ReplicationResults with, ReplicationResults without) {
    String margin = Measure.MONEY_MARGIN.of();
    PairedDifference pair =
        PairedDifference.of(with.series(margin), without.series(margin), variants.size());
    Season.Planned plan = plans.get(variant.plan());
    return new ChangeoverRow(
        plan.name(),
        variant.changeover().from(),
        variant.changeover().to(),
        new PlantOutline(plan.stage()).currency(),
        pair.difference(),
        pair.joint().low(),
        pair.joint().high(),
        pair.interval().word(),
        pair.significant());
  }
}
