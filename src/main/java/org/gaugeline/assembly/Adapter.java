package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.reference.SpindleInterface;
import org.jspecify.annotations.Nullable;

/**
 * A body between spindle and a modular coupling, so that one cutting head serves several spindles;
 * with a tuned mass inside it is a damped body.
 *
 * @param ref catalogue id
 * @param spindleInterface its spindle end
 * @param coupling the interface that it offers
 * @param faceContact whether its flange touches the spindle face
 * @param projectionM gauge plane to the face of the coupling
 * @param sections profile from the gauge plane outward
 * @param damper tuned mass inside; null for a plain adapter
 * @param price guide price
 * @param sourceKey source of the description
 * @param data what is told of it beyond that
 */
public record Adapter(
    String ref,
    SpindleInterface spindleInterface,
    SpindleInterface coupling,
    boolean faceContact,
    double projectionM,
    List<ProfileSection> sections,
    @Nullable Damper damper,
    double price,
    String sourceKey,
    PartData data) {
  /**
   * A generic body: flange, then the coupling's diameter; a damped one is hollow over its front
   * half.
   */
  public static List<ProfileSection> generic(
      SpindleInterface end,
      SpindleInterface coupling,
      double projectionM,
      double boreM,
      double channelM,
      boolean damped) {
    double flange = Math.min(end.flangeFrontM(), projectionM / 2);
    double front = coupling.flangeDiameterM();
    double solid = damped ? projectionM / 2 : flange;
    List<ProfileSection> sections = new ArrayList<>(3);
    sections.add(
        new ProfileSection(flange, end.flangeDiameterM(), end.flangeDiameterM(), channelM));
    if (solid > flange) {
      sections.add(new ProfileSection(solid - flange, front, front, channelM));
    }
    sections.add(new ProfileSection(projectionM - solid, front, front, boreM));
    return List.copyOf(sections);
  }

  /** Whether it carries a tuned mass. */
  public boolean isDamped() {
    return damper != null;
  }
}
