package org.gaugeline.mechanics.cutting;

/**
 * What a parallel offset of the cutter does to the chips of its teeth, and so to the peak force
 * (model of Kline and DeVor, <em>Int. J. Mach. Tool Des. Res.</em> 1983). Tilt is not included.
 */
public final class RunoutLoad {
  private RunoutLoad() {}

  /**
   * Largest extra feed per tooth between neighbours, 2e·sin(π/z) = TIR·sin(π/z).
   *
   * @param tirM total indicator reading at the tip, m, &ge; 0
   * @param teeth z, &ge; 1; a single tooth has no neighbour and gains nothing
   * @return extra chip load, m
   */
  public static double extraChipLoadM(double tirM, int teeth) {
    Require.notNegative("tirM", tirM);
    return Require.atLeastOne("teeth", teeth) == 1 ? 0 : tirM * Math.sin(Math.PI / teeth);
  }

  /**
   * Factor on the peak force, (1 + TIR·sin(π/z)/fz)^(1−mc).
   *
   * @param tirM total indicator reading at the tip, m, &ge; 0
   * @param teeth z, &ge; 1
   * @param feedPerToothM fz, m, &gt; 0
   * @param mc Kienzle exponent, 0 to below 1
   * @return factor, &ge; 1
   */
  public static double peakForceFactor(double tirM, int teeth, double feedPerToothM, double mc) {
    Require.positive("feedPerToothM", feedPerToothM);
    Require.between("mc", mc, 0, 0.99);
    return Math.pow(1 + extraChipLoadM(tirM, teeth) / feedPerToothM, 1 - mc);
  }

  /**
   * Whether the tooth that runs low no longer reaches the chip.
   *
   * @param tirM total indicator reading at the tip, m, &ge; 0
   * @param teeth z, &ge; 1
   * @param feedPerToothM fz, m, &gt; 0
   * @return true if the extra chip load exceeds the feed per tooth
   */
  public static boolean toothStopsCutting(double tirM, int teeth, double feedPerToothM) {
    return extraChipLoadM(tirM, teeth) > Require.positive("feedPerToothM", feedPerToothM);
  }
}
