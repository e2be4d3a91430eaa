package org.gaugeline.formats;

import org.gaugeline.assessment.Finding;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.TextBytes;
import org.gaugeline.toollist.ListFinding;
import org.gaugeline.wording.Words;

/** What the words say of findings, as strings. For one thread. */
final class FindingTexts {
  private static final int USUAL_BYTES = 256;

  private final Words words;
  private final TextBytes text = new TextBytes(USUAL_BYTES);

  FindingTexts(Words words) {
    this.words = words;
  }

  String of(Finding finding, Job job) {
    text.clear();
    words.finding(text, finding, job);
    return text.toString();
  }

  String of(ListFinding finding) {
    text.clear();
    words.listFinding(text, finding);
    return text.toString();
  }
}
