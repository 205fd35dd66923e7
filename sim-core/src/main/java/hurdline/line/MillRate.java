package hurdline.line;

import hurdline.plant.Machine;

/**
 * What a hammer mill's motor allows.
 *
 * <p>rate = P·k / e, with e = e₀·(d₀/d)ⁿ: P rated power (W), k share of it that a fully fed mill
 * draws, e₀ energy per as-is mass (J/kg) through an opening d₀ (m), d the screen's opening (m), n
 * dimensionless. A power law of the opening describes measured milling energy between 0.8 and 3.2 mm;
 * beyond the range in which e₀ and n were fitted it is an extrapolation.
 *
 * @see "Mani, Tabil and Sokhansanj, Grinding performance and physical properties of wheat and barley
 *     straws, corn stover and switchgrass, Biomass and Bioenergy 27 (2004) 339-352"
 */
public final class MillRate {
  private MillRate() {}

  /** Fastest as-is inflow on a screen at the reference moisture, kg/s. */
  public static double kgPerS(Machine.HammerMill mill, Machine.Screen screen) {
    Machine.Grinding grinding = mill.grinding();
    return mill.common().powerW() * grinding.motorLoad() / energyJPerKg(grinding, screen);
  }

  /** Energy per as-is mass through a screen, J/kg. */
  public static double energyJPerKg(Machine.Grinding grinding, Machine.Screen screen) {
    return grinding.energyJPerKg()
        * StrictMath.pow(grinding.measuredAtM() / screen.openingM(), grinding.exponent());
  }
}
