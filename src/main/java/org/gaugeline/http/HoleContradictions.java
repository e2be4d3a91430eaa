package org.gaugeline.http;

import java.util.List;
import java.util.Map;
import org.gaugeline.http.wire.WireIntent;

/** Members of a bore or a thread that cannot be true together. */
final class HoleContradictions {
  /** Lengths that were rounded to six digits on their way are still the same. */
  private static final double SAME_LENGTH = 1e-4;

  private HoleContradictions() {}

  static void find(WireIntent.Operation operation, WireIntent.Tool tool, List<Fault> faults) {
    bore(operation, tool, faults);
    thread(operation, tool, faults);
  }

  private static void bore(WireIntent.Operation o, WireIntent.Tool t, List<Fault> faults) {
    Double depth = o.radialDepthMm();
    Double hollow = o.preDrilledDiameterMm();
    Double diameter = t.diameterMm();
    if (!"boring".equals(o.kind()) || diameter == null) {
      return;
    }
    if (hollow != null && hollow == 0) {
      Contradictions.add(
          faults,
          "/operation/preDrilledDiameterMm",
          hollow,
          "/tool/diameterMm",
          diameter,
          "leaves nothing to widen to",
          "Boring widens a hole that is there. Maybe drilling was meant.");
    }
    if (depth == null) {
      return;
    }
    if (2 * depth >= diameter) {
      Contradictions.add(
          faults,
          "/operation/radialDepthMm",
          depth,
          "/tool/diameterMm",
          diameter,
          "is not less than half of",
          "Boring widens a hole that is there.");
    } else if (hollow != null && differ(hollow, diameter - 2 * depth)) {
      Contradictions.add(
          faults,
          "/operation/radialDepthMm",
          depth,
          "/operation/preDrilledDiameterMm",
          hollow,
          "is not half of diameterMm less",
          "Both say how deep the edge cuts. Give one of the two.");
    }
  }

  /** A tap feeds its pitch a turn, and nothing but a tap taps. */
  private static void thread(WireIntent.Operation o, WireIntent.Tool t, List<Fault> faults) {
    boolean tapping = "tapping".equals(o.kind());
    if (o.kind() != null && t.kind() != null && tapping != "tap".equals(t.kind())) {
      Contradictions.addFault(
          faults,
          "/operation/kind",
          o.kind(),
          "/tool/kind",
          t.kind(),
          "A tap is for tapping and tapping is for a tap; kind is "
              + o.kind()
              + " with a "
              + t.kind()
              + ". Threads by other tools are thread-milling.");
    }
    Double pitch = t.pitchMm();
    Double diameter = t.diameterMm();
    if (pitch != null && diameter != null && pitch >= diameter) {
      Contradictions.add(
          faults,
          "/tool/pitchMm",
          pitch,
          "/tool/diameterMm",
          diameter,
          "is not smaller than",
          "Maybe threads per inch were given as the pitch.");
    }
    if (tapping) {
      feedOfTap(o, t, faults);
    }
  }

  private static void feedOfTap(WireIntent.Operation o, WireIntent.Tool t, List<Fault> faults) {
    Double pitch = t.pitchMm();
    Double turn = o.feedPerRevMm();
    Double tooth = o.feedPerToothMm();
    Integer teeth = t.teeth();
    if (turn != null && pitch != null && differ(turn, pitch)) {
      Contradictions.add(
          faults,
          "/operation/feedPerRevMm",
          turn,
          "/tool/pitchMm",
          pitch,
          "is not",
          "A tap feeds its pitch a turn; a compensation is set in the program, not here.");
    }
    Double diameter = t.diameterMm();
    if (turn != null && pitch == null && diameter != null && turn >= diameter) {
      Contradictions.add(
          faults,
          "/operation/feedPerRevMm",
          turn,
          "/tool/diameterMm",
          diameter,
          "is not smaller than",
          "A tap feeds its pitch a turn.");
    }
    if (tooth != null && (pitch == null || teeth == null || differ(tooth * teeth, pitch))) {
      faults.add(
          new Fault(
              "/operation/feedPerToothMm",
              "contradiction",
              "feedPerToothMm ("
                  + SchemaFaults.plain(tooth)
                  + ") does not make the pitch of a tap. Give pitchMm or feedPerRevMm instead.",
              Map.of("actual", tooth)));
    }
  }

  private static boolean differ(double one, double other) {
    return Math.abs(one - other) > SAME_LENGTH * Math.abs(other);
  }
}
