package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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

  @ParameterizedTest
  @EnumSource(Shape.class)
  void everyMapHasTheKeysOfTheReader(Shape shape) {
    JsonNode map = TREE.at("/$defs/" + shape.name().toLowerCase(Locale.ROOT));
    assertThat(map.get("properties").propertyNames())
        .containsExactlyInAnyOrderElementsOf(shape.keys());
    assertThat(map.get("additionalProperties").booleanValue()).isFalse();
    Set<String> required = new HashSet<>();
    map.path("required").forEach(key -> required.add(key.stringValue()));
    // A bin's step has one way out, so the schema asks for it; the reader counts the three ways.
    assertThat(required)
        .containsExactlyInAnyOrderElementsOf(
            shape == Shape.BIN_STEP ? List.of("to") : shape.required());
  }

  @Test
  void itAllowsEveryFileThatIsRight() {
    List<String> names =
        new ArrayList<>(
            List.of(PlantFiles.EXAMPLE, "small.yaml", "stalk.yaml", "wrong/base_valid.yaml"));
    PlantFiles.EXACT.forEach(name -> names.add("exact/" + name + ".yaml"));
    for (String name : names) {
      assertThat(faults(PlantFiles.text(name))).as(name).isEmpty();
    }
    assertThat(faults(Edited.plantFile().text())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"misspelt", "flow", "season", "tasks"})
  void itRefusesWrongFiles(String name) {
    assertThat(faults(PlantFiles.text("wrong/" + name + ".yaml"))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "power: 45 kW=power: 45",
        "power: 45 kW=power: 45 kg",
        "table: 6 bales=table: 6",
        "bag_hand: {count: 2}=bag_hand: {count: 2 bales}",
        "kind: hammer-mill=kind: hamer-mill",
        "counted: running=counted: runing",
        "exponent: 0.75=exponent: 75 %",
        "boxes: 2=boxes: 2, spouts: 2",
        "currency: USD=currency: usd",
        "closed: [2027-05-31, 2027-07-05]=closed: [31.5.2027]",
        "packs: from mill=packs: from mill, to: waste",
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
