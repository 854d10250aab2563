import type { Rule } from "./model";
import { agedBetterThanNew } from "./rules/aged-better-than-new";
import { carpetFigureAsSystem } from "./rules/carpet-figure-as-system";
import { componentsAgainstTotal } from "./rules/components-against-total";
import { copiedBetweenBids } from "./rules/copied-between-bids";
import { deviceMixUp } from "./rules/device-mix-up";
import { editionSuperseded } from "./rules/edition-superseded";
import { evidenceWithoutDocument } from "./rules/evidence-without-document";
import { fallHeightAgainstHic } from "./rules/fall-height-against-hic";
import { fallHeightNeedsItsMissile } from "./rules/fall-height-needs-its-missile";
import { gMaxAndHic } from "./rules/g-max-and-hic";
import { guaranteeAgainstAged } from "./rules/guarantee-against-aged";
import { impactByAnotherMethod } from "./rules/impact-by-another-method";
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
  editionSuperseded,
  laboratoryNotAccredited,
  sameReportTwoProducts,
  copiedBetweenBids,
  evidenceWithoutDocument,
  methodNotStated,
];
