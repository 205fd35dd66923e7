package hurdline.plant;

import hurdline.random.Distribution;
import java.util.List;

/**
 * Something that takes time and may need resources, all of them at once.
 *
 * @param needs empty where it needs none
 */
public record Job(Distribution lastsS, List<String> needs) {
  public Job {
    needs = List.copyOf(needs);
  }
}
