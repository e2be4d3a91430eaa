package org.gaugeline.assembly;

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
    String sourceKey) {

  /** Whether it carries a tuned mass. */
  public boolean isDamped() {
    return damper != null;
  }
}
