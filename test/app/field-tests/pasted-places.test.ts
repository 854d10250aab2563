import { describe, expect, test } from "vitest";
import { pastedDrops } from "#lib/fieldtest";
import {
  newLocation,
  pastedPlaces,
  rowNumbers,
  withPastedDrops,
} from "../../../app/project/[id]/field-tests/_tests/pasted-places";

const location = (label: string, drops: [string, string, string] = ["", "", ""]) => ({
  id: "location-1",
  label,
  x: "",
  y: "",
  drops,
  note: "",
});
const row = (label: string, note = "") => ({ label, drops: ["110", "120", "121"] as const, note });

describe("pastedPlaces", () => {
  test("finds a location by its name, whatever the case, or by its number", () =>
    expect(pastedPlaces([location("Centre spot"), location("Goal mouth")], [row("goal mouth"), row("1")])).toEqual([
      1, 0,
    ]));

  test("never pastes over drops that were typed", () =>
    expect(pastedPlaces([location("Centre spot", ["", "99", ""])], [row("Centre spot"), row("1")])).toEqual([
      null,
      null,
    ]));

  test("gives a location to one row only; the next becomes a location of its own", () =>
    expect(pastedPlaces([location("Centre spot")], [row("Centre spot"), row("Centre spot")])).toEqual([0, null]));
});

describe("rows taken over", () => {
  test("keep name and place of the location and add the drops and the note", () =>
    expect(withPastedDrops({ ...location("Centre spot"), x: "10 m", note: "worn" }, row("1", "wet"))).toEqual({
      ...location("Centre spot", ["110", "120", "121"]),
      x: "10 m",
      note: "worn; wet",
    }));

  test("become a location with their own name", () =>
    expect(newLocation("location-9", row("North gate")).label).toBe("North gate"));
});

test("rows are numbered as they stand in the block, the heading and empty ones passed over", () => {
  const block = "Location\tDrop 1\tDrop 2\tDrop 3\n1\t110\t120\t121\n\t\t\t\n3\t1x0\t120\t121\n";
  const read = pastedDrops(block);
  const numbers = read.ok ? rowNumbers(block, read.value.heading) : [];
  expect(numbers).toEqual([2, 4]);
  expect(read.ok ? read.value.problems.map(({ row: number }) => number) : []).toEqual([4]);
});
