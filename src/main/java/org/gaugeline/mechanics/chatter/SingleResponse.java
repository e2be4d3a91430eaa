package org.gaugeline.mechanics.chatter;

import java.util.List;
import java.util.stream.DoubleStream;

/** λ = −Σµ_i G_i: all motion seen along one line. */
record SingleResponse(int teeth, double gainPa, List<DirectedResponse> parts)
    implements OrientedResponse {

  @Override
  public int branches() {
    return 1;
  }

  @Override
  public double[] supportRadPerS() {
    return parts.stream()
        .flatMapToDouble(part -> DoubleStream.of(part.response().supportRadPerS()))
        .sorted()
        .toArray();
  }

  @Override
  public void at(double omegaRadPerS, double[] lambda) {
    double re = 0;
    double im = 0;
    for (int i = 0; i < parts.size(); i++) {
      DirectedResponse part = parts.get(i);
      part.response().at(omegaRadPerS, lambda, 0);
      re -= part.factor() * lambda[0];
      im -= part.factor() * lambda[1];
    }
    lambda[0] = re;
    lambda[1] = im;
  }
}
