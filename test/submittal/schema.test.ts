import { describe, expect, test } from "vitest";
import { laboratoryReportSchema, registerSchema, weighTicketsSchema } from "#lib/submittal";

type Read = Readonly<{
  success: boolean;
  error?: Readonly<{ issues: readonly Readonly<{ path: readonly PropertyKey[]; message: string }>[] }> | undefined;
}>;
const messages = ({ error }: Read) => error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`) ?? [];
const line = { id: "a", item: "Sample", kind: "sample" };

describe("the register as text", () => {
  test("needs no more than a name and a kind", () =>
    expect(registerSchema.parse([line])).toEqual([{ ...line, from: "", clauses: [], due: null, versions: [] }]));

  test("says what does not fit together", () => {
    expect(messages(registerSchema.safeParse([line, line]))).toEqual(["1.id: Another line has the id “a” as well."]);
    const versions = [{ received: "2027-03-05", answered: "2027-03-01", action: "rejected" }];
    expect(messages(registerSchema.safeParse([{ ...line, versions }]))).toEqual([
      "0.versions.0.answered: The answer is dated 2027-03-01, before the 2027-03-05 on which it came in.",
    ]);
    expect(
      messages(registerSchema.safeParse([{ ...line, versions: [{ received: "2027-03-05", answered: "2027-03-06" }] }])),
    ).toEqual(["0.versions.0.action: There is a date of an answer and no answer. Choose one, or empty the date."]);
    expect(
      messages(
        registerSchema.safeParse([{ ...line, versions: [{ received: "2027-03-05" }, { received: "2027-03-01" }] }]),
      ),
    ).toEqual(["0.versions.1.received: A later version can’t have come in before the one ahead of it."]);
  });
});

describe("reports, values and tickets as text", () => {
  test("an empty report is one of which nothing was read off", () =>
    expect(laboratoryReportSchema.parse({})).toMatchObject({
      laboratory: "",
      method: null,
      date: null,
      pagesStated: null,
      pagesPresent: [],
      averages: [],
    }));

  test("pages and method are read", () => {
    expect(
      laboratoryReportSchema.parse({
        pagesStated: "5",
        pagesPresent: "1-3, 5",
        method: "ASTM F1936",
        edition: "F1936-19",
      }),
    ).toMatchObject({
      pagesStated: 5,
      pagesPresent: [1, 2, 3, 5],
      method: "f1936",
      edition: { year: 2019 },
    });
    expect(
      messages(laboratoryReportSchema.safeParse({ pagesStated: "some", pagesPresent: "3-1", method: "D99" })),
    ).toEqual([
      "method: “D99” is not a test method in the register. Expected one such as “ASTM F1936”, or nothing.",
      "pagesStated: The number of pages reads “some”. Expected a whole number from 1.",
      "pagesPresent: The pages read “3-1”. Expected pages such as “1-3, 5”.",
    ]);
  });

  test("values are claims", () =>
    expect(
      registerSchema.parse([
        {
          ...line,
          versions: [
            {
              received: "2027-03-05",
              values: [{ id: "a", property: "tuft-bind", figure: "9 lbf", evidence: "stated" }],
            },
          ],
        },
      ])[0]?.versions[0]?.values[0],
    ).toMatchObject({ property: "tuft-bind" }));

  test("tickets keep what nobody measured apart from dry", () => {
    const [first, second] = weighTicketsSchema.parse([
      { component: "sand", mass: "46,200 lb", moisture: "4 %" },
      { component: "sand", mass: "20 t" },
    ]);
    expect(first?.mass).toBeCloseTo(46_200 * 0.45359237, 6); // NIST SP 811
    expect(first?.moisture).toEqual({ share: 0.04, of: "wet mass" });
    expect(second).toMatchObject({ mass: 20_000, moisture: null });
  });
});
