package hurdline.page;

import hurdline.answer.Outline;
import hurdline.answer.YardAnswer;
import hurdline.chart.kit.Chart;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;

/** Age, moisture and loss by place, of the plant as the file has it. */
final class YardPlaces {
  private final YardAnswer answer;
  private final Wording wording;

  YardPlaces(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  Chart.Grid grid() {
    List<List<String>> rows = new ArrayList<>();
    for (Outline.Place place : answer.outline().places()) {
      if (place.crops().contains(answer.asked().crop()) && has(place)) {
        rows.add(
            List.of(
                wording.titles().place(place.name()),
                cell(Measure.YARD_PLACE_PEAK, place),
                cell(Measure.YARD_PLACE_AGE_MEAN, place),
                cell(Measure.YARD_PLACE_MOISTURE_MEAN, place),
                cell(Measure.YARD_PLACE_LOST, place)));
      }
    }
    return new Chart.Grid(
        List.of(
            "place",
            "most " + answer.asked().unit(),
            "age when set on the table d",
            "moisture then %",
            "lost " + wording.unit("t")),
        rows);
  }

  private boolean has(Outline.Place place) {
    return answer
        .find(answer.header().option(), Measure.YARD_PLACE_LOST.of(place.name()))
        .isPresent();
  }

  private String cell(Measure measure, Outline.Place place) {
    return answer
        .find(answer.header().option(), measure.of(place.name()))
        .filter(row -> !Double.isNaN(row.mean()))
        .map(row -> wording.cell(row.mean(), row.low95(), row.high95(), row.unit()))
        .orElse("none");
  }
}
