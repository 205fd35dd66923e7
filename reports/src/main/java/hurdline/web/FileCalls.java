package hurdline.web;

import hurdline.service.Template;
import hurdline.web.http.Ask;
import hurdline.web.http.Call;
import hurdline.web.http.Refusal;
import hurdline.web.http.Reply;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What the page asks about the files of the folder. */
final class FileCalls {
  private final PlantFolder folder;
  private final String first;

  /**
   * @param first the plant to show first; empty for any
   */
  FileCalls(PlantFolder folder, String first) {
    this.folder = folder;
    this.first = first;
  }

  private record Start(String name, String label, String description) {}

  private record Files(String folder, List<String> plants, String first, List<Start> templates) {}

  Map<String, Call> all() {
    return Map.of(
        "GET files", this::files,
        "POST read", ask -> Reply.json(folder.read(ask.text("name"))),
        "PUT plant", this::save,
        "POST create", this::create);
  }

  private Reply files(Ask ask) throws IOException {
    List<Start> templates =
        Stream.of(Template.values())
            .map(t -> new Start(t.name(), t.file().replace(".yaml", ""), t.description()))
            .toList();
    return Reply.json(
        new Files(folder.path().getFileName() + "", folder.plants(), first, templates));
  }

  private Reply save(Ask ask) throws IOException {
    return Reply.json(folder.save(ask.text("name"), ask.text("text"), ask.text("version")));
  }

  /** From a template, or a text under another name. */
  private Reply create(Ask ask) throws IOException {
    String text = ask.has("template") ? template(ask.text("template")).text() : ask.text("text");
    return Reply.json(Map.of("name", folder.create(ask.text("name"), text)));
  }

  private static Template template(String name) {
    return Stream.of(Template.values())
        .filter(template -> template.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new Refusal(400, "There is no template of that name."));
  }
}
