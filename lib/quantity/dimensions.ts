const pound = 0.45359237; // kg, exact
const ounce = pound / 16;
const shortTon = 2000 * pound;
const inch = 0.0254; // m, exact
const foot = 0.3048;
const yard = 0.9144;
const gallon = 231 * inch ** 3; // m³, US liquid gallon, exact
const poundForce = pound * 9.80665; // N, exact by the conventional standard gravity
const hour = 3600; // s
const day = 24 * hour;
const year = 365 * day; // the 365-day year of SP 811

/**
 * One unit. `factor` turns a number in it into SI; `zero` is the SI value of the unit's own zero (temperatures).
 * `spellings` are what bids write besides the symbol itself. They are compared after `spellingKey`, which already takes
 * "lbs/sq ft", "pounds per square foot" and "#/sf" for "lb/ft²", and without regard to case where case does not decide.
 */
export type UnitDefinition = Readonly<{ factor: number; zero?: number; spellings: readonly string[] }>;

/** The unit a reader sees and the number of decimals that makes sense in this trade. */
export type DisplayUnit = Readonly<{ unit: string; decimals: number }>;

/** What is measured. `si` is the unit that computation sees. */
export type DimensionDefinition = Readonly<{
  label: string;
  si: string;
  /** Whether a figure below zero makes sense: a credit, a drift, a share that shrinks. */
  signed?: true;
  /** An amount a year, which the trade also writes without "per year"; such spellings are no hint at this dimension. */
  yearly?: true;
  us: DisplayUnit;
  metric: DisplayUnit;
  units: Readonly<Record<string, UnitDefinition>>;
}>;

const unit = (factor: number, ...spellings: string[]): UnitDefinition => ({ factor, spellings });
const show = (unitSymbol: string, decimals: number): DisplayUnit => ({ unit: unitSymbol, decimals });

const lengthUnits = {
  in: unit(inch),
  ft: unit(foot),
  mm: unit(0.001),
  m: unit(1),
  cm: unit(0.01, "centimetre", "centimetres", "centimeter", "centimeters"),
  yd: unit(yard),
  µm: unit(1e-6, "um", "micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers"),
  mil: unit(inch / 1000, "mils"),
};

/**
 * Every dimension of the trade with its units. A new unit or spelling is one line here; a new dimension is one entry.
 * @source exact factors: NIST SP 811 (2008), appendix B; denier and dtex as grams per 9000 m and per 10 000 m
 */
export const dimensions = {
  length: { label: "length", si: "m", us: show("in", 2), metric: show("mm", 1), units: lengthUnits },
  distance: { label: "distance", si: "m", us: show("ft", 1), metric: show("m", 1), units: lengthUnits },
  /** Where something lies along one axis of a plan, on either side of its zero. */
  coordinate: {
    label: "coordinate",
    si: "m",
    signed: true,
    us: show("ft", 1),
    metric: show("m", 1),
    units: lengthUnits,
  },
  area: {
    label: "area",
    si: "m²",
    us: show("ft²", 0),
    metric: show("m²", 0),
    units: {
      "m²": unit(1),
      "ft²": unit(foot ** 2),
      "yd²": unit(yard ** 2),
      acre: unit(43560 * foot ** 2, "acres", "ac"),
      ha: unit(10_000, "hectare", "hectares"),
    },
  },
  mass: {
    label: "mass",
    si: "kg",
    us: show("lb", 0),
    metric: show("kg", 0),
    units: {
      kg: unit(1),
      g: unit(0.001),
      // A capital T is a tonne to some and a short ton to others: listed at both, so it is reported and not guessed.
      t: unit(1000, "T", "tonne", "tonnes", "metric ton", "metric tons", "MT"),
      lb: unit(pound),
      oz: unit(ounce),
      "short ton": unit(shortTon, "T", "short tons", "US ton", "US tons", "ton", "tons"),
    },
  },
  arealDensity: {
    label: "mass per area",
    si: "kg/m²",
    us: show("lb/ft²", 2),
    metric: show("kg/m²", 1),
    units: {
      "kg/m²": unit(1, "kg·m⁻²"),
      "g/m²": unit(0.001, "gsm", "g·m⁻²"),
      "lb/ft²": unit(pound / foot ** 2, "psf"),
      "oz/yd²": unit(ounce / yard ** 2, "osy"),
    },
  },
  yearlyArealDensity: {
    label: "mass per area and year",
    si: "kg/m²/year",
    yearly: true,
    us: show("lb/ft²/year", 3),
    metric: show("kg/m²/year", 2),
    // What is asked for is a yearly amount, so a bid that writes no "per year" means it.
    units: {
      "kg/m²/year": unit(1, "kg/m²", "kg/m²/y", "kg/(m²·year)"),
      "g/m²/year": unit(0.001, "g/m²", "gsm", "g/m²/y", "g/(m²·year)"),
      "lb/ft²/year": unit(pound / foot ** 2, "lb/ft²", "psf", "psf/year", "lb/ft²/y"),
      "oz/yd²/year": unit(ounce / yard ** 2, "oz/yd²", "oz/yd²/y"),
    },
  },
  yearlyMass: {
    label: "mass per year",
    si: "kg/year",
    yearly: true,
    us: show("lb/year", 0),
    metric: show("kg/year", 0),
    units: {
      "kg/year": unit(1, "kg", "kg/y"),
      "t/year": unit(1000, "t", "tonne", "tonnes", "t/y", "tonnes/year", "tonne/year"),
      "lb/year": unit(pound, "lb", "lb/y"),
      "short ton/year": unit(
        shortTon,
        "short ton",
        "short tons",
        "short tons/year",
        "ton/year",
        "tons/year",
        "ton",
        "tons",
      ),
    },
  },
  countPerLength: {
    label: "count along a length",
    si: "/m",
    us: show("/in", 1),
    metric: show("/10 cm", 1),
    // The trade writes a bare number for stitches along an inch.
    units: {
      "/in": unit(1 / inch, "", "stitches/in", "stitch/in", "st/in", "tufts/in", "spi", "1/in"),
      "/10 cm": unit(10, "stitches/10 cm", "st/10 cm", "tufts/10 cm", "/10cm", "stitches/10cm", "st/10cm", "/dm"),
      "/cm": unit(100, "stitches/cm", "st/cm", "tufts/cm", "1/cm"),
      "/m": unit(1, "stitches/m", "st/m", "tufts/m", "1/m"),
    },
  },
  forcePerWidth: {
    label: "force per width",
    si: "N/m",
    us: show("lbf/in", 1),
    metric: show("N/100 mm", 0),
    units: {
      "N/m": unit(1),
      "kN/m": unit(1000, "N/mm"),
      "N/100 mm": unit(10, "N/100mm", "N/10 cm", "N/10cm"),
      "lbf/in": unit(poundForce / inch, "lb/in", "pli"),
      "lbf/ft": unit(poundForce / foot, "lb/ft", "plf"),
    },
  },
  bulkDensity: {
    label: "density",
    si: "kg/m³",
    us: show("lb/ft³", 1),
    metric: show("kg/m³", 0),
    units: {
      "kg/m³": unit(1, "kg·m⁻³"),
      "g/cm³": unit(1000, "g/cc", "g/mL", "kg/L", "t/m³"),
      "lb/ft³": unit(pound / foot ** 3, "pcf"),
    },
  },
  linearDensity: {
    label: "yarn linear density",
    si: "kg/m",
    us: show("denier", 0),
    metric: show("dtex", 0),
    units: {
      "kg/m": unit(1),
      tex: unit(1e-6),
      dtex: unit(1e-7, "decitex"),
      denier: unit(1e-3 / 9000, "den", "d"),
    },
  },
  pressure: {
    label: "pressure",
    si: "Pa",
    us: show("psi", 1),
    metric: show("kPa", 1),
    units: {
      Pa: unit(1),
      kPa: unit(1000),
      bar: unit(100_000),
      MPa: unit(1e6, "N/mm²"),
      psi: unit(poundForce / inch ** 2, "lbf/in²", "lb/in²"),
    },
  },
  temperature: {
    label: "temperature",
    si: "K",
    us: show("°F", 0),
    metric: show("°C", 0),
    units: {
      K: unit(1, "kelvin"),
      "°C": { factor: 1, zero: 273.15, spellings: ["C", "degC", "celsius"] },
      "°F": { factor: 5 / 9, zero: 273.15 - (32 * 5) / 9, spellings: ["F", "degF", "fahrenheit"] },
    },
  },
  temperatureDifference: {
    label: "temperature difference",
    si: "K",
    signed: true,
    us: show("°F", 0),
    metric: show("K", 0),
    units: {
      K: unit(1, "kelvin", "°C", "C", "degC"),
      "°F": unit(5 / 9, "F", "degF"),
    },
  },
  velocity: {
    label: "velocity",
    si: "m/s",
    us: show("ft/s", 2),
    metric: show("m/s", 2),
    units: {
      "m/s": unit(1),
      "ft/s": unit(foot, "fps"),
      "km/h": unit(1 / 3.6),
      mph: unit((5280 * foot) / hour, "mi/h"),
    },
  },
  infiltrationRate: {
    label: "infiltration rate",
    si: "m/s",
    us: show("in/h", 1),
    metric: show("mm/h", 0),
    units: {
      "m/s": unit(1),
      "in/h": unit(inch / hour, "iph"),
      "mm/h": unit(0.001 / hour),
      "cm/h": unit(0.01 / hour),
      "L/(m²·h)": unit(0.001 / hour, "L/m²·h", "L/m²h", "L/m²/h"),
    },
  },
  volume: {
    label: "volume",
    si: "m³",
    us: show("gal", 0),
    metric: show("m³", 0),
    units: {
      "m³": unit(1),
      L: unit(0.001),
      gal: unit(gallon),
      kgal: unit(1000 * gallon),
      "ft³": unit(foot ** 3),
      "yd³": unit(yard ** 3),
    },
  },
  money: {
    label: "money",
    si: "cent",
    signed: true,
    us: show("$", 0),
    metric: show("$", 0),
    units: { $: unit(100), cent: unit(1) },
  },
  moneyPerArea: {
    label: "money per area",
    si: "cent/m²",
    signed: true,
    us: show("$/ft²", 2),
    metric: show("$/m²", 2),
    units: {
      "$/ft²": unit(100 / foot ** 2),
      "$/m²": unit(100),
      "$/yd²": unit(100 / yard ** 2),
      "cent/ft²": unit(1 / foot ** 2),
      "cent/m²": unit(1),
    },
  },
  moneyPerMass: {
    label: "money per mass",
    si: "cent/kg",
    signed: true,
    us: show("$/lb", 2),
    metric: show("$/kg", 2),
    units: {
      "$/lb": unit(100 / pound),
      "$/kg": unit(100),
      "$/short ton": unit(100 / shortTon, "$/ton"),
      "$/t": unit(0.1, "$/tonne"),
      "cent/lb": unit(1 / pound),
      "cent/kg": unit(1),
    },
  },
  moneyPerVolume: {
    label: "money per volume",
    si: "cent/m³",
    signed: true,
    us: show("$/yd³", 2),
    metric: show("$/m³", 2),
    units: {
      "$/gal": unit(100 / gallon),
      "$/kgal": unit(0.1 / gallon),
      "$/ft³": unit(100 / foot ** 3),
      "$/yd³": unit(100 / yard ** 3),
      "$/m³": unit(100),
      "cent/m³": unit(1),
    },
  },
  moneyPerTime: {
    label: "money per time",
    si: "cent/s",
    signed: true,
    us: show("$/h", 2),
    metric: show("$/h", 2),
    units: {
      "$/h": unit(100 / hour),
      "$/day": unit(100 / day),
      "$/year": unit(100 / year, "$/y"),
      "cent/s": unit(1),
    },
  },
  time: {
    label: "time",
    si: "s",
    us: show("year", 1),
    metric: show("year", 1),
    units: {
      s: unit(1, "sec", "second", "seconds"),
      ms: unit(0.001, "millisecond", "milliseconds"),
      min: unit(60, "minute", "minutes"),
      h: unit(hour),
      day: unit(day, "days", "d"),
      week: unit(7 * day),
      month: unit(year / 12, "months", "mo"),
      year: unit(year, "y"),
    },
  },
  yearlyUse: {
    label: "hours of use a year",
    si: "h/year",
    us: show("h/year", 0),
    metric: show("h/year", 0),
    units: {
      "h/year": unit(1, "h/y"),
      "h/week": unit(year / (7 * day)),
    },
  },
  force: {
    label: "force",
    si: "N",
    us: show("lbf", 1),
    metric: show("N", 1),
    units: { N: unit(1, "newton", "newtons"), kN: unit(1000), lbf: unit(poundForce, "lb", "lb-f") },
  },
  torque: {
    label: "torque",
    si: "N·m",
    us: show("lbf·ft", 1),
    metric: show("N·m", 1),
    units: {
      N·m: unit(1, "Nm"),
      lbf·ft: unit(poundForce * foot, "lb-ft", "ft-lb", "ft-lbf"),
      lbf·in: unit(poundForce * inch, "in-lb", "in-lbf", "lb-in"),
    },
  },
  energy: {
    label: "energy",
    si: "J",
    us: show("ft·lbf", 1),
    metric: show("J", 1),
    units: {
      J: unit(1, "joule", "joules"),
      kJ: unit(1000),
      ft·lbf: unit(poundForce * foot, "ft-lb"),
    },
  },
  fraction: {
    label: "share",
    si: "1",
    signed: true,
    us: show("%", 0),
    metric: show("%", 0),
    units: {
      "%": unit(0.01, "percent", "pct", "per cent"),
      "mg/kg": unit(1e-6, "ppm"),
      "1": unit(1),
    },
  },
  count: {
    label: "count",
    si: "1",
    us: show("", 0),
    metric: show("", 0),
    units: { "": unit(1, "1", "pcs", "ea", "each", "cycles", "fields", "loads") },
  },
  number: {
    label: "number",
    si: "1",
    signed: true,
    us: show("", 2),
    metric: show("", 2),
    units: { "": unit(1) },
  },
  impactLevel: {
    label: "impact level",
    si: "g",
    us: show("g", 0),
    metric: show("g", 0),
    units: { g: unit(1, "gmax", "g-max", "g's", "gs", "G", "") },
  },
  rateOfChange: {
    label: "impact level per year",
    si: "g/year",
    signed: true,
    us: show("g/year", 1),
    metric: show("g/year", 1),
    units: { "g/year": unit(1, "gmax/year") },
  },
  depthSensitivity: {
    label: "sensitivity to depth loss",
    si: "1/m",
    signed: true,
    us: show("1/in", 3),
    metric: show("1/mm", 4),
    units: { "1/m": unit(1, "/m"), "1/in": unit(1 / inch, "/in"), "1/mm": unit(1000, "/mm") },
  },
} as const satisfies Record<string, DimensionDefinition>;

export type DimensionName = keyof typeof dimensions;
/** The SI unit tag of a dimension: `SiUnit<"arealDensity">` is "kg/m²". */
export type SiUnit<D extends DimensionName> = (typeof dimensions)[D]["si"];
