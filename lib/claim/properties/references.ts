import { between, type PropertyDefinition } from "./model";

export const references = [
  {
    id: "reference-fields",
    group: "references",
    label: "Reference fields",
    question: "How many fields with this very system are in use?",
    kind: "quantity",
    dimension: "count",
    plausible: between("count", 0, 5000, ""),
    methods: [],
    why: "Fields in use show how a system ages before it is bought.",
    direction: "more",
  },
  {
    id: "oldest-reference-field",
    group: "references",
    label: "Age of the oldest reference field",
    question: "How old is the oldest field with this very system?",
    kind: "quantity",
    dimension: "time",
    plausible: between("time", 0, 30, "year"),
    methods: [],
    why: "Nobody has seen the system at an age that no field has reached.",
    direction: "more",
  },
  {
    id: "installer-experience",
    group: "references",
    label: "Installer experience",
    question: "Who lays the field, and what have they laid before?",
    kind: "words",
    methods: [],
    why: "Seams, levels and infill depth depend on who lays the field.",
    direction: "none",
  },
] as const satisfies readonly PropertyDefinition[];
