import { expect, test } from "vitest";
import { releaseForm, releaseParts, releaseSchema, releaseState } from "#lib/release";

const release = {
  label: "board meeting of May",
  parts: ["side-by-side", "recommendation"],
  tokenHash: "0".repeat(64),
  endsAt: "2027-06-01T00:00:00.000Z",
  takenBackAt: null,
};

test("a link is open until its end or until it is taken back, whichever is first", () => {
  const link = releaseSchema.parse(release);
  expect(releaseState(link, "2027-05-31T23:59:59.999Z")).toBe("open");
  expect(releaseState(link, "2027-06-01T00:00:00.000Z")).toBe("ended");
  expect(releaseState({ ...link, takenBackAt: "2027-05-02T00:00:00.000Z" }, "2027-05-03T00:00:00.000Z")).toBe(
    "taken-back",
  );
});

test("a form says what it lacks", () => {
  const read = releaseForm.safeParse({ label: " ", parts: [], lastDay: "31 May" });
  expect(read.error?.issues.map(({ message }) => message)).toEqual([
    "Say whom or what the link is for.",
    "Choose at least one part.",
    "Write the last day as 2026-05-31.",
  ]);
  expect(releaseForm.safeParse({ label: "x", parts: Object.keys(releaseParts), lastDay: "2027-05-31" }).success).toBe(
    true,
  );
  expect(releaseSchema.safeParse({ ...release, parts: ["export"] }).success).toBe(false);
});
