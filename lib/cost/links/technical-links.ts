import type { LinkId } from "../link-ids";
import { coolingWater } from "./cooling-water";
import { freight } from "./freight";
import { grooming } from "./grooming";
import { impactTests } from "./impact-tests";
import { infillTopUp } from "./infill-top-up";
import type { TechnicalLink } from "./model";
import { removalAndDisposal } from "./removal-and-disposal";
import { shockLayer } from "./shock-layer";

/** Every technical link. Form, levelling and pages read this list; parts that others count on come first. */
export const technicalLinks: Readonly<Record<LinkId, TechnicalLink>> = {
  "shock-layer": shockLayer,
  "removal-and-disposal": removalAndDisposal,
  freight,
  "infill-top-up": infillTopUp,
  grooming,
  "impact-tests": impactTests,
  "cooling-water": coolingWater,
};
