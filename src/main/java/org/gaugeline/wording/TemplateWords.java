package org.gaugeline.wording;

import java.util.Map;
import org.gaugeline.advice.Recommendation.Change;
import org.gaugeline.advice.Recommendation.RuledOut;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;

/** Words from the one template file. A code that it lacks is said as it is. */
public final class TemplateWords implements Words {
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
  public String reason(Reason reason, Job job) {
    Map<Variant, Sentence> variants = sentences.reasons().get(reason.code());
    Sentence sentence = variants == null ? null : variants.get(Variant.of(reason));
    return sentence == null ? plain(reason.code()) : sentence.with(NumberFilling.of(reason, job));
  }

  @Override
  public String caution(Caution caution, Job job) {
    return say(sentences.cautions(), caution.code(), NumberFilling.of(caution, job));
  }

  @Override
  public String setUp(SetUpStep step, Job job) {
    return say(sentences.steps(), step.code(), NumberFilling.of(step, job));
  }

  @Override
  public String assumption(Assumption assumption, Job job) {
    return say(
        sentences.assumptions(),
        assumption.reason(),
        new MemberFilling(job, member(assumption.pointer()), assumption.value(), null));
  }

  @Override
  public String change(Change change, Job job) {
    Sentence own = sentences.changes().get(change.pointer());
    return (own == null ? sentences.change() : own)
        .with(new MemberFilling(job, member(change.pointer()), change.to(), change.from()));
  }

  @Override
  public String ruledOut(RuledOut ruledOut, Job job) {
    return reason(ruledOut.reason(), job);
  }

  @Override
  public String limit(Limit limit, Job job) {
    return say(sentences.limits(), limit.governedBy(), NumberFilling.none(job));
  }

  private Member member(String pointer) {
    Member named = sentences.members().get(pointer);
    return named == null ? Member.of(pointer) : named;
  }

  private static String say(Map<String, Sentence> of, String code, Filling filling) {
    Sentence sentence = of.get(code);
    return sentence == null ? plain(code) : sentence.with(filling);
  }

  private static String plain(String code) {
    return code.replace('-', ' ');
  }
}
