import type { Rule } from "./model";
import { agedBetterThanNew } from "./rules/aged-better-than-new";
import { carpetFigureAsSystem } from "./rules/carpet-figure-as-system";
import { carpetMassSum } from "./rules/carpet-mass-sum";
import { componentsAgainstTotal } from "./rules/components-against-total";
import { copiedBetweenBids } from "./rules/copied-between-bids";
import { deviceMixUp } from "./rules/device-mix-up";
import { evidenceWithoutDocument } from "./rules/evidence-without-document";
import { fallHeightAgainstHic } from "./rules/fall-height-against-hic";
import { fallHeightNeedsItsMissile } from "./rules/fall-height-needs-its-missile";
import { gMaxAndHic } from "./rules/g-max-and-hic";
import { guaranteeAgainstAged } from "./rules/guarantee-against-aged";
import { bulkDensityImplausible } from "./rules/bulk-density-implausible";
import { carpetMassSum } from "./rules/carpet-mass-sum";
import { componentsAgainstTotal } from "./rules/components-against-total";
import { depthAgainstStated } from "./rules/depth-against-stated";
import { fillRatioUnusual } from "./rules/fill-ratio-unusual";
import { floatAgainstMigration } from "./rules/float-against-migration";
import { freePileAgainstStated } from "./rules/free-pile-against-stated";
import { heavyByName } from "./rules/heavy-by-name";
import { impactByAnotherMethod } from "./rules/impact-by-another-method";
import { implausibleFigure } from "./rules/implausible-figure";
import { infillBuriesPile } from "./rules/infill-buries-pile";
import { laboratoryNotAccredited } from "./rules/laboratory-not-accredited";
import { lightInfillWithoutShockLayer } from "./rules/light-infill-without-shock-layer";
import { methodNotStated } from "./rules/method-not-stated";
import { reportOfAnotherBuild } from "./rules/report-of-another-build";
import { reportTooOld } from "./rules/report-too-old";
import { sameReportTwoProducts } from "./rules/same-report-two-products";
import { shockAbsorptionAndDeformation } from "./rules/shock-absorption-and-deformation";
import { singleFigureFromAverage } from "./rules/single-figure-from-average";
import { systemDrainsFasterThanItsLayer } from "./rules/system-drains-faster-than-its-layer";
import { warrantyHours } from "./rules/warranty-hours";
import { warrantyShorterThanLife } from "./rules/warranty-shorter-than-life";
import { particleSizeAgainstMesh } from "./rules/particle-size-against-mesh";
import { pileMassFromYarn } from "./rules/pile-mass-from-yarn";
import { pricePerAreaAgainstLumpSum } from "./rules/price-per-area-against-lump-sum";
import { quantityAgainstArea } from "./rules/quantity-against-area";
import { seamOrTuftBindLow } from "./rules/seam-or-tuft-bind-low";
import { tonnageAgainstMass } from "./rules/tonnage-against-mass";
import { truckLoadsAgainstMass } from "./rules/truck-loads-against-mass";

/** Every rule that is applied, in the order in which findings of one severity are told. A new rule is a file and a line here. */
export const rules: readonly Rule[] = [
  componentsAgainstTotal,
  infillBuriesPile,
  impactByAnotherMethod,
  lightInfillWithoutShockLayer,
  // impact and footfall
  guaranteeAgainstAged,
  agedBetterThanNew,
  gMaxAndHic,
  fallHeightAgainstHic,
  fallHeightNeedsItsMissile,
  shockAbsorptionAndDeformation,
  deviceMixUp,
  singleFigureFromAverage,
  // water
  systemDrainsFasterThanItsLayer,
  carpetFigureAsSystem,
  // warranty
  warrantyHours,
  warrantyShorterThanLife,
  // reports and evidence
  reportTooOld,
  reportOfAnotherBuild,
  laboratoryNotAccredited,
  sameReportTwoProducts,
  copiedBetweenBids,
  evidenceWithoutDocument,
  methodNotStated,
  carpetMassSum,
  bulkDensityImplausible,
  particleSizeAgainstMesh,
  freePileAgainstStated,
  depthAgainstStated,
  tonnageAgainstMass,
  truckLoadsAgainstMass,
  quantityAgainstArea,
  pricePerAreaAgainstLumpSum,
  pileMassFromYarn,
  heavyByName,
  floatAgainstMigration,
  seamOrTuftBindLow,
  fillRatioUnusual,
  implausibleFigure,
];
