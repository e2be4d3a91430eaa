package org.gaugeline.advice;

import org.gaugeline.assembly.Candidate;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.job.Job;

/** What an assembly costs: its price, and the edges that it wears at its runout. */
final class Economist {
  private Economist() {}

  /**
   * Cost per part = t/(T·f)·(edge price + change time·rate) + price/(parts a year·years), with t
   * the cutting time, T the edge's life without runout and f the share of it that the runout
   * leaves.
   */
  static Economics economics(JobContext context, Candidate candidate, Appraisal appraisal) {
    Job job = context.job();
    HolderBody holder = candidate.holder();
    double price =
        holder.price() + (holder.colletSize() == null ? 0 : context.practice("colletPrice"));
    double life = job.tool().lifeMinutes() * context.toolLifeFactor(appraisal);
    double change = context.practice("toolChangeS") / 3600 * job.shop().hourlyRate();
    double edge = job.operation().minutesPerPart() / life * (job.tool().price() + change);
    double years = context.practice("holderLifeYears");
    boolean owned = candidate.owned() > 0;
    double spread =
        owned || Double.isNaN(price) ? 0 : price / (job.operation().partsPerYear() * years);
    return new Economics(price, owned, edge, spread, edge + spread);
  }
}
