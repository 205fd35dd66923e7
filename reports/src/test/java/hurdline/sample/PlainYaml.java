package hurdline.sample;

import java.util.Map;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/** A plant file as maps and lists in which every value is a text, but for one that is left out. */
public final class PlainYaml {
  private PlainYaml() {}

  public static Map<String, Object> of(String text) {
    LoaderOptions options = new LoaderOptions();
    return new Yaml(
            new SafeConstructor(options),
            new Representer(new DumperOptions()),
            new DumperOptions(),
            options,
            new OnlyText())
        .load(text);
  }

  private static final class OnlyText extends Resolver {
    @Override
    protected void addImplicitResolvers() {
      addImplicitResolver(Tag.NULL, Pattern.compile("^(?:~|null|)$"), "~n\0");
    }
  }
}
