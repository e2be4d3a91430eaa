package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Known;
import org.gaugeline.assembly.Seam;
import org.gaugeline.job.Job;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;

/**
 * Lowest rated speed of an assembly and what sets it. The bending frequency joins only if it is
 * below the others, so that it need not be solved where a lower bound already clears it.
 *
 * @param medianRadPerS lowest of the medians
 * @param safeRadPerS lowest at the asked confidence
 * @param governedBy code of what sets {@code safeRadPerS}
 * @param basis source key of it
 */
record SpeedLimits(double medianRadPerS, double safeRadPerS, String governedBy, String basis) {

  static SpeedLimits of(JobContext context, Body body, Assembly assembly) {
    Collector lowest = collect(context, body, assembly);
    return new SpeedLimits(lowest.median, lowest.safe, lowest.governedBy, lowest.basis);
  }

  /** Every rated speed of an assembly, in the order of the parts. */
  static List<Rated> all(JobContext context, Body body, Assembly assembly) {
    return List.copyOf(collect(context, body, assembly).rated);
  }

  /**
   * One rated speed.
   *
   * @param safeRadPerS at the asked confidence
   */
  record Rated(String code, double medianRadPerS, double safeRadPerS, String basis) {}

  private static Collector collect(JobContext context, Body body, Assembly assembly) {
    Job job = context.job;
    HolderBody holder = body.holder();
    Collector lowest = new Collector(context.standardScore);
    lowest.exact(job.machine().maxSpindleSpeedRadPerS(), "machine-speed", "given");
    if (!job.machine().speedGiven()) {
      SpindleInterface spindle = holder.spindleInterface();
      boolean face = holder.faceContact() && job.machine().faceContact();
      lowest.spread(
          face ? spindle.faceRatedSpeedRadPerS() : spindle.nativeRatedSpeedRadPerS(),
          "interface-speed",
          spindle.limitsSourceKey());
    }
    holder(context, holder, lowest);
    for (Seam seam : holder.seams()) {
      if (seam instanceof Seam.Clamped clamped) {
        holder(context, clamped.host(), lowest);
      } else if (seam instanceof Seam.Coupled coupled) {
        SpindleInterface coupling = coupled.coupling();
        if (Double.isNaN(coupled.maxSpeedRadPerS())) {
          lowest.spread(
              coupling.nativeRatedSpeedRadPerS(), "coupling-speed", coupling.limitsSourceKey());
        } else {
          lowest.exact(coupled.maxSpeedRadPerS(), "marked-speed", "given");
        }
      } else if (seam instanceof Seam.Sleeved sleeved && !Double.isNaN(sleeved.maxSpeedRadPerS())) {
        lowest.exact(sleeved.maxSpeedRadPerS(), "marked-speed", "given");
      }
    }
    lowest.exact(job.tool().maxSpindleSpeedRadPerS(), "cutter-speed", "given");
    bending(context, body, assembly, lowest);
    return lowest;
  }

  /** What is marked on a holder, else the usual ceiling of its family and collet. */
  private static void holder(JobContext context, HolderBody holder, Collector lowest) {
    Known.GivenCollet given = holder.known().collet();
    boolean colletMarked = given != null && !Double.isNaN(given.maxSpeedRadPerS());
    if (given != null && colletMarked) {
      lowest.exact(given.maxSpeedRadPerS(), "marked-speed", "given");
    }
    double marked = holder.ratings().maxSpeedRadPerS();
    if (!Double.isNaN(marked)) {
      lowest.exact(marked, "marked-speed", "given");
      return;
    }
    lowest.spread(
        holder.family().speedCeilingRadPerS().scaled(boreScale(context, holder)),
        "holder-speed",
        holder.family().sourceKey());
    ColletSize collet = holder.colletSize();
    if (collet != null && !colletMarked) {
      lowest.spread(collet.maxSpeedRadPerS(), "collet-speed", collet.sourceKey());
    }
  }

  private static void bending(JobContext context, Body body, Assembly assembly, Collector lowest) {
    double share = context.models.values().firstModeShare;
    double found = assembly.measured().firstFrequencyRadPerS();
    if (!Double.isNaN(found)) {
      lowest.exact(share * found, "bending-frequency", "measured");
      return;
    }
    double harmless = Math.max(lowest.median, lowest.safe) / share;
    double first = Stack.firstFrequencyUpToRadPerS(context, body, assembly.stickOutM(), harmless);
    if (first < harmless) {
      lowest.exact(share * first, "bending-frequency", "beam-theory");
    }
  }

  /** The usual ceiling of the family at this bore: falls with the square root above 12 mm. */
  static double familyCeilingRadPerS(JobContext context, HolderBody holder) {
    return holder.family().speedCeilingRadPerS().median() * boreScale(context, holder);
  }

  private static double boreScale(JobContext context, HolderBody holder) {
    double reference = context.models.values().boreSpeedReferenceM;
    return Math.sqrt(reference / Math.max(reference, holder.boreM()));
  }

  private static final class Collector {
    private final double standardScore;
    private double median = Double.POSITIVE_INFINITY;
    private double safe = Double.POSITIVE_INFINITY;
    private String governedBy = "";
    private String basis = "";
    private final List<Rated> rated = new ArrayList<>(6);

    Collector(double standardScore) {
      this.standardScore = standardScore;
    }

    void spread(Spread limit, String code, String source) {
      Quantiles quantiles = Models.quantiles(limit);
      take(quantiles.median(), quantiles.atStandardScore(-standardScore), code, source);
    }

    void exact(double limit, String code, String source) {
      take(limit, limit, code, source);
    }

    private void take(double middle, double low, String code, String source) {
      rated.add(new Rated(code, middle, low, source));
      median = Math.min(median, middle);
      if (low < safe) {
        safe = low;
        governedBy = code;
        basis = source;
      }
    }
  }
}
