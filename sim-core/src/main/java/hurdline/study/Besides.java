package hurdline.study;

import hurdline.answer.Further;
import hurdline.answer.GainRow;
import hurdline.answer.Note;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What is asked of a comparison besides the differences, each from plays of its own. */
final class Besides {
  private final CompareAsk ask;
  private final Stage stage;
  private final Gains gains;
  private final Mores mores;
  private final Chosen base;
  private boolean stopped;

  Besides(Source source, Chosen base, CompareAsk ask, Stage stage) {
    this.base = base;
    this.ask = ask;
    this.stage = stage;
    mores = ask.gain() ? new Mores(source, base, stage) : null;
    gains = ask.gain() ? new Gains(source, base, mores.all(), gained(stage)) : null;
  }

  private static List<String> gained(Stage stage) {
    Set<String> measures = new LinkedHashSet<>();
    new Outlines(stage).lines().forEach(line -> measures.add(Measure.MASS_FED.of(line.crop())));
    measures.add(Measure.MONEY_MARGIN.of());
    return List.copyOf(measures);
  }

  /** How many plants are played, each as often as the base. */
  int plants() {
    return ask.gain() ? gains.plants() : 0;
  }

  /** Plays what is asked for; expected already. */
  Further play(Rounds.Played played, Plays plays) {
    Figures figures = played.figures().get(0);
    Rows rows = new Rows(base.option(), stage, figures, new Outlines(stage));
    List<GainRow> gained = ask.gain() ? gains.play(figures, rows, plays) : List.of();
    stopped = plays.isStopAsked() && plays.isMissing();
    return new Further(ask.withinYr().orElse(Double.NaN), gained);
  }

  /** Whether something is missing because the user asked for an end. */
  boolean stopped() {
    return stopped;
  }

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    if (ask.gain()) {
      notes.add(
          new Note(
              "A tenth more",
              "Each thing alone is given a tenth more, in the plant as it stands and on the same"
                  + " chance: the rate of a machine in all its lines, the power of a mill, the room of"
                  + " a bin, the length of a shift (at its end, or where another shift is in the way"
                  + " before its beginning). Of a resource there is one more, which is more than a"
                  + " tenth, and whoever works it costs nothing here, since crews stay as they are;"
                  + " longer shifts are paid. What a purchase would cost is left out. For each measure"
                  + " the intervals of all things hold together with 95 % confidence (Bonferroni)."
                  + (mores.left().isEmpty()
                      ? ""
                      : " Not asked: " + String.join(", ", mores.left()) + ".")));
    }
    return notes;
  }
}
