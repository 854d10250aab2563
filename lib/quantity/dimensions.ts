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
 * `spellings` are what bids write besides the symbol itself; they are compared without regard to case.
 */
export type UnitDefinition = Readonly<{ factor: number; zero?: number; spellings: readonly string[] }>;

/** The unit a reader sees and the number of decimals that makes sense in this trade. */
export type DisplayUnit = Readonly<{ unit: string; decimals: number }>;

/** What is measured. `si` is the unit that computation sees. */
export type DimensionDefinition = Readonly<{
  label: string;
  si: string;
  us: DisplayUnit;
  metric: DisplayUnit;
  units: Readonly<Record<string, UnitDefinition>>;
}>;

const unit = (factor: number, ...spellings: string[]): UnitDefinition => ({ factor, spellings });
const show = (unitSymbol: string, decimals: number): DisplayUnit => ({ unit: unitSymbol, decimals });

const lengthUnits = {
  m: unit(1, "metre", "metres", "meter", "meters"),
  cm: unit(0.01, "centimetre", "centimetres", "centimeter", "centimeters"),
  mm: unit(0.001, "millimetre", "millimetres", "millimeter", "millimeters"),
  in: unit(inch, "inch", "inches", "in.", '"', "”", "″"),
  ft: unit(foot, "foot", "feet", "ft.", "'", "’", "′"),
  yd: unit(yard, "yard", "yards", "yds", "yd."),
};

/**
 * Every dimension of the trade with its units. A new unit or spelling is one line here; a new dimension is one entry.
 * @source exact factors: NIST SP 811 (2008), appendix B; denier and dtex as grams per 9000 m and per 10 000 m
 */
export const dimensions = {
  length: { label: "length", si: "m", us: show("in", 2), metric: show("mm", 1), units: lengthUnits },
  distance: { label: "distance", si: "m", us: show("ft", 1), metric: show("m", 1), units: lengthUnits },
  area: {
    label: "area",
    si: "m²",
    us: show("ft²", 0),
    metric: show("m²", 0),
    units: {
      "m²": unit(1, "m2", "sq m", "sqm", "sq. m", "square metres", "square meters"),
      "ft²": unit(foot ** 2, "ft2", "sf", "sq ft", "sqft", "sq. ft.", "square feet"),
      "yd²": unit(yard ** 2, "yd2", "sy", "sq yd", "square yards"),
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
      kg: unit(1, "kilogram", "kilograms"),
      g: unit(0.001, "gram", "grams"),
      t: unit(1000, "tonne", "tonnes", "metric ton", "metric tons"),
      lb: unit(pound, "lbs", "lb.", "lbs.", "pound", "pounds", "#"),
      oz: unit(ounce, "ounce", "ounces"),
      "short ton": unit(shortTon, "short tons", "US ton", "US tons"),
    },
  },
  arealDensity: {
    label: "mass per area",
    si: "kg/m²",
    us: show("lb/ft²", 2),
    metric: show("kg/m²", 1),
    units: {
      "kg/m²": unit(1, "kg/m2", "kg/sqm", "kg per m2", "kg/sq m"),
      "g/m²": unit(0.001, "g/m2", "gsm", "g/sqm"),
      "lb/ft²": unit(
        pound / foot ** 2,
        "lb/ft2",
        "lbs/ft2",
        "lbs/ft²",
        "lb/sf",
        "lbs/sf",
        "#/sf",
        "#/ft2",
        "psf",
        "lb/sq ft",
        "lbs/sq ft",
        "pounds per square foot",
        "lbs per sq ft",
      ),
      "oz/yd²": unit(ounce / yard ** 2, "oz/yd2", "oz/sy", "osy", "oz/sq yd", "oz per sq yd", "ounces per square yard"),
    },
  },
  bulkDensity: {
    label: "density",
    si: "kg/m³",
    us: show("lb/ft³", 1),
    metric: show("kg/m³", 0),
    units: {
      "kg/m³": unit(1, "kg/m3"),
      "g/cm³": unit(1000, "g/cm3", "g/cc", "g/mL", "g/ml"),
      "lb/ft³": unit(
        pound / foot ** 3,
        "lb/ft3",
        "lbs/ft3",
        "lbs/ft³",
        "pcf",
        "lb/cf",
        "lbs/cf",
        "lb/cu ft",
        "lbs/cu ft",
      ),
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
      MPa: unit(1e6, "N/mm²", "N/mm2"),
      psi: unit(poundForce / inch ** 2, "lbf/in²", "lb/in2"),
    },
  },
  temperature: {
    label: "temperature",
    si: "K",
    us: show("°F", 0),
    metric: show("°C", 0),
    units: {
      K: unit(1, "kelvin"),
      "°C": { factor: 1, zero: 273.15, spellings: ["C", "deg C", "degC", "celsius"] },
      "°F": { factor: 5 / 9, zero: 273.15 - (32 * 5) / 9, spellings: ["F", "deg F", "degF", "fahrenheit"] },
    },
  },
  temperatureDifference: {
    label: "temperature difference",
    si: "K",
    us: show("°F", 0),
    metric: show("K", 0),
    units: {
      K: unit(1, "kelvin", "°C", "C", "deg C"),
      "°F": unit(5 / 9, "F", "deg F", "degF"),
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
      "in/h": unit(
        inch / hour,
        "in/hr",
        "inch/hour",
        "inches/hour",
        "inches per hour",
        "in per hour",
        "iph",
        '"/hr',
        '"/h',
      ),
      "mm/h": unit(0.001 / hour, "mm/hr", "mm/hour", "mm per hour"),
      "L/(m²·h)": unit(0.001 / hour, "L/m²·h", "L/m2·h", "L/m2h", "L/m²h", "L/m2/h", "L/m²/h"),
    },
  },
  volume: {
    label: "volume",
    si: "m³",
    us: show("gal", 0),
    metric: show("m³", 0),
    units: {
      "m³": unit(1, "m3"),
      L: unit(0.001, "litre", "litres", "liter", "liters"),
      gal: unit(gallon, "gallon", "gallons"),
      kgal: unit(1000 * gallon),
      "ft³": unit(foot ** 3, "ft3", "cf", "cu ft"),
      "yd³": unit(yard ** 3, "yd3", "cy", "cu yd"),
    },
  },
  money: {
    label: "money",
    si: "cent",
    us: show("$", 0),
    metric: show("$", 0),
    units: { $: unit(100, "USD", "US$", "dollars"), cent: unit(1, "cents", "¢") },
  },
  moneyPerArea: {
    label: "money per area",
    si: "cent/m²",
    us: show("$/ft²", 2),
    metric: show("$/m²", 2),
    units: {
      "$/ft²": unit(100 / foot ** 2, "$/ft2", "$/sf", "$/sq ft", "USD/ft2", "USD/ft²"),
      "$/m²": unit(100, "$/m2", "$/sqm", "USD/m2", "USD/m²"),
      "$/yd²": unit(100 / yard ** 2, "$/yd2", "$/sy"),
      "cent/m²": unit(1),
    },
  },
  moneyPerMass: {
    label: "money per mass",
    si: "cent/kg",
    us: show("$/lb", 2),
    metric: show("$/kg", 2),
    units: {
      "$/lb": unit(100 / pound, "$/pound", "USD/lb"),
      "$/kg": unit(100, "USD/kg"),
      "$/short ton": unit(100 / shortTon, "$/ton"),
      "$/t": unit(0.1, "$/tonne"),
      "cent/kg": unit(1),
    },
  },
  moneyPerVolume: {
    label: "money per volume",
    si: "cent/m³",
    us: show("$/yd³", 2),
    metric: show("$/m³", 2),
    units: {
      "$/gal": unit(100 / gallon, "$/gallon", "USD/gal"),
      "$/kgal": unit(0.1 / gallon, "USD/kgal"),
      "$/ft³": unit(100 / foot ** 3, "$/ft3", "$/cf", "$/cu ft"),
      "$/yd³": unit(100 / yard ** 3, "$/yd3", "$/cy", "$/cu yd"),
      "$/m³": unit(100, "$/m3", "USD/m3", "USD/m³"),
      "cent/m³": unit(1),
    },
  },
  moneyPerTime: {
    label: "money per time",
    si: "cent/s",
    us: show("$/h", 2),
    metric: show("$/h", 2),
    units: {
      "$/h": unit(100 / hour, "$/hr", "$/hour", "USD/h", "$ per hour"),
      "$/day": unit(100 / day),
      "$/year": unit(100 / year, "$/yr", "$/y", "$ a year", "USD/year"),
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
      h: unit(hour, "hr", "hrs", "hour", "hours"),
      day: unit(day, "days", "d"),
      month: unit(year / 12, "months", "mo"),
      year: unit(year, "years", "yr", "yrs", "y", "-year"),
    },
  },
  yearlyUse: {
    label: "hours of use a year",
    si: "h/year",
    us: show("h/year", 0),
    metric: show("h/year", 0),
    units: {
      "h/year": unit(1, "h/yr", "hours/year", "hours a year", "hours per year", "hr/yr", "hrs/yr", "h/y", "h a year"),
      "h/week": unit(year / (7 * day), "hours/week", "hours a week", "hours per week", "hrs/wk", "h/wk"),
    },
  },
  force: {
    label: "force",
    si: "N",
    us: show("lbf", 1),
    metric: show("N", 1),
    units: { N: unit(1, "newton", "newtons"), kN: unit(1000), lbf: unit(poundForce, "lb", "lbs", "lb-f", "pounds") },
  },
  torque: {
    label: "torque",
    si: "N·m",
    us: show("lbf·ft", 1),
    metric: show("N·m", 1),
    units: {
      N·m: unit(1, "Nm", "N-m", "N.m", "N m"),
      lbf·ft: unit(poundForce * foot, "lbf-ft", "ft-lb", "ft·lbf", "ft-lbf", "ft lb"),
      lbf·in: unit(poundForce * inch, "in-lb", "lbf-in", "in·lbf"),
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
      ft·lbf: unit(poundForce * foot, "ft-lbf", "ft-lb", "ft lbf"),
    },
  },
  fraction: {
    label: "share",
    si: "1",
    us: show("%", 0),
    metric: show("%", 0),
    units: { "%": unit(0.01, "percent", "pct", "per cent"), "1": unit(1) },
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
    us: show("g/year", 1),
    metric: show("g/year", 1),
    units: { "g/year": unit(1, "g/yr", "g a year", "g per year") },
  },
  depthSensitivity: {
    label: "sensitivity to depth loss",
    si: "1/m",
    us: show("1/in", 3),
    metric: show("1/mm", 4),
    units: { "1/m": unit(1, "/m"), "1/in": unit(1 / inch, "/in"), "1/mm": unit(1000, "/mm") },
  },
} as const satisfies Record<string, DimensionDefinition>;

export type DimensionName = keyof typeof dimensions;
/** The SI unit tag of a dimension: `SiUnit<"arealDensity">` is "kg/m²". */
export type SiUnit<D extends DimensionName> = (typeof dimensions)[D]["si"];
