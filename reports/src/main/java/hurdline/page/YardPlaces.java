package hurdline.page;

import hurdline.answer.Outline;
import hurdline.answer.SummaryRow;
import hurdline.answer.YardAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.util.Optional;
import java.util.function.Function;

/** Age, moisture and loss by place, of the plant as the file has it. */
final class YardPlaces {
  private static final String NONE = "none";

  private final YardAnswer answer;
  private final Wording wording;

  YardPlaces(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  Chart.Grid grid() {
    return new GridColumns<Outline.Place>(wording)
        .text("place", place -> wording.titles().place(place.name()))
        .mean("most", answer.asked().unit(), of(Measure.YARD_PLACE_PEAK), NONE)
        .mean("age when set on the table", "d", of(Measure.YARD_PLACE_AGE_MEAN), NONE)
        .mean("moisture then", "share", of(Measure.YARD_PLACE_MOISTURE_MEAN), NONE)
        .mean("lost", "t", of(Measure.YARD_PLACE_LOST), NONE)
        .of(
            answer.outline().places().stream()
                .filter(place -> place.crops().contains(answer.asked().crop()) && has(place))
                .toList());
  }

  private boolean has(Outline.Place place) {
    return of(Measure.YARD_PLACE_LOST).apply(place).isPresent();
  }

  private Function<Outline.Place, Optional<SummaryRow>> of(Measure measure) {
    return place -> answer.find(answer.header().option(), measure.of(place.name()));
  }
}
