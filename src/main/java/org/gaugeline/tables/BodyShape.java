package org.gaugeline.tables;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.ProfileSection;

/**
 * The profile of a generic body: flange, shoulder and nose outside; a narrow channel and the bore
 * for the tool inside.
 *
 * @param flangeDiameterM diameter of the flange
 * @param flangeLengthM gauge plane to the front of the flange
 * @param bodyDiameterM diameter between flange and nose
 * @param noseDiameterM diameter at the front face
 * @param noseHalfAngleRad half-angle of the nose, growing towards the spindle
 * @param noseLengthM length of the nose
 * @param projectionM gauge plane to front face
 * @param channelM diameter of the hole behind the bore
 * @param boreM diameter of the bore for the tool
 * @param boreDepthM depth of that bore from the front face
 */
record BodyShape(
    double flangeDiameterM,
    double flangeLengthM,
    double bodyDiameterM,
    double noseDiameterM,
    double noseHalfAngleRad,
    double noseLengthM,
    double projectionM,
    double channelM,
    double boreM,
    double boreDepthM) {
  private static final double SHORTEST_M = 1e-6;

  /** Sections from the gauge plane outward. */
  List<ProfileSection> sections() {
    double nose = Math.min(noseLengthM, projectionM - flangeLengthM);
    double noseStart = projectionM - nose;
    double root = noseDiameterM + 2 * nose * Math.tan(noseHalfAngleRad);
    double body = Math.max(bodyDiameterM, root);
    List<ProfileSection> sections = new ArrayList<>(6);
    addFrustum(sections, 0, flangeLengthM, flangeDiameterM, flangeDiameterM);
    addFrustum(sections, flangeLengthM, noseStart, body, body);
    addFrustum(sections, noseStart, projectionM, root, noseDiameterM);
    return List.copyOf(sections);
  }

  /** One outer frustum, cut in two where the bore ends inside it. */
  private void addFrustum(
      List<ProfileSection> sections, double from, double to, double start, double end) {
    double boreEnd = projectionM - boreDepthM;
    if (boreEnd <= from + SHORTEST_M) {
      add(sections, to - from, start, end, boreM);
    } else if (boreEnd >= to - SHORTEST_M) {
      add(sections, to - from, start, end, channelM);
    } else {
      double middle = start + (end - start) * (boreEnd - from) / (to - from);
      add(sections, boreEnd - from, start, middle, channelM);
      add(sections, to - boreEnd, middle, end, boreM);
    }
  }

  private static void add(
      List<ProfileSection> sections, double length, double start, double end, double bore) {
    if (length <= SHORTEST_M) {
      return;
    }
    int last = sections.size() - 1;
    ProfileSection before = last < 0 ? null : sections.get(last);
    if (before != null && continues(before, start, end, bore)) {
      sections.set(last, new ProfileSection(before.lengthM() + length, start, end, bore));
    } else {
      sections.add(new ProfileSection(length, start, end, bore));
    }
  }

  /** Whether a cylinder goes on with the same diameter and bore. */
  private static boolean continues(ProfileSection before, double start, double end, double bore) {
    return start == end
        && before.startDiameterM() == start
        && before.endDiameterM() == start
        && before.boreM() == bore;
  }
}
