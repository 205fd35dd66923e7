package hurdline.text;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridChange;
import hurdline.answer.GridLead;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Which of several plants is the best where in a grid, and how sure the change from one to the next
 * is.
 */
public final class LeadWords {
  private final GridAnswer answer;
  private final KeyWords keys;

  public LeadWords(GridAnswer answer, Wording wording) {
    this.answer = answer;
    keys = new KeyWords(answer, wording);
  }

  /** A sentence on a goal; none with one plant. */
  Optional<String> sentence(String goal, String label) {
    List<GridLead> leads = of(goal);
    if (leads.isEmpty()) {
      return Optional.empty();
    }
    List<String> plants = leads.stream().map(GridLead::plant).distinct().toList();
    String head = "Best by " + label + ": ";
    if (answer.header().replications() < 2) {
      return Optional.of(
          head
              + counted(plants, leads, false)
              + "; one replication says nothing about the spread.");
    }
    if (leads.stream().noneMatch(lead -> lead.alike().isEmpty())) {
      return Optional.of(
          head + "no " + answer.called() + " is significantly the best at any value.");
    }
    if (answer.keys().size() > 1) {
      return Optional.of(head + counted(plants, leads, true) + ".");
    }
    if (plants.size() == 1) {
      return Optional.of(head + throughout(leads) + ".");
    }
    return Optional.of(head + runs(leads) + changes(goal) + ".");
  }

  /** The leads of a goal, cell by cell. */
  public List<GridLead> of(String goal) {
    return answer.leads().stream().filter(lead -> lead.measure().equals(goal)).toList();
  }

  private String throughout(List<GridLead> leads) {
    List<Integer> unsure =
        leads.stream().filter(lead -> !lead.alike().isEmpty()).map(GridLead::cell).toList();
    String sure =
        unsure.isEmpty()
            ? ", significantly better than the others everywhere"
            : ", no significant difference from "
                + (answer.plants().size() > 2
                    ? "every other"
                    : keys.plant(other(leads.get(0).plant())))
                + " at "
                + keys.runs(unsure);
    boolean all = leads.size() == answer.cells().size();
    String where = all ? "every value" : keys.runs(leads.stream().map(GridLead::cell).toList());
    return keys.plant(leads.get(0).plant()) + " at " + where + sure;
  }

  private String other(String plant) {
    return answer.plants().stream().filter(one -> !one.equals(plant)).findFirst().orElseThrow();
  }

  private String counted(List<String> plants, List<GridLead> leads, boolean sure) {
    return plants.stream()
        .map(
            plant -> {
              List<GridLead> its =
                  leads.stream().filter(lead -> lead.plant().equals(plant)).toList();
              long told = its.stream().filter(lead -> lead.alike().isEmpty()).count();
              return keys.plant(plant)
                  + " in "
                  + its.size()
                  + " of "
                  + leads.size()
                  + " cells"
                  + (sure ? ", significant in " + told + " of them" : "");
            })
        .collect(Collectors.joining(", "));
  }

  /** {@code base at 20 hp to 40 hp, bigger_mill at 50 hp to 80 hp}. */
  private String runs(List<GridLead> leads) {
    List<String> parts = new ArrayList<>();
    int at = 0;
    while (at < leads.size()) {
      int end = at;
      List<Integer> cells = new ArrayList<>(List.of(leads.get(at).cell()));
      while (end + 1 < leads.size() && leads.get(end + 1).plant().equals(leads.get(at).plant())) {
        end++;
        cells.add(leads.get(end).cell());
      }
      parts.add(keys.plant(leads.get(at).plant()) + " at " + keys.runs(cells));
      at = end + 1;
    }
    return String.join(", ", parts);
  }

  private String changes(String goal) {
    return answer.changes().stream()
        .filter(change -> change.measure().equals(goal))
        .map(
            change ->
                "; it changes from "
                    + keys.plant(change.before())
                    + " to "
                    + keys.plant(change.after())
                    + " "
                    + where(change))
        .collect(Collectors.joining());
  }

  /** {@code near 44 hp, surely between 40 hp and 50 hp}. */
  public String where(GridChange change) {
    String near = "near " + keys.between(0, change.at());
    if (change.lastBefore() >= 0 && change.firstAfter() >= 0) {
      return near
          + ", significantly between "
          + keys.cell(change.lastBefore())
          + " and "
          + keys.cell(change.firstAfter());
    }
    if (change.lastBefore() >= 0) {
      return near
          + ", significantly above "
          + keys.cell(change.lastBefore())
          + ", how far is not known";
    }
    if (change.firstAfter() >= 0) {
      return near
          + ", significantly below "
          + keys.cell(change.firstAfter())
          + ", how far is not known";
    }
    return near;
  }
}
