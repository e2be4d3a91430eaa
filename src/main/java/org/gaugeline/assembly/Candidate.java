package org.gaugeline.assembly;

/**
 * A holder that may be weighed for a job.
 *
 * @param holder the body
 * @param owned how many of it the shop owns; 0 where it would have to be bought
 */
public record Candidate(HolderBody holder, int owned) {}
