package hurdline.simulation.results;

import hurdline.measure.Measure;
import hurdline.simulation.activity.Crewing;
import hurdline.simulation.activity.ReplicationState;

/** Hand hours of each line's shifts and changeovers, and of receiving each crop. */
final class CrewResults {
  private static final double HOUR_S = 3600;

  private final ReplicationState present;
  private final Crewing crewing;

  CrewResults(ReplicationState present, Crewing crewing) {
    this.present = present;
    this.crewing = crewing;
  }

  void put(OutcomeWriter tally) {
    double[] shiftS = new double[present.layout.lines];
    double[] overS = new double[present.layout.lines];
    double[] changeoverS = new double[present.layout.lines];
    crewing.shifts(
        (line, handS, overtimeS, fromS) -> {
          shiftS[line] += handS;
          overS[line] += overtimeS;
        });
    crewing.changeovers((line, handS, overtimeS, fromS) -> changeoverS[line] += handS);
    for (int l = 0; l < present.layout.lines; l++) {
      String line = present.layout.naming.lines.name(l);
      for (int month = 0; month < present.roster.months().count(); month++) {
        overS[l] += crewing.afterShiftS(l, month);
      }
      tally.put(Measure.CREW_LABOR_HOURS, shiftS[l] / HOUR_S, line);
      tally.put(Measure.CREW_OVERTIME, overS[l] / HOUR_S, line);
      tally.put(Measure.CREW_SENT_HOME, crewing.sentHomeS(l) / HOUR_S, line);
      tally.put(Measure.CREW_CHANGEOVER, changeoverS[l] / HOUR_S, line);
      if (!present.layout.plant.hands().attendance().isEmpty()) {
        tally.put(Measure.CREW_ABSENT, crewing.absentS(l) / HOUR_S, line);
        tally.put(Measure.CREW_SHORT, crewing.shortS(l) / HOUR_S, line);
      }
    }
    for (int c = 0; c < present.layout.naming.crops.count(); c++) {
      double receivingS = 0;
      for (int day = 0; day < present.roster.days(); day++) {
        receivingS += crewing.receivingS(c, day);
      }
      tally.put(Measure.CREW_RECEIVING, receivingS / HOUR_S, present.layout.naming.crops.name(c));
    }
  }
}
