package org.gaugeline.advice;

import org.gaugeline.assembly.Candidate;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Seam;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.job.Job;
import org.gaugeline.reference.Coolant;
import org.gaugeline.reference.ShankForm;

/** What an assembly costs: its price, and the edges that it wears at its runout. */
final class Economist {
  private static final double SECONDS_PER_MINUTE = 60;
  private static final double SECONDS_PER_HOUR = 3600;

  private final JobContext context;
  private final double colletPrice;
  private final double lock;
  private final boolean exchangeableHead;
  private final double headChangeS;

  /** Time of a change beside clamping. */
  private final double fetchAndMeasureS;

  private final double holderLifeYears;

  Economist(JobContext context) {
    this.context = context;
    boolean sealed = context.job().operation().coolant() == Coolant.THROUGH_TOOL;
    this.colletPrice =
        context.practice("colletPrice")
            * (sealed ? context.practice("sealedColletPriceFactor") : 1);
    this.lock =
        context.job().tool().shankForm() == ShankForm.FORM_LOCKED
            ? context.practice("formLockPrice")
            : 0;
    this.exchangeableHead = context.job().tool().exchangeableHead();
    this.headChangeS = context.practice("headChangeS");
    boolean presetter = context.job().shop().presetter();
    this.fetchAndMeasureS =
        context.practice("toolFetchS")
            + context.practice(presetter ? "lengthPresettingS" : "lengthMeasuringS");
    this.holderLifeYears = context.practice("holderLifeYears");
  }

  /**
   * Cost per part = t/(T·f)·(edge price + change time·rate) + price/(parts a year·years), with t
   * the cutting time, T the edge's life without runout and f the share of it that the runout
   * leaves.
   */
  Economics economics(Candidate candidate, Appraisal appraisal) {
    Job job = context.job();
    HolderBody holder = candidate.holder();
    double extras = extras(holder);
    boolean owned = candidate.owned() > 0;
    double price = holder.price() + extras;
    double purchase = owned ? 0 : candidate.purchase() + extras;
    double life = job.tool().lifeMinutes() * context.toolLifeFactor(appraisal);
    double edgesPerPart = job.operation().minutesPerPart() / life;
    double edge = edgesPerPart * job.tool().price();
    double change = edgesPerPart * changeS(holder) / SECONDS_PER_HOUR * job.shop().hourlyRate();
    double spread =
        Double.isNaN(purchase) ? 0 : purchase / (job.operation().partsPerYear() * holderLifeYears);
    return new Economics(
        price, purchase, owned, edge, change, spread, edge + change + spread, null);
  }

  /**
   * Time to change a worn edge: fetch the tool, clamp the new one, measure its length. An
   * exchangeable head stays in the machine, and its length repeats.
   */
  private double changeS(HolderBody holder) {
    return exchangeableHead
        ? headChangeS
        : fetchAndMeasureS + holder.family().changeMinutes() * SECONDS_PER_MINUTE;
  }

  /** Collets and locks, which no catalogue row prices. */
  private double extras(HolderBody holder) {
    double sum = holder.colletSize() == null ? 0 : colletPrice;
    for (Seam seam : holder.seams()) {
      if (seam instanceof Seam.Clamped clamped && clamped.host().colletSize() != null) {
        sum += colletPrice;
      }
    }
    return sum + lock;
  }
}
