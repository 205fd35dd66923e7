package hurdline.study;

import hurdline.study.replicate.IndifferenceZone;
import hurdline.study.replicate.RunSettings;
import hurdline.unit.Amount;
import java.util.Optional;

/** An aim or a band in money is in the plant's currency, which only the plant file says. */
public final class AimCurrency {
  private final PlantOrigin source;
  private final PlantChanges chosen;

  public AimCurrency(PlantOrigin source, PlantChanges chosen) {
    this.source = source;
    this.chosen = chosen;
  }

  /**
   * @throws hurdline.plant.ProblemsException if the aim is in other money
   */
  public void check(RunSettings effort) {
    effort.until().ifPresent(aim -> check("the aim", aim.said()));
  }

  public void check(IndifferenceZone zone) {
    check("the band", zone.said());
  }

  /**
   * @param said a measure, a colon and an amount
   */
  private void check(String what, String said) {
    String[] parts = said.split(":");
    Optional<String> asked =
        parts.length > 1 ? Amount.find(parts[1]).flatMap(Amount::currency) : Optional.empty();
    Optional<String> plant = source.variants().said("money.currency", chosen.asArray());
    if (asked.isPresent() && plant.isPresent() && !plant.equals(asked)) {
      throw source.refusal(
          what
              + " \""
              + said
              + "\" is in "
              + asked.get()
              + ", and the plant's money is in "
              + plant.get(),
          "an amount in " + plant.get());
    }
  }
}
