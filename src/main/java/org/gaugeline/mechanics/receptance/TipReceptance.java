package org.gaugeline.mechanics.receptance;

/**
 * Direct receptances of one place at one frequency, [[H, L], [N, P]] with H = x/f, L = x/m, N = θ/f
 * and P = θ/m; N = L by reciprocity.
 *
 * @param angularFrequencyRadPerS ω, rad/s
 * @param hRe real part of H, m/N
 * @param hIm imaginary part of H, m/N
 * @param lRe real part of L and N, 1/N
 * @param lIm imaginary part of L and N, 1/N
 * @param pRe real part of P, rad/(N·m)
 * @param pIm imaginary part of P, rad/(N·m)
 */
public record TipReceptance(
    double angularFrequencyRadPerS,
    double hRe,
    double hIm,
    double lRe,
    double lIm,
    double pRe,
    double pIm) {}
