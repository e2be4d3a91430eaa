package org.gaugeline.wording;

import java.util.Map;
import org.gaugeline.advice.Recommendation.Change;
import org.gaugeline.advice.Recommendation.RuledOut;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.TextBytes;
import org.gaugeline.toollist.ListFinding;
import org.jspecify.annotations.Nullable;

/** Words from the one template file. A code that it lacks is said as it is. */
public final class TemplateWords implements Words {
  private static final String COMPONENTS = "/assembly/components/";

  private final Templates.Sentences sentences;

  private TemplateWords(Templates.Sentences sentences) {
    this.sentences = sentences;
  }

  /**
   * Reads the templates.
   *
   * @throws IllegalArgumentException where the file and {@link Codes} do not match
   */
  public static TemplateWords load() {
    return new TemplateWords(Templates.load());
  }

  @Override
  public void reason(TextBytes out, Reason reason, Job job) {
    Map<Variant, Sentence> variants = sentences.reasons().get(reason.code());
    Sentence sentence = variants == null ? null : variants.get(Variant.of(reason));
    say(out, sentence, reason.code(), NumberFilling.of(reason, job));
  }

  @Override
  public void caution(TextBytes out, Caution caution, Job job) {
    say(
        out,
        sentences.cautions().get(caution.code()),
        caution.code(),
        NumberFilling.of(caution, job));
  }

  @Override
  public void setUp(TextBytes out, SetUpStep step, Job job) {
    say(out, sentences.steps().get(step.code()), step.code(), NumberFilling.of(step, job));
  }

  @Override
  public void assumption(TextBytes out, Assumption assumption, Job job) {
    say(
        out,
        sentences.assumptions().get(assumption.reason()),
        assumption.reason(),
        new MemberFilling(job, member(assumption.pointer()), assumption.value(), null));
  }

  @Override
  public void change(TextBytes out, Change change, Job job) {
    Sentence own = sentences.changes().get(withoutIndex(change.pointer()));
    (own == null ? sentences.change() : own)
        .write(out, new MemberFilling(job, member(change.pointer()), change.to(), change.from()));
  }

  @Override
  public void ruledOut(TextBytes out, RuledOut ruledOut, Job job) {
    reason(out, ruledOut.reason(), job);
  }

  @Override
  public void limit(TextBytes out, Limit limit, Job job) {
    say(
        out,
        sentences.limits().get(limit.governedBy()),
        limit.governedBy(),
        NumberFilling.none(job));
  }

  @Override
  public void finding(TextBytes out, Finding finding, Job job) {
    Sentence own = sentences.findings().get(finding.code());
    if (own == null) {
      reason(out, finding.reason(), job);
    } else {
      own.write(out, NumberFilling.of(finding.reason(), job));
    }
  }

  @Override
  public void listFinding(TextBytes out, ListFinding finding) {
    String code = finding.code().id();
    say(out, sentences.lists().get(code), code, new CountFilling(finding));
  }

  @Override
  public void remedy(TextBytes out, Finding finding) {
    out.append(explained(finding.code()).remedy());
  }

  @Override
  public Explained explained(String code) {
    Explained explained = sentences.explained().get(code);
    if (explained == null) {
      throw new IllegalArgumentException("no rule has the code " + code);
    }
    return explained;
  }

  /** A member's name does not depend on which component it stands in. */
  private Member member(String pointer) {
    Member named = sentences.members().get(withoutIndex(pointer));
    return named == null ? Member.of(pointer) : named;
  }

  private static String withoutIndex(String pointer) {
    if (!pointer.startsWith(COMPONENTS)) {
      return pointer;
    }
    int member = pointer.indexOf('/', COMPONENTS.length());
    return member < 0 ? pointer : COMPONENTS + pointer.substring(member + 1);
  }

  private static void say(
      TextBytes out, @Nullable Sentence sentence, String code, Filling filling) {
    if (sentence == null) {
      out.append(code.replace('-', ' '));
    } else {
      sentence.write(out, filling);
    }
  }
}
