package org.gaugeline.http;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.gaugeline.advice.Recommendation;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.wording.Words;

/** Body in, answer out: what stands between the wire and the engine. Holds no state of requests. */
public final class Recommendations {
  private final RequestBody<WireIntent> bodies;
  private final RecommendationEngine engine;
  private final RecommendationWriter writer;

  public Recommendations(
      RecommendationEngine engine, Words words, ReferenceData data, HolderCatalogue holders) {
    this.bodies =
        RequestBody.ofIntents(ContractDocument.load(), new CatalogueFaults(data, holders));
    this.engine = engine;
    this.writer = new RecommendationWriter(words, data.version());
  }

  /**
   * Answers a body.
   *
   * @throws RuntimeException carrying a problem where the body has faults
   */
  public byte[] answer(byte[] body) {
    return answer(read(body), body);
  }

  WireIntent read(byte[] body) {
    return bodies.read(body);
  }

  byte[] answer(WireIntent wire, byte[] body) {
    Recommendation recommendation;
    try {
      recommendation = engine.recommend(IntentReader.read(wire));
    } catch (IntentFaultException e) {
      throw new ProblemException(Problem.invalid(IntentFaultWords.faults(e.faults())));
    }
    return writer.write(recommendation, wire, digest(body));
  }

  static String digest(byte[] body) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(body));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
