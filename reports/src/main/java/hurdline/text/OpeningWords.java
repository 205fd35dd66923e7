package hurdline.text;

import hurdline.answer.RunFact.OpeningContents;
import hurdline.answer.RunFact.OpeningContents.Found;
import hurdline.answer.RunFact.OpeningContents.NotGiven;
import hurdline.answer.Titles;
import java.time.LocalDate;

/** What lies in bins and stores as a season under way goes on. */
public final class OpeningWords {
  private final Wording wording;
  private final Titles titles;

  public OpeningWords(Wording wording) {
    this.wording = wording;
    titles = wording.titles();
  }

  /** What begins with something and what begins empty. */
  public String sentence(OpeningContents of) {
    String found =
        of.found().isEmpty()
            ? ""
            : Titles.capital(CapacityWords.and(of.found().stream().map(this::found).toList()))
                + ". ";
    return found + (of.notGiven().isEmpty() ? "" : notGiven(of)) + "Begun packages begin empty.";
  }

  private String found(Found of) {
    String amount =
        of.product().isEmpty()
            ? wording.rough(of.amount(), of.unit())
            : wording.count(of.amount())
                + " packages of "
                + Titles.inText(titles.product(of.product()));
    return place(of.place(), of.product())
        + " begins with "
        + amount
        + ", counted on "
        + wording.date(of.counted());
  }

  private String place(String place, String product) {
    return product.isEmpty() ? titles.machineInText(place) : titles.storeInText(place);
  }

  private String notGiven(OpeningContents of) {
    String places =
        Titles.capital(CapacityWords.and(of.notGiven().stream().map(this::notGiven).toList()));
    return of.notGiven().size() == 1
        ? places + " begins empty: no record says what was in it. "
        : places + " begin empty: no record says what was in them. ";
  }

  private String notGiven(NotGiven of) {
    String what =
        of.product().isEmpty() ? "" : " (" + Titles.inText(titles.product(of.product())) + ")";
    String last =
        of.counted().isEmpty()
            ? ""
            : ", last counted on " + wording.date(LocalDate.parse(of.counted())) + ",";
    return place(of.place(), of.product()) + what + last;
  }
}
