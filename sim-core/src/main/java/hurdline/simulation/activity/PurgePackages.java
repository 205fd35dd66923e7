package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.plant.Product;
import hurdline.plant.Purge;
import java.util.Arrays;

/**
 * The first packages of products after a changeover, which bring less than others.
 *
 * <p>As a campaign begins that follows a changeover, so many packages of what its line makes are to
 * be purged: those that are full first, with what they held before. While some are to come, a begun
 * package counts as one. Nothing here is touched in a plant without such a product.
 */
public final class PurgePackages {
  private static final int NOBODY = -1;
  private static final int BEFORE_THE_FIRST_DAY = -2;

  private final CompiledLines layout;
  private final Fillers fillers;
  private final PackageContents contents;
  private final int products;
  private final Purge[] purge; // [product] null where all packages are alike
  private final int[] toCome; // [product]
  private final int[] owes; // [product] the campaign that has them to come
  private final double[] fitKg; // [line * products + product] of full ones
  private final double[] tooWetKg;
  private final double[] fitNowKg; // the same with begun ones
  private final double[] tooWetNowKg;

  /** [product] full packages that were purge. */
  public final int[] packages;

  PurgePackages(ReplicationState present, Fillers fillers, PackageContents contents) {
    this.fillers = fillers;
    this.contents = contents;
    layout = present.layout;
    products = layout.naming.products.count();
    purge = new Purge[products];
    for (Product product : layout.plant.products()) {
      purge[layout.naming.products.index(product.name())] = product.purge().orElse(null);
    }
    toCome = new int[products];
    owes = new int[products];
    packages = new int[products];
    fitKg = new double[layout.lines * products];
    tooWetKg = new double[layout.lines * products];
    fitNowKg = new double[layout.lines * products];
    tooWetNowKg = new double[layout.lines * products];
  }

  void reset() {
    for (int p = 0; p < products; p++) {
      toCome[p] = has(p) ? purge[p].underWay() : 0;
      owes[p] = BEFORE_THE_FIRST_DAY;
    }
    Arrays.fill(packages, 0);
    Arrays.fill(fitKg, 0);
    Arrays.fill(tooWetKg, 0);
  }

  /** Whether packages of a product may be purge. */
  public boolean has(int product) {
    return purge[product] != null;
  }

  /**
   * A campaign of a line begins. Without a changeover before it, what one that is over has left to
   * come is not made up for.
   */
  void begins(int campaign, int line, boolean followsChangeover) {
    for (int m : fillers.packers) {
      for (int i = 0; i < fillers.head[m].length; i++) {
        if (layout.headLine[fillers.head[m][i]] == line) {
          for (int p : fillers.made[m]) {
            if (has(p) && fillers.makes(m, i, p)) {
              hasToCome(campaign, p, followsChangeover);
            }
          }
        }
      }
    }
  }

  private void hasToCome(int campaign, int product, boolean followsChangeover) {
    if (followsChangeover) {
      toCome[product] = purge[product].packages();
      owes[product] = campaign;
    } else if (owes[product] == BEFORE_THE_FIRST_DAY) {
      owes[product] = campaign;
    } else if (owes[product] == NOBODY) {
      toCome[product] = 0;
    }
  }

  /** A campaign has ended. */
  void ends(int campaign) {
    for (int p = 0; p < products; p++) {
      owes[p] = owes[p] == campaign ? NOBODY : owes[p];
    }
  }

  /** Whether a package begun now is purge. */
  boolean goesOn(int product) {
    return toCome[product] > 0;
  }

  /** Takes a full package of a product if it is purge. */
  boolean takes(int product, BegunPackage one) {
    if (!goesOn(product)) {
      return false;
    }
    toCome[product]--;
    packages[product]++;
    add(product, one, fitKg, tooWetKg);
    return true;
  }

  private void add(int p, BegunPackage one, double[] fit, double[] tooWet) {
    for (int l = 0; l < layout.lines; l++) {
      fit[l * products + p] += one.fitKg[l];
      tooWet[l * products + p] += one.tooWetKg[l];
    }
  }

  /** What purge packages of a product hold by now, at its moisture basis. */
  private void workOut(int p) {
    for (int l = 0; l < layout.lines; l++) {
      fitNowKg[l * products + p] = fitKg[l * products + p];
      tooWetNowKg[l * products + p] = tooWetKg[l * products + p];
    }
    if (goesOn(p) && !layout.stores.has(p)) {
      for (int m : fillers.packers) {
        BegunPackage one = contents.now(m, p);
        if (one != null) {
          add(p, one, fitNowKg, tooWetNowKg);
        }
      }
    }
  }

  /**
   * [line * products + product] what purge packages of a product hold that is fit to sell, begun
   * ones too unless they are for a store; read before the next question.
   */
  public double[] fitKgOfLines(int product) {
    workOut(product);
    return fitNowKg;
  }

  /** The same of what is too wet. */
  public double[] tooWetKgOfLines(int product) {
    workOut(product);
    return tooWetNowKg;
  }

  /** All that purge packages of a product hold by now, at its moisture basis. */
  public double kg(int product) {
    workOut(product);
    double sum = 0;
    for (int at = product; at < fitNowKg.length; at += products) {
      sum += fitNowKg[at] + tooWetNowKg[at];
    }
    return sum;
  }
}
