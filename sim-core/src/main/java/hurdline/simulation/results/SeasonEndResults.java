package hurdline.simulation.results;

import hurdline.compiled.CompiledLines;
import hurdline.measure.Measure;
import hurdline.simulation.activity.Rostering;
import java.util.ArrayList;
import java.util.List;

/** When each line's campaigns ended, and what they left over. */
final class SeasonEndResults {
  private final CompiledLines layout;
  private final Rostering rostering;
  private final List<List<Integer>> campaigns = new ArrayList<>(); // by line, in order

  SeasonEndResults(CompiledLines layout, Rostering rostering) {
    this.layout = layout;
    this.rostering = rostering;
    for (int l = 0; l < layout.lines; l++) {
      campaigns.add(new ArrayList<>());
    }
    for (int c = 0; c < rostering.campaigns(); c++) {
      campaigns.get(rostering.lineOf(c)).add(c);
    }
  }

  void put(OutcomeWriter tally) {
    for (int l = 0; l < layout.lines; l++) {
      if (!campaigns.get(l).isEmpty()) {
        put(
            tally,
            layout.naming.lines.name(l),
            layout.naming.crops.name(layout.crop[l]),
            campaigns.get(l));
      }
    }
  }

  /** Of the line as a whole, and of each of its campaigns where there are several. */
  private void put(OutcomeWriter tally, String line, String crop, List<Integer> ofLine) {
    for (int n = 0; n < ofLine.size() && ofLine.size() > 1; n++) {
      int c = ofLine.get(n);
      String ordinal = String.valueOf(n + 1);
      tally.put(Measure.SEASON_NTH_ENDED, rostering.endedDay(c), line, ordinal);
      tally.putCrop(Measure.SEASON_NTH_LEFT_OVER, crop, rostering.leftOver.all(c), line, ordinal);
    }
    int last = ofLine.get(ofLine.size() - 1);
    tally.put(Measure.SEASON_ENDED, endedDay(ofLine), line);
    tally.putCrop(Measure.SEASON_LEFT_OVER, crop, rostering.leftOver.all(last), line);
  }

  /**
   * The latest of its campaigns: where the crop ran out before the last one, that one has no end of
   * its own.
   */
  private double endedDay(List<Integer> ofLine) {
    return ofLine.stream()
        .mapToDouble(rostering::endedDay)
        .filter(day -> !Double.isNaN(day))
        .max()
        .orElse(Double.NaN);
  }
}
