package hurdline.plant;

import hurdline.random.Distribution;
import java.util.List;

/** A machine or a bin: all that a step's {@code to} may lead to besides products and waste. */
public sealed interface Machine {

  /** Word of the plant file for kinds that differ only in how they are drawn and named. */
  enum PlainKind {
    INCLINED_CLEANER,
    STICK_MACHINE,
    SEPARATING_SAW,
    LINT_CLEANER,
    GIN_STAND,
    DRIER,
    FAN,
    CONVEYOR
  }

  String name();

  /** What all machines but bins share. */
  record Common(double powerW, boolean drawsWithFlow, List<Stop> stops) {
    public static final Common NONE = new Common(0, false, List.of());

    public Common {
      Check.notBelow0("powerW", powerW);
      stops = List.copyOf(stops);
    }
  }

  /** Power, stops; {@link Common#NONE} for a bin. */
  Common common();

  /** The same machine with other power and stops; a bin has neither and stays. */
  Machine with(Common other);

  record Plain(String name, PlainKind kind, Common common) implements Machine {
    @Override
    public Machine with(Common other) {
      return new Plain(name, kind, other);
    }
  }

  /**
   * @param table bales that wait before it, at least 1
   */
  record BaleFeeder(String name, Common common, int table) implements Machine {
    public BaleFeeder {
      Check.count(1, "table", table);
    }

    @Override
    public Machine with(Common other) {
      return new BaleFeeder(name, other, table);
    }
  }

  /**
   * @param collects share of what reaches it that it keeps, 0 to 1
   */
  record Cyclone(String name, Common common, double collects) implements Machine {
    public Cyclone {
      Check.share("collects", collects);
    }

    @Override
    public Machine with(Common other) {
      return new Cyclone(name, other, collects);
    }
  }

  /**
   * A bag filler (with spouts) or a press (with boxes).
   *
   * @param press whether the file calls it a press
   * @param spouts spouts or boxes, at least 1
   */
  record Packer(String name, Common common, boolean press, int spouts) implements Machine {
    public Packer {
      Check.count(1, "spouts", spouts);
    }

    @Override
    public Machine with(Common other) {
      return new Packer(name, other, press, spouts);
    }
  }

  /**
   * A hammer mill: the motor sets its rate, the screen its fineness. Its {@link Common#powerW} is
   * the motor's rated power.
   *
   * @param screens at least one, in the file's order
   * @param swapS how long a change of screens takes
   * @param swapNeeds the resource that a change of screens holds
   */
  record HammerMill(
      String name,
      Common common,
      Grinding grinding,
      List<Screen> screens,
      Distribution swapS,
      List<String> swapNeeds)
      implements Machine {
    public HammerMill {
      screens = List.copyOf(screens);
    }

    @Override
    public Machine with(Common other) {
      return new HammerMill(name, other, grinding, screens, swapS, swapNeeds);
    }

    /**
     * Fastest as-is inflow that the motor allows on a screen at the reference moisture, kg/s: P·k /
     * e, with P the rated power (W), k the share of it that a fully fed mill draws and e the energy
     * per mass (J/kg).
     */
    public double kgPerS(Screen screen) {
      return common.powerW() * grinding.motorLoad() / grinding.energyJPerKg(screen);
    }
  }

  /**
   * Energy law of a mill: e = e₀·(d₀/d)ⁿ, with e₀ the energy per as-is mass (J/kg) through an
   * opening d₀ (m), d the screen's opening (m), n dimensionless. A power law of the opening
   * describes measured milling energy between 0.8 and 3.2 mm; beyond the range in which e₀ and n
   * were fitted it is an extrapolation.
   *
   * @see "Mani, Tabil and Sokhansanj, Grinding performance and physical properties of wheat and
   *     barley straws, corn stover and switchgrass, Biomass and Bioenergy 27 (2004) 339-352"
   * @param energyJPerKg per as-is mass through an opening of {@code measuredAtM}
   * @param motorLoad share of the rated power that a fully fed mill draws, above 0, at most 1
   * @param noLoad share of the rated power drawn without material, 0 to 1
   * @param byMoisture factor on the energy
   */
  record Grinding(
      double energyJPerKg,
      double measuredAtM,
      double exponent,
      double motorLoad,
      double noLoad,
      Curve byMoisture) {
    public Grinding {
      Check.above0("energyJPerKg", energyJPerKg);
      Check.above0("measuredAtM", measuredAtM);
      Check.notBelow0("exponent", exponent);
      Check.someShare("motorLoad", motorLoad);
      Check.share("noLoad", noLoad);
    }

    /** Energy per as-is mass through a screen, J/kg. */
    public double energyJPerKg(Screen screen) {
      return energyJPerKg * StrictMath.pow(measuredAtM / screen.openingM(), exponent);
    }
  }

  /**
   * @param fines share of the hurd that becomes fines on this screen
   */
  record Screen(String name, double openingM, double fines) {
    public Screen {
      Check.above0("openingM", openingM);
      Check.share("fines", fines);
    }
  }

  /**
   * A bin, first in, first out.
   *
   * @param holds kg, or m3 where {@code byVolume}
   * @param startAt level, in the unit of {@code holds}, at which a barred draw may start; 0 for a
   *     plain bin
   * @param stopAt level at which the draw is barred again
   * @param opens level on the first day, likewise; 0 but in a season that is under way
   */
  record Bin(
      String name, double holds, boolean byVolume, double startAt, double stopAt, double opens)
      implements Machine {
    public Bin {
      Check.above0("holds", holds);
      Check.notBelow0("startAt", startAt);
      Check.notBelow0("stopAt", stopAt);
      Check.notBelow0("opens", opens);
    }

    /** One that is empty on the first day. */
    public Bin(String name, double holds, boolean byVolume, double startAt, double stopAt) {
      this(name, holds, byVolume, startAt, stopAt, 0);
    }

    /** The same with so much in it on the first day. */
    public Bin opening(double level) {
      return new Bin(name, holds, byVolume, startAt, stopAt, level);
    }

    @Override
    public Common common() {
      return Common.NONE;
    }

    @Override
    public Machine with(Common other) {
      return this;
    }
  }
}
