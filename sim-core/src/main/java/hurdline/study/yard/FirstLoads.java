package hurdline.study.yard;

import hurdline.answer.LoadRow;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.Replication;
import hurdline.simulation.yard.WeighedLoad;
import java.util.List;
import java.util.Locale;

/**
 * The loads of a crop in the first replication, one by one: what a season's payments to growers
 * look like.
 */
final class FirstLoads {
  private static final int DAY_S = 86_400;
  private static final int MINUTE_S = 60;

  private FirstLoads() {}

  static List<LoadRow> of(CompiledPlant stage, String crop, long seed) {
    Replication first = stage.replication();
    first.run(new RandomStreams(seed), 1, null);
    return first.loads().stream()
        .filter(load -> load.crop().equals(crop))
        .map(load -> row(stage, load))
        .toList();
  }

  private static LoadRow row(CompiledPlant stage, WeighedLoad load) {
    int day = (int) Math.min(load.atS() / DAY_S, stage.roster().days() - 1.0);
    int minute = (int) ((load.atS() - day * (double) DAY_S) / MINUTE_S);
    return new LoadRow(
        stage.roster().date(day),
        String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60),
        load.field(),
        load.bales(),
        load.kg() / 1000,
        load.kg() > 0 ? 1 - load.dryKg() / load.kg() : Double.NaN,
        load.dryKg() / 1000);
  }
}
