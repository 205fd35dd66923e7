package hurdline.study.compare;

import hurdline.answer.WhatIf;
import hurdline.plant.Change;
import java.util.List;

/**
 * A change of the plant that is set beside it, and costs nothing: one value, or several at once.
 */
public record WhatIfChange(List<Change.Value> values) {
  public WhatIfChange {
    values = List.copyOf(values);
    if (values.isEmpty()) {
      throw new IllegalArgumentException("a what-if without a change; expected one or more");
    }
  }

  /** As tables name it: {@code money.wage=x1.2}. */
  public String name() {
    return WhatIf.name(values.stream().map(value -> value.path() + "=" + value.value()).toList());
  }
}
