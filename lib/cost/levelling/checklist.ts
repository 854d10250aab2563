import type { ScopeItem } from "../costing-model";

/**
 * What a field project usually has to hold, to start a levelling with. The owner adds, renames and takes out.
 * @source common practice, no source
 */
export const startingChecklist: readonly ScopeItem[] = [
  { id: "base-work", label: "Base work" },
  { id: "drainage", label: "Drainage" },
  { id: "shock-layer", label: "Shock layer" },
  { id: "carpet", label: "Carpet" },
  { id: "inlaid-markings", label: "Inlaid markings" },
  { id: "infill", label: "Infill" },
  { id: "spare-material", label: "Spare carpet and infill" },
  { id: "acceptance-tests", label: "Testing at acceptance" },
  { id: "yearly-tests", label: "Yearly testing" },
  { id: "maintenance-equipment", label: "Maintenance equipment" },
  { id: "training", label: "Training of the grounds staff" },
  { id: "grooming-contract", label: "Grooming contract" },
  { id: "warranty-insurance", label: "Insurance of the warranty" },
  { id: "old-field-removal", label: "Removal and disposal of the old field" },
  { id: "access-restoration", label: "Restoration of the access" },
  { id: "freight", label: "Freight to the site" },
  { id: "bonds", label: "Bonds" },
  { id: "permits", label: "Permits and inspections" },
  { id: "site-protection", label: "Fencing and protection of the site" },
  { id: "as-built-records", label: "Records of what was built" },
];
