package hurdline.study.season;

import java.util.List;

/**
 * What is asked of season plans.
 *
 * @param plans of the one file; none for its season as it stands and all its plans
 * @param changeovers whether to say what each avoided changeover is worth
 */
public record SeasonAsk(List<String> plans, boolean changeovers) {
  public SeasonAsk {
    plans = List.copyOf(plans);
  }
}
