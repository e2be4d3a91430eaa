package org.gaugeline.assembly;

/**
 * A holder that may be weighed for a job.
 *
 * @param holder the body
 * @param owned how many of it the shop owns; 0 where any part would have to be bought
 * @param purchase price of the parts that the shop has not got; NaN where one is unknown
 */
public record Candidate(HolderBody holder, int owned, double purchase) {

  /** A holder that is there already. */
  public static Candidate ofGiven(HolderBody holder) {
    return new Candidate(holder, 1, 0);
  }

  /** A holder in one piece. */
  static Candidate single(HolderBody holder, int owned) {
    return new Candidate(holder, owned, owned > 0 ? 0 : holder.price());
  }
}
