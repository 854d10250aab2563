/** Whether the laboratory is accredited to ISO/IEC 17025 for the method it used. */
export const accreditations = [
  { id: "not-stated", label: "Not stated", definition: "Nothing is said of an accreditation for the method." },
  {
    id: "accredited",
    label: "Accredited for the method",
    definition: "The report shows an accreditation to ISO/IEC 17025 that covers the method.",
  },
  {
    id: "not-accredited",
    label: "Not accredited for the method",
    definition: "The laboratory has no accreditation to ISO/IEC 17025, or has it for other methods only.",
  },
] as const;

export type Accreditation = (typeof accreditations)[number]["id"];

/** Whether what was tested is what this bid would build: same carpet, infill, shock layer and base. */
export const testedBuilds = [
  { id: "not-stated", label: "Not stated", definition: "The report does not describe the build, or was not given." },
  { id: "bid-build", label: "The build of this bid", definition: "The build described in the report is the one bid." },
  {
    id: "other-build",
    label: "Another build",
    definition: "Carpet, infill, shock layer or base of the report differ from the bid.",
  },
] as const;

export type TestedBuild = (typeof testedBuilds)[number]["id"];

const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[\s-]+/g, " ")
    .trim();

const matchIn =
  <Id extends string>(list: readonly Readonly<{ id: Id; label: string }>[], others: Readonly<Record<string, Id>>) =>
  (text: string): Id | null => {
    const read = plain(text);
    const listed = list.find(({ id, label }) => plain(id) === read || plain(label) === read)?.id;
    return listed ?? others[read] ?? null;
  };

/** The accreditation with this id or label, or "yes" and "no"; "not-stated" for an empty text; null otherwise. */
export const matchAccreditation = matchIn<Accreditation>(accreditations, {
  "": "not-stated",
  yes: "accredited",
  no: "not-accredited",
});

/** The tested build with this id or label, or "yes" and "no"; "not-stated" for an empty text; null otherwise. */
export const matchTestedBuild = matchIn<TestedBuild>(testedBuilds, {
  "": "not-stated",
  yes: "bid-build",
  no: "other-build",
});

/** What is known of a test report, as written. */
export type ReportDetails = Readonly<{
  date: string;
  laboratory: string;
  accreditation: Accreditation;
  build: TestedBuild;
}>;

const buildInWords: Readonly<Record<TestedBuild, string>> = {
  "not-stated": "",
  "bid-build": "the build of this bid",
  "other-build": "another build than this bid’s",
};

/** The parts of a report that are given, in words; what is not stated is left out. */
export function reportInWords({ date, laboratory, accreditation, build }: ReportDetails): readonly string[] {
  const standing = accreditations.find(({ id }) => id === accreditation)?.label.toLowerCase() ?? "";
  const parts = [
    laboratory,
    accreditation === "not-stated" ? "" : standing,
    date === "" ? "" : `report of ${date}`,
    buildInWords[build],
  ];
  return parts.filter((part) => part !== "");
}
