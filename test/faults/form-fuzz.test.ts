import fc from "fast-check";
import { strFromU8, strToU8, unzipSync, type Zippable } from "fflate";
import { expect, test } from "vitest";
import { explainForm, readBidForm } from "#lib/document";
import { blank, expected, packed, typed } from "../document/form-files";
import { hostileFiles } from "../document/hostile-files";

// Files are spoilt at random. Whatever comes of it: the reading ends in time, with a form or a typed refusal, never with
// a crash; and a form that reads gives no other figure than was typed, unless its text itself was rewritten.

const runs = Number(process.env.FUZZ ?? 2000);
const seed = Number(process.env.SEED ?? Date.now() % 2 ** 31);
/** Milliseconds that one file may take: a filled form takes about 50 on an idle machine, the worst we know of 1500. */
const longest = 10_000;

const filled = typed({
  Instructions: { B7: "First bidder" },
  Claims: { D2: "118 g", E2: "ASTM F1936", F2: "new", D3: "2-1/4 in", J3: "“tall”" },
  Infill: { B1: "In layers, one on the other", A4: "Cork", B4: "1 lb/ft²" },
  Prices: { A2: "Field", B2: "Once, at the base date", C2: "Investment", E2: "$388,000" },
});
const whole = readBidForm(filled, expected);
const bases = [blank, filled, ...hostileFiles.map(({ file }) => file).filter(({ length }) => length < 60_000)];
const base = fc.constantFrom(...bases);
const held = unzipSync(filled);
const names = Object.keys(held);

let slowest = 0;
let read = 0;
const refusals = new Map<string, number>();

/** Reads a file and looks at what must always hold. */
function tried(file: Uint8Array) {
  const began = performance.now();
  const form = readBidForm(file, expected);
  const took = performance.now() - began;
  slowest = Math.max(slowest, took);
  expect(took).toBeLessThan(longest);
  if (form.ok) {
    read += 1;
    for (const { address, sheet, heading } of form.value.cells) expect(address && sheet && heading).not.toBe("");
  } else {
    const kind = form.problem.kind === "not-opened" ? form.problem.because.kind : form.problem.kind;
    refusals.set(kind, (refusals.get(kind) ?? 0) + 1);
    expect(explainForm(form.problem)).toMatch(/^[A-Z“].*\.$/s);
  }
  return form;
}

const settings = { seed, numRuns: runs } as const;
const limit = { timeout: 60 * 60_000 };

test("bytes changed anywhere", limit, () => {
  const change = fc.tuple(fc.nat(), fc.integer({ min: 1, max: 255 }));
  fc.assert(
    fc.property(base, fc.array(change, { minLength: 1, maxLength: 12 }), (file, changes) => {
      const spoilt = file.slice();
      for (const [at, by] of changes)
        if (spoilt.length > 0) spoilt[at % spoilt.length] = (spoilt[at % spoilt.length] ?? 0) ^ by;
      tried(spoilt);
    }),
    settings,
  );
});

test("one byte changed gives the same form or none", limit, () => {
  fc.assert(
    fc.property(fc.nat({ max: filled.length - 1 }), fc.integer({ min: 1, max: 255 }), (at, by) => {
      const spoilt = filled.slice();
      spoilt[at] = (spoilt[at] ?? 0) ^ by;
      const form = tried(spoilt);
      if (form.ok) expect(form).toEqual(whole);
    }),
    settings,
  );
});

test("cut off, doubled, joined and shifted", limit, () => {
  fc.assert(
    fc.property(
      base,
      base,
      fc.nat(),
      fc.nat(),
      fc.constantFrom("cut", "join", "shift", "insert"),
      (one, other, a, b, how) => {
        const at = one.length === 0 ? 0 : a % one.length;
        const to = other.length === 0 ? 0 : b % other.length;
        const parts = {
          cut: [one.subarray(0, at)],
          join: [one.subarray(0, at), other.subarray(to)],
          shift: [one.subarray(at), one.subarray(0, at)],
          insert: [one.subarray(0, at), other.subarray(to, to + 64), one.subarray(at)],
        }[how];
        tried(Uint8Array.from(parts.flatMap((part) => [...part])));
      },
    ),
    settings,
  );
});

test("parts swapped, left out, renamed and put in twice", limit, () => {
  const name = fc.constantFrom(...names);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(name, name, fc.constantFrom("swap", "drop", "copy", "rename")), { minLength: 1, maxLength: 4 }),
      (steps) => {
        const parts: Zippable = { ...held };
        for (const [one, other, how] of steps) {
          const [a, b] = [parts[one], parts[other]];
          if (a === undefined || b === undefined) continue;
          if (how === "swap") [parts[one], parts[other]] = [b, a];
          if (how === "drop") delete parts[one];
          if (how === "copy") parts[other] = a;
          if (how === "rename") {
            delete parts[one];
            parts[`${one}x`] = a;
          }
        }
        tried(packed(parts));
      },
    ),
    settings,
  );
});

test("the text within parts rewritten", limit, () => {
  const snippet = fc.oneof(
    fc.string({ maxLength: 12 }),
    fc.constantFrom(
      ...[
        "<c ",
        "</c>",
        "<f>",
        "</f>",
        "<row>",
        '<row r="0">',
        '<row r="99999999999">',
        "<v>",
        "]]>",
        "<![CDATA[",
        "<!--",
        "-->",
      ],
      ...[
        "&#0;",
        "&#xFFFFFF;",
        "&x;",
        't="s"',
        't="e"',
        't="zzz"',
        'r="A1:B2"',
        'r=""',
        "<is>",
        "<t>",
        "_x0000_",
        "<?x ?>",
        "\u0000",
      ],
      ...[
        '<mergeCell ref="A1:XFD1048576"/>',
        "<mergeCell/>",
        "<extLst>",
        "</extLst>",
        "<rPh>",
        "9".repeat(400),
        "<a:c/>",
        "\uFFFE",
      ],
    ),
  );
  const edit = fc.record({ part: fc.constantFrom(...names), at: fc.nat(), drop: fc.nat({ max: 40 }), put: snippet });
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 5 }), (edits) => {
      const parts: Record<string, Uint8Array> = { ...held };
      for (const { part, at, drop, put } of edits) {
        const text = strFromU8(parts[part] ?? new Uint8Array());
        const from = text.length === 0 ? 0 : at % text.length;
        parts[part] = strToU8(text.slice(0, from) + put + text.slice(from + drop));
      }
      tried(packed(parts));
    }),
    settings,
  );
});

test("what was seen", () => {
  const seen = [...refusals].sort(([, one], [, other]) => other - one).map(([kind, count]) => `${kind} ${count}`);
  console.log(`seed ${seed}: ${read} read, slowest ${Math.round(slowest)} ms; refused: ${seen.join(", ")}`);
  expect(read).toBeGreaterThan(0);
  expect(refusals.size).toBeGreaterThan(5);
});
