import type { Rule } from "./model";
import { agedBetterThanNew } from "./rules/aged-better-than-new";
import { bulkDensityImplausible } from "./rules/bulk-density-implausible";
import { carpetFigureAsSystem } from "./rules/carpet-figure-as-system";
import { carpetMassSum } from "./rules/carpet-mass-sum";
import { componentsAgainstTotal } from "./rules/components-against-total";
import { copiedBetweenBids } from "./rules/copied-between-bids";
import { depthAgainstStated } from "./rules/depth-against-stated";
import { deviceMixUp } from "./rules/device-mix-up";
import { driftAgainstOwnPoints } from "./rules/drift-against-own-points";
import { editionSuperseded } from "./rules/edition-superseded";
import { evidenceWithoutDocument } from "./rules/evidence-without-document";
import { fallHeightAgainstHic } from "./rules/fall-height-against-hic";
import { fallHeightNeedsItsMissile } from "./rules/fall-height-needs-its-missile";
import { fillRatioUnusual } from "./rules/fill-ratio-unusual";
import { floatAgainstMigration } from "./rules/float-against-migration";
import { freePileAgainstStated } from "./rules/free-pile-against-stated";
import { gMaxAndHic } from "./rules/g-max-and-hic";
import { guaranteeAgainstAged } from "./rules/guarantee-against-aged";
import { heavyByName } from "./rules/heavy-by-name";
import { impactByAnotherMethod } from "./rules/impact-by-another-method";
import { implausibleFigure } from "./rules/implausible-figure";
import { infillBuriesPile } from "./rules/infill-buries-pile";
import { laboratoryNotAccredited } from "./rules/laboratory-not-accredited";
import { lightInfillWithoutShockLayer } from "./rules/light-infill-without-shock-layer";
import { methodNotStated } from "./rules/method-not-stated";
import { particleSizeAgainstMesh } from "./rules/particle-size-against-mesh";
import { pileMassFromYarn } from "./rules/pile-mass-from-yarn";
import { pricePerAreaAgainstLumpSum } from "./rules/price-per-area-against-lump-sum";
import { quantityAgainstArea } from "./rules/quantity-against-area";
import { reportOfAnotherBuild } from "./rules/report-of-another-build";
import { reportTooOld } from "./rules/report-too-old";
import { sameReportTwoProducts } from "./rules/same-report-two-products";
import { seamOrTuftBindLow } from "./rules/seam-or-tuft-bind-low";
import { shockAbsorptionAndDeformation } from "./rules/shock-absorption-and-deformation";
import { singleFigureFromAverage } from "./rules/single-figure-from-average";
import { systemDrainsFasterThanItsLayer } from "./rules/system-drains-faster-than-its-layer";
import { tonnageAgainstMass } from "./rules/tonnage-against-mass";
import { truckLoadsAgainstMass } from "./rules/truck-loads-against-mass";
import { warrantyHours } from "./rules/warranty-hours";
import { warrantyShorterThanLife } from "./rules/warranty-shorter-than-life";

/** Every rule that is applied, in the order in which findings of one severity are told. A new rule is a file and a line here. */
export const rules: readonly Rule[] = [
  componentsAgainstTotal,
  infillBuriesPile,
  impactByAnotherMethod,
  lightInfillWithoutShockLayer,
  // impact and footfall
  guaranteeAgainstAged,
  agedBetterThanNew,
  driftAgainstOwnPoints,
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
  editionSuperseded,
  laboratoryNotAccredited,
  sameReportTwoProducts,
  copiedBetweenBids,
  evidenceWithoutDocument,
  methodNotStated,
  // carpet
  carpetMassSum,
  pileMassFromYarn,
  seamOrTuftBindLow,
  // infill
  bulkDensityImplausible,
  particleSizeAgainstMesh,
  freePileAgainstStated,
  depthAgainstStated,
  fillRatioUnusual,
  heavyByName,
  floatAgainstMigration,
  // prices and field
  tonnageAgainstMass,
  truckLoadsAgainstMass,
  quantityAgainstArea,
  pricePerAreaAgainstLumpSum,
  // any figure
  implausibleFigure,
];
