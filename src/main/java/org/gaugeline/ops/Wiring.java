package org.gaugeline.ops;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.gaugeline.advice.Advisor;
import org.gaugeline.advice.Assessor;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.http.Assessments;
import org.gaugeline.http.Catalogue;
import org.gaugeline.http.RecommendationEngine;
import org.gaugeline.http.Recommendations;
import org.gaugeline.http.StabilityCharts;
import org.gaugeline.http.ToolListChecks;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.CatalogueTables;
import org.gaugeline.tables.SymbolTables;
import org.gaugeline.wording.Words;

/** Puts the parts together, once. */
@ApplicationScoped
public class Wiring {

  @Produces
  @Singleton
  ReferenceData referenceData() {
    return Groundwork.laid().data();
  }

  @Produces
  @Singleton
  HolderCatalogue holderCatalogue(
      ReferenceData data,
      @ConfigProperty(name = "gaugeline.holders.folder") Optional<Path> folder) {
    HolderCatalogue series = Groundwork.laid().series();
    return folder.map(path -> CatalogueTables.withShop(series, data, path)).orElse(series);
  }

  @Produces
  @Singleton
  Catalogue catalogue(ReferenceData data, HolderCatalogue holders, Words words) {
    return new Catalogue(data, holders, words);
  }

  @Produces
  @Singleton
  Advisor advisor(ReferenceData data, HolderCatalogue holders) {
    return new Advisor(data, holders);
  }

  @Produces
  @Singleton
  RecommendationEngine engine(Advisor advisor) {
    return advisor::recommend;
  }

  @Produces
  @Singleton
  Assessor assessor(ReferenceData data, HolderCatalogue holders, Advisor advisor) {
    return new Assessor(data, holders, advisor);
  }

  @Produces
  @Singleton
  Assessments assessments(
      Assessor assessor, Words words, ReferenceData data, HolderCatalogue holders) {
    return new Assessments(assessor, words, data, holders);
  }

  @Produces
  @Singleton
  ToolListChecks toolListChecks(
      Assessor assessor, Words words, ReferenceData data, HolderCatalogue holders) {
    return new ToolListChecks(assessor, words, data, holders, SymbolTables.load(data));
  }

  @Produces
  @Singleton
  StabilityCharts stabilityCharts(
      Assessor assessor, Words words, ReferenceData data, HolderCatalogue holders) {
    return new StabilityCharts(assessor, words, data, holders);
  }

  @Produces
  @Singleton
  Words words() {
    return Groundwork.laid().words();
  }

  @Produces
  @Singleton
  Recommendations recommendations(
      RecommendationEngine engine, Words words, ReferenceData data, HolderCatalogue holders) {
    return new Recommendations(engine, words, data, holders);
  }
}
