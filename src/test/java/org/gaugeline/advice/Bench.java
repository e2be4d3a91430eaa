package org.gaugeline.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.gaugeline.assembly.Candidate;
import org.gaugeline.assembly.Candidates;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Reason;
import org.gaugeline.job.Job;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.CatalogueTables;
import org.gaugeline.tables.ReferenceTables;

/** The advisor under test, built once, and ways to look into its answers. */
public final class Bench {
  public static final ReferenceData DATA = ReferenceTables.load();
  public static final HolderCatalogue CATALOGUE = CatalogueTables.load(DATA, null);
  public static final Advisor ADVISOR = new Advisor(DATA, CATALOGUE);

  private Bench() {}

  public static Recommendation ask(Intents intents) {
    return ADVISOR.recommend(intents.intent());
  }

  /** Everything that is shown, best and losing. */
  public static List<RankedAssembly> told(Recommendation answer) {
    return Stream.concat(answer.assemblies().stream(), answer.flagged().stream()).toList();
  }

  public static Recommendation.FamilyVerdict verdict(Recommendation answer, String family) {
    return answer.families().stream()
        .filter(verdict -> verdict.family().id().equals(family))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no verdict on " + family));
  }

  /** The best assembly of a family, shown or flagged. */
  public static RankedAssembly best(Recommendation answer, String family) {
    String id = verdict(answer, family).bestAssembly();
    return told(answer).stream()
        .filter(assembly -> assembly.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(family + " has no assembly"));
  }

  /** What is said of one holder alone. */
  public static RankedAssembly weigh(Intents intents, HolderBody holder) {
    return best(ask(intents.onlyHolder(holder.ref())), holder.family().id());
  }

  /** The standard holder of a family with a bore, of the projection nearest to the asked one. */
  public static HolderBody holder(
      String spindle, String family, double boreMm, double projectionMm, boolean faceContact) {
    return CATALOGUE.byRef().values().stream()
        .filter(holder -> holder.spindleInterface().id().equals(spindle))
        .filter(holder -> holder.family().id().equals(family))
        .filter(holder -> holder.takes(boreMm / 1e3))
        .filter(
            holder ->
                holder.faceContact() == faceContact
                    || holder.spindleInterface().nativeContact() != ContactMode.TAPER_ONLY)
        .min(
            Comparator.comparingDouble(
                    (HolderBody holder) -> Math.abs(holder.projectionM() - projectionMm / 1e3))
                .thenComparing(HolderBody::ref))
        .orElseThrow(() -> new AssertionError("no " + family + " of " + boreMm + " mm"));
  }

  /** Every damped stack that may be weighed for a job. */
  public static List<HolderBody> dampedBodies(Job job) {
    Candidates.Composed composed = new Candidates(DATA, CATALOGUE).compose(job);
    return Stream.concat(composed.byFamily().values().stream(), composed.deeper().values().stream())
        .flatMap(List::stream)
        .map(Candidate::holder)
        .filter(holder -> holder.damper() != null)
        .toList();
  }

  /** What is said of one pair; empty where it does not apply. */
  public static Optional<Reason> margin(RankedAssembly assembly, Pair pair) {
    return assembly.reasons().stream()
        .filter(reason -> reason.code().equals(pair.id() + "-margin"))
        .findFirst();
  }

  public static boolean warns(RankedAssembly assembly, String code) {
    return assembly.cautions().stream().anyMatch(caution -> caution.code().equals(code));
  }
}
