package hurdline.simulation.results;

import hurdline.account.IntakeBooks;
import hurdline.compiled.CompiledLines;
import hurdline.plant.Crop;
import hurdline.simulation.activity.Feeding;
import hurdline.simulation.activity.Rostering;
import java.util.Arrays;

/**
 * What is left of each crop when the last campaign of any of its lines ends, and what it would have
 * brought.
 *
 * <p>A crop that several lines work counts once. Of a crop that no campaign works it is not known
 * what it would bring.
 */
final class CropLeft {
  private static final int NONE = -1;

  private final CompiledLines layout;
  private final Rostering rostering;
  private final Feeding feeding;
  private final IntakeBooks intake;
  private final MoneyResult money;
  private final int[] lastOfLine; // campaign, below 0 for none
  private final int[] lastOfCrop;
  private final double[] baleKg; // by crop; 1 where it has one form

  CropLeft(
      CompiledLines layout,
      Rostering rostering,
      Feeding feeding,
      IntakeBooks intake,
      MoneyResult money) {
    this.layout = layout;
    this.rostering = rostering;
    this.feeding = feeding;
    this.intake = intake;
    this.money = money;
    lastOfLine = new int[layout.lines];
    lastOfCrop = new int[layout.naming.crops.count()];
    baleKg = new double[lastOfCrop.length];
    layout.plant.crops().forEach(this::weigh);
    Arrays.fill(lastOfLine, NONE);
    Arrays.fill(lastOfCrop, NONE);
    for (int c = 0; c < rostering.campaigns(); c++) {
      int line = rostering.lineOf(c);
      lastOfLine[line] = c;
      lastOfCrop[layout.crop[line]] = later(lastOfCrop[layout.crop[line]], c);
    }
  }

  /** Bales of one form count alike; those of several go by their mean mass. */
  private void weigh(Crop crop) {
    int c = layout.naming.crops.index(crop.name());
    boolean alone = layout.plant.forms(crop.base()).size() == 1;
    baleKg[c] = alone ? 1 : crop.bale().meanMassKg();
  }

  private int later(int one, int other) {
    return one == NONE || rostering.campaign(other).untilS() >= rostering.campaign(one).untilS()
        ? other
        : one;
  }

  boolean hasCampaign(int line) {
    return lastOfLine[line] != NONE;
  }

  /** Bales left when the line's last campaign ended; to be asked of a line with campaigns only. */
  int leftOfLine(int line) {
    return rostering.leftOver.all(lastOfLine[line]);
  }

  /** Whether nothing is left of any crop. */
  boolean isAllFinished() {
    boolean all = true;
    for (int crop = 0; crop < lastOfCrop.length; crop++) {
      all &= leftOfCrop(crop) == 0;
    }
    return all;
  }

  /**
   * A crop without campaigns is left with what lies in the yard and baled at fields at the end; a
   * form of a crop with campaigns is counted with that.
   */
  private double leftOfCrop(int crop) {
    int base = layout.baseOf[crop];
    if (lastOfCrop[base] == NONE) {
      return intake.levels.inYard(crop) + intake.heldAtField(crop);
    }
    return base == crop ? weighed(crop, rostering.leftOver.byCrop(lastOfCrop[crop])) : 0;
  }

  private double weighed(int crop, int[] ofCrops) {
    double weighed = 0;
    for (int form : layout.forms[crop]) {
      weighed += ofCrops[form] * baleKg[form];
    }
    return weighed;
  }

  /**
   * Bales left over bring what those fed have brought, bale for bale or, where they come in several
   * forms, by their mean mass; NaN where none was fed.
   */
  double marginForgone(int line) {
    int crop = layout.crop[line];
    double left = weighed(crop, rostering.leftOver.byCrop(lastOfLine[line]));
    return perBales(left, money.margin(line), weighed(crop, feeding.usedUp[line]));
  }

  /**
   * The same of all crops together, a crop worked at a loss left out; NaN where crop is left of
   * which none was fed.
   */
  double forgone() {
    double forgone = 0;
    for (int crop = 0; crop < lastOfCrop.length; crop++) {
      double margin = 0;
      double used = 0;
      for (int line = 0; line < layout.lines; line++) {
        if (layout.crop[line] == crop) {
          margin += money.margin(line);
          used += weighed(crop, feeding.usedUp[line]);
        }
      }
      forgone += Math.max(0, perBales(leftOfCrop(crop), margin, used));
    }
    return forgone;
  }

  private static double perBales(double left, double margin, double used) {
    return used > 0 ? left * margin / used : left == 0 ? 0 : Double.NaN;
  }
}
