package hurdline.text;

import hurdline.answer.InputUncertainty;
import hurdline.answer.InputUncertainty.Holds;
import hurdline.answer.InputUncertainty.Plants;
import java.util.ArrayList;
import java.util.List;

/**
 * In how many of the plants that drawn inputs allow an alternative pays or a line is done in time,
 * apart from chance: what the records leave open, and what more replications would not narrow.
 */
final class PlantCountWords {
  /** Fewer plants say nothing of a share. */
  private static final int FEWEST = 20;

  /** From so many on they are told of a hundred. */
  private static final int HUNDRED = 100;

  private final InputUncertainty inputs;
  private final SpokenNames names;
  private final Wording wording;

  PlantCountWords(InputUncertainty inputs, Wording wording) {
    this.inputs = inputs;
    this.wording = wording;
    names = new SpokenNames(wording.titles());
  }

  /**
   * Whole sentences, the last of them on chance; a line that is done in all plants, or in none, is
   * not told.
   */
  List<String> sentences() {
    List<Plants> counted =
        inputs.plants().stream()
            .filter(of -> of.plants() >= FEWEST)
            .filter(of -> of.holds() == Holds.PAYS || of.in() > 0 && of.in() < of.plants())
            .toList();
    List<String> sentences = new ArrayList<>(counted.stream().map(this::sentence).toList());
    counted.stream().map(this::chance).distinct().forEach(sentences::add);
    return sentences;
  }

  private String sentence(Plants of) {
    return "In "
        + count(of)
        + " plants that "
        + allowedBy()
        + ", "
        + (of.holds() == Holds.PAYS ? pays(of) : done(of))
        + ".";
  }

  private String count(Plants of) {
    boolean isMany = of.plants() >= HUNDRED;
    int all = isMany ? HUNDRED : of.plants();
    int in = isMany ? (int) Math.round(100.0 * of.in() / of.plants()) : of.in();
    if (of.in() == of.plants()) {
      return "all " + wording.count(all);
    }
    return (of.in() == 0 ? "none" : wording.count(in)) + " of " + wording.count(all);
  }

  /** What a file of draws has is what records leave open; a doubt is in the plant file. */
  private String allowedBy() {
    String doubt = "doubt";
    if (inputs.source().equals(doubt)) {
      return "the file's doubt allows";
    }
    return inputs.source().endsWith(" and " + doubt)
        ? "your records and the file's doubt allow"
        : "your records allow";
  }

  private String pays(Plants of) {
    String added =
        names.option(of.option())
            + (CompareHeadline.isPlural(of.option()) ? " add" : " adds")
            + (of.costPerYr() == 0
                ? " to the margin"
                : " more to the yearly margin than "
                    + wording.rough(of.costPerYr(), of.unit())
                    + ", the purchase as an even yearly payment");
    return added;
  }

  private String done(Plants of) {
    return names.line(of.line())
        + " is done in time"
        + (of.years() > 1 ? " in at least half of its years" : "")
        + " (with the inputs as given in "
        + wording.count(of.doneGiven())
        + " of "
        + wording.count(of.yearsGiven())
        + " years)";
  }

  /** Whether chance is in the count. */
  private String chance(Plants of) {
    if (of.years() > 1) {
      return of.holds() == Holds.PAYS
          ? "The chance of single years is taken out of that count."
          : "Each of these plants was simulated in " + wording.count(of.years()) + " years.";
    }
    return "Each of these plants was simulated in one year, so the chance of that year is in the"
        + " count; "
        + wording.count(2 * inputs.draws())
        + " replications tell the two apart.";
  }
}
