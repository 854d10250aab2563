import { describe, expect, test } from "vitest";
import { takenIn, touches } from "../../../app/_components/form/taking-in";

const base = { name: "North field", owner: "Harrow Vale", prices: [{ id: "p1", amount: "$10" }] };

describe("a form whose document somebody else saved", () => {
  test("gets what was not touched here, keeps what was, and asks nobody", () => {
    const mine = { ...base, name: "South field" };
    const theirs = { ...base, owner: "Larkmoor", prices: [...base.prices, { id: "p2", amount: "$20" }] };
    expect(takenIn(base, mine, theirs)).toEqual({
      puts: [
        { path: "owner", value: "Larkmoor" },
        { path: "prices", value: theirs.prices },
      ],
      isClear: true,
      known: theirs,
      joined: { ...theirs, name: "South field" },
    });
  });

  test("still gets the rest where both changed one field, and remembers what that field goes back to", () => {
    const mine = { ...base, name: "South field" };
    const theirs = { ...base, name: "East field", owner: "Larkmoor" };
    const taken = takenIn(base, mine, theirs);
    expect(taken.isClear).toBe(false);
    expect(taken.puts).toEqual([{ path: "owner", value: "Larkmoor" }]);
    expect(taken.known).toEqual({ ...base, owner: "Larkmoor" });
    // when they change it back, nothing is in the way any more
    const later = takenIn(taken.known, taken.joined, { ...base, owner: "Larkmoor" });
    expect(later).toMatchObject({ isClear: true, joined: { name: "South field", owner: "Larkmoor" } });
  });

  test("asks about everything that differs where nobody knows what both started from", () => {
    const taken = takenIn(null, { ...base, name: "South field" }, base);
    expect(taken).toMatchObject({ isClear: false, puts: [], joined: { name: "South field" } });
  });

  test("is touched in a field itself and in a list that it stands in, not beside it", () => {
    const puts = [{ path: "prices", value: [] }];
    expect(touches(puts, "prices.0.amount")).toBe(true);
    expect(touches(puts, "prices")).toBe(true);
    expect(touches(puts, "pricesNote")).toBe(false);
  });
});
