package hurdline.unit;

import java.util.Arrays;
import java.util.List;

/** The quantities that a plant file asks for, each with its name and what it looks like. */
public enum Dimension {
  MASS("a mass such as \"1050 lb\" or \"9 t\"", Base.MASS),
  TIME("a time such as \"12 min\" or \"8 h\"", Base.TIME),
  POWER("a power such as \"15 kW\" or \"25 hp\"", Base.POWER),
  SHARE("a share such as \"12.5 %\"", Base.SHARE),
  LENGTH("a length such as \"6 mm\" or \"0.25 in\"", Base.LENGTH),
  AREA("an area such as \"410 acre\" or \"166 ha\"", Base.AREA),
  VOLUME("a volume such as \"60 m3\" or \"80 yd3\"", Base.VOLUME),
  BALES("a number of bales such as \"6 bales\"", Base.BALES),
  MONEY("an amount of money such as \"1400 USD\"", Base.MONEY),
  MASS_RATE("a rate such as \"3.6 t/h\"", Base.MASS, Base.TIME),
  BALE_RATE("bales per time such as \"380 bales/d\"", Base.BALES, Base.TIME),
  DENSITY("a bulk density such as \"110 kg/m3\"", Base.MASS, Base.VOLUME),
  YIELD("a yield such as \"3.3 ton/acre\"", Base.MASS, Base.AREA),
  ENERGY_PER_MASS("an energy per mass such as \"12 kWh/t\"", Base.ENERGY, Base.MASS),
  SHARE_RATE("a share per time such as \"3 %/month\"", Base.SHARE, Base.TIME),
  AREA_PRICE("a price of ground such as \"14 USD/m2\"", Base.MONEY, Base.AREA),
  PRICE("a price such as \"260 USD/ton\"", Base.MONEY, Base.MASS),
  MONEY_RATE("money per time such as \"26 USD/h\"", Base.MONEY, Base.TIME),
  ENERGY_PRICE("a price of energy such as \"0.11 USD/kWh\"", Base.MONEY, Base.ENERGY),
  DEMAND_PRICE("a demand charge such as \"17 USD/kW/month\"", Base.MONEY, Base.POWER, Base.TIME);

  private final String phrase;
  private final Base top;
  private final List<Base> under;

  Dimension(String phrase, Base top, Base... under) {
    this.phrase = phrase;
    this.top = top;
    this.under = sorted(Arrays.asList(under));
  }

  /** What it is and how it is written, for messages. */
  public String phrase() {
    return phrase;
  }

  /** The bases, numerator first. */
  public List<Base> bases() {
    List<Base> all = new java.util.ArrayList<>(under);
    all.add(0, top);
    return all;
  }

  boolean fits(Base numerator, List<Base> denominators) {
    return top == numerator && under.equals(sorted(denominators));
  }

  private static List<Base> sorted(List<Base> bases) {
    return bases.stream().sorted().toList();
  }
}
