package org.gaugeline.http;

import io.smallrye.common.annotation.NonBlocking;
import io.smallrye.mutiny.Uni;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.gaugeline.http.wire.WireIntent;
import org.jboss.resteasy.reactive.RestResponse;

/** One intent in, ranked assemblies out. */
@Path("/v1/recommendations")
public class RecommendationResource {
  /** Longer bodies and stocks are worked on off the event loop. */
  private static final int SMALL_BODY_BYTES = 32 * 1024;

  private static final int SMALL_STOCK = 200;

  private final Recommendations recommendations;
  private final LargeWork largeWork;
  private final long maxBodyBytes;

  public RecommendationResource(
      Recommendations recommendations,
      LargeWork largeWork,
      @ConfigProperty(name = "gaugeline.recommendations.max-body-bytes") long maxBodyBytes) {
    this.recommendations = recommendations;
    this.largeWork = largeWork;
    this.maxBodyBytes = maxBodyBytes;
  }

  @POST
  @NonBlocking
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  public Uni<RestResponse<byte[]>> recommend(byte[] body) {
    Evaluation.checkLength(body, maxBodyBytes);
    if (body.length > SMALL_BODY_BYTES) {
      return largeWork.beside(() -> response(recommendations.answer(body)));
    }
    WireIntent wire = recommendations.read(body);
    Supplier<RestResponse<byte[]>> answer = () -> response(recommendations.answer(wire, body));
    return stockSize(wire) > SMALL_STOCK ? largeWork.beside(answer) : Uni.createFrom().item(answer);
  }

  private static int stockSize(WireIntent wire) {
    WireIntent.Shop shop = wire.shop();
    List<WireIntent.StockEntry> stock = shop == null ? null : shop.stock();
    return stock == null ? 0 : stock.size();
  }

  private static RestResponse<byte[]> response(byte[] body) {
    return Evaluation.answer(body, MediaType.APPLICATION_JSON_TYPE);
  }
}
