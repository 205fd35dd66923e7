package hurdline.web;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The modules of CodeMirror by the names under which they import each other, with the resource that
 * holds each. Versions are those of the build's jars; a test holds the two together.
 */
final class EditorModules {
  private static final String JARS = "/META-INF/resources/webjars/";

  private EditorModules() {}

  static Map<String, String> byName() {
    Map<String, String> all = new LinkedHashMap<>();
    all.put("@codemirror/state", JARS + "codemirror__state/6.7.1/dist/index.js");
    all.put("@codemirror/view", JARS + "codemirror__view/6.43.7/dist/index.js");
    all.put("@codemirror/language", JARS + "codemirror__language/6.12.4/dist/index.js");
    all.put("@codemirror/commands", JARS + "codemirror__commands/6.10.4/dist/index.js");
    all.put("@codemirror/lint", JARS + "codemirror__lint/6.9.7/dist/index.js");
    all.put("@codemirror/autocomplete", JARS + "codemirror__autocomplete/6.20.3/dist/index.js");
    all.put("@codemirror/search", JARS + "codemirror__search/6.5.11/dist/index.js");
    all.put("@lezer/common", JARS + "lezer__common/1.5.2/dist/index.js");
    all.put("@lezer/highlight", JARS + "lezer__highlight/1.2.3/dist/index.js");
    all.put("style-mod", JARS + "style-mod/4.1.3/src/style-mod.js");
    all.put("w3c-keyname", JARS + "w3c-keyname/2.2.8/index.js");
    all.put("crelt", JARS + "crelt/1.0.7/index.js");
    all.put("@marijn/find-cluster-break", JARS + "marijn__find-cluster-break/1.0.3/src/index.js");
    return all;
  }
}
