// Which way imports may point. `npm test -- direction` holds the code against it, and
// test/house/direction.test.ts shows that every rule fires.

/** Rooms a page, a command or another part at the top may build on, but no domain room. */
const upperRooms = ["document", "store", "access", "evaluation"];
const upper = `^lib/(${upperRooms.join("|")})/`;

/** Packages and parts of Node that read, write, ask the clock of a server or draw. */
const outsideWorld = ["react", "react-dom", "next", "kysely", "pg", "better-sqlite3"];

/** @type {import("dependency-cruiser").IConfiguration} */
export default {
  forbidden: [
    {
      name: "no-cycles",
      comment: "Two files that need each other are one idea, or a third is missing.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "through-the-door",
      comment: "A room is used through its index.ts, by rooms and by pages alike.",
      severity: "error",
      from: { path: "^(lib/([^/]+)/|app/|proxy\\.ts)" },
      to: { path: "^lib/[^/]+/", pathNot: ["^lib/[^/]+/index\\.ts$", "^lib/$2/"] },
    },
    {
      name: "lib-knows-no-pages",
      comment: "Pages use rooms, never the other way round.",
      severity: "error",
      from: { path: "^lib/" },
      to: { path: "^(app/|proxy\\.ts|test/)" },
    },
    {
      name: "pages-know-no-tests",
      comment: "Test code does not ship.",
      severity: "error",
      from: { path: "^(app/|proxy\\.ts)" },
      to: { path: "^test/" },
    },
    {
      name: "domain-below-upper-rooms",
      comment: "A domain room knows nothing of documents, the store, access or the evaluation.",
      severity: "error",
      from: { path: "^lib/", pathNot: upper },
      to: { path: upper },
    },
    {
      name: "evaluation-below-document-and-store",
      comment: "The evaluation is pure: what it needs is handed to it.",
      severity: "error",
      from: { path: "^lib/evaluation/" },
      to: { path: "^lib/(document|store|access)/" },
    },
    {
      name: "figure-on-quantity-only",
      comment: "Figures stand on quantities and on nothing else of ours; what is asked once belongs to no trade.",
      severity: "error",
      from: { path: "^lib/figure/" },
      to: { path: "^lib/", pathNot: "^lib/(figure|once|quantity)/" },
    },
    {
      name: "quantity-on-nothing",
      comment: "Quantities are the ground floor.",
      severity: "error",
      from: { path: "^lib/quantity/" },
      to: { path: "^lib/", pathNot: "^lib/quantity/" },
    },
    {
      name: "rooms-are-pure",
      comment: "No pages, no database in a room; only the store has one.",
      severity: "error",
      from: { path: "^lib/", pathNot: "^lib/store/" },
      to: { path: `^node_modules/(${outsideWorld.join("|")})/` },
    },
    {
      name: "rooms-leave-node-alone",
      comment: "Files, processes, clocks and networks are handed in; only the store and the pages reach for them.",
      severity: "error",
      from: { path: "^lib/", pathNot: "^lib/store/" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "store-draws-nothing",
      comment: "The store knows databases, not pages.",
      severity: "error",
      from: { path: "^lib/store/" },
      to: { path: "^node_modules/(react|react-dom|next)/" },
    },
    {
      name: "zod-in-schemas-only",
      comment:
        "Text is parsed at the edge of a room, in schema.ts; behind it types are trusted. In criteria each kind of rule keeps its fields beside its computation, so that a kind is one file.",
      severity: "error",
      from: {
        path: "^lib/[^/]+/",
        pathNot: ["(^|/|-)(schema|schemas|field|fields)\\.ts$", "^lib/(evaluation|document|store|criteria)/"],
      },
      to: { path: "^node_modules/zod/" },
    },
    {
      name: "database-in-the-store-only",
      comment: "Pages and commands reach the database through lib/store.",
      severity: "error",
      from: { path: "^(app/|proxy\\.ts)" },
      to: { path: "^node_modules/(kysely|pg|better-sqlite3)/" },
    },
    {
      name: "resolvable",
      comment: "What cannot be found cannot be checked.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: "^node_modules/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default", "types"],
    },
  },
};
