package org.gaugeline.http;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.util.Map;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;

/** Reference data with their sources. */
@Path("/v1/catalogue")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
public class CatalogueResource {
  private final Catalogue catalogue;

  public CatalogueResource(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  @GET
  @Path("/materials")
  public RestResponse<byte[]> materials(
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.materials.all().response(ifNoneMatch);
  }

  @GET
  @Path("/materials/{id}")
  public RestResponse<byte[]> material(
      @PathParam("id") String id,
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.materials.entry(id).response(ifNoneMatch);
  }

  @GET
  @Path("/spindle-interfaces")
  public RestResponse<byte[]> interfaces(
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.interfaces.all().response(ifNoneMatch);
  }

  @GET
  @Path("/spindle-interfaces/{id}")
  public RestResponse<byte[]> spindleInterface(
      @PathParam("id") String id,
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.interfaces.entry(id).response(ifNoneMatch);
  }

  @GET
  @Path("/clamping-families")
  public RestResponse<byte[]> families(
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.families.all().response(ifNoneMatch);
  }

  @GET
  @Path("/clamping-families/{id}")
  public RestResponse<byte[]> clampingFamily(
      @PathParam("id") String id,
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.families.entry(id).response(ifNoneMatch);
  }

  @GET
  @Path("/operations")
  public RestResponse<byte[]> operations(
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.operations.all().response(ifNoneMatch);
  }

  @GET
  @Path("/operations/{id}")
  public RestResponse<byte[]> operation(
      @PathParam("id") String id,
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.operations.entry(id).response(ifNoneMatch);
  }

  @GET
  @Path("/holders")
  public RestResponse<byte[]> holders(
      @QueryParam("interface") @Nullable String interfaceId,
      @QueryParam("family") @Nullable String family,
      @QueryParam("role") @Nullable String role,
      @QueryParam("limit") @Nullable String limit,
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.holders(interfaceId, family, role, limit(limit)).response(ifNoneMatch);
  }

  /** Read here, so that a limit that is not one is explained. */
  private static int limit(@Nullable String text) {
    if (text == null) {
      return Catalogue.USUAL_LIMIT;
    }
    if (!text.matches("0*[1-9][0-9]{0,8}")) {
      String detail = "limit must be a whole number ≥ 1. Leave it out for the first 500.";
      throw new ProblemException(
          Problem.invalidParameter(
              new Fault("?limit", "out-of-range", detail, Map.of("minimum", 1))));
    }
    return Integer.parseInt(text);
  }

  @GET
  @Path("/holders/{id}")
  public RestResponse<byte[]> holder(
      @PathParam("id") String id,
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.holders.entry(id).response(ifNoneMatch);
  }

  @GET
  @Path("/findings")
  public RestResponse<byte[]> findings(
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.findings.all().response(ifNoneMatch);
  }

  @GET
  @Path("/findings/{id}")
  public RestResponse<byte[]> finding(
      @PathParam("id") String id,
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.findings.entry(id).response(ifNoneMatch);
  }

  @GET
  @Path("/sources")
  public RestResponse<byte[]> sources(
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.sources.all().response(ifNoneMatch);
  }

  @GET
  @Path("/sources/{id}")
  public RestResponse<byte[]> source(
      @PathParam("id") String id,
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) @Nullable String ifNoneMatch) {
    return catalogue.sources.entry(id).response(ifNoneMatch);
  }
}
