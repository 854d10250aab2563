import { between, type PropertyDefinition } from "./model";

export const heat = [
  {
    id: "surface-temperature-rise",
    group: "heat",
    label: "Surface temperature rise",
    question: "How much warmer than the air does the surface get on a clear day?",
    kind: "quantity",
    dimension: "temperatureDifference",
    plausible: between("temperatureDifference", 0, 70, "K"),
    methods: ["surface-thermometer"],
    why: "A hot surface can burn skin and adds to the heat load of players.",
    direction: "less",
  },
  {
    id: "surface-temperature-peak",
    group: "heat",
    label: "Peak surface temperature",
    question: "How hot does the surface get on a clear summer day?",
    kind: "quantity",
    dimension: "temperature",
    plausible: between("temperature", 20, 100, "°C"),
    methods: ["surface-thermometer"],
    why: "Owners close fields above a temperature of their own choice.",
    direction: "less",
  },
  {
    id: "cooling-statement",
    group: "heat",
    label: "Cooling statement",
    question: "How does the bidder say that the surface is kept cooler, and for how long?",
    kind: "words",
    methods: [],
    why: "Cooling that lasts minutes does not carry a training session.",
    direction: "none",
  },
] as const satisfies readonly PropertyDefinition[];
