package hurdline.plant;

import hurdline.random.Distribution;
import java.util.Optional;

/** Something that takes time and may need a resource. */
public record Job(Distribution lastsS, Optional<String> needs) {}
