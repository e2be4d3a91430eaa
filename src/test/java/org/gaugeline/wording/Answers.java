package org.gaugeline.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.gaugeline.advice.Advisor;
import org.gaugeline.advice.RankedAssembly;
import org.gaugeline.advice.Recommendation;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Reason;
import org.gaugeline.job.Intent;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.CatalogueTables;
import org.gaugeline.tables.ReferenceTables;
import org.jspecify.annotations.Nullable;

/** Answers of the engine to seeded intents. */
final class Answers {
  static final ReferenceData DATA = ReferenceTables.load();
  static final Advisor ADVISOR = new Advisor(DATA, CatalogueTables.load(DATA, null));

  private Answers() {}

  /** Every intent that can be computed, with its answer. */
  static int forEach(long seed, int rounds, BiConsumer<Intent, Recommendation> told) {
    SeededIntents intents = new SeededIntents(seed, DATA);
    int answered = 0;
    for (int round = 0; round < rounds; round++) {
      Intent intent = intents.next();
      Recommendation answer = answer(intent);
      if (answer != null) {
        answered++;
        told.accept(intent, answer);
      }
    }
    return answered;
  }

  /** Null where the seeded intent says too little of a holder. */
  static @Nullable Recommendation answer(Intent intent) {
    try {
      return ADVISOR.recommend(intent);
    } catch (IntentFaultException refused) {
      return null;
    }
  }

  static List<RankedAssembly> assemblies(Recommendation answer) {
    List<RankedAssembly> all = new ArrayList<>(answer.assemblies());
    all.addAll(answer.flagged());
    return all;
  }

  static List<Reason> reasons(Recommendation answer) {
    List<Reason> all = new ArrayList<>();
    answer.families().forEach(family -> all.addAll(family.reasons()));
    answer.ruledOut().forEach(out -> all.add(out.reason()));
    assemblies(answer).forEach(assembly -> all.addAll(assembly.reasons()));
    return all;
  }

  static List<Caution> cautions(Recommendation answer) {
    List<Caution> all = new ArrayList<>(answer.cautions());
    assemblies(answer).forEach(assembly -> all.addAll(assembly.cautions()));
    return all;
  }

  static List<Limit> limits(RankedAssembly assembly) {
    Limits l = assembly.limits();
    return List.of(
        l.spindleSpeedRadPerS(),
        l.torqueNm(),
        l.axialForceN(),
        l.axialDepthM(),
        l.feedPerToothM(),
        l.stickOutM(),
        l.featureDepthM());
  }

  /** Everything that is said of an answer. */
  static List<String> texts(Spoken words, Recommendation answer) {
    var job = answer.job();
    List<String> texts = new ArrayList<>();
    job.assumptions().forEach(a -> texts.add(words.assumption(a, job)));
    reasons(answer).forEach(r -> texts.add(words.reason(r, job)));
    cautions(answer).forEach(c -> texts.add(words.caution(c, job)));
    for (RankedAssembly assembly : assemblies(answer)) {
      assembly.setUp().forEach(step -> texts.add(words.setUp(step, job)));
    }
    answer
        .ruledOut()
        .forEach(out -> out.wouldFitIf().forEach(c -> texts.add(words.change(c, job))));
    return texts;
  }
}
