package hurdline.records;

import hurdline.problem.LocatedProblem;
import java.util.List;
import java.util.Map;

/**
 * All that a folder of records says.
 *
 * @param crewed hours of each machine, from shifts
 * @param cautions what is to be known of the files as a whole
 * @param hash of all files, so that figures can say from which records they are
 */
public record Records(
    RecordsMap map,
    List<ShiftRecord> shifts,
    List<StopRecord> stops,
    List<TicketRecord> tickets,
    List<MadeRecord> made,
    List<DayRecord> yard,
    List<PowerRecord> power,
    List<DayRecord> bills,
    List<DayRecord> rain,
    Map<String, Spans> crewed,
    Account account,
    List<LocatedProblem> cautions,
    String hash) {}
