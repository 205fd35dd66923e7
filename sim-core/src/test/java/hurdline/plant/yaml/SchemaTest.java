package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.TreeReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The schema for editors says what the reader says: the same keys, and the same files. */
class SchemaTest {
  private static final String TEXT = PlantFiles.text("plant.schema.json");
  private static final JsonNode TREE = new ObjectMapper().readTree(TEXT);
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(TEXT, InputFormat.JSON);
  private static final Path WRONG = Path.of("../line-configs/wrong");

  /** By file and line, what a schema, which looks at one value at a time, cannot know. */
  private static final Map<String, Map<Integer, String>> OVER_SEVERAL_KEYS =
      Map.ofEntries(
          Map.entry(
              "attributes",
              Map.of(
                  18, "a share of something else might be above the whole",
                  20, "a name may be any",
                  37, "names an attribute",
                  41, "the rate stands beside it",
                  46, "names a component",
                  47, "names an attribute")),
          Map.entry(
              "cash",
              Map.ofEntries(
                  Map.entry(42, "a time may be any elsewhere"),
                  Map.entry(44, "a share of something else might be above the whole"),
                  Map.entry(46, "a time may be any elsewhere"),
                  Map.entry(48, "a share may be the whole elsewhere"),
                  Map.entry(52, "goes by the method beside it"),
                  Map.entry(58, "a share of something else might be above the whole"),
                  Map.entry(59, "a rate may be below 0 elsewhere"),
                  Map.entry(63, "a time may be any elsewhere"))),
          Map.entry(
              "choices",
              Map.ofEntries(
                  Map.entry(42, "names a machine"),
                  Map.entry(45, "compares three keys"),
                  Map.entry(46, "compares two keys"),
                  Map.entry(47, "compares the units of three keys"),
                  Map.entry(49, "counts the values of two keys"),
                  Map.entry(51, "names an option"),
                  Map.entry(52, "a path may lead anywhere"),
                  Map.entry(53, "counts the keys"),
                  Map.entry(55, "names a choice"),
                  Map.entry(56, "names a value of a choice"),
                  Map.entry(57, "compares with the values of a choice"),
                  Map.entry(58, "compares with the values of a choice"),
                  Map.entry(60, "compares with the values of a choice"),
                  Map.entry(61, "compares with the values beside it"),
                  Map.entry(63, "compares with the values beside it"),
                  Map.entry(64, "a price per anything is a text"),
                  Map.entry(65, "compares with the values beside it"))),
          Map.entry("calendar", Map.of(7, "compares with the calendar's own dates")),
          Map.entry(
              "cleanliness",
              Map.of(
                  24, "names a component",
                  31, "the package stands beside it",
                  35, "compares with the product's price",
                  43, "compares the shares of two pairs",
                  51, "what is piled is said elsewhere")),
          Map.entry(
              "flow",
              Map.of(
                  58, "the kind of the machine that feeds is said elsewhere",
                  68, "names a component",
                  70, "whether a bin is drawn from is said by other steps",
                  72, "which outlet is without takes is said by its neighbors")),
          Map.entry(
              "forms",
              Map.of(
                  18, "names a crop",
                  21, "the crop that is named is said elsewhere",
                  24, "names the crop itself",
                  40, "what the crop is a form of is said elsewhere",
                  58, "what goes together is said by two keys")),
          Map.entry(
              "freight",
              Map.of(
                  22, "a price might be below 0",
                  26, "compares with the file's currency",
                  28, "the package stands beside it")),
          Map.entry(
              "hands",
              Map.of(
                  36, "names a line",
                  39, "names a shift",
                  40, "the crew is said elsewhere",
                  42, "compares with the crew",
                  43, "compares with the crew",
                  44, "a share of something else might be above the whole",
                  45, "names shared hands")),
          Map.entry(
              "links",
              Map.of(
                  46, "names a package",
                  52, "names a resource",
                  57, "names a crop",
                  60, "names a machine",
                  64, "names a component",
                  72, "names a product",
                  80, "names a product",
                  85, "names a shift",
                  98, "names a crop")),
          Map.entry(
              "market",
              Map.of(
                  25, "goes by what it sells",
                  34, "compares the masses of two pairs",
                  46, "a mass may be 0 elsewhere")),
          Map.entry("moisture", Map.of(25, "compares with the product's price")),
          Map.entry(
              "orders",
              Map.of(
                  23, "the same names may be screens elsewhere",
                  36, "the kind of the machine is said elsewhere",
                  40, "goes by the mix beside it",
                  44, "names a screen",
                  49, "sums shares")),
          Map.entry(
              "stores",
              Map.ofEntries(
                  Map.entry(19, "a name may be any elsewhere"),
                  Map.entry(24, "names a store"),
                  Map.entry(28, "orders stand beside it"),
                  Map.entry(30, "the package stands beside it"),
                  Map.entry(34, "the store stands beside it"),
                  Map.entry(37, "the store stands beside it"),
                  Map.entry(43, "compares with a package"),
                  Map.entry(46, "what is piled is said elsewhere"),
                  Map.entry(53, "compares two masses"),
                  Map.entry(65, "the worth stands beside it"),
                  Map.entry(67, "compares with the store"),
                  Map.entry(74, "compares with a package"))),
          Map.entry(
              "packages",
              Map.of(
                  27, "what steps pack is said elsewhere",
                  34, "what steps pack is said elsewhere",
                  53, "names a package",
                  61, "goes by the packs beside it",
                  62, "compares with another line",
                  68, "the package is said elsewhere")),
          Map.entry(
              "purchase",
              Map.ofEntries(
                  Map.entry(40, "the scale is said elsewhere"),
                  Map.entry(45, "names an attribute"),
                  Map.entry(47, "a share of something else might be above the whole"),
                  Map.entry(48, "a time might be below 0"),
                  Map.entry(49, "a share or money of something else might be so"),
                  Map.entry(55, "names a crop"),
                  Map.entry(57, "names an attribute"),
                  Map.entry(60, "compares the shares of two pairs"),
                  Map.entry(62, "a price might be below 0"),
                  Map.entry(64, "names a crop"),
                  Map.entry(65, "goes by the crop's deliveries"),
                  Map.entry(67, "a price might be below 0"))),
          Map.entry("yard", Map.of(110, "goes by the stack beside it and the crops' weather")),
          Map.entry(
              "purge",
              Map.of(
                  27, "a share of something else might be above the whole",
                  34, "the package stands beside it",
                  38, "what is piled is said elsewhere",
                  43, "orders stand beside it",
                  47, "a price might be below 0")),
          Map.entry(
              "round",
              Map.of(
                  14, "which measures go together is said by several keys",
                  17, "which measures go together is said by several keys",
                  51, "compares two counts")),
          Map.entry(
              "season",
              Map.of(
                  31, "compares two quantities",
                  32, "compares the dates of two campaigns",
                  35, "the shifts of the days before it are said elsewhere")),
          Map.entry(
              "planned",
              Map.of(
                  23,
                  "may vary elsewhere",
                  24,
                  "may be 0 with `every`",
                  28,
                  "compares two dates with a time")),
          Map.entry(
              "stops",
              Map.of(
                  20, "names a line or a crop",
                  23, "the lines of a crop are said elsewhere",
                  28, "the machines of a line are said elsewhere",
                  30, "names a resource")),
          Map.entry(
              "tariff",
              Map.of(
                  41, "24:00 is a clock time, at which only an end may be",
                  53, "a share of something else might be above the whole")),
          Map.entry(
              "weather",
              Map.of(
                  48, "a share of something else might be above the whole",
                  49, "compares two shares")),
          Map.entry(
              "doubt",
              Map.of(
                  123, "a share of something else might be 0",
                  124, "compares with the paths of the file",
                  126, "compares with the other doubts",
                  127, "compares with what the file says there",
                  129, "a share of something else might be above the whole")),
          Map.entry(
              "titles",
              Map.of(
                  8, "compares with the names of the other shifts",
                  26, "compares with the titles of the other machines",
                  31, "compares with the names of the machine's other stops",
                  41, "compares with the names of the mill's other screens",
                  44, "compares with the names of the other machines",
                  89, "compares with the titles of the other tasks",
                  91, "compares with the title of a task of another changeover",
                  122, "compares with the title in the plant as it stands",
                  124, "compares with the names of the other options")),
          Map.entry(
              "tasks",
              Map.of(
                  35, "compares with the changeover's hands",
                  37, "names a task",
                  42, "follows the tasks round a circle")));

  @ParameterizedTest
  @EnumSource(MapKeys.class)
  void everyMapHasTheKeysOfTheReader(MapKeys shape) {
    JsonNode map = TREE.at("/$defs/" + shape.name().toLowerCase(Locale.ROOT));
    assertThat(map.get("properties").propertyNames())
        .containsExactlyInAnyOrderElementsOf(shape.keys());
    assertThat(map.get("additionalProperties").booleanValue()).isFalse();
    Set<String> required = new HashSet<>();
    map.path("required").forEach(key -> required.add(key.stringValue()));
    // A bin's step has one way out, so the schema asks for it; the reader counts the three ways.
    assertThat(required)
        .containsExactlyInAnyOrderElementsOf(
            shape == MapKeys.BIN_STEP ? List.of("to") : shape.required());
  }

  @Test
  void itAllowsEveryFileThatIsRight() throws IOException {
    List<Path> right;
    try (Stream<Path> files = Files.walk(WRONG.getParent())) {
      right =
          files
              .filter(
                  file ->
                      file.toString().endsWith(".yaml") && !file.toString().contains("/target/"))
              .filter(file -> !file.toString().contains("/records/"))
              .filter(file -> !file.startsWith(WRONG) || file.endsWith("base_valid.yaml"))
              .toList();
    }
    assertThat(right).hasSizeGreaterThan(70);
    for (Path file : right) {
      assertThat(faults(Files.readString(file))).as("%s", file).isEmpty();
    }
    assertThat(faults(Edited.plantFile().text())).isEmpty();
  }

  static List<String> wrong() throws IOException {
    try (Stream<Path> files = Files.list(WRONG)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".yaml") && !name.equals("base_valid.yaml"))
          .map(name -> name.substring(0, name.length() - ".yaml".length()))
          .sorted()
          .toList();
    }
  }

  /** So a new mistake must be seen by the schema or be named here with what it takes to see it. */
  @ParameterizedTest
  @MethodSource("wrong")
  void itSeesEveryMistakeThatOneValueShows(String name) throws IOException {
    Tree tree = TreeReader.read(PlantFiles.text("wrong/" + name + ".yaml"), new Findings());
    Set<Integer> unseen = new TreeSet<>(mistakes(name));
    assertThat(unseen).isNotEmpty();
    SCHEMA.validate(json(tree)).forEach(fault -> unseen.remove(placeOf(fault, tree).line()));
    assertThat(unseen)
        .as("lines of %s.yaml on which the schema sees nothing", name)
        .isEqualTo(OVER_SEVERAL_KEYS.getOrDefault(name, Map.of()).keySet());
  }

  /** Lines of the plant file whose mistakes the reader tells. */
  private static Set<Integer> mistakes(String name) {
    Set<Integer> lines = new TreeSet<>();
    JsonNode expected =
        new ObjectMapper().readTree(PlantFiles.text("wrong/" + name + ".expect.json"));
    for (JsonNode mistake : expected.get("errors")) {
      if (mistake.path("file").asString(name + ".yaml").endsWith(".yaml")) {
        lines.add(mistake.get("line").intValue());
      }
    }
    return lines;
  }

  /** Of a key that is too much or without what it needs the key, else of the value. */
  private static SourcePosition placeOf(com.networknt.schema.Error fault, Tree tree) {
    NodePath path = fault.getInstanceLocation();
    Tree at = tree;
    SourcePosition key = tree.place();
    for (int depth = 0; depth < path.getNameCount(); depth++) {
      String step = path.getElement(depth).toString();
      if (at instanceof Tree.Items items) {
        at = items.list().get(Integer.parseInt(step));
        key = at.place();
      } else {
        Tree.Entry entry = ((Tree.Entries) at).map().get(step);
        at = entry.value();
        key = entry.keyPlace();
      }
    }
    if ("additionalProperties".equals(fault.getKeyword())) {
      return ((Tree.Entries) at).map().get(fault.getProperty()).keyPlace();
    }
    return "required".equals(fault.getKeyword()) ? key : at.place();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "power: 45 kW=power: 45",
        "power: 45 kW=power: 45 kg",
        "feed_table: 6 bales=table: 6",
        "bag_hand: {count: 2}=bag_hand: {count: 2 bales}",
        "kind: hammer-mill=kind: hamer-mill",
        "counted: running=counted: runing",
        "exponent: 0.75=exponent: 75 %",
        "life: 12 yr=life: 0 yr",
        "life: 12 yr=life: -1 yr",
        "boxes: 2=boxes: 2, spouts: 2",
        "currency: USD=currency: usd",
        "closed: [2027-05-31, 2027-07-05]=closed: [31.5.2027]",
        "packs: from-mill=packs: from-mill, to: waste",
        "holds: 60 m3,=holds: 60 m3, power: 3 kW,",
        "{exponential: {mean: 32 min}}={exponental: {mean: 32 min}}"
      })
  void itSeesWhatIsWrongInOnePlace(String edit) {
    String[] parts = edit.split("=", 2);
    assertThat(faults(Edited.with(parts[0], parts[1]).text())).isNotEmpty();
  }

  private static List<com.networknt.schema.Error> faults(String yaml) {
    return SCHEMA.validate(json(TreeReader.read(yaml, new Findings())));
  }

  private static JsonNode json(Tree tree) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    if (tree instanceof Tree.Entries entries) {
      ObjectNode node = make.objectNode();
      entries.map().forEach((key, entry) -> node.set(key, json(entry.value())));
      return node;
    }
    if (tree instanceof Tree.Items items) {
      ArrayNode node = make.arrayNode();
      items.list().forEach(item -> node.add(json(item)));
      return node;
    }
    Tree.Scalar scalar = (Tree.Scalar) tree;
    if (scalar.isNull()) {
      return make.nullNode();
    }
    if (scalar.plain() && scalar.text().matches("[+-]?[0-9]+")) {
      return make.numberNode(Long.parseLong(scalar.text()));
    }
    boolean number = scalar.plain() && scalar.text().matches("[+-]?[0-9]*\\.?[0-9]+");
    return number
        ? make.numberNode(Double.parseDouble(scalar.text()))
        : make.stringNode(scalar.text());
  }
}
