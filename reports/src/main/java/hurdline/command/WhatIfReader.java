package hurdline.command;

import hurdline.plant.Change;
import hurdline.study.compare.WhatIfChange;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads {@code KEY=VALUE}, or several with semicolons between them; a semicolon in quotes belongs
 * to a value.
 */
final class WhatIfReader {
  private static final char BETWEEN = ';';

  private WhatIfReader() {}

  static WhatIfChange of(String text) {
    return new WhatIfChange(parts(text).stream().map(part -> value(text, part)).toList());
  }

  private static Change.Value value(String text, String part) {
    int equals = part.indexOf('=');
    if (equals <= 0
        || part.substring(0, equals).isBlank()
        || part.substring(equals + 1).isBlank()) {
      throw new CallException(
          "--what-if \""
              + text
              + "\" "
              + (part.isBlank()
                  ? "has nothing beside a semicolon"
                  : "has no KEY=VALUE in \"" + part.strip() + "\"")
              + "; expected a change such as money.wage=x1.2, machines.mill.power=\"50 hp\" or deliveries.*.fields.*.ready=+30d, or"
              + " several with semicolons between them");
    }
    return new Change.Value(part.substring(0, equals).strip(), part.substring(equals + 1).strip());
  }

  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    char quote = 0;
    for (int at = 0; at < text.length(); at++) {
      char here = text.charAt(at);
      if (quote != 0) {
        quote = here == quote ? 0 : quote;
      } else if (here == '"' || here == '\'') {
        quote = here;
      } else if (here == BETWEEN) {
        parts.add(text.substring(from, at));
        from = at + 1;
      }
    }
    parts.add(text.substring(from));
    return parts;
  }
}
