import { methodOf } from "#lib/claim";
import type { Article, DraftingInput } from "./model";
import { blank, chosen, fact, noted, paragraph, paragraphs } from "./paragraph";

/** 1.1: what the section holds and what stands elsewhere. */
export const summary = ({ facts, related }: DraftingInput): Article => ({
  id: "summary",
  title: "SUMMARY",
  paragraphs: paragraphs(
    paragraph(
      "This Section includes:",
      "Carpet with its backing, seams and tufted or inlaid lines.",
      "Infill.",
      "A shock layer, where the system offered has one.",
      "Edge fixing and closing of the carpet at curbs, drains and sleeves.",
      "Tests on the base, on the materials and on the finished field.",
    ),
    related.length === 0
      ? null
      : noted(
          "Check the numbers below against the edition of the numbering format that the project uses.",
          paragraph("Work in other Sections:", ...related.map((each) => `${each.replace(/\.$/, "")}.`)),
        ),
    paragraph(
      `The field: ${fact(facts, "field")}, for ${fact(facts, "owner")}, project “${fact(facts, "project")}”.`,
      `Planned use: ${fact(facts, "hoursOfUse")}.`,
      `Climate: ${fact(facts, "climate")}`.replace(/\.?$/, "."),
    ),
  ),
});

/** 1.2: the methods that the requirements name. */
export function references(input: DraftingInput): Article {
  const named = input.requirements.filter(({ isOn, method }) => isOn && method !== null);
  const methods = [...new Map(named.map(({ method, edition }) => [method, edition.text])).entries()];
  const lines = methods.flatMap(([method, edition]) => {
    if (method === null) return [];
    const { designation, name } = methodOf(method);
    return [`${designation}, ${name.charAt(0).toLowerCase()}${name.slice(1)}${edition === "" ? "" : `, ${edition}`}.`];
  });
  return {
    id: "references",
    title: "REFERENCES",
    paragraphs: paragraphs(
      lines.length === 0
        ? "No test method is named in this Section."
        : paragraph("Test methods named in this Section:", ...lines.sort()),
      "“Current edition” means the one in force on the day bids are due. A method of another body is accepted as equivalent where the bidder shows that it measures the same thing in the same way.",
      "ISO/IEC 17025, competence of testing laboratories, current edition.",
    ),
  };
}

/** 1.3: words with a meaning of their own. */
export const definitions = (): Article => ({
  id: "definitions",
  title: "DEFINITIONS",
  paragraphs: paragraphs(
    "System: carpet, infill and shock layer, if any, as they lie on the base. A figure of one layer is not a figure of the System.",
    "Build: the make-up of a System. A test report counts for this Section where the build tested is the build offered.",
    "As new: after installation and before use by the public.",
    "G-max: the greatest deceleration of a falling test mass, in units of gravity, by the method named. Figures by unlike test masses are not compared.",
    "Infill depth: the height of the infill above the backing, read with a pronged gauge.",
    "Accredited laboratory: one that is accredited to ISO/IEC 17025 for the method used and is independent of bidder and maker.",
    "Equal: a product that meets each requirement of @performance and @materials, shown by the methods named there.",
  ),
});

/** 1.4: how the work is brought together with that of others. */
export const administration = (input: DraftingInput): Article => ({
  id: "administration",
  title: "ADMINISTRATIVE REQUIREMENTS",
  paragraphs: paragraphs(
    "Coordination: agree on levels of curbs, drains, sleeves and lines with the trades concerned before carpet is ordered.",
    chosen(
      input,
      "pre-installation-meeting",
      paragraph(
        "Meeting before installation: hold it on the site at least 10 days before the carpet is placed.",
        "Present: Owner, Architect, Contractor, installer and the trade that built the base.",
        "Subjects: base tests, drawings of seams and lines, weather limits, infill order, tests and dates.",
        "The Contractor writes the minutes and sends them to all within 5 days.",
      ),
    ),
    "Sequence: base tests are passed before the shock layer or the carpet is placed, and seams are checked before infill covers them.",
  ),
});

/** 1.9: who may do the work and who tests. */
export const qualityAssurance = (input: DraftingInput, ofRequirements: Article["paragraphs"]): Article => ({
  id: "quality-assurance",
  title: "QUALITY ASSURANCE",
  paragraphs: [
    ...paragraphs(
      noted(
        "Ask for no more than the work needs. High numbers of finished works or years shut out firms without making the field sounder.",
        paragraph(
          "Installer: shows at least three fields of like size and build in the past five years, with the names of persons to call.",
          "The leader of the crew has placed at least three such fields and stays on the site while carpet and infill are placed.",
          "The maker of the carpet confirms in writing that its warranty holds with this installer. It may refuse only with a stated reason.",
        ),
      ),
      "Laboratory: any accredited laboratory may make the tests that are handed in.",
      chosen(
        input,
        "owner-engages-laboratory",
        "Tests on the field: the Owner engages and pays the laboratory. The Contractor pays for tests that are repeated because a limit was missed.",
      ),
      "One run: all carpet of one color comes from one production run.",
      chosen(
        input,
        "sample-panel",
        paragraph(
          "Sample panel: before the field is filled, finish one panel of at least 15 by 15 ft with seam, line and infill.",
          "It stays as the measure for workmanship until completion and may become part of the field.",
        ),
      ),
    ),
    ...ofRequirements,
  ],
});

/** 1.10 and 1.11: goods on their way and the weather. */
export const delivery = (): Article => ({
  id: "delivery",
  title: "DELIVERY, STORAGE AND HANDLING",
  paragraphs: paragraphs(
    "Deliver rolls with a label that names roll number, color, size and production run.",
    "Deliver infill in closed bags or covered trucks, each with a ticket that names material, grading and mass.",
    "Store rolls flat on level ground, covered and off the soil. Keep infill dry.",
    "Open no bag and cut no roll before the Owner has had the chance to take a sample.",
  ),
});

export const fieldConditions = (input: DraftingInput): Article => ({
  id: "field-conditions",
  title: "FIELD CONDITIONS",
  paragraphs: paragraphs(
    "Place no carpet on a base that is wet, frozen, loose or not accepted.",
    `Use adhesive within the temperature and moisture limits of its data sheet, and never below ${blank(input, "adhesive-temperature")}.`,
    "Place infill while carpet and infill are dry and the wind does not carry it.",
    "Record weather, temperature of air and surface, crew and progress each day.",
  ),
});
