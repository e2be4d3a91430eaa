package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/** Torque and chip of a tap in a 60° thread. */
public final class Tapping {
  /** Height of the ISO metric internal thread over its pitch, 5/8 of √3/2 (ISO 68-1). */
  private static final double THREAD_HEIGHT_PER_PITCH = 5.0 / 8 * Math.sqrt(3) / 2;

  private Tapping() {}

  /**
   * A tapped thread.
   *
   * @param diameterM nominal thread diameter D, m, &gt; 0
   * @param pitchM pitch P, m, above 0 and below D
   */
  public record TappedThread(double diameterM, double pitchM) {
    public TappedThread {
      Require.positive("pitchM", pitchM);
      Require.positive("diameterM - pitchM", diameterM - pitchM);
    }
  }

  /**
   * All teeth of the chamfer together cut an area of about P²/4 at the radius D/2, so M = kc·P²·D/8
   * (in many shop handbooks; common practice, no published worked case).
   *
   * @param thread the thread
   * @param specificForcePa kc of tapping, thin chips and friction included, Pa, &gt; 0
   * @return torque while cutting forward, N·m
   */
  public static double torqueNm(TappedThread thread, double specificForcePa) {
    Require.positive("specificForcePa", specificForcePa);
    return specificForcePa * chipAreaM2(thread) * thread.diameterM() / 2;
  }

  /** Chip area P²/4 of all teeth together, m². */
  public static double chipAreaM2(TappedThread thread) {
    return thread.pitchM() * thread.pitchM() / 4;
  }

  /**
   * Thickness of the chip of one tooth on the chamfer. The chamfer rises over n pitches by the
   * height H1 of the thread, each of the z lands by its share of that: h = H1/(n·z), with H1 =
   * 0.541·P (ISO 68-1); the small angle of the chamfer is neglected.
   *
   * @param thread the thread
   * @param chamferThreads threads on the chamfer n, &gt; 0
   * @param lands lands z, &ge; 1
   * @return chip thickness, m
   */
  public static double chipThicknessM(TappedThread thread, double chamferThreads, int lands) {
    Require.positive("chamferThreads", chamferThreads);
    Require.atLeastOne("lands", lands);
    return THREAD_HEIGHT_PER_PITCH * thread.pitchM() / (chamferThreads * lands);
  }
}
