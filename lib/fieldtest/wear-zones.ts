/** Parts of a field that wear unlike each other, and why one tests there. @source common practice, no source */
export const wearZones = {
  centre: { label: "centre", why: "Play starts and turns here; infill is kicked away." },
  "goal-mouth": { label: "goal mouth", why: "The most trodden spot of the field; infill is dug out." },
  "penalty-spot": { label: "penalty spot", why: "Standing feet and sliding turn always on the same spot." },
  "hash-marks": { label: "between the hash marks", why: "Nearly every down starts between the hash marks." },
  "goal-line": { label: "goal line", why: "Short downs pile up here." },
  "face-off": { label: "face-off and draw", why: "Players brace and pivot always on the same spot." },
  wing: { label: "wing", why: "Used less: shows how the field was built rather than how it wears." },
  sideline: { label: "side line", why: "Benches, officials and machines run along here; infill drifts outwards." },
  "end-zone": { label: "end zone", why: "Used little; infill that is missing here was never placed." },
  corner: { label: "corner", why: "Water drains and infill drifts to corners; corner kicks wear one spot." },
  between: { label: "between the marks", why: "Fills the largest gap between the other locations." },
  "owners-spot": {
    label: "owner's spot",
    why: "Named by the owner: a seam, a drain, a repair, a spot that looks worn.",
  },
} as const satisfies Record<string, Readonly<{ label: string; why: string }>>;

export type WearZone = keyof typeof wearZones;
