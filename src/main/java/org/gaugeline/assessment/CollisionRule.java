package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.reach.Gap;
import org.gaugeline.mechanics.reach.WallReach;

/** Which part of the stack meets a wall, step or floor, and by how much. */
record CollisionRule() implements Rule {
  private static final List<String> CODES =
      List.of("nose-collides", "body-collides", "flange-collides", "host-collides");

  @Override
  public List<String> codes() {
    return CODES;
  }

  @Override
  public Criterion criterion() {
    return Criterion.REACH;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.ERROR);
  }

  @Override
  public List<String> sources() {
    return List.of("plane-geometry");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    double stickOut = on.appraisal().assembly().stickOutM();
    Gap gap =
        WallReach.smallest(on.appraisal().body().fromNose(), stickOut, on.context().obstacles);
    if (gap.gapM() < 0) {
      found.accept(
          Inspection.finding(
              part(on.holder(), gap.zM() - stickOut),
              Severity.ERROR,
              Criterion.REACH,
              on.job().feature().wallClearanceM(),
              gap.gapM(),
              Measure.LENGTH,
              "plane-geometry",
              "/assembly/stickOutMm"));
    }
  }

  /** The part at a distance behind the front face. */
  private static String part(HolderBody holder, double behindNoseM) {
    double fromGauge = holder.projectionM() - behindNoseM;
    for (Seam seam : holder.seams()) {
      if (fromGauge < seam.atM() - 1e-9) {
        return "host-collides";
      }
    }
    List<ProfileSection> sections = holder.sections();
    if (fromGauge <= sections.get(0).lengthM() + 1e-9 && sections.size() > 1) {
      return "flange-collides";
    }
    double nose = sections.get(sections.size() - 1).lengthM();
    return behindNoseM <= nose + 1e-9 ? "nose-collides" : "body-collides";
  }
}
