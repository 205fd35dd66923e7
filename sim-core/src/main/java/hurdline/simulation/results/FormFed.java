package hurdline.simulation.results;

import hurdline.account.IntakeBooks;
import hurdline.compiled.CompiledLines;
import hurdline.simulation.activity.Feeding;
import java.util.Arrays;

/**
 * Mass of one form of a crop that was fed: what was set on tables less what went back to the yard
 * and what is on tables and in feeders still.
 */
final class FormFed {
  private final CompiledLines layout;
  private final Feeding feeding;
  private final IntakeBooks intake;
  private final double[] componentKg;

  FormFed(CompiledLines layout, Feeding feeding, IntakeBooks intake) {
    this.layout = layout;
    this.feeding = feeding;
    this.intake = intake;
    componentKg = new double[layout.components];
  }

  double kg(int form) {
    double onTablesKg = 0;
    for (int l = 0; l < layout.lines; l++) {
      onTablesKg += layout.takes(l, form) ? onTableKg(l, form) : 0;
    }
    return taken(intake.setOnTable.kg(form) - intake.putBack.kg(form) - onTablesKg);
  }

  double dryKg(int form) {
    double onTablesDryKg = 0;
    for (int l = 0; l < layout.lines; l++) {
      if (layout.takes(l, form)) {
        onTableKg(l, form);
        onTablesDryKg += Arrays.stream(componentKg).sum();
      }
    }
    return taken(intake.setOnTable.dryKg(form) - intake.putBack.dryKg(form) - onTablesDryKg);
  }

  private double onTableKg(int line, int form) {
    Arrays.fill(componentKg, 0);
    return feeding.stock.stillHereKg(line, form, componentKg);
  }

  /** A difference of sums; below 0 it is rounding. */
  private static double taken(double differenceKg) {
    return Math.max(0, differenceKg);
  }
}
