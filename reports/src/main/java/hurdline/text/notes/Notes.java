package hurdline.text.notes;

import hurdline.answer.Fact;
import hurdline.answer.Header;
import hurdline.answer.RunFact;
import hurdline.text.Wording;
import java.util.List;

/** Facts in whole sentences, in the reader's units and marks. */
public final class Notes {
  private final Sentences sentences = new Sentences();

  public Notes(Header header, Wording wording) {
    new RunNotes(header, wording).addTo(sentences);
    new CompareNotes(wording).addTo(sentences);
    new FollowUpNotes(wording).addTo(sentences);
    SeasonNotes.addTo(sentences);
    new YardNotes(wording).addTo(sentences);
    new GridNotes(wording).addTo(sentences);
    new ChooseNotes(wording).addTo(sentences);
    new SafetyNotes(wording).addTo(sentences);
  }

  /** A fact that is told before there is an answer. */
  public static String early(RunFact.AimOutOfReach fact, Wording wording) {
    return RunNotes.outOfReach(fact, wording);
  }

  public List<Note> of(List<? extends Fact> facts) {
    return facts.stream().map(sentences::of).toList();
  }

  /** Whether there is a sentence for a kind. */
  boolean know(Class<? extends Fact> kind) {
    return sentences.know(kind);
  }
}
