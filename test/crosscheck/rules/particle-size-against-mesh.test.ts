import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { findMaterial, parseGrainSize } from "#lib/material";
import { checkedBid, foundBy } from "../checked-bid";

const rule = "particle-size-against-mesh";

function described(size: string, words = "", material = "silica-sand", id = "sand") {
  const found = findMaterial(material, []);
  const parsed = parseGrainSize(size);
  if (found === undefined || !parsed.ok) throw new Error(`${material} ${size}`);
  return { id, material: found, particleSize: parsed.value, words };
}
const found = (...stated: Parameters<typeof described>) =>
  foundBy(rule, checkedBid({ described: [described(...stated)] }));
const severities = (...stated: Parameters<typeof described>) => found(...stated).map(({ severity }) => severity);

describe("grain size and mesh", () => {
  // ASTM E11, nominal openings, from memory: No. 20 is 0.850 mm and No. 40 is 0.425 mm; a bigger number is a finer sieve
  test("agree for 20–40 mesh and 0.425–0.85 mm, whichever is written first", () => {
    expect(severities("20–40 mesh", "Rounded sand, 0.425–0.85 mm")).toEqual([]);
    expect(severities("0.425–0.85 mm", "Rounded sand, 20-40 mesh")).toEqual([]);
    expect(severities("20–40 mesh", "Sand of 0.4 to 0.8 mm")).toEqual([]);
  });

  test("can't both be true where no grain has both sizes", () => {
    const [finding] = found("20–40 mesh", "Sand of 1.0–2.0 mm");
    if (finding === undefined) throw new Error("expected a finding");
    expect(finding.severity).toBe("can't be true");
    expect(tell(finding.sentence, "metric")).toBe(
      "The bid states grains of “20–40 mesh” (0.43–0.85 mm) and of “1.0–2.0 mm” (1.0–2.0 mm) for “Silica sand, rounded”. The bigger the mesh number, the smaller the grain.",
    );
  });

  test("are asked about where the ranges only overlap", () =>
    expect(severities("20–40 mesh", "Sand of 0.425–1.7 mm")).toEqual(["needs an answer"]));

  test("may differ by 15 % at an end, and by no more", () => {
    expect(severities("0.40–0.80 mm", "0.46–0.80 mm")).toEqual([]);
    expect(severities("0.40–0.80 mm", "0.47–0.80 mm")).toEqual(["needs an answer"]);
    expect(severities("0.40–0.80 mm", "0.40–0.92 mm")).toEqual([]);
    expect(severities("0.40–0.80 mm", "0.40–0.93 mm")).toEqual(["needs an answer"]);
  });

  // common practice, no source: infill sand is 20–40 mesh, so 0.36 mm and less lies beyond 15 %
  test("are noted where no grain has a usual size", () => {
    expect(severities("0.1–0.36 mm")).toEqual(["note"]);
    expect(severities("0.1–0.37 mm")).toEqual([]);
    expect(severities("0.5–2 mm", "", "coconut")).toEqual([]);
  });

  test("are noted where the finer sieve stands first", () => {
    expect(severities("40–20 mesh")).toEqual(["note"]);
    expect(severities("0.425–0.85 mm")).toEqual([]);
  });

  test("are not held against each other where one is missing", () => {
    expect(severities("")).toEqual([]);
    expect(severities("", "Sand in 25 kg bags, 2 to 3 lifts")).toEqual([]);
    expect(severities("20–40 mesh", "Washed and dried")).toEqual([]);
    expect(foundBy(rule, checkedBid())).toEqual([]);
  });

  test("do not depend on unit or on the order of components", () => {
    expect(severities("425–850 µm", "1.0–2.0 mm")).toEqual(severities("0.425–0.85 mm", "1.0–2.0 mm"));
    const two = [
      described("20–40 mesh", "1.0–2.0 mm", "silica-sand", "b"),
      described("10–20 mesh", "0.1–0.2 mm", "rubber-ambient", "a"),
    ];
    const keys = (order: typeof two) => foundBy(rule, checkedBid({ described: order })).map(({ key }) => key);
    expect(keys(two)).toHaveLength(2);
    expect(keys(two.toReversed())).toEqual(keys(two));
  });
});
