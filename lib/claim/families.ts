import { measured } from "#lib/quantity";
import type { Drop } from "./drop";

/** One fact with where it comes from: a citation, "common practice, no source" or "from memory". */
export type Fact = Readonly<{ text: string; source: string }>;

/**
 * Methods that measure alike: same apparatus, same missile, same drop height or same procedure.
 * Figures are held against each other only within one family.
 */
export type Family = Readonly<{
  id: string;
  /** Completes the sentence "The method …": "drops a flat missile", "floods the finished field". */
  does: string;
  /** Families with the same missile differ in drop height only. */
  missile: "a" | "e" | "clegg-2.25" | null;
  drop: Drop | null;
  facts: readonly Fact[];
}>;

const describedByUniversity = "Penn State University, sports surface research, description of test methods";
const memory = "from memory";

const missileE = {
  mass: measured("mass", 4.6),
  massText: "10.1 lb (4.6 kg)",
  face: "hemispherical",
  across: "160 mm across",
  source: memory,
};

/** A procedure with no falling missile to compare by. */
const procedure = <I extends string>(id: I, does: string, ...facts: Fact[]) => ({
  id,
  does,
  missile: null,
  drop: null,
  facts,
});

const familyList = [
  {
    id: "missile-a-610",
    does: "drops a heavy flat missile and records the peak deceleration",
    missile: "a",
    drop: {
      mass: measured("mass", 9.1),
      massText: "20 lb (9.1 kg)",
      face: "flat round",
      across: "128 mm across",
      height: measured("length", 0.61),
      heightText: "24 in (610 mm)",
      source: `${describedByUniversity}; size of the face from memory`,
    },
    facts: [
      {
        text: "Three drops on one spot with three minutes between them; the mean of the second and third counts.",
        source: describedByUniversity,
      },
    ],
  },
  {
    id: "clegg-2.25-455",
    does: "drops a light hammer and records the peak deceleration",
    missile: "clegg-2.25",
    drop: {
      mass: measured("mass", 2.25),
      massText: "5 lb (2.25 kg)",
      face: "flat round",
      across: "50 mm across",
      height: measured("length", 0.455),
      heightText: "18 in (455 mm)",
      source: `${describedByUniversity}; size of the face from memory`,
    },
    facts: [
      {
        text: "Figures are not comparable with those of another mass, geometry, drop height or method.",
        source: "ASTM F1702, scope",
      },
    ],
  },
  {
    id: "missile-e-stated-height",
    does: "drops a head-sized hemisphere from a height that the report states",
    missile: "e",
    drop: { ...missileE, height: null, heightText: "a height that the report states" },
    facts: [{ text: "Peak deceleration and head injury criterion come from the same record.", source: memory }],
  },
  {
    id: "missile-e-rising-height",
    does: "drops a head-sized hemisphere from rising heights until the limit is reached",
    missile: "e",
    drop: { ...missileE, height: null, heightText: "rising heights" },
    facts: [{ text: "The limit is a head injury criterion of 1000.", source: memory }],
  },
  {
    id: "missile-e-1300",
    does: "drops a head-sized hemisphere from the fall height that rugby asks for",
    missile: "e",
    drop: { ...missileE, height: measured("length", 1.3), heightText: "51 in (1.3 m)" },
    facts: [
      { text: "The fall height to be shown is at least 1.3 m.", source: "World Rugby, as quoted in trade press" },
    ],
  },
  procedure("advanced-athlete", "drops a sprung mass that carries its own accelerometer", {
    text: "A 20 kg mass with a spring falls 55 mm; force, deformation and returned energy come from one record.",
    source: memory,
  }),
  procedure("athlete-load-cell", "drops a mass on a spring above a force cell", {
    text: "The reduction of the peak force is stated against a concrete floor.",
    source: memory,
  }),
  procedure("athlete-deformation", "drops a mass on a soft spring and follows the foot as it sinks in", {
    text: "Only the deformation is measured, with a softer spring than for the force.",
    source: memory,
  }),
  procedure("studded-disc", "turns a loaded disc with studs on the surface", {
    text: "A 46 kg disc with football studs; the peak torque counts.",
    source: memory,
  }),
  procedure("shoe-traction", "pulls or turns a loaded shoe on the surface", {
    text: "The shoe and the load are chosen for the test and belong to the figure.",
    source: memory,
  }),
  procedure("abrasion-of-foam", "drags soft foam blocks over the surface and weighs what they lose", {
    text: "The index is the loss in grams divided by 0.0606.",
    source: describedByUniversity,
  }),
  procedure("silicone-skin", "turns a silicone skin on the surface", {
    text: "The friction of the skin while it turns is recorded.",
    source: memory,
  }),
  procedure("ball-drop", "drops a football and measures how high it comes back", {
    text: "The ball falls 2 m on its own weight.",
    source: memory,
  }),
  procedure("ball-ramp", "rolls a football down a ramp and measures how far it runs", {
    text: "The ball starts 1 m above the surface.",
    source: memory,
  }),
  procedure("ball-angled", "fires a football at the surface at a low angle and compares its speed before and after", {
    text: "The share of the speed that is kept counts.",
    source: memory,
  }),
  procedure("pile-gauge", "measures the height of the pile on the carpet without infill", {
    text: "Tested on carpet before it is filled.",
    source: memory,
  }),
  procedure("cut-and-weigh", "cuts pieces of carpet to size, takes them apart and weighs them", {
    text: "Pile, backing and total mass per area come from the same pieces.",
    source: memory,
  }),
  procedure("tuft-pull-astm", "pulls one tuft out of the backing by the ASTM procedure", {
    text: "The force at which a single tuft comes out counts.",
    source: memory,
  }),
  procedure("tuft-pull-iso", "pulls one tuft out of the backing by the ISO procedure", {
    text: "Clamping and speed differ from the ASTM procedure.",
    source: memory,
  }),
  procedure("yarn-skein", "weighs a measured length of yarn", { text: "Denier is 0.9 times dtex.", source: "derived" }),
  procedure("tuft-count", "counts rows and stitches over a measured length", {
    text: "Gauge is the distance between two rows of tufts.",
    source: memory,
  }),
  procedure("grab-pull", "grips a strip of backing and pulls until it breaks", {
    text: "Breaking force of the backing, both directions.",
    source: memory,
  }),
  procedure("burning-pill", "burns a pill on the carpet and measures how far the char spreads", {
    text: "A pass or fail result.",
    source: memory,
  }),
  procedure("ring-infiltration", "fills a ring that is sealed to the surface and times how fast the water sinks", {
    text: "Water can spread sideways below the ring, depending on the build.",
    source: memory,
  }),
  procedure("open-flood", "floods a part of the finished field without confining the water", {
    text: "Tests surface and base together.",
    source: memory,
  }),
  procedure("permittivity", "passes water through a piece of the carpet alone in a laboratory cell", {
    text: "Written for geotextiles; says nothing of infill, shock layer or base.",
    source: memory,
  }),
  procedure("studded-rollers", "runs studded rollers over a filled sample", {
    text: "Cycles are counted on one machine type; another machine type counts differently.",
    source: memory,
  }),
  procedure("artificial-weather", "exposes yarn to lamps and water, then pulls it", {
    text: "The share of the breaking force that is kept counts.",
    source: memory,
  }),
  procedure("sun-thermometer", "reads the surface with a thermometer on a clear day", {
    text: "Air temperature, sun, wind and the time of day belong to the figure.",
    source: "common practice, no source",
  }),
  procedure("total-lead", "dissolves the fibre and measures all the lead in it", {
    text: "The whole content, whether it can come out or not.",
    source: memory,
  }),
  procedure("stomach-acid-soluble", "measures the metals that an acid like that of the stomach takes out of infill", {
    text: "Held against the soluble limits of ASTM F963, with an analytical correction.",
    source: "ASTM F3188, scope",
  }),
  procedure("toy-migration", "measures the metals that migrate out of the material under the European toy standard", {
    text: "Category III, scraped-off material: lead limit 23 mg/kg since 2021.",
    source: "EN 71-3:2019+A1:2021 as quoted by a test laboratory",
  }),
  procedure("pah-extraction", "extracts infill with solvent and measures polycyclic aromatic hydrocarbons", {
    text: "The European sum counts eight named compounds; another list gives another sum.",
    source: "Commission Regulation (EU) 2021/1199",
  }),
  procedure("total-fluorine", "burns the sample and measures all the fluorine in it", {
    text: "A screen: inorganic fluoride counts too, so total fluorine is not the same as PFAS.",
    source: memory,
  }),
  procedure("depth-gauge", "pushes a gauge with prongs through the infill to the backing at many points", {
    text: "Number and place of the points belong to the figure.",
    source: "common practice, no source",
  }),
  procedure("weigh-tickets", "adds up the weigh tickets of the infill delivered to the field", {
    text: "What was left over is weighed and taken off.",
    source: "common practice, no source",
  }),
  procedure("shock-layer-type-test", "tests the shock layer alone as a product", {
    text: "Minimum durability and performance of shock pads, type test and control on site.",
    source: "EN 15330-4 as described in trade press",
  }),
  procedure("tongue-tear", "tears a piece of backing on from a cut", {
    text: "The force at which a cut runs on is lower than the force that breaks a whole strip.",
    source: memory,
  }),
  procedure("joint-pull", "pulls a joint apart across its width", {
    text: "The force is stated per width of joint; hot water stands for years of rain and sun.",
    source: memory,
  }),
  procedure("compression-set", "presses foam for a long time and measures what does not come back", {
    text: "Share of compression, time and temperature belong to the figure.",
    source: memory,
  }),
  procedure("tensile-pull", "pulls a cut shape of the layer until it breaks", {
    text: "Strength is force divided by the area of the cut face.",
    source: memory,
  }),
  procedure("splash-picture", "films a ball that lands and counts the infill in the picture", {
    text: "Light, background and the wetness of the infill change the picture.",
    source: memory,
  }),
  procedure("float-glass", "stirs infill into fresh water and looks at what floats", {
    text: "A grain floats where it is lighter than the water it pushes aside; some grains sink once they are wetted.",
    source: "derived from the principle of Archimedes",
  }),
] as const satisfies readonly Family[];

export type FamilyId = (typeof familyList)[number]["id"];

const byId: ReadonlyMap<string, Family> = new Map(familyList.map((family) => [family.id, family]));

/** @throws RangeError if the list lacks the id: the compiler was bypassed */
export function familyOf(id: FamilyId): Family {
  const family = byId.get(id);
  if (family === undefined) throw new RangeError(`no family of methods ${id}`);
  return family;
}
